#include "core/audit/context.h"
#include "core/audit/measured_line.h"
#include "core/audit/wording.h"
#include "core/layout/which.h"

namespace stopwalk::audit {
namespace {

Finding lost(const Context& c, std::size_t station, std::string which, const std::string& what,
             std::optional<MeasuredLine> where) {
  Finding f = c.aboutStation(station);
  f.which = std::move(which);
  f.text = c.stationName(station) + ": " + what + "; the rule asks for a way that a person can walk.";
  if (where) f.lines.push_back(std::move(*where));
  return f;
}

std::vector<Finding> find(const Context& c, const Setting&, std::size_t i) {
  std::vector<Finding> findings;
  if (c.stop_ways[i].status == Status::Unreachable)
    findings.push_back(lost(c, i, layout::whichWord("stop"),
                            "the machine has a stop, but there is no way to it from here",
                            nearestStop(c, i, c.candidates(c.stations[i].machine))));
  if (c.phone_ways[i].status == Status::Unreachable)
    findings.push_back(lost(c, i, layout::whichWord("phone"), "there is a phone, but no way to it from here",
                            nearestPhone(c, i)));
  return findings;
}

}  // namespace

const Rule& unreachable() {
  static const Rule rule{
      .id = "unreachable",
      .severity = Severity::Fail,
      .limits = {},
      .basis = {BasisKind::Published, "NFPA 79 (2021), definition of readily accessible, as quoted"},
      .finds = "a station from which no stop, or no phone, can be walked to, though there is one",
      .meaning =
          "No way is left even for a body of 560 mm: shut doors, gaps too narrow, or every device blocked. "
          "Stop and phone "
          "are two findings.",
      .mend = "Open a way: a door, a gap of at least the body's width, or the floor before the device.",
      .find = {{Each::Station, find}},
      .several = true};
  return rule;
}

}  // namespace stopwalk::audit
