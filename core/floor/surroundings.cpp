#include "core/floor/surroundings.h"

#include <algorithm>

#include "core/floor/fault_text.h"
#include "core/floor/floor_index.h"
#include "core/floor/obstacles.h"
#include "core/floor/standing_places.h"

namespace stopwalk::floor {

using namespace geometry;

namespace {

constexpr double kDeepIn_mm =
    4 * kMountedOn_mm;                 // a line that is in a room for less only passes a corner of it
constexpr double kBeforeWall_mm = 20;  // from there one sees along a wall that bends

}  // namespace

struct Surroundings::Inside {
  struct SolidFacts {
    std::optional<double> height;
    std::optional<std::size_t> machine;
    std::string id;
  };
  struct Frame {
    Point at;
    double turn = 0;
  };

  Inside(const layout::Layout& layout, const Plan& plan) : unit(layout.unit), index(plan), obstacles(plan) {
    for (const Solid& s : plan.solids) {
      const std::string& id = s.is_machine ? layout.machines[s.index].id : layout.fixtures[s.index].id;
      solids.push_back({s.height, s.is_machine ? std::optional(s.index) : std::nullopt, id});
    }
    std::vector<IndexedPolygon> outlines;
    for (const layout::Machine& m : layout.machines) {
      machines.push_back({m.at, m.turn});
      hazard_of.push_back(outlines.size());
      if (!m.hazard.empty()) outlines.emplace_back(layout::outlineInPlan(m.hazard, m.at, m.turn));
    }
    hazards = IndexedPolygons(std::move(outlines));
  }

  bool isOwn(const PlacedDevice& device, std::size_t solid) const {
    return device.machine && solids[solid].machine == device.machine;
  }

  // What a device touches may be the bench under its machine, a post that carries it, or a cabinet that
  // somebody put in front of it. A post has nothing of it before the device; or, where the device is drawn in
  // the post, little, and no more than behind.
  bool canCarry(const PlacedDevice& device, std::size_t solid) const {
    if (device.machine && index.solids()[solid].holds(machines[*device.machine].at)) return true;
    double before = -1e300, behind = -1e300;
    for (const Point& corner : index.solids()[solid].corners()) {
      const double ahead = dot(corner - device.at, direction(device.faces));
      before = std::max(before, ahead);
      behind = std::max(behind, -ahead);
    }
    return before <= kMountedOn_mm + kTouch_mm || before <= std::min(kInWall_mm, behind) + kTouch_mm;
  }

  bool isLower(std::size_t solid, const PlacedDevice& device) const {
    const auto& height = solids[solid].height;
    return height && device.height && *height < *device.height;
  }

  // Whether the solid does not stand between the device and its user, wherever the user is.
  bool isSpared(const PlacedDevice& device, std::size_t solid) const {
    if (isOwn(device, solid) || isLower(solid, device)) return true;
    return index.solids()[solid].isWithin(kMountedOn_mm + kTouch_mm, device.line()) &&
           canCarry(device, solid);
  }

  // `line` from the user to the actuator.
  std::optional<Obstacles::Obstacle> between(Segment line, const PlacedDevice& device) const {
    return onTheWay(line, device, [&](std::size_t solid) { return isSpared(device, solid); });
  }

  // Whether who reaches for a device from behind is barred by what carries it, or by anything else. A corner
  // near the device is reached round, a little outside: that of a machine is no bar to the button on its
  // side.
  bool barredFromBehind(Segment line, const PlacedDevice& device, double reach_mm) const {
    const auto isClear = [&](Segment way) {
      return !obstacles.on(way, 0, index, [&](std::size_t solid) { return isLower(solid, device); });
    };
    if (isClear(line)) return false;
    const auto isRound = [&](Point outside) {
      const Segment first{line.a, outside}, last{outside, line.b};
      const bool in_hazard = !device.foot && (throughHazard(first) || throughHazard(last));
      return distance(first.a, first.b) + distance(last.a, last.b) <= reach_mm + kTouch_mm && !in_hazard &&
             isClear(first) && isClear(last);
    };
    return !index.solids().boxes().any(boxOf(line.b).grown(kRoundBehind_mm), [&](std::size_t solid) {
      const auto& corners = index.solids()[solid].corners();
      for (std::size_t i = 0; i < corners.size(); ++i) {
        if (distance(corners[i], line.b) > kRoundBehind_mm) continue;
        const Point before = corners[(i + corners.size() - 1) % corners.size()],
                    after = corners[(i + 1) % corners.size()];
        const Point out = geometry::unit(corners[i] - before) + geometry::unit(corners[i] - after);
        if (length(out) > kTouch_mm && isRound(corners[i] + kOutsideCorner_mm * geometry::unit(out))) return true;
      }
      return false;
    });
  }

