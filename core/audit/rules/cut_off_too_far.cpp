#include "core/audit/context.h"
#include "core/audit/measured_line.h"
#include "core/audit/wording.h"
#include "core/layout/which.h"

namespace stopwalk::audit {
namespace {

std::vector<Finding> find(const Context& c, const Setting& s, std::size_t i) {
  const double limit = s.limit();
  if (!c.stations[i].room || c.cutOffs(*c.stations[i].room).empty()) return {};
  const Way& way = c.cutOffWays()[i];
  if (way.status == Status::Unmeasured || (way.found() && !over(way.walk_m, limit))) return {};
  Finding f = c.aboutStation(i);
  if (way.found()) {
    f.measured = way.walk_m;
    f.lines.push_back(lineOf(c, i, way));
  } else {
    f.which = layout::whichWord("no way");
    if (auto nearest = nearestStop(c, i, c.cutOffs(*c.stations[i].room)))
      f.lines.push_back(std::move(*nearest));
  }
  f.limit = limit;
  f.unit = "m";
  f.text = c.stationName(i) + ": " +
           (way.found() ? c.deviceName(*way.index) + ", which stops the whole room, is " +
                              c.length(way.walk_m, limit) + " to walk"
                        : "there is no way to a device that stops the whole room") +
           "; the rule allows " + c.limit(limit, f.measured) + ".";
  return {std::move(f)};
}

}  // namespace

const Rule& cutOffTooFar() {
  static const Rule rule{.id = "cut-off-too-far",
                         .severity = Severity::Warn,
                         .limits = {{"limit", "m", 10}},
                         .basis = {BasisKind::HouseRule,
                                   "no published distance; push buttons evenly distributed: BS 4163:2007, as "
                                   "quoted in a public discussion"},
                         .finds = "a station farther to walk than the limit from its room's cut-off",
                         .meaning =
                             "The nearest device that stops every machine of the room the station stands in; "
                             "at hand is 0. A room without one is "
                             "a matter of no-room-cut-off.",
                         .mend = "Add a cut-off nearer to this station, or move the machine nearer to one.",
                         .find = {{Each::Station, find}}};
  return rule;
}

}  // namespace stopwalk::audit
