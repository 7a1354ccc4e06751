#pragma once

#include <memory>

#include "app/plan/choice.h"
#include "app/plan/tools/tool.h"

namespace stopwalk::plan {

// The tool for a choice; one file each.
std::unique_ptr<Tool> makeTool(const Choice& choice, ToolHost& host);

}  // namespace stopwalk::plan
