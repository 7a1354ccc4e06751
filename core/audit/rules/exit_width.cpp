#include <algorithm>
#include <iterator>

#include "core/audit/context.h"
#include "core/audit/exits.h"
#include "core/audit/wording.h"

namespace stopwalk::audit {
namespace {

std::vector<std::size_t> indoors(const Context& c) {
  std::vector<std::size_t> found;
  for (std::size_t i = 0; i < c.stations.size(); ++i) {
    const StationEntry& s = c.stations[i];
    if (s.on_floor && !(s.room && c.layout.rooms[*s.room].outdoors)) found.push_back(i);
  }
  return found;
}

bool leadsTo(const Context& c, std::size_t station, double clearance_mm,
             const std::vector<std::int32_t>& parts) {
  if (parts.empty()) return false;
  const auto own = c.walks.parts(Place{{c.stations[station].at}, {}}, clearance_mm);
  return std::ranges::find_first_of(own, parts) != own.end();
}

std::vector<Finding> find(const Context& c, const Setting& setting) {
  const double width_mm = setting.limit() * 1000;
  bool any_wide = false;
  std::vector<std::int32_t> way_out;
  for (const Exit& e : exitsOf(c)) {
    if (under(c.layout.doors[e.door].width, width_mm)) continue;
    any_wide = true;
    std::ranges::copy(partsBefore(c, e, width_mm), std::back_inserter(way_out));
  }

  std::vector<Finding> findings;
  for (const std::size_t station : indoors(c)) {
    if (leadsTo(c, station, width_mm / 2, way_out)) continue;
    Finding f = c.aboutStation(station);
    f.limit = setting.limit();
    f.unit = "m";
    f.text =
        c.stationName(station) + ": " +
        (!any_wide ? "the layout has no way out of the building" : "there is no way out of the building") +
        " with a clear width of " + c.length(setting.limit()) + " all along; the rule asks for one.";
    findings.push_back(std::move(f));
  }
  return findings;
}

}  // namespace

const Rule& exitWidth() {
  static const Rule rule{.id = "exit-width",
                         .severity = Severity::Warn,
                         .limits = {{"limit", "m", 0.711}},
                         .basis = {BasisKind::Published, "29 CFR 1910.36(g)(2)"},
                         .finds = "a station without a way out of the building of this clear width",
                         .meaning =
                             "Out is a door to outside or to an outdoor room, that is not shut at the hours "
                             "audited and is itself as wide; it may be "
                             "another room's. A station outdoors is out.",
                         .mend = "Clear the way to an exit door, widen it, or move what stands in it.",
                         .find = find};
  return rule;
}

}  // namespace stopwalk::audit
