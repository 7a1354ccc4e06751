#pragma once

#include <optional>
#include <string>
#include <vector>

#include "app/command_line/commands.h"
#include "app/command_line/input.h"
#include "app/records/append_record.h"
#include "app/records/records_file.h"
#include "core/inspection/schedule.h"
#include "core/planning/round_plan.h"

// What the sub-commands of `round` share.
namespace stopwalk::app {

struct RoundOptions {
  std::string layout;
  std::string kinds;
  std::string format = "text";
  bool json() const { return format == "json"; }
};

// LAYOUT, --kinds and --format.
void addRoundOptions(CLI::App& command, RoundOptions& options);

// A layout with what was inspected there.
struct Inspected {
  std::optional<Exit> exit;  // why there is nothing
  Input input;
  inspection::Schedule schedule;
  records::ReadRecords read;
  std::vector<planning::InspectedDevice> devices;

  const inspection::Records& records() const { return read.log.records; }
  const planning::InspectedDevice* find(const std::string& device) const {
    return planning::findDevice(devices, device);
  }
  std::vector<std::string> ids() const { return planning::idsOf(devices); }
  inspection::AsOf asOf(const inspection::Now& now) const { return planning::asOf(devices, now); }
  inspection::LayoutThen layoutNow() const;
};

// Reads the layout and its records; tells the person what is wrong with either.
Inspected readInspected(const RoundOptions& options, Session& session);
// The records alone, for which the layout need not be readable.
std::optional<records::ReadRecords> readRecordsOf(const std::string& layout_file, Session& session);

// Of an id that the layout does not have: those that are near, each with its kind, or else all that there
// are.
std::string nearestDevice(const std::string& asked, const Inspected& all);

// Behind the day on which it failed last: that of the first failure that is open, if another.
std::string sinceText(const inspection::FailedDevice& failed);
// A device that failed and that the layout does not have, or not under that id.
std::string goneText(const inspection::FailedDevice& failed);

inspection::Moment nowOf(const Console& console);
// Tells of a clock that is behind the last record: whatever is recorded then bears a wrong time.
void tellClock(const Inspected& all, const inspection::Moment& now, Session& session);

// Tells how the writing went; Done only if the record is on the disk.
Exit tellAppended(const records::Appended& appended, const std::string& file, Session& session);

// The number of a record, such as `a round`; stopwalk round show has them.
CLI::Validator saysNumberOf(const std::string& what);
// A person's name, which is put as it is recorded; one with a line break or without letters is refused.
CLI::Validator saysName();

}  // namespace stopwalk::app
