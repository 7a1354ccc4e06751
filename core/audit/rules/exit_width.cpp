#include <algorithm>

#include "core/audit/context.h"
#include "core/audit/exits.h"
#include "core/audit/measured_line.h"
#include "core/audit/wording.h"

namespace stopwalk::audit {
namespace {

// The way out that is nearest as the crow flies: how wide it is, where it is not as wide as that.
std::optional<MeasuredLine> nearestExit(const Context& c, Point from, double width_m) {
  const auto away = [&](const Exit& exit) { return geometry::distance(exit.opening, from); };
  const auto nearest = std::ranges::min_element(c.exits(), {}, away);
  if (nearest == c.exits().end()) return std::nullopt;
  const double is_m = c.layout.doors[nearest->door].width / 1000;
  return under(is_m, width_m) ? widthLine(nearest->opening, is_m) : placeLine(nearest->opening);
}

std::vector<Finding> find(const Context& c, const Setting& setting, std::size_t station) {
  const StationEntry& entry = c.stations[station];
  if (!entry.on_floor || (entry.room && c.layout.rooms[*entry.room].outdoors)) return {};
  const WaysOut& out = c.waysOut(setting.limit() * 1000);
  if (out.leads[station]) return {};
  Finding f = c.aboutStation(station);
  f.limit = setting.limit();
  f.unit = "m";
  f.text =
      c.stationName(station) + ": " +
      (!out.any_wide ? "the layout has no way out of the building" : "there is no way out of the building") +
      " with a clear width of " + c.limit(setting.limit()) + " all along; the rule asks for one.";
  if (auto exit = nearestExit(c, entry.at, setting.limit())) f.lines.push_back(std::move(*exit));
  return {std::move(f)};
}

}  // namespace

const Rule& exitWidth() {
  static const Rule rule{
      .id = "exit-width",
      .severity = Severity::Warn,
      .limits = {{"limit", "m", 0.711}},
      .basis = {BasisKind::Published, "29 CFR 1910.36(g)(2)"},
      .finds = "a station without a way out of the building of this clear width",
      .meaning =
          "Out is a door to outside or to an outdoor room, that is not shut at the hours "
          "audited and is itself as wide; it may be "
          "another room's. What stands in the doorway to an outdoor room, or out there "
          "before the door, is in the way. Before a door to outside, of which nothing more is drawn, the way "
          "has to "
          "be straight and clear for as far as the limit; before one to an outdoor room a slanting "
          "way serves, as it is followed through the door. An outdoor room less deep than the "
          "limit behind its door is no place to get out to: draw it as deep as it is, or let the "
          "door lead to outside. A station outdoors is out.",
      .mend = "Clear the way to an exit door, widen it, or move what stands in it.",
      .find = {{Each::Station, find}}};
  return rule;
}

}  // namespace stopwalk::audit
