#include "core/floor/doorway.h"

#include <algorithm>
#include <map>
#include <set>

#include "core/floor/fault_text.h"
#include "core/floor/walks.h"
#include "core/geometry/indexed_polygon.h"
#include "core/layout/which.h"

namespace stopwalk::floor {

namespace {

using namespace geometry;

// Part of an outline before or behind the door, in the frame of the door: x along the wall, y through it to
// the second room.
struct Piece {
  WallEdge edge;
  Segment plan;             // the whole edge
  Segment local;            // the whole edge, a.x < b.x
  bool turned = false;      // local runs against the edge
  double from = 0, to = 0;  // of x, within the door

  double height(double x) const {
    return local.a.y + (x - local.a.x) / (local.b.x - local.a.x) * (local.b.y - local.a.y);
  }
  double parameter(double x) const {
    const double t = std::clamp((x - local.a.x) / (local.b.x - local.a.x), 0.0, 1.0);
    return turned ? 1 - t : t;
  }
  Point point(double x) const { return at(plan, parameter(x)); }
};

// Near and far wall of one part of the passage.
struct Part {
  double from = 0, to = 0;
  const Piece* near = nullptr;
  const Piece* far = nullptr;
};

std::optional<Piece> pieceOf(WallEdge edge, Segment plan, const Frame& frame, Stretch door) {
  Piece piece{edge, plan, {frame.in(plan.a), frame.in(plan.b)}, false, 0, 0};
  piece.turned = piece.local.a.x > piece.local.b.x;
  if (piece.turned) std::swap(piece.local.a, piece.local.b);
  piece.from = std::max(piece.local.a.x, door.from);
  piece.to = std::min(piece.local.b.x, door.to);
  if (piece.to - piece.from <= 0) return std::nullopt;
  return piece;
}

// What of the pieces is met first by someone who comes through the wall. Pieces do not cross one another.
class FirstMet {
 public:
  explicit FirstMet(const std::vector<Piece>& pieces) {
    for (const Piece& p : pieces) {
      events_.push_back({p.from, true, &p});
      events_.push_back({p.to, false, &p});
    }
    std::sort(events_.begin(), events_.end(), [](const Event& a, const Event& b) { return a.x < b.x; });
  }

  // Calls `met(from, to, piece)` from left to right; the piece is null where there is none.
  template <class Met>
  void sweep(Stretch door, Met&& met) {
    double reached = door.from;
    for (const Event& e : events_) {
      if (e.x > reached) {
        met(reached, e.x, active_.empty() ? nullptr : *active_.begin());
        reached = e.x;
      }
      if (e.begins) {
        where_.insert({e.piece, active_.insert(e.piece)});
      } else if (const auto found = where_.find(e.piece); found != where_.end()) {
        active_.erase(found->second);
        where_.erase(found);
      }
    }
    if (reached < door.to) met(reached, door.to, nullptr);
  }

 private:
  struct Event {
    double x;
    bool begins;
    const Piece* piece;
  };
  struct Lower {
    bool operator()(const Piece* a, const Piece* b) const {
      const double x = (std::max(a->from, b->from) + std::min(a->to, b->to)) / 2;
      return a->height(x) < b->height(x);
    }
  };
  std::vector<Event> events_;
  std::multiset<const Piece*, Lower> active_;
  std::map<const Piece*, std::multiset<const Piece*, Lower>::iterator> where_;
};

class Builder {
 public:
  Builder(const layout::Layout& layout, std::size_t door, std::size_t first, const RoomWalls& walls,
          const StraightWall& wall)
      : layout_(layout),
        door_index_(door),
        door_(layout.doors[door]),
        first_(first),
        walls_(walls),
        wall_(wall) {
    const Point along = unit(wall.chord.b - wall.chord.a);
    frame_ = {nearestPoint(wall.chord, door_.at), walls.isLeft(first) ? -along : along};
    // The middle is projected onto the line of the wall, also where that is past the wall's end.
    frame_.origin = frame_.out({frame_.in(door_.at).x, 0});
    const double a = frame_.in(wall.chord.a).x, b = frame_.in(wall.chord.b).x, half = door_.width / 2;
    past_ = std::max(std::min(a, b) + half, half - std::max(a, b));
    span_ = {std::max(-half, std::min(a, b)), std::min(half, std::max(a, b))};
    gatherNear();
  }

