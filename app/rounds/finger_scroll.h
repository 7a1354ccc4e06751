#pragma once

#include <QObject>
#include <optional>

class QMouseEvent;
class QScrollArea;

namespace stopwalk::rounds {

// Scrolls by a finger that is drawn over what is in it, whatever it meets there: a scroll bar is narrower
// than a finger. Only by what touches became: a mouse has its wheel.
class FingerScroll : public QObject {
 public:
  // That has its widget already; and lives no longer than it.
  explicit FingerScroll(QScrollArea& area);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void watch(QObject* object);
  bool draws(QObject* on, double y);

  QScrollArea& area_;
  struct Grip {
    double y = 0;  // on the screen
    int value = 0;
    bool is_drawn = false;  // far enough to be no tap
  };
  std::optional<Grip> grip_;
};

}  // namespace stopwalk::rounds
