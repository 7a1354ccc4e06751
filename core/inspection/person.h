#pragma once

#include <string>

namespace stopwalk::inspection {

// A name as it is recorded: of blanks of any kind, line breaks and control characters that stand together one
// blank is left, and none at the ends. Empty: it has no letter or digit, and names nobody.
std::string nameOf(const std::string& typed);

// Whether two names may be of one person: they have the same letters and digits, whatever their case, marks
// and form, and what stands between. In doubt they are the same, as of a name that was no valid UTF-8.
bool maybeSamePerson(const std::string& a, const std::string& b);

}  // namespace stopwalk::inspection