  // How far the door runs past an end of its wall; not positive: it does not.
  double past() const { return past_; }

  // What it takes up of the wall that carries it.
  std::vector<Opening> near() const {
    std::vector<Opening> openings;
    for (const Piece& p : near_) openings.push_back(opening(p, p.from, p.to));
    return openings;
  }

  DoorPlan through(std::size_t second) {
    gatherFar(second);
    if (!joinParts()) {
      return {{},
              name() + " does not meet room " + layout_.rooms[second].id + " over its whole width of " +
                  lengthOf(door_.width, layout_.unit) + " within " +
                  lengthOf(kThickestWall_mm, layout_.unit) + " of the wall; it is left shut.",
              layout::whichWord("does not meet the room"),
              {}};
    }
    if (const auto room = between(second)) {
      return {{},
              name() + " cannot lead straight to room " + layout_.rooms[second].id + ": room " +
                  layout_.rooms[*room].id + ", or a wall of it, lies between; it is left shut.",
              layout::whichWord("room between"),
              {}};
    }
    return {way(), "", "", {}};
  }

  // Nobody gets out where an indoor room begins less than a body's width behind the wall.
  DoorPlan toOutside() const {
    const double deep = 2 * kBodyHalfWidth_mm;
    const IndexedPolygon behind({frame_.out({span_.from, 0}), frame_.out({span_.to, 0}),
                                 frame_.out({span_.to, deep}), frame_.out({span_.from, deep})});
    std::optional<std::size_t> room;
    walls_.rooms().boxes().any(behind.box(), [&](std::size_t i) {
      if (!layout_.rooms[i].outdoors && (!room || i < *room) &&
          overlapDeeper(walls_.rooms()[i], behind, kDoorOnWall_mm))
        room = i;
      return false;
    });
    if (!room) return {};
    return {{},
            name() + " leads to `outside`, but room " + layout_.rooms[*room].id +
                " lies behind it; it is left shut.",
            layout::whichWord("room behind"),
            {}};
  }

 private:
  std::string name() const { return "Door " + door_.id + " at " + place(door_.at, layout_.unit); }

  // The corners of the strip in which the passage lies.
  Box strip() const {
    Box box;
    for (double x : {span_.from, span_.to})
      for (double y : {-2 * kRoomOverlap_mm, kThickestWall_mm + 1}) box.add(frame_.out({x, y}));
    return box;
  }

  void gatherNear() {
    const std::size_t corners = walls_.rooms()[first_].corners().size();
    for (std::size_t i = 0; i < wall_.edges; ++i) {
      const WallEdge edge{first_, (wall_.first + i) % corners};
      if (const auto p = pieceOf(edge, walls_.segment(edge), frame_, span_)) near_.push_back(*p);
    }
    std::sort(near_.begin(), near_.end(), [](const Piece& a, const Piece& b) { return a.from < b.from; });
  }

  // Walls of the second room that have it behind them.
  void gatherFar(std::size_t second) {
    for (const WallEdge& edge : walls_.in(strip())) {
      if (edge.room != second || isNear(edge)) continue;
      const auto p = pieceOf(edge, walls_.segment(edge), frame_, span_);
      // A step, along which the passage runs, is not met: it stands, whichever way rounding leans it.
      if (!p || p->local.b.x - p->local.a.x <= kTouch_mm || p->turned == walls_.isLeft(second)) continue;
      if (p->height((p->from + p->to) / 2) < -kRoomOverlap_mm - kTouch_mm) continue;
      far_.push_back(*p);
    }
  }