  std::optional<Obstacles::Obstacle> onTheWay(Segment line, const PlacedDevice& device,
                                              const Obstacles::Spared& spared) const {
    const auto found = obstacles.on(line, 0, index, spared);
    const double in_wall = found ? inWall(line, device) : 0;
    return in_wall > 0 ? obstacles.on(line, in_wall, index, spared) : found;
  }

  // How much of the end of a line to the device lies in the wall that the device is drawn in: from where the
  // line leaves the floor that the device faces, if nothing parts that place from the one where its facing
  // comes out. A device that is drawn in a room is in no wall.
  double inWall(Segment line, const PlacedDevice& device) const {
    const double size = distance(line.a, line.b);
    if (device.machine || isInRoom(device.at) || size <= kTouch_mm) return 0;
    const Segment facing{line.b, line.b + (2 * kInWall_mm) * direction(device.faces)};
    const auto faced = firstFloor(facing);
    if (!faced) return 0;
    const std::vector<Stretch> there = insideAlong(line, 0, *faced->floor);
    const double in_wall = there.empty() ? 0 : size - there.back().to;
    if (in_wall > kInWall_mm + kTouch_mm) return 0;
    const Point here =
        geometry::at(line, std::max(there.empty() ? 0 : there.back().to - kBeforeWall_mm, 0.0) / size);
    const Point faced_at = line.b + (faced->from + kBeforeWall_mm) * direction(device.faces);
    return obstacles.on({here, faced_at}, 0, index, [](std::size_t) { return true; }) ? 0 : in_wall;
  }

  bool isInRoom(Point p) const {
    return index.rooms().boxes().any(boxOf(p), [&](std::size_t i) {
      return index.rooms()[i].sideOf(p, kMountedOn_mm + kTouch_mm) == Side::Inside;
    });
  }

  // The room or open passage that a line from a wall comes out in, and where.
  struct Floor {
    const IndexedPolygon* floor = nullptr;
    double from = 0;
  };
  std::optional<Floor> firstFloor(Segment line) const {
    std::optional<Floor> first;
    for (const IndexedPolygons* polygons : {&index.rooms(), &index.passages()})
      polygons->boxes().any(line, kTouch_mm, [&](std::size_t i) {
        for (const Stretch& s : insideAlong(line, 0, (*polygons)[i]))
          if (s.to - s.from > kDeepIn_mm && (!first || s.from < first->from))
            first = {&(*polygons)[i], s.from};
        return false;
      });
    return first;
  }

  bool throughHazard(Segment line) const {
    return hazards.boxes().any(line, kTouch_mm, [&](std::size_t i) { return crosses(line, hazards[i]); });
  }

  // The room of the nearest outline; of several equally near, the one that the device faces.
  std::optional<std::size_t> roomOfNearestWall(const PlacedDevice& device) const {
    const auto away = [&](std::size_t i) { return index.rooms()[i].distanceToOutline(device.at); };
    const auto least = index.rooms().boxes().least(device.at, away);
    if (!least) return std::nullopt;
    const Point before = device.at + (*least + 1) * direction(device.faces);
    std::optional<std::size_t> best;
    bool best_faced = false;
    index.rooms().boxes().any(boxOf(device.at).grown(*least + kTouch_mm), [&](std::size_t i) {
      if (away(i) > *least + kTouch_mm) return false;
      const bool faced = index.rooms()[i].holds(before);
      if (!best || (faced && !best_faced) || (faced == best_faced && i < *best)) {
        best = i;
        best_faced = faced;
      }
      return false;
    });
    return best;
  }

  std::string reason(const PlacedDevice& device, const StandingPlaces::Found& found) const {
    if (found.between)
      return (found.between->solid ? solids[*found.between->solid].id : std::string("a wall")) +
             " stands between";
    if (device.foot) return "no free floor to stand on " + lengthOf(kFootStanding_mm, unit) + " before it";
    if (device.length) return "no free floor to stand on " + lengthOf(kHandStanding_mm, unit) + " before it";
    return "no free floor to stand on from " + lengthOf(kHandStanding_mm, unit) + " to " +
           lengthOf(kHandReach_mm, unit) + " before it";
  }

