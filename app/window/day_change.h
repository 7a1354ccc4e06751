#pragma once

#include <QDate>
#include <QObject>
#include <QTimer>
#include <functional>

namespace stopwalk::window {

// Tells when another day has begun: what is due, and what was let stand until a day, is then otherwise,
// though nobody touched the window. Looks each minute, as a timer for midnight would oversleep with the
// machine.
class DayChange : public QObject {
  Q_OBJECT

 public:
  using Today = std::function<QDate()>;
  explicit DayChange(Today today = QDate::currentDate, QObject* parent = nullptr);

  void look();

 signals:
  void changed();

 private:
  Today today_;
  QDate day_;
  QTimer minute_;
};

}  // namespace stopwalk::window
