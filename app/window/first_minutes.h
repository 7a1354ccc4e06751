#pragma once

#include <QFrame>

class QLineEdit;
class QLabel;

namespace stopwalk::window {

// What an empty plan offers: a first room by its two sides, a sample, a file.
class FirstMinutes : public QFrame {
  Q_OBJECT

 public:
  explicit FirstMinutes(const QStringList& samples, QWidget* parent = nullptr);

  void place();  // in the middle of what it stands on

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 signals:
  void roomWanted(double width_mm, double depth_mm);
  void sampleWanted(const QString& name);
  void openWanted();

 private:
  void draw();
  double lengthIn(const QLineEdit* edit) const;  // 0: cannot be read

  QLineEdit* width_;
  QLineEdit* depth_;
  QLabel* problem_;
};

}  // namespace stopwalk::window
