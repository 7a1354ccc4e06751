#include <utility>

#include "core/audit/context.h"
#include "core/audit/exits.h"
#include "core/audit/measured_line.h"
#include "core/audit/wording.h"

namespace stopwalk::audit {
namespace {

// Cut-offs of the room that one finds in it. A machine's own stop is none, though it may stop all there is in
// the room.
std::vector<std::size_t> cutOffsInside(const Context& c, std::size_t room) {
  std::vector<std::size_t> found = c.cutOffs(room);
  std::erase_if(found, [&](std::size_t d) {
    return c.devices[d].machine && !c.relation.stopsRooms(d) && c.relation.machinesIn(room).size() == 1;
  });
  return found;
}

// Of two lines; where they cross, the point in which they do.
std::pair<Point, Point> nearestPoints(const geometry::Segment& a, const geometry::Segment& b) {
  if (geometry::crossProperly(a, b)) {
    const Point p = geometry::at(a, cross(b.a - a.a, b.b - b.a) / cross(a.b - a.a, b.b - b.a));
    return {p, p};
  }
  std::pair<Point, Point> best{a.a, geometry::nearestPoint(b, a.a)};
  const auto take = [&](Point on_a, Point on_b) {
    if (geometry::distance(on_a, on_b) < geometry::distance(best.first, best.second)) best = {on_a, on_b};
  };
  take(a.b, geometry::nearestPoint(b, a.b));
  for (const Point end : {b.a, b.b}) take(geometry::nearestPoint(a, end), end);
  return best;
}

// From the opening to the nearest of the cut-offs whose user stands in the room (of a cord: to its nearest
// point); none: no user does. What is blocked nobody uses on the way out.
std::optional<MeasuredLine> toNearest(const Context& c, std::size_t room, const Exit& exit,
                                      const std::vector<std::size_t>& cut_offs) {
  std::optional<MeasuredLine> nearest;
  for (const std::size_t d : cut_offs) {
    if (c.placed[d].standing.room != room || c.placed[d].standing.place.empty()) continue;
    const auto [from, at] = nearestPoints(exit.opening, c.placed[d].placed.line());
    const double away_m = geometry::distance(from, at) / 1000;
    if (!nearest || away_m < *nearest->length_m) nearest = straightLine(from, at, away_m);
  }
  return nearest;
}

std::vector<Finding> find(const Context& c, const Setting& s, std::size_t r) {
  std::vector<Finding> findings;
  const std::vector<Exit>& exits = c.exits();
  const std::vector<std::size_t> cut_offs = cutOffsInside(c, r);
  if (cut_offs.empty()) return findings;
  std::vector<std::string> far;
  Finding f = c.aboutRoom(r);
  for (const Exit& exit : exits) {
    if (exit.room != r) continue;
    const auto nearest = toNearest(c, r, exit, cut_offs);
    if (nearest && !over(*nearest->length_m, s.limit())) continue;
    far.push_back(c.layout.doors[exit.door].id);
    f.lines.push_back(nearest ? *nearest : placeLine(exit.opening));
  }
  if (far.empty()) return findings;
  f.which = joined(far);
  f.limit = s.limit();
  f.unit = "m";
  f.text = c.roomName(r) + ": the room has a cut-off, but none within " + c.limit(s.limit()) +
           " of the exit door " + listed(far) +
           "; whoever leaves should be able to cut the power on the way.";
  findings.push_back(std::move(f));
  return findings;
}

}  // namespace

const Rule& cutOffAtExit() {
  static const Rule rule{
      .id = "cut-off-at-exit",
      .severity = Severity::Note,
      .limits = {{"limit", "m", 1.5}},
      .basis = {BasisKind::HouseRule,
                "the distance is the house's, like the 5 ft of fire alarm boxes from an exit "
                "(IFC 907.4.2, as quoted); that a cut-off be at the exit doors: DGUV, Sichere "
                "Schule, Technik, Elektrische Installation (archived), on DIN VDE 0100-723"},
      .finds = "a room with a cut-off, but none near one of its exit doors",
      .meaning =
          "Exit doors lead out of the building or to an outdoor room, and are not shut at "
          "the hours audited. From the "
          "opening to a cut-off whose user stands in the room, in a straight line; of a cord its nearest "
          "point counts, and one that is blocked does not. A room "
          "without such a door is not judged.",
      .mend =
          "Add a cut-off beside one of the room's exit doors, or hang the one there is nearer to the door.",
      .find = {{Each::Room, find}},
      .names_which = true};
  return rule;
}

}  // namespace stopwalk::audit
