#include "core/audit/context.h"
#include "core/audit/measured_line.h"
#include "core/audit/wording.h"

namespace stopwalk::audit {
namespace {

// Seen is no distance: it has no length.
MeasuredLine sightLine(const Context& c, std::size_t station, std::size_t device) {
  MeasuredLine line = reachLine(c, station, device);
  line.length_m.reset();
  return line;
}

std::vector<Finding> find(const Context& c, const Setting&, std::size_t i) {
  std::vector<Finding> findings;
  const Way& way = c.stop_ways[i];
  if (!way.found() || c.devices[*way.index].kind->held) return findings;
  if (c.inSight(i, *way.index)) return findings;
  Finding f = c.aboutStation(i);
  f.which = c.devices[*way.index].id;
  f.text = c.stationName(i) + ": " + c.deviceName(*way.index, c.stations[i].machine) +
           " is the nearest stop, but a wall or something as high as the eye hides it; post a sign that "
           "can be seen from here.";
  f.lines.push_back(sightLine(c, i, *way.index));
  findings.push_back(std::move(f));
  return findings;
}

}  // namespace

const Rule& hiddenStop() {
  static const Rule rule{
      .id = "hidden-stop",
      .severity = Severity::Note,
      .limits = {},
      .basis = {BasisKind::Published, "NFPA 79 (2021), definition of readily accessible, as quoted"},
      .finds = "a nearest stop that is not in line of sight from its station",
      .meaning =
          "Walls hide, and so do solids higher than 1.5 m or of unknown height, except the machine that "
          "carries the stop. A "
          "trigger is in the hand.",
      .mend =
          "Move what hides the stop, hang the stop in sight, or put up a sign that can be seen from the "
          "station.",
      .find = {{Each::Station, find}},
      .names_which = true};
  return rule;
}

}  // namespace stopwalk::audit
