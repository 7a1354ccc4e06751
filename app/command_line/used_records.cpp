#include "app/command_line/used_records.h"

#include "app/command_line/round_input.h"
#include "app/command_line/table_rows.h"

namespace stopwalk::app {

UsedRecords recordsOf(const std::string& layout_file, const inspection::Schedule& schedule,
                      Session& session) {
  if (layout_file == "-") return {};
  const auto read = readRecordsOf(layout_file, session);
  if (!read->there) return {};
  if (!read->unreadable.empty()) return {false, {}, {}};
  UsedRecords records{true, inspection::failedDevices(read->log.records, schedule), {}};
  records.used = files::RecordsUsed{read->file, read->log.lines, read->log.head(), {}};
  for (const inspection::FailedDevice& f : records.failed) records.used->failed.push_back(f.device);
  session.console.err << "stopwalk: " << read->file << ": " << counted(read->log.lines, "inspection record")
                      << " taken into account; "
                      << (records.failed.empty() ? "no device" : counted(records.failed.size(), "device"))
                      << " failed the last check\n";
  return records;
}

}  // namespace stopwalk::app
