#pragma once

#include <cstddef>
#include <functional>
#include <memory>
#include <optional>
#include <span>
#include <vector>

#include "core/floor/door_bounds.h"
#include "core/floor/known_ends.h"
#include "core/floor/plan.h"
#include "core/floor/walk_finder.h"
#include "core/floor/walks.h"
#include "core/geometry/box.h"

namespace stopwalk::floor {

// About how a walk may be, by one that was found before; a wrong guess costs time only.
struct Guess {
  double length = 0;
  std::vector<Point> path = {};  // empty: none is known
};
Guess guessBy(const Walk& like, Point from);

// Finds a walk in a piece of the floor: no walk of length L from one point to another leaves the ellipse
// about the two, so what lies beyond need not be built. Short walks are sought in all there is near them,
// long ones in the corridor that the doors leave. The answers are those of the whole floor, to
// the last digit of a report (a millionth of a millimetre); where a piece cannot tell, there is none. What it
// is made of must outlive it.
class FloorPieces {
 public:
  FloorPieces(const Plan& plan, double clearance, Paths paths, const DoorBounds& doors, EndsAfter ends);

  using Give = std::function<void(std::size_t, Nearest)>;

  // As Walks::nearest, with about how long it may be.
  std::optional<Nearest> nearest(Point from, std::span<const Place> to, double at_most, double likely);
  // As Walks::nearestForAll: gives those that a piece can tell.
  void forAll(std::span<const Point> from, std::span<const Place> to, std::span<const Guess> likely,
              const Give& give);
  std::optional<bool> onFloor(Point p);
  // As Walks::keeps.
  std::optional<bool> keeps(Point p, double clearance);
  // As Walks::joinedNearby.
  std::vector<std::optional<Mesh::Index>> joined(std::span<const Point> points, double clearance);

 private:
  struct Piece {
    Polygon shape;  // convex, counter-clockwise
    std::unique_ptr<WalkFinder> finder;
  };
  WalkFinder* about(const Polygon& shape);
  std::optional<Nearest> within(double most, Point from, std::span<const Place> to, double at_most);
  // Gives those that walks of at most so much tell, and returns the rest.
  std::vector<std::size_t> tell(const std::vector<std::size_t>& who, std::span<const Point> from,
                                std::span<const Place> to, std::span<const Guess> most, const Give& give);

  const Plan& plan_;
  const DoorBounds& doors_;
  EndsAfter ends_;
  Point origin_;
  double clearance_;
  Paths paths_;
  geometry::Box whole_;
  std::vector<Piece> pieces_;
};

// What a walk of at most that length can come near, ends included: convex, counter-clockwise. In whole
// millimetres.
Polygon shapeAbout(Point from, std::span<const Place> to, const std::vector<std::size_t>& which,
                   double length, double clearance);
// The plan's things that meet the convex shape, shut off along its outline.
Plan pieceOf(const Plan& plan, const Polygon& shape);

}  // namespace stopwalk::floor
