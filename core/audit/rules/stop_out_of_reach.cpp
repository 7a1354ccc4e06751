#include "core/audit/context.h"
#include "core/audit/measured_line.h"
#include "core/audit/wording.h"
#include "core/layout/which.h"

namespace stopwalk::audit {
namespace {

// The straight distance to a stop of this machine that the station has at hand at the rule's reach; the least
// of them.
std::optional<double> reached(const Context& c, std::size_t station, const std::vector<std::size_t>& stops,
                              double hand_m, double foot_m) {
  std::optional<double> least;
  for (const std::size_t d : stops)
    if (const auto m = c.atHand_m(station, d, hand_m, foot_m); m && (!least || *m < *least)) least = m;
  return least;
}

// A stop within the reach as the crow flies, which something prevents from being at hand.
std::optional<std::size_t> prevented(const Context& c, std::size_t station,
                                     const std::vector<std::size_t>& stops, double hand_m, double foot_m) {
  for (const std::size_t d : stops)
    if (c.mayUse(station, d) && !over(c.straight_m(station, d), c.placed[d].placed.foot ? foot_m : hand_m))
      return d;
  return std::nullopt;
}

// What a device in reach may be prevented by. One on a wall is used from before it.
std::string obstacleText(const Context& c, std::size_t station, std::size_t device) {
  const floor::PlacedDevice& p = c.placed[device].placed;
  const bool is_behind = floor::Surroundings::isBehind(c.stations[station].at, p);
  if (is_behind && !p.machine) return "faces the other way";
  return std::string(is_behind ? "is on the far side of what carries it, or " : "") +
         "the reach to it crosses a hazard outline, a wall or something that stands between";
}

// What the nearest stop is and how far; where it is too far to reach, that is what the finding measures. One
// that is near enough is prevented from being at hand, which no limit says.
std::string nearestText(const Context& c, std::size_t station, double reach_m, Finding& f) {
  const Way& way = c.stop_ways[station];
  const double straight_m = c.straight_m(station, *way.index);
  f.measured = straight_m;
  if (over(straight_m, reach_m)) f.limit = reach_m;
  f.lines.push_back(reachLine(c, station, *way.index));
  std::string text = "nearest stop is " + c.deviceName(*way.index, c.stations[station].machine) + ", ";
  if (way.status == Status::AtHand) return text + c.length(straight_m, reach_m) + " away";
  f.lines.push_back(lineOf(c, station, way));
  text += c.length(way.walk_m) + " to walk";
  return f.limit ? text + " and " + c.length(straight_m, reach_m) + " in a straight line" : text;
}

std::string situation(const Context& c, std::size_t station, double reach_m, Finding& f) {
  const Way& way = c.stop_ways[station];
  if (way.found()) return nearestText(c, station, reach_m, f);
  f.limit = reach_m;
  const bool none = way.status == Status::None;
  f.which = layout::whichWord(none ? "none" : "no way");
  return none ? "there is no stop for this station at all" : "there is no way to any of its stops";
}

std::string preventedText(const Context& c, std::size_t station, std::size_t device, Finding& f) {
  if (c.stop_ways[station].index != device) f.lines.push_back(reachLine(c, station, device));
  return "; " + c.deviceName(device, c.stations[station].machine) + " is only " +
         c.length(c.straight_m(station, device)) + " away, but " + obstacleText(c, station, device);
}

Finding about(const Context& c, std::size_t station, const std::vector<std::size_t>& stops, double hand_m,
              double foot_m) {
  Finding f = c.aboutStation(station);
  const Way& way = c.stop_ways[station];
  const double reach_m = way.found() && c.placed[*way.index].placed.foot ? foot_m : hand_m;
  f.unit = "m";
  f.text = c.stationName(station) + ": " + situation(c, station, reach_m, f);
  if (const auto d = prevented(c, station, stops, hand_m, foot_m)) f.text += preventedText(c, station, *d, f);
  f.text += "; the rule asks for one at hand (" + c.limit(reach_m, f.measured) + ").";
  return f;
}

std::vector<Finding> find(const Context& c, const Setting& s, std::size_t i) {
  const double hand_m = s.limits[0], foot_m = s.limits[1];
  std::vector<Finding> findings;
  const StationEntry& station = c.stations[i];
  if (station.station->role != layout::Role::Operator || !station.on_floor) return findings;
  const std::vector<std::size_t>& stops = c.candidates(station.machine);
  if (!reached(c, i, stops, hand_m, foot_m)) findings.push_back(about(c, i, stops, hand_m, foot_m));
  return findings;
}

}  // namespace

const Rule& stopOutOfReach() {
  static const Rule rule{
      .id = "stop-out-of-reach",
      .severity = Severity::Fail,
      .limits = {{"hand", "m", floor::kHandReach_mm / 1000}, {"foot", "m", floor::kFootReach_mm / 1000}},
      .basis = {BasisKind::Published,
                "WAC 296-806-20008 (Washington State); 29 CFR 1910.213(b)(1), as quoted; hand reach: "
                "Pheasant, Bodyspace (1996), "
                "as tabulated; foot reach: common practice"},
      .finds = "an operator station with no stop of its machine at hand",
      .meaning =
          "The operator must be able to stop the machine without leaving the place of work and without "
          "reaching into a "
          "hazard. At hand is a stop within the reach in a straight line, with no wall and nothing high "
          "between (its own machine only for who reaches from behind), and for "
          "hand devices no hazard outline on the way. A trigger is at hand for whoever holds it. A station "
          "off the "
          "floor is a drawing fault and is not judged here.",
      .mend =
          "Fit a stop within reach of the operator's place, move the one there is, or take away what stands "
          "between.",
      .find = {{Each::Station, find}}};
  return rule;
}

}  // namespace stopwalk::audit
