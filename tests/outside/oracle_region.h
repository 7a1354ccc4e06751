#pragma once

#include <optional>
#include <vector>

#include "core/floor/plan.h"
#include "tests/outside/geos_shapes.h"

namespace stopwalk::outside {

inline constexpr int kChordsAQuarter = 64;

// On which side of the true arcs the chords lie. Outside: the region is never larger than the true one, walks
// never shorter. Inside: the region is never smaller, walks never longer but for the rounding of W(c)'s own
// 0.0005 mm.
enum class Chords { InsideArc, OutsideArc };

// W(c) of docs/measuring.md from GEOS alone: everything farther than c from walls and solids, kept where it
// is floor.
class OracleRegion {
 public:
  OracleRegion(const floor::Plan& plan, double clearance, Chords chords = Chords::InsideArc,
               int chords_a_quarter = kChordsAQuarter);

  const std::vector<Piece>& parts() const { return parts_; }
  const std::vector<Shape>& shapes() const { return shapes_; }
  // The whole region, as one shape.
  Shape whole() const;
  std::optional<std::size_t> partAt(Point p) const;
  // The walls do not close: some of the floor runs out into the open.
  bool leaks() const { return leaks_; }

 private:
  std::vector<Piece> parts_;
  std::vector<Shape> shapes_;
  bool leaks_ = false;
};

// The floor F itself, by the definition: rooms and passages, boundary included, less the inside of solids.
bool onFloor(const floor::Plan& plan, Point p);
// Distance to the nearest wall or outline of a solid.
double distanceToAll(const floor::Plan& plan, Point p);
// Everything that stands: walls and the edges of solids.
std::vector<Segment> everyEdge(const floor::Plan& plan);

// A step from a place towards one part of a region.
struct Step {
  Point to;
  double length = 0;
  // Other points of the part are about as near: a hair decides which one is taken.
  bool doubtful = false;
};

// Straight to the nearest point of the part that is seen across F, at most 1 m; all of them where several are
// equally near. `part` is one of a region built at `clearance`.
std::vector<Step> stepsTo(const floor::Plan& plan, Point from, const Shape& part, double clearance);

}  // namespace stopwalk::outside
