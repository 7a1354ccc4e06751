#pragma once

#include <string>
#include <vector>

#include "app/records/records_file.h"

namespace stopwalk::records {

// A check that can be told from all others by its note.
inline inspection::Check checkNoted(const std::string& note) {
  inspection::Check check;
  check.round = 1;
  check.device = "saw/stop";
  check.machines = {"saw"};
  check.at = *inspection::parseMoment("2026-03-02T09:15:00+01:00");
  check.inspector = "Ada Example";
  check.result = inspection::Result::Pass;
  check.note = note;
  return check;
}

// The notes of all records that can be read, in order.
inline std::vector<std::string> notesIn(const files::InspectionLog& log) {
  std::vector<std::string> notes;
  for (const inspection::Check& check : log.records.checks) notes.push_back(check.note);
  return notes;
}

}  // namespace stopwalk::records
