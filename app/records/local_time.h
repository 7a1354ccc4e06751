#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "core/inspection/moment.h"

namespace stopwalk::records {

// What a clock of this place shows, as moments: as a rule one; none where the clock is put forward over it,
// two where it is put back and shows it twice.
std::vector<inspection::Moment> momentsAt(inspection::Date date, int second_of_day);

// What was typed as a day and a time, as moments: that of its zone, if one was typed, else those that a clock
// of this place shows so. None: it is no day and time.
std::optional<std::vector<inspection::Moment>> momentsTyped(std::string_view text);

}  // namespace stopwalk::records
