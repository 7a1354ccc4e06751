#include "core/audit/context.h"
#include "core/audit/measured_line.h"
#include "core/audit/wording.h"
#include "core/layout/which.h"

namespace stopwalk::audit {
namespace {

// Whether it is told here that there is no stop for the station. The operator without any fails
// stop-out-of-reach, where that rule is on; nobody but its holder can stop a hand-held machine.
bool lacksAny(const Context& c, const StationEntry& station, const Way& way) {
  if (way.status != Status::None) return false;
  if (station.station->role != layout::Role::Operator) return !c.machine(station).hand_held;
  const Setting& reach = c.profile.of(*findRule("stop-out-of-reach"));
  return !reach.on || reach.severity == Severity::Note;
}

std::vector<Finding> find(const Context& c, const Setting& s, std::size_t i) {
  std::vector<Finding> findings;
  const StationEntry& station = c.stations[i];
  const Way& way = c.stop_ways[i];
  const bool nothing = lacksAny(c, station, way);
  if (!nothing && !(way.found() && over(way.walk_m, s.limit()))) return findings;
  Finding f = c.aboutStation(i);
  f.limit = s.limit();
  f.unit = "m";
  f.text = c.stationName(i) + ": ";
  if (nothing) {
    f.which = layout::whichWord("none");
    f.text += "there is no stop for this station at all";
  } else {
    f.measured = way.walk_m;
    f.lines.push_back(lineOf(c, i, way));
    f.text += "nearest stop is " + c.deviceName(*way.index, station.machine) + ", " +
              c.length(way.walk_m, s.limit()) + " to walk";
  }
  f.text += "; the rule allows " + c.limit(s.limit(), f.measured) + ".";
  findings.push_back(std::move(f));
  return findings;
}

}  // namespace

const Rule& stopTooFar() {
  static const Rule rule{
      .id = "stop-too-far",
      .severity = Severity::Fail,
      .limits = {{"limit", "m", 5}},
      .basis = {BasisKind::HouseRule, "no published source gives a walking distance to a machine's stop"},
      .finds = "a station whose nearest stop is farther to walk than the limit",
      .meaning =
          "Any station: operator, helper, setter or instructor. A helper, setter or instructor whose machine "
          "nothing "
          "stops (or only a trigger that another holds) is reported as well, unless the machine is "
          "hand-held; so is such an operator, where stop-out-of-reach is off or a note.",
      .mend = "Add a stop nearer to this station, clear a shorter way, or move the machine.",
      .find = {{Each::Station, find}}};
  return rule;
}

}  // namespace stopwalk::audit