  layout::LengthUnit unit;
  FloorIndex index;
  Obstacles obstacles;
  std::vector<SolidFacts> solids;
  std::vector<Frame> machines;
  IndexedPolygons hazards;
  std::vector<std::size_t> hazard_of;  // of machines that have one
};

Segment PlacedDevice::line() const {
  const Point half = (length.value_or(0) / 2) * leftOf(direction(faces));
  return {at - half, at + half};
}

Surroundings::Surroundings(const layout::Layout& layout, const Plan& plan)
    : inside_(std::make_unique<Inside>(layout, plan)) {}
Surroundings::~Surroundings() = default;
Surroundings::Surroundings(Surroundings&&) noexcept = default;
Surroundings& Surroundings::operator=(Surroundings&&) noexcept = default;

void Surroundings::moveSolid(std::size_t solid, const Polygon& outline) {
  inside_->index.moveSolid(solid, outline);
}

void Surroundings::moveMachine(std::size_t machine, const layout::Machine& m) {
  inside_->machines[machine] = {m.at, m.turn};
  if (!m.hazard.empty())
    inside_->hazards.replace(inside_->hazard_of[machine],
                             IndexedPolygon(layout::outlineInPlan(m.hazard, m.at, m.turn)));
}

Box Surroundings::hazardBox(std::size_t machine) const {
  return inside_->hazards[inside_->hazard_of[machine]].box();
}

const FloorIndex& Surroundings::index() const {
  return inside_->index;
}

PlacedDevice Surroundings::placed(const layout::Device& device, const layout::DeviceKind& kind,
                                  std::optional<std::size_t> machine) const {
  PlacedDevice p;
  const Inside::Frame frame = machine ? inside_->machines[*machine] : Inside::Frame{};
  p.at = layout::toPlan(frame.at, frame.turn, device.at);
  p.faces = frame.turn + device.faces;
  if (kind.shape == layout::Shape::Line) p.length = device.length;
  p.height = device.height;
  p.foot = kind.actuated_by == layout::ActuatedBy::Foot;
  p.machine = machine;
  return p;
}

PlacedDevice Surroundings::placed(const layout::Phone& phone) const {
  PlacedDevice p;
  p.at = phone.at;
  p.faces = phone.faces;
  p.height = phone.height;
  return p;
}

Standing Surroundings::standing(const PlacedDevice& device) const {
  const StandingPlaces places(device, inside_->index, inside_->obstacles,
                              [&](Segment line) { return inside_->between(line, device); });
  StandingPlaces::Found found = places.find();
  Standing standing;
  if (found.place.empty()) standing.reason = inside_->reason(device, found);
  if (found.on_floor) standing.room = inside_->index.roomAt(*found.on_floor);
  if (!standing.room) standing.room = inside_->roomOfNearestWall(device);
  standing.place = std::move(found.place);
  return standing;
}

std::optional<double> Surroundings::atHand(Point station, const PlacedDevice& device) const {
  return atHand(station, device, device.foot ? kFootReach_mm : kHandReach_mm);
}

std::optional<double> Surroundings::atHand(Point station, const PlacedDevice& device, double reach_mm) const {
  const Segment line{station, nearestPoint(device.line(), station)};
  const double away = distance(line.a, line.b);
  if (away > reach_mm + kTouch_mm) return std::nullopt;
  const bool on_wall = !device.machine;
  if (isBehind(station, device) && (on_wall || inside_->barredFromBehind(line, device, reach_mm)))
    return std::nullopt;
  if (inside_->between(line, device)) return std::nullopt;
  if (!device.foot && inside_->throughHazard(line)) return std::nullopt;
  return away;
}

bool Surroundings::isBehind(Point station, const PlacedDevice& device) {
  const Point from_it = station - nearestPoint(device.line(), station);
  return dot(from_it, direction(device.faces)) <= kOnOutline_mm;
}

double Surroundings::straightDistance(Point station, const PlacedDevice& device) {
  return distance(device.line(), station);
}

bool Surroundings::inSight(Point eye, const PlacedDevice& device, double eye_height_mm) const {
  const Segment line = device.line();
  const auto hides = [&](std::size_t solid) {
    const auto& height = inside_->solids[solid].height;
    return !inside_->isOwn(device, solid) && (!height || *height > eye_height_mm);
  };
  const auto sees = [&](Point p) {
    return !inside_->onTheWay({eye, p}, device, [&](std::size_t solid) { return !hides(solid); });
  };
  return sees(nearestPoint(line, eye)) ||
         (device.length && (sees(device.at) || sees(line.a) || sees(line.b)));
}

bool Surroundings::clearBetween(Point a, Point b) const {
  return !inside_->obstacles.on({a, b}, 0, inside_->index, [](std::size_t) { return false; });
}

std::optional<std::size_t> Surroundings::roomAt(Point p) const {
  return inside_->index.roomAt(p);
}
std::optional<std::size_t> Surroundings::passageAt(Point p) const {
  return inside_->index.doorAt(p);
}

}  // namespace stopwalk::floor
