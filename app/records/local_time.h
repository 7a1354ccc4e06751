#pragma once

#include <vector>

#include "core/inspection/moment.h"

namespace stopwalk::records {

// What a clock of this place shows, as moments: as a rule one; none where the clock is put forward over it,
// two where it is put back and shows it twice.
std::vector<inspection::Moment> momentsAt(inspection::Date date, int second_of_day);

}  // namespace stopwalk::records
