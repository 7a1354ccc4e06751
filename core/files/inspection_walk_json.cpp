#include "core/files/inspection_walk_json.h"

#include <cmath>
#include <nlohmann/json.hpp>

#include "core/audit/wording.h"
#include "core/files/printable.h"

namespace stopwalk::files {
namespace {

using Json = nlohmann::ordered_json;

// Metres to a millionth of a millimetre.
double metres(double mm) {
  return std::round(mm * 1e6) / 1e9;
}

}  // namespace

std::string inspectionWalkJson(const planning::InspectionWalk& walk, const inspection::RoundWalk& how) {
  Json stops = Json::array(), left_out = Json::array();
  for (const auto& s : walk.stops)
    stops.push_back({{"id", s.id}, {"leg_m", metres(s.leg_mm)}, {"narrow", s.narrow}});
  for (const auto& l : walk.left_out) left_out.push_back({{"id", l.id}, {"why", l.why}});
  const Json json = {{"start", how.start.empty() ? Json() : Json(how.start)},
                     {"closed", how.closed},
                     {"hours", audit::word(planning::hoursOf(how))},
                     {"length_m", metres(walk.length_mm)},
                     {"bound_m", metres(walk.bound_mm)},
                     {"shortest", walk.shortest},
                     {"stops", stops},
                     {"back_m", how.closed ? Json(metres(walk.back_mm)) : Json()},
                     {"left_out", left_out}};
  return printableJson(json.dump(2, ' ', false, Json::error_handler_t::replace));
}

}  // namespace stopwalk::files
