#pragma once

#include <QString>
#include <string_view>

namespace stopwalk::plan {

// What is wrong by a rule, in as few words as stand beside the pointer: "stop too far"; its id where it has
// no words here.
QString ruleWords(std::string_view rule);

}  // namespace stopwalk::plan
