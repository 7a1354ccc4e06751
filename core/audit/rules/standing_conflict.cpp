#include <algorithm>

#include "core/audit/context.h"
#include "core/audit/exits.h"
#include "core/audit/measured_line.h"
#include "core/audit/wording.h"

namespace stopwalk::audit {
namespace {

void addCrowding(std::vector<Finding>& findings, const Context& c, std::size_t station, double limit) {
  for (const std::size_t other : c.stationsNear(c.stations[station].at, limit * 1000)) {
    if (other <= station || takeTurns(c.stations[station], c.stations[other])) continue;
    const double apart = geometry::distance(c.stations[station].at, c.stations[other].at) / 1000;
    if (!under(apart, limit) || !c.clearBetween(c.stations[station].at, c.stations[other].at)) continue;
    Finding f = c.aboutStation(station);
    f.which = c.stations[other].id;
    f.measured = apart;
    f.limit = limit;
    f.unit = "m";
    f.lines.push_back(straightLine(c.stations[station].at, c.stations[other].at, apart));
    f.text = c.stationName(station) + ": stands only " + c.length(apart, limit) + " from " +
             c.stationName(other) + ", so they are in each other's way; the rule asks for " +
             c.limit(limit, apart) + ".";
    findings.push_back(std::move(f));
  }
}

struct Obstructed {
  std::size_t door = 0;
  MeasuredLine where;  // to the edge that is too near; of a passage one stands in, its side
};

// The first door in whose way the station stands.
std::optional<Obstructed> doorObstructed(const Context& c, std::size_t station, double limit) {
  const Point at = c.stations[station].at;
  for (const DoorOpening* opening : c.openingsNear(at, limit * 1000)) {
    const auto away = [&](const auto& edge) { return geometry::distance(edge, at); };
    const geometry::Segment nearest = *std::ranges::min_element(opening->edges, {}, away);
    if (under(away(nearest), limit * 500))
      return Obstructed{opening->door,
                        straightLine(at, geometry::nearestPoint(nearest, at), away(nearest) / 1000)};
    if (c.surroundings.passageAt(at) == opening->door) return Obstructed{opening->door, placeLine(nearest)};
  }
  return std::nullopt;
}

std::vector<Finding> find(const Context& c, const Setting& s, std::size_t i) {
  std::vector<Finding> findings;
  addCrowding(findings, c, i, s.limit());
  const auto door = doorObstructed(c, i, s.limit());
  if (!door) return findings;
  Finding f = c.aboutStation(i);
  f.which = c.layout.doors[door->door].id;
  f.limit = s.limit();
  f.unit = "m";
  f.lines.push_back(door->where);
  f.text = c.stationName(i) + ": stands in the way of the door " + c.layout.doors[door->door].id +
           ", where people pass; the rule asks to keep a circle of " + c.limit(s.limit()) +
           " about the station out of the doorway.";
  findings.push_back(std::move(f));
  return findings;
}

}  // namespace

const Rule& standingConflict() {
  static const Rule rule{
      .id = "standing-conflict",
      .severity = Severity::Warn,
      .limits = {{"limit", "m", 0.6}},
      .basis =
          {BasisKind::HouseRule,
           "the circle is the house's, as wide as the operator zone of 600 mm on a school technology page "
           "(Australia, after state guidance; title not recorded); operators not in aisles: former "
           "29 CFR 1910.30(b)(1), superseded"},
      .finds = "two stations whose standing circles overlap, or one that stands in a doorway",
      .meaning =
          "The limit is the circle's diameter. Not reported: stations with a wall or something solid "
          "between, and a setter with "
          "the others of the same machine, who take turns. Of a pair, the finding names the first in the "
          "file.",
      .mend = "Move one of the two stations or its machine, or keep the doorway free.",
      .find = {{Each::Station, find}},
      .several = true};
  return rule;
}

}  // namespace stopwalk::audit
