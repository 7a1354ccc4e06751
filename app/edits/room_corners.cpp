#include "app/edits/room_corners.h"

#include <QCoreApplication>
#include <algorithm>
#include <functional>
#include <optional>
#include <vector>

#include "app/edits/move_things.h"
#include "app/edits/step_names.h"
#include "core/floor/doorway.h"
#include "core/geometry/polygon.h"
#include "core/geometry/segment.h"

namespace stopwalk::edits {
namespace {

using geometry::Point;
using geometry::Polygon;
using geometry::Segment;
using layout::Layout;

// What becomes of a wall; `a` is the end from which its doors are measured.
struct WallChange {
  Segment before;
  Segment after;
};

// The wall of the outline that a door is on, if any.
std::optional<std::size_t> wallOf(const Polygon& outline, Point door) {
  std::optional<std::size_t> nearest;
  double least = floor::kDoorOnWall_mm;
  for (std::size_t i = 0; i < outline.size(); ++i) {
    const double d = geometry::distance(geometry::edgeOf(outline, i), door);
    if (d < least || (d == least && !nearest)) least = d, nearest = i;
  }
  return nearest;
}

double alongWithin(double along, double wall, double width) {
  if (width > wall) return wall / 2;
  return std::clamp(along, width / 2, wall - width / 2);
}

void followWall(layout::Door& door, const WallChange& change) {
  const double before = geometry::distance(change.before.a, change.before.b);
  const double after = geometry::distance(change.after.a, change.after.b);
  if (before == 0 || after == 0) return;
  Point in = geometry::frameOf(change.before).in(door.at);
  // One that ran past the end before is not pulled in.
  const bool fitted = in.x >= door.width / 2 && in.x <= before - door.width / 2;
  if (fitted) in.x = alongWithin(in.x, after, door.width);
  door.at = rounded(geometry::frameOf(change.after).out(in));
}

// The room's walls that change, as `changeOf` gives them for the wall and the door on it.
using ChangeOf = std::function<std::optional<WallChange>(std::size_t wall, Point door)>;

void followWalls(Layout& layout, const layout::Room& room, const ChangeOf& changeOf) {
  for (layout::Door& door : layout.doors) {
    if (door.first != room.id) continue;
    const auto wall = wallOf(room.outline, door.at);
    const auto change = wall ? changeOf(*wall, door.at) : std::nullopt;
    if (change) followWall(door, *change);
  }
}

const layout::Room* roomOf(const Layout& layout, const std::string& id, std::size_t corner) {
  const auto thing = findThing(layout, id);
  if (!thing || thing->kind != ThingKind::Room) return nullptr;
  const layout::Room& room = layout.rooms[thing->index];
  return corner < room.outline.size() ? &room : nullptr;
}

Edit reshaped(const Layout& layout, const layout::Room& room, const Polygon& outline,
              const ChangeOf& changeOf, const char* name, const QString& key = {}) {
  Layout after = layout;
  const auto index = static_cast<std::size_t>(&room - layout.rooms.data());
  after.rooms[index].outline = outline;
  followWalls(after, room, changeOf);
  const QString whose = called(layout, Thing{ThingKind::Room, index});
  return step(layout, QCoreApplication::translate("edits", name).arg(whose), std::move(after), key);
}

Segment turnedRound(Segment s) {
  return {s.b, s.a};
}

QString keyOf(const char* what, const std::string& room, std::size_t index) {
  return QString("%1 %2 of %3").arg(what).arg(index).arg(text(room));
}

// Of walls whose corners move and stay as many: doors are measured from an end that stays, if there is one.
ChangeOf betweenOutlines(const Polygon& before, const Polygon& after) {
  return [&before, &after](std::size_t wall, Point) -> std::optional<WallChange> {
    const WallChange change{geometry::edgeOf(before, wall), geometry::edgeOf(after, wall)};
    if (change.before == change.after) return std::nullopt;
    if (change.before.b == change.after.b)
      return WallChange{turnedRound(change.before), turnedRound(change.after)};
    return change;
  };
}

}  // namespace

Edit moveCorner(const Layout& layout, const std::string& room_id, std::size_t corner, Point to) {
  const layout::Room* room = roomOf(layout, room_id, corner);
  if (!room) return noStep(layout);
  Polygon outline = room->outline;
  outline[corner] = rounded(to);
  return reshaped(layout, *room, outline, betweenOutlines(room->outline, outline),
                  QT_TRANSLATE_NOOP("edits", "Move a corner of %1"), keyOf("corner", room_id, corner));
}

Edit moveWall(const Layout& layout, const std::string& room_id, std::size_t wall, Point by) {
  const layout::Room* room = roomOf(layout, room_id, wall);
  if (!room) return noStep(layout);
  Polygon outline = room->outline;
  for (const std::size_t corner : {wall, (wall + 1) % outline.size()})
    outline[corner] = rounded(outline[corner] + by);
  return reshaped(layout, *room, outline, betweenOutlines(room->outline, outline),
                  QT_TRANSLATE_NOOP("edits", "Move a wall of %1"), keyOf("wall", room_id, wall));
}

Edit addCorner(const Layout& layout, const std::string& room_id, std::size_t wall, Point at) {
  const layout::Room* room = roomOf(layout, room_id, wall);
  if (!room) return noStep(layout);
  at = rounded(at);
  Polygon outline = room->outline;
  outline.insert(outline.begin() + static_cast<std::ptrdiff_t>(wall) + 1, at);
  const Segment whole = geometry::edgeOf(room->outline, wall);
  const double parted = geometry::nearestParameter(whole, at);
  const ChangeOf change = [&](std::size_t i, Point door) -> std::optional<WallChange> {
    if (i != wall || geometry::distance(whole, at) <= geometry::kOnOutline_mm) return std::nullopt;
    const bool in_first = geometry::nearestParameter(whole, door) <= parted;
    return in_first ? WallChange{whole, {whole.a, at}} : WallChange{turnedRound(whole), {whole.b, at}};
  };
  return reshaped(layout, *room, outline, change, QT_TRANSLATE_NOOP("edits", "Add a corner to %1"));
}

Edit removeCorner(const Layout& layout, const std::string& room_id, std::size_t corner) {
  const layout::Room* room = roomOf(layout, room_id, corner);
  if (!room || room->outline.size() <= 3) return noStep(layout);
  const Polygon& before = room->outline;
  const std::size_t previous = (corner + before.size() - 1) % before.size();
  const Segment into = geometry::edgeOf(before, previous), out = geometry::edgeOf(before, corner);
  Polygon outline = before;
  outline.erase(outline.begin() + static_cast<std::ptrdiff_t>(corner));
  const ChangeOf change = [&](std::size_t i, Point) -> std::optional<WallChange> {
    if (i == previous) return WallChange{into, {into.a, out.b}};
    if (i == corner) return WallChange{turnedRound(out), {out.b, into.a}};
    return std::nullopt;
  };
  return reshaped(layout, *room, outline, change, QT_TRANSLATE_NOOP("edits", "Remove a corner of %1"));
}

}  // namespace stopwalk::edits
