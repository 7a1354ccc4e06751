#include "app/window/day_change.h"

#include <utility>

namespace stopwalk::window {

DayChange::DayChange(Today today, QObject* parent)
    : QObject(parent), today_(std::move(today)), day_(today_()) {
  minute_.setInterval(60'000);
  connect(&minute_, &QTimer::timeout, this, &DayChange::look);
  minute_.start();
}

void DayChange::look() {
  if (const QDate day = today_(); std::exchange(day_, day) != day) emit changed();
}

}  // namespace stopwalk::window
