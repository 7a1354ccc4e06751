#include "core/audit/context.h"
#include "core/audit/measured_line.h"
#include "core/audit/wording.h"

namespace stopwalk::audit {
namespace {

void add(std::vector<Finding>& findings, const Context& c, std::size_t station, const Way& way,
         const std::string& to, const std::string& id, double limit) {
  if (way.status != Status::Narrow || !under(way.clear_width_m, limit)) return;
  Finding f = c.aboutStation(station);
  f.which = id;
  f.measured = way.clear_width_m;
  f.lines.push_back(walkLine(way.path, way.walk_m));
  f.limit = limit;
  f.unit = "m";
  f.text = c.stationName(station) + ": the only way to " + to + " has a clear width of " +
           c.length(way.clear_width_m, limit) + "; the rule asks for " + c.limit(limit, way.clear_width_m) +
           ".";
  findings.push_back(std::move(f));
}

std::vector<Finding> find(const Context& c, const Setting& s, std::size_t i) {
  std::vector<Finding> findings;
  const Way &stop = c.stop_ways[i], &phone = c.phone_ways[i];
  if (stop.found())
    add(findings, c, i, stop, c.deviceName(*stop.index, c.stations[i].machine), c.devices[*stop.index].id,
        s.limit());
  if (phone.found())
    add(findings, c, i, phone, c.phoneName(*phone.index), c.layout.phones[*phone.index].id, s.limit());
  return findings;
}

}  // namespace

const Rule& narrowPassage() {
  static const Rule rule{
      .id = "narrow-passage",
      .severity = Severity::Warn,
      .limits = {{"limit", "m", 2 * floor::kMeasuringClearance_mm / 1000,
                  2 * floor::kMeasuringClearance_mm / 1000}},
      .basis = {BasisKind::Published, "clearance of 1 ft on either side: NFPA 101, 7.6.1, as quoted"},
      .finds = "a way to the nearest stop or phone that is open only at less than the measuring clearance",
      .meaning =
          "The clear width is that of the narrowest place of the widest way, to two millimetres. A person "
          "passes, but "
          "not at a run, and not with somebody else.",
      .mend = "Move one of the two things that make the way narrow, until it is as wide as the limit.",
      .find = {{Each::Station, find}},
      .several = true};
  return rule;
}

}  // namespace stopwalk::audit
