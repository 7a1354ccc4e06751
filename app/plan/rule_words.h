#pragma once

#include <QString>
#include <string_view>

namespace stopwalk::plan {

// What is wrong by a finding's rule, and by which of what it may find, in as few words as stand beside the
// pointer: "stop too far"; the rule's id where it has no words here.
QString ruleWords(std::string_view rule, std::string_view which);

}  // namespace stopwalk::plan
