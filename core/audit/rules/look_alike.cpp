#include <algorithm>

#include "core/audit/context.h"
#include "core/audit/measured_line.h"
#include "core/audit/wording.h"

namespace stopwalk::audit {
namespace {

constexpr double kReach_m =
    floor::kHandReach_mm / 1000;  // an actuator is no farther than this from where its user stands

struct Near {
  std::size_t device = 0;
  double straight_m = 0;
};

// What looks like a stop of this station's machine and is not, nearest first in a straight line, up to
// `radius_m`.
std::vector<Near> lookAlikes(const Context& c, std::size_t station, double radius_m) {
  std::vector<Near> found;
  const StationEntry& s = c.stations[station];
  for (const std::size_t d : c.devicesNear(s.at, radius_m * 1000)) {
    if (!c.devices[d].kind->looks_like_stop || c.devices[d].kind->held || c.relation.stops(d, s.machine))
      continue;
    if (const double m = c.straight_m(station, d); m <= radius_m) found.push_back({d, m});
  }
  std::ranges::stable_sort(found, {}, &Near::straight_m);
  return found;
}

// The nearest to walk to, if that is nearer than the machine's own stop.
Way nearerThanOwn(const Context& c, std::size_t station, const std::vector<Near>& near, double own_m) {
  constexpr std::size_t kAtOnce = 16;
  Way best;
  double least = own_m;
  for (std::size_t i = 0; i < near.size() && near[i].straight_m - kReach_m < least; i += kAtOnce) {
    std::vector<std::size_t> some;
    for (std::size_t k = i; k < std::min(i + kAtOnce, near.size()); ++k) some.push_back(near[k].device);
    std::ranges::sort(some);
    Way way = c.nearestOf(station, some, least);
    if (!way.found() || !under(way.walk_m, least)) continue;
    least = way.walk_m;
    best = std::move(way);
  }
  return best;
}

std::vector<Finding> find(const Context& c, const Setting&, std::size_t i) {
  std::vector<Finding> findings;
  if (!c.stations[i].on_floor) return findings;
  const Way& own = c.stop_ways[i];
  const double own_m = own.found() ? own.walk_m : 0;
  const std::vector<Near> near = lookAlikes(c, i, own_m + kReach_m);
  std::vector<std::string> at_hand, ids;
  std::optional<double> least;
  Finding f = c.aboutStation(i);
  for (const Near& n : near) {
    if (n.straight_m > kReach_m || !c.atHand_m(i, n.device)) continue;
    f.lines.push_back(reachLine(c, i, n.device));
    if (!least) least = n.straight_m;
    ids.push_back(c.devices[n.device].id);
    at_hand.push_back(c.deviceName(n.device) + " (" + c.length(n.straight_m) + ")");
  }
  f.unit = "m";
  if (least) {
    f.which = joined(ids);
    f.measured = least;
    f.text = c.stationName(i) + ": at hand is " + listed(at_hand) +
             ", which looks like a stop and does not stop this machine";
  } else if (const Way other = own_m > 0 ? nearerThanOwn(c, i, near, own_m) : Way{}; other.found()) {
    f.which = c.devices[*other.index].id;
    f.measured = other.walk_m;
    f.lines.push_back(lineOf(c, i, other));
    f.limit = own_m;
    f.text = c.stationName(i) + ": " + c.deviceName(*other.index) +
             " looks like a stop, does not stop this machine, and is nearer (" +
             c.length(other.walk_m, own_m) + " to walk) than " +
             c.deviceName(*own.index, c.stations[i].machine) + " (" + c.length(own_m, other.walk_m) + ")";
  } else {
    return findings;
  }
  f.text += "; make clear on the device what it stops, or let it stop this machine too.";
  findings.push_back(std::move(f));
  return findings;
}

}  // namespace

const Rule& lookAlike() {
  static const Rule rule{.id = "look-alike",
                         .severity = Severity::Warn,
                         .limits = {},
                         .basis = {BasisKind::CommonPractice, ""},
                         .finds =
                             "a device at hand, or nearer than the machine's own stop, that looks like a "
                             "stop and does not stop this machine",
                         .meaning =
                             "In a fright a person strikes the first thing that looks like a stop. One "
                             "finding for each station: all that are at "
                             "hand, else the nearest to walk to, if the machine's own stop is farther.",
                         .mend =
                             "Mark the device with what it stops, let it stop this machine too, or bring the "
                             "machine's own stop nearer.",
                         .find = {{Each::Station, find}},
                         .names_which = true};
  return rule;
}

}  // namespace stopwalk::audit
