#pragma once

#include <QDate>

#include "core/inspection/moment.h"

namespace stopwalk::plan {

// A day of the window as the core has it.
inline inspection::Date dateOf(const QDate& day) {
  return {std::chrono::year(day.year()), std::chrono::month(static_cast<unsigned>(day.month())),
          std::chrono::day(static_cast<unsigned>(day.day()))};
}

}  // namespace stopwalk::plan