  bool isNear(const WallEdge& edge) const {
    return std::any_of(near_.begin(), near_.end(), [&](const Piece& p) { return p.edge == edge; });
  }

  struct Met {
    double from = 0, to = 0;
    const Piece* far = nullptr;
  };

  // The far walls from left to right; empty if a part of the width meets none.
  std::vector<Met> farWalls() const {
    std::vector<Met> met;
    double gap = 0;  // of no more than a touch, such as at a leaning step: the next wall takes it
    bool whole = true;
    FirstMet(far_).sweep(span_, [&](double from, double to, const Piece* far) {
      const double most = kThickestWall_mm + kTouch_mm;
      if (far != nullptr && far->height(from) <= most && far->height(to) <= most) {
        met.push_back({from - gap, to, far});
        gap = 0;
      } else {
        gap += to - from;
        whole = whole && gap <= kTouch_mm;
      }
    });
    if (!whole || met.empty()) return {};
    met.back().to += gap;
    return met;
  }

  bool joinParts() {
    auto near = near_.begin();
    for (const Met& met : farWalls()) {
      double from = met.from;
      while (from < met.to && near != near_.end()) {
        const double end = std::min(met.to, near->to);
        if (end > from) parts_.push_back({from, end, &*near, met.far});
        from = std::max(from, end);
        if (near->to > met.to) break;
        ++near;
      }
    }
    return !parts_.empty();
  }

  // A room that lies in the passage or has a wall in it.
  std::optional<std::size_t> between(std::size_t second) const {
    for (const WallEdge& edge : walls_.in(strip())) {
      const Segment s = walls_.segment(edge);
      const Segment local{frame_.in(s.a), frame_.in(s.b)};
      if (const auto inside = clippedByX(local, span_.from + kTouch_mm, span_.to - kTouch_mm))
        if (runsThrough(*inside)) return edge.room;
    }
    const Part& part = parts_.front();
    const double x = (part.from + part.to) / 2, low = part.near->height(x), high = part.far->height(x);
    if (high - low <= kRoomOverlap_mm + kTouch_mm) return std::nullopt;
    const Point middle = frame_.out({x, (low + high) / 2});
    std::optional<std::size_t> room;
    walls_.rooms().boxes().any(boxOf(middle), [&](std::size_t i) {
      if (i == first_ || i == second || walls_.rooms()[i].sideOf(middle, kTouch_mm) != Side::Inside)
        return false;
      room = i;
      return true;
    });
    return room;
  }

  // Whether the piece of a wall (left to right) runs inside the passage, not only along its walls or across
  // its corners.
  bool runsThrough(Segment s) const {
    auto part = std::partition_point(parts_.begin(), parts_.end(),
                                     [&](const Part& p) { return p.to < s.a.x - kTouch_mm; });
    if (s.b.x - s.a.x <= 2 * kTouch_mm) return runsAcross(s, part);
    for (; part != parts_.end() && part->from < s.b.x; ++part) {
      const double from = std::max(s.a.x, part->from), to = std::min(s.b.x, part->to);
      if (to <= from) continue;
      // Heights over both walls and under the far one are straight lines in x: positive together on some
      // stretch?
      Stretch open{0, 1};
      const auto where = [&](double x) { return s.a.y + (x - s.a.x) / (s.b.x - s.a.x) * (s.b.y - s.a.y); };
      const auto keepPositive = [&open](double at_from, double at_to) {
        if (at_from <= 0 && at_to <= 0) open.to = open.from;
        if (at_from <= 0 && at_to > 0) open.from = std::max(open.from, -at_from / (at_to - at_from));
        if (at_from > 0 && at_to <= 0) open.to = std::min(open.to, at_from / (at_from - at_to));
      };
      keepPositive(where(from) - part->near->height(from) - kTouch_mm,
                   where(to) - part->near->height(to) - kTouch_mm);
      keepPositive(part->far->height(from) - where(from) - kTouch_mm,
                   part->far->height(to) - where(to) - kTouch_mm);
      if ((open.to - open.from) * (to - from) > 0) return true;
    }
    return false;
  }

