#pragma once

#include <QFrame>
#include <functional>
#include <vector>

class QHBoxLayout;
class QLabel;

namespace stopwalk::window {

// A line above the plan that says what has come up without stopping the work: the file changed on disk, work
// was found after a crash. Each notice has a key; a new one of the same key takes the place of the old,
// one that says the same stays where it is.
class NoticeBar : public QFrame {
  Q_OBJECT

 public:
  struct Answer {
    QString text;
    std::function<void()> run;
  };

  explicit NoticeBar(QWidget* parent = nullptr);

  void show(const QString& key, const QString& text, std::vector<Answer> answers);
  void clear(const QString& key);
  QString text() const;

 private:
  struct Notice {
    QString key;
    QString text;
    std::vector<Answer> answers;
  };

  void lay();

  std::vector<Notice> notices_;
  QLabel* label_;
  QHBoxLayout* line_;
  std::vector<QWidget*> buttons_;
};

}  // namespace stopwalk::window
