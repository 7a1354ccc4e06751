#pragma once

#include <optional>
#include <string>
#include <vector>

#include "app/command_line/commands.h"
#include "app/command_line/input.h"
#include "core/files/report_json.h"
#include "core/inspection/schedule.h"

namespace stopwalk::app {

// What the inspection records beside a layout say of its devices; nothing, where there are none yet.
struct UsedRecords {
  bool good = true;  // false: they are there and cannot be read, which was told
  std::vector<inspection::FailedDevice> failed;
  std::optional<files::RecordsUsed> used;
};
// Tells that they were taken into account, and which device failed that the layout does not have. Standard
// input has none.
UsedRecords recordsOf(const Input& input, const inspection::Schedule& schedule, Session& session);

}  // namespace stopwalk::app