  template <class Iterator>
  bool runsAcross(Segment s, Iterator part) const {
    double low = -1e300, high = 1e300;
    for (; part != parts_.end() && part->from <= s.b.x + kTouch_mm; ++part) {
      const double x = std::clamp(s.a.x, part->from, part->to);
      low = std::max(low, part->near->height(x));
      high = std::min(high, part->far->height(x));
    }
    return std::max(std::min(s.a.y, s.b.y), low + kTouch_mm) <
           std::min(std::max(s.a.y, s.b.y), high - kTouch_mm);
  }

  Doorway way() const {
    Doorway way;
    for (const Part& part : parts_) {
      way.passages.push_back({door_index_,
                              {part.near->point(part.from), part.near->point(part.to)},
                              {part.far->point(part.from), part.far->point(part.to)}});
      for (const Piece* p : {part.near, part.far}) way.openings.push_back(opening(*p, part.from, part.to));
    }
    const Passage &first = way.passages.front(), &last = way.passages.back();
    for (const Jamb& j : {Jamb{{first.first.a, first.second.a}, -frame_.along},
                          Jamb{{last.first.b, last.second.b}, frame_.along}})
      if (distance(j.wall.a, j.wall.b) > kOnOutline_mm) way.jambs.push_back(j);
    return way;
  }

  static Opening opening(const Piece& p, double from, double to) {
    if (p.turned) std::swap(from, to);
    return {p.edge, p.point(from), p.point(to), p.parameter(from), p.parameter(to)};
  }

  const layout::Layout& layout_;
  std::size_t door_index_;
  const layout::Door& door_;
  std::size_t first_;
  const RoomWalls& walls_;
  const StraightWall& wall_;
  Frame frame_;
  double past_ = 0;
  Stretch span_;
  std::vector<Piece> near_, far_;
  std::vector<Part> parts_;
};

}  // namespace

DoorPlan planDoor(const layout::Layout& layout, std::size_t door, std::optional<std::size_t> first,
                  std::optional<std::size_t> second, const RoomWalls& walls) {
  const layout::Door& d = layout.doors[door];
  const std::string name = "Door " + d.id + " at " + place(d.at, layout.unit);
  if (!first) return {};
  const auto candidates = walls.near(*first, d.at, kDoorOnWall_mm + kTouch_mm);
  if (candidates.empty()) {
    const double away = walls.rooms()[*first].distanceToOutline(d.at);
    return {std::nullopt,
            name + " is not on a wall of room " + d.first + ": it is " +
                lengthOf(away, layout.unit, kDoorOnWall_mm) + " from the nearest, and " +
                lengthOf(kDoorOnWall_mm, layout.unit) + " is allowed; it is left shut.",
            layout::whichWord("off its wall"),
            {}};
  }
  // Near a corner two walls may be meant: the nearest into which the door can be built is.
  DoorPlan nearest;
  bool any = false;
  for (const StraightWall& wall : candidates) {
    Builder builder(layout, door, *first, walls, wall);
    DoorPlan plan;
    if (const double past = builder.past(); past > kTouch_mm) {
      plan.fault = name + " is " + lengthOf(d.width, layout.unit) + " wide and runs " +
                   lengthOf(past, layout.unit) + " past the end of its wall of room " + d.first +
                   "; it is left shut.";
      plan.which = layout::whichWord("too wide");
    } else if (second) {
      plan = builder.through(*second);
    } else if (d.second == layout::kOutside) {
      plan = builder.toOutside();
    }
    plan.covers = plan.way ? plan.way->openings : builder.near();
    if (plan.fault.empty()) return plan;
    if (!any) nearest = std::move(plan);
    any = true;
  }
  return nearest;
}

}  // namespace stopwalk::floor
