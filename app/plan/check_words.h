#pragma once

#include <QString>

#include "app/plan/items/check_sign.h"

namespace stopwalk::plan {

// What the marks of checks mean, as the legend, the box at the pointer and a reader of the screen say it; of
// none empty.
QString wordOf(CheckSign sign);
QString wordOf(CheckAge age);

}  // namespace stopwalk::plan
