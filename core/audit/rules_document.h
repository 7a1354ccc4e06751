#pragma once

#include <string>

namespace stopwalk::audit {

// docs/rules.md: every rule with its severity, limits, basis and meaning, from the rules themselves.
std::string rulesDocument();

}  // namespace stopwalk::audit
