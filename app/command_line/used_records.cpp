#include "app/command_line/used_records.h"

#include "app/command_line/round_input.h"
#include "app/command_line/table_rows.h"
#include "core/files/printable.h"
#include "core/planning/round_plan.h"

namespace stopwalk::app {

UsedRecords recordsOf(const Input& input, const inspection::Schedule& schedule, Session& session) {
  if (input.file == "-") return {};
  const auto read = readRecordsOf(input.file, session);
  if (!read->there) return {};
  if (!read->unreadable.empty()) return {false, {}, {}};
  const layout::Layout& layout = *input.layout;
  const auto as_of = planning::asOf(layout, input.kinds, nowOf(session.console));
  UsedRecords records{
      true,
      planning::withoutRemoved(inspection::failedDevices(read->log.records, schedule, as_of), layout),
      {}};
  const auto gone = planning::notInLayout(records.failed, layout);
  records.used = files::recordsUsed(read->file, read->log, records.failed, gone);
  session.console.err << "stopwalk: " << read->file << ": " << counted(read->log.lines, "inspection record")
                      << " taken into account; "
                      << (records.failed.empty()
                              ? (records.used->fault.empty() ? "no device is failed"
                                                             : "no device is known to be failed")
                              : counted(records.failed.size(), "device") + " failed and not passed since")
                      << "\n";
  for (const inspection::FailedDevice& f : gone)
    session.console.err << "stopwalk: " << files::printable(goneText(f), "") << "\n";
  return records;
}

}  // namespace stopwalk::app
