#pragma once

#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "core/files/inspection_record_json.h"

// What a text that is no JSON, or not wholly, says of failures: the last resort, for a failure counts
// whatever the doubt. What people typed into a record is never taken for it: there the quotes are escaped.
namespace stopwalk::files {

// Whether it says of something that it failed, cut off within that word or not.
bool saysFail(std::string_view text);
// Whether it says so without a device, for the key of that is hurt.
bool saysFailOfNobody(std::string_view text);

// For each result that is a failure every device that is named since the result before. Where none is, each
// of the `known` ids that stand there.
std::vector<ReadRecord> failuresIn(std::string_view text, const std::set<std::string>& known = {});

}  // namespace stopwalk::files
