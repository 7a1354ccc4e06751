#pragma once

#include <string>

#include "app/edits/edit.h"
#include "core/audit/profile.h"

namespace stopwalk::edits {

// Makes the layout keep a rule as `wanted`, where its profile has it as `profile`: what is the same as there
// is not written down.
Edit keepRule(const layout::Layout& layout, const audit::Profile& profile, const audit::Rule& rule,
              const audit::Setting& wanted, const std::string& reason);

// Why a layout keeps a rule otherwise; empty if it does not say.
std::string reasonFor(const layout::Layout& layout, const audit::Rule& rule);

}  // namespace stopwalk::edits
