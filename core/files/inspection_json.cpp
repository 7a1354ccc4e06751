#include "core/files/inspection_json.h"

#include <nlohmann/json.hpp>

#include "core/files/inspection_record_json.h"
#include "core/files/inspection_walk_json.h"
#include "core/files/printable.h"

namespace stopwalk::files {
namespace {

template <class Things, class Write>
std::string list(const Things& things, Write write) {
  std::string all;
  for (const auto& thing : things) all += (all.empty() ? "\n    " : ",\n    ") + write(thing);
  return "[" + all + (all.empty() ? "]" : "\n  ]");
}

std::string text(const nlohmann::ordered_json& json) {
  return printableJson(json.dump(-1, ' ', false, nlohmann::ordered_json::error_handler_t::replace));
}

nlohmann::ordered_json orNull(const std::string& sentence) {
  return sentence.empty() ? nlohmann::ordered_json() : nlohmann::ordered_json(sentence);
}

nlohmann::ordered_json dayOrNull(inspection::Date day) {
  return day == inspection::kUnreadDay ? nlohmann::ordered_json()
                                       : nlohmann::ordered_json(inspection::dateText(day));
}

std::string failedJson(const inspection::FailedDevice& f) {
  return text({{"device", f.device},
               {"on", dayOrNull(f.on)},
               {"check", f.check},
               {"found_by", f.found_by},
               {"since", dayOrNull(f.since)}});
}

}  // namespace

std::string roundJson(const inspection::Round& round) {
  return recordObject(round);
}

std::string newRoundJson(const inspection::Round& round, const planning::InspectionWalk& walk) {
  std::string json = roundJson(round);
  json.pop_back();
  return json + ",\"order\":" + inspectionWalkJson(walk, round.walk) + "}";
}

std::string checkJson(const inspection::Check& check) {
  return recordObject(check);
}

std::string shownJson(const ShownRecords& shown) {
  return "{\n  \"fault\": " + text(orNull(shown.fault)) +
         ",\n  \"rounds\": " + list(shown.rounds, roundJson) +
         ",\n  \"checks\": " + list(shown.checks, checkJson) +
         ",\n  \"failed\": " + list(shown.failed, failedJson) +
         ",\n  \"actions\": " + list(shown.actions, checkJson) +
         ",\n  \"gone\": " + list(shown.gone, failedJson) + "\n}";
}

std::string dueJson(const DueList& list) {
  const auto dueOne = [&](const inspection::Due& due) {
    return text(
        {{"device", due.device},
         {"what", word(due.what)},
         {"on", due.on ? nlohmann::ordered_json(inspection::dateText(*due.on)) : nlohmann::ordered_json()},
         {"overdue", isOverdue(due, list.on)},
         {"despite",
          due.despite ? nlohmann::ordered_json(clauseOf(*due.despite)) : nlohmann::ordered_json()}});
  };
  return "{\n  \"on\": \"" + inspection::dateText(list.on) + "\",\n  \"fault\": " + text(orNull(list.fault)) +
         ",\n  \"due\": " + files::list(list.due, dueOne) +
         ",\n  \"actions\": " + files::list(list.actions, checkJson) +
         ",\n  \"next\": " + (list.next ? "\"" + inspection::dateText(*list.next) + "\"" : "null") +
         ",\n  \"gone\": " + files::list(list.gone, failedJson) + "\n}";
}

std::string sheetJson(const WrittenSheet& sheet) {
  std::string json =
      text({{"file", sheet.file}, {"of", sheet.of}, {"pages", sheet.pages}, {"devices", sheet.devices}});
  json.pop_back();
  return json + ",\"order\":" + (sheet.walk ? inspectionWalkJson(*sheet.walk, sheet.how) : "null") + "}";
}

std::string bundleJson(const inspection::Bundle& bundle, const std::string& file) {
  return text({{"file", file},
               {"from", inspection::dateText(bundle.from)},
               {"to", inspection::dateText(bundle.to)},
               {"rounds", bundle.rounds.size()},
               {"checks", bundle.checks.size()},
               {"failed", bundle.failed.size()},
               {"actions", bundle.open_actions.size()}});
}

std::string verdictJson(const LogVerdict& verdict, const std::string& file, const InspectionLog& log) {
  nlohmann::ordered_json json = {
      {"file", file}, {"unchanged", verdict.line == 0}, {"records", log.lines}, {"head", log.head()}};
  if (verdict.line != 0) json["line"] = verdict.line, json["why"] = verdict.why;
  if (verdict.line == 0) json["since_head"] = verdict.since;
  return text(json);
}

}  // namespace stopwalk::files
