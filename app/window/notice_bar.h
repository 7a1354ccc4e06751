#pragma once

#include <QFrame>
#include <functional>
#include <vector>

class QVBoxLayout;

namespace stopwalk::window {

// A line above the plan that says what has come up without stopping the work: the file changed on disk, work
// was found after a crash. Each notice has a key; a new one of the same key takes the place of the old,
// one that says and offers the same stays where it is. All are in sight, the grave ones first, then the
// newest. One that is lasting is grave, and only who showed it takes it away.
class NoticeBar : public QFrame {
  Q_OBJECT

 public:
  struct Answer {
    QString text;
    std::function<void()> run;
  };

  explicit NoticeBar(QWidget* parent = nullptr);

  enum class Weight { Plain, Grave, Lasting };

  void show(const QString& key, const QString& text, std::vector<Answer> answers,
            Weight weight = Weight::Plain);
  void clear(const QString& key);
  QString text() const;  // of all, a line each

 private:
  struct Notice {
    QString key;
    QString text;
    std::vector<Answer> answers;
    Weight weight = Weight::Plain;
  };

  void lay();
  QWidget* lineOf(const Notice& notice);
  void take(const QString& key, std::size_t answer);

  std::vector<Notice> notices_;
  QVBoxLayout* column_;
  std::vector<QWidget*> lines_;
};

}  // namespace stopwalk::window
