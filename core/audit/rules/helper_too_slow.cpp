#include <algorithm>
#include <limits>

#include "core/audit/context.h"
#include "core/audit/measured_line.h"
#include "core/audit/wording.h"
#include "core/layout/which.h"

namespace stopwalk::audit {
namespace {

struct Helper {
  std::size_t station = 0;
  Way way;
  double seconds = std::numeric_limits<double>::infinity();
};

// The first operator is the one caught; on a machine without an operator, whoever is named first.
std::optional<std::size_t> caughtAt(const Context& c, std::size_t first, std::size_t end) {
  for (std::size_t i = first; i < end; ++i)
    if (c.stations[i].station->role == layout::Role::Operator) return i;
  return first < end ? std::optional<std::size_t>(first) : std::nullopt;
}

double restAfter(const Context& c, std::size_t machine, const Way& way) {
  return secondsFor(way.walk_m, c.relation.runDown(*way.index, machine));
}

// Whether somebody is at this station while another works at that one.
bool isAnother(const Context& c, std::size_t station, std::size_t caught) {
  return station != caught && !takeTurns(c.stations[station], c.stations[caught]);
}

void keepBetter(Helper& best, std::size_t station, const Way& way, double seconds) {
  if (seconds < best.seconds || (seconds == best.seconds && station < best.station))
    best = {station, way, seconds};
}

// When many near have no way, most likely nobody has: one pass over the floor for everyone.
void askEveryone(Helper& best, const Context& c, std::size_t machine, std::size_t caught,
                 const std::vector<std::size_t>& stops) {
  std::vector<std::size_t> others;
  for (std::size_t s = 0; s < c.stations.size(); ++s)
    if (isAnother(c, s, caught) && c.stations[s].on_floor) others.push_back(s);
  std::vector<Way> ways = c.nearestOf(others, stops);
  for (std::size_t i = 0; i < others.size(); ++i)
    if (ways[i].found()) keepBetter(best, others[i], ways[i], restAfter(c, machine, ways[i]));
}

// The other person who brings the machine to rest first. From each station the nearest stop is the one used;
// a station is asked only while a straight walk from it could still win.
std::optional<Helper> quickest(const Context& c, std::size_t machine, std::size_t caught,
                               const std::vector<std::size_t>& stops) {
  constexpr int kPatience = 32;
  constexpr double kNoFurther = -1;
  Helper best;
  double least_run_down = std::numeric_limits<double>::infinity();
  for (const std::size_t d : stops)
    least_run_down = std::min(least_run_down, c.relation.runDown(d, machine).value_or(0));
  const auto worth_m = [&] { return (best.seconds - secondsFor(0, least_run_down)) * kSpeed_m_s; };
  int in_vain = 0;
  const auto ask = [&](std::size_t s) {
    if (!isAnother(c, s, caught) || !c.stations[s].on_floor) return;
    Way way = c.nearestOf(s, stops, worth_m());
    if (way.found())
      keepBetter(best, s, way, restAfter(c, machine, way));
    else if (!best.way.found())
      ++in_vain;
  };
  // Who holds a trigger of the machine has it at hand wherever it is drawn.
  for (auto [s, end] = c.stationsOf(machine); s < end; ++s) ask(s);
  for (const std::size_t d : stops) {
    const floor::PlacedDevice& p = c.placed[d].placed;
    const double slack_mm = floor::kHandReach_mm + p.length.value_or(0) / 2;
    c.stationsNearestFirst(p.at, [&](std::size_t s) {
      if (c.stations[s].machine != machine) ask(s);
      return in_vain > kPatience ? kNoFurther : worth_m() * 1000 + slack_mm;
    });
    if (in_vain > kPatience) break;
  }
  if (in_vain > kPatience) askEveryone(best, c, machine, caught, stops);
  return best.way.found() ? std::optional<Helper>(std::move(best)) : std::nullopt;
}

bool isAnyoneElse(const Context& c, std::size_t caught) {
  for (std::size_t s = 0; s < c.stations.size(); ++s)
    if (isAnother(c, s, caught)) return true;
  return false;
}

std::string told(const Context& c, std::size_t machine, const Helper& helper, double limit) {
  const auto run_down = c.relation.runDown(*helper.way.index, machine);
  const std::string walk =
      helper.way.status == Status::AtHand ? "at hand" : c.length(helper.way.walk_m) + " to walk";
  return "the nearest other person (" + c.stationName(helper.station) + ") uses " +
         c.deviceName(*helper.way.index, machine) + ", " + walk + ", and the machine is at rest after " +
         secondsText(helper.seconds, limit) + (run_down ? "" : ", not counting a run-down that is unknown");
}

std::vector<Finding> find(const Context& c, const Setting& setting, std::size_t machine) {
  const auto [first, end] = c.stationsOf(machine);
  const auto caught = caughtAt(c, first, end);
  const std::vector<std::size_t>& stops = c.candidates(machine);
  if (!caught || stops.empty() || c.layout.machines[machine].hand_held || !isAnyoneElse(c, *caught))
    return {};
  const auto helper = quickest(c, machine, *caught, stops);
  if (helper && !over(helper->seconds, setting.limit())) return {};
  Finding f = c.aboutMachine(machine);
  if (helper) {
    f.measured = helper->seconds;
    f.lines.push_back(lineOf(c, helper->station, helper->way));
  } else {
    f.which = layout::whichWord("nobody");
  }
  f.limit = setting.limit();
  f.unit = "s";
  f.text = c.name(c.layout.machines[machine]) + ": if the operator is caught, " +
           (helper ? told(c, machine, *helper, setting.limit())
                   : "nobody at another station can get to anything that stops the machine") +
           "; the rule allows " + limitSecondsText(setting.limit()) + ".";
  return {std::move(f)};
}

}  // namespace

const Rule& helperTooSlow() {
  static const Rule rule{
      .id = "helper-too-slow",
      .severity = Severity::Warn,
      .limits = {{"limit", "s", 15}},
      .basis = {BasisKind::HouseRule,
                "the case: an OSHA letter of 2011-08-15 after an accident at a university's lathe"},
      .finds = "a machine whose nearest other station is further, in seconds to rest, than the limit",
      .meaning =
          "If the operator is caught, somebody else must stop the machine. From every other station, also a "
          "helper's at the "
          "same machine, the time is reaction, walk to the nearest stop of this machine, and its run-down; "
          "the least counts. "
          "A setter and the others of the same machine take turns, so neither is the other's helper. "
          "Hand-held machines, which stop when let go, are exempt; so is a machine beside whose operator the "
          "layout has nobody.",
      .mend =
          "Give someone a place of work nearer to this machine, add a stop between, or have the run-down "
          "shortened by a brake.",
      .find = {{Each::Machine, find}}};
  return rule;
}

}  // namespace stopwalk::audit
