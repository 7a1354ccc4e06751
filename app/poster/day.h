#pragma once

#include <QDate>

#include "core/inspection/moment.h"

namespace stopwalk::poster {

inline QDate dayOf(inspection::Date date) {
  return {int(date.year()), static_cast<int>(unsigned(date.month())), static_cast<int>(unsigned(date.day()))};
}

}  // namespace stopwalk::poster
