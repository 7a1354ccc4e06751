#include <algorithm>
#include <limits>

#include "core/audit/context.h"
#include "core/audit/wording.h"

namespace stopwalk::audit {
namespace {

void findIn(std::vector<Finding>& findings, const Context& c, const std::vector<std::size_t>& stations,
            std::size_t room, double limit) {
  const std::vector<std::size_t> cut_offs = c.relation.cutOffs(room);
  if (cut_offs.empty()) return;
  const std::vector<Way> ways = c.nearestOf(stations, cut_offs);
  for (std::size_t i = 0; i < stations.size(); ++i) {
    const Way& way = ways[i];
    if (way.status == Status::Unmeasured || (way.found() && !over(way.walk_m, limit))) continue;
    Finding f = c.aboutStation(stations[i]);
    if (way.found()) f.measured = way.walk_m;
    f.limit = limit;
    f.unit = "m";
    f.text = c.stationName(stations[i]) + ": " +
             (way.found() ? c.deviceName(*way.index) + ", which stops the whole room, is " +
                                c.length(way.walk_m, limit) + " to walk"
                          : "there is no way to a device that stops the whole room") +
             "; the rule allows " + c.length(limit) + ".";
    findings.push_back(std::move(f));
  }
}

std::vector<Finding> find(const Context& c, const Setting& s) {
  std::vector<std::vector<std::size_t>> in_room(c.layout.rooms.size());
  for (std::size_t i = 0; i < c.stations.size(); ++i)
    if (c.stations[i].room) in_room[*c.stations[i].room].push_back(i);
  std::vector<Finding> findings;
  for (std::size_t r = 0; r < in_room.size(); ++r)
    if (!in_room[r].empty()) findIn(findings, c, in_room[r], r, s.limit());
  return findings;
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
                         .find = find};
  return rule;
}

}  // namespace stopwalk::audit
