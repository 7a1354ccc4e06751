#pragma once

#include <cstddef>
#include <cstdint>
#include <limits>
#include <memory>
#include <optional>
#include <span>
#include <vector>

#include "core/floor/plan.h"
#include "core/geometry/point.h"

namespace stopwalk::floor {

// NFPA 101 sec. 7.6.1, as quoted: "curving around corners and obstructions with 1 ft (305 mm) clearance".
inline constexpr double kMeasuringClearance_mm = 305;
// House rule: a body 560 mm wide.
inline constexpr double kBodyHalfWidth_mm = 280;
// Where there is no way at the measuring clearance, the widest one of whole millimetres from here down is
// taken.
inline constexpr int kWidestFallback_mm = 304;

// Where a walk may start or end: points, or whole lines of points (a bar or cord has a standing place for
// each of its points).
struct Place {
  std::vector<Point> points;
  std::vector<Segment> lines;
  bool empty() const { return points.empty() && lines.empty(); }
};

enum class WalkStatus {
  Walk,         // at the clearance asked for
  Narrow,       // only at less
  Unreachable,  // no way at any clearance a body passes
  Unmeasured,   // an end is not on the floor
};

struct Walk {
  WalkStatus status = WalkStatus::Unreachable;
  double length_mm = std::numeric_limits<double>::infinity();
  double clearance_mm = 0;  // what it was measured at
  std::vector<Point>
      path;  // for drawing: arcs as chords of 5 degrees or finer; starts and ends at the places themselves
  // Another walk as short goes elsewhere: which of them is given may hang on what stands far away.
  bool tied = false;
  bool stepped = false;  // aside, at an end, to where the clearance is
  bool found() const { return status == WalkStatus::Walk || status == WalkStatus::Narrow; }
};

// Whether walks come with their paths; of ten thousand walks the paths cost more than the lengths.
enum class Paths { Drawn, LengthsOnly };

// The nearest of several places.
struct Nearest {
  std::optional<std::size_t> index;  // into the places asked for; none: no way to any
  Walk walk;
  // Ways at less than the clearance were sought: it hangs on what is joined anywhere.
  bool sought_narrow = false;
};

// What one of very many points comes to: the length of the walk at the clearance asked for to the nearest of
// the places. Narrow: there is none, but a body gets there; that way is not measured, so no length.
struct Reach {
  WalkStatus status = WalkStatus::Unreachable;
  double length_mm = std::numeric_limits<double>::infinity();
  std::optional<std::size_t> index = std::nullopt;  // into the places
};

class WalkFinder;

// Exact shortest walks over one floor: straight pieces and true arcs of the clearance's radius, by the
// definitions of docs/measuring.md. Immutable from outside; remembers what it built, so asking again is
// cheap. One thread at a time. Lengths agree with the closed form to 0.001 mm; only between two lines (a cord
// and a bar), of which one is sampled at 65 places, a valley between two of them may be missed.
class Walks {
 public:
  // `clearance_mm` >= 0. Where there is no way at it, the largest whole millimetre from 304 (or below
  // `clearance_mm`) down to 280 with a way is used; below 280 there is no such fallback.
  explicit Walks(const Plan& plan, double clearance_mm = kMeasuringClearance_mm, Paths paths = Paths::Drawn);
  // Remembers what is asked, and takes over from the walks of another floor (none: null) whatever answers the
  // difference of the two cannot have changed. The former knows nothing any more.
  static Walks following(Walks* former, const Plan& plan);
  // The same floor with some solids elsewhere; what is remembered and still holds is kept. False: nothing is
  // known any more; nothing may be asked of these walks, but others may follow them.
  struct SolidMoved {
    std::size_t solid = 0;  // into the plan's
    Polygon outline;
  };
  bool moveSolids(std::span<const SolidMoved> moved);
  // Lines elsewhere that the last move cuts, or no longer cuts: what is near them may be otherwise, too.
  const std::vector<Segment>& linesTouched() const;
  ~Walks();
  Walks(Walks&&) noexcept;
  Walks& operator=(Walks&&) noexcept;

  // On the floor (rooms and passages, boundary included) and not inside a solid.
  bool onFloor(Point p) const;

  Walk between(const Place& from, const Place& to) const;
  Walk between(Point from, Point to) const;

  // The nearest of `to` from one point; equal lengths go to the lower index. Ways longer than `at_most_mm`
  // need not be found.
  Nearest nearest(Point from, std::span<const Place> to,
                  double at_most_mm = std::numeric_limits<double>::infinity()) const;

  // For each of `from`, the nearest of `to`: one pass over the floor for all. Same answers as `nearest`.
  // `moving`, of each or none: whether it is elsewhere at each move, so that its answer is of no use later.
  std::vector<Nearest> nearestForAll(std::span<const Point> from, std::span<const Place> to,
                                     std::span<const char> moving = {}) const;

  // For thousands of points, such as the samples of a map: one pass over the floor, bars and cords included.
  // Lengths agree with `nearest` to 0.02 mm, round the very corner that a bar's place steps out at to 3 mm;
  // of equally near places any may be named. Unlike there, a narrow way is never taken where there is one at
  // the clearance, however long.
  std::vector<Reach> reachForAll(std::span<const Point> from, std::span<const Place> to) const;

  // The connected parts of the floor at exactly this clearance that a walk from the place can be in, steps
  // included: ascending numbers, none for a place off the floor. Between places that share one there is a
  // way; nothing is measured, so that asking for ten thousand places costs little more than the region
  // itself.
  std::vector<std::int32_t> parts(const Place& place, double clearance_mm) const;

  // Whether the point keeps this clearance from everything: it is a place of a walk as it stands.
  bool keeps(Point p, double clearance_mm) const;

  // For each of `from` whether a walk at exactly this clearance, steps included, comes to one of `gates`,
  // which keep it. Nothing is measured.
  std::vector<char> leadTo(std::span<const Point> from, std::span<const Point> gates,
                           double clearance_mm) const;

  // After a move: whether it joined and parted nothing at this clearance. Then what leads where does so
  // still, but for places within kRoundEnds_mm of what moved.
  bool partsStay(double clearance_mm) const;
  // After a move: numbers of what is joined in a piece of the floor about the points. Those with one number
  // are joined, steps included; of others nothing is said.
  std::vector<std::optional<std::int32_t>> joinedNearby(std::span<const Point> points,
                                                        double clearance_mm) const;

  // How many answers were taken over, and how many were found anew, of those remembered.
  struct Count {
    std::size_t kept = 0, found = 0;
  };
  Count count() const;

  // Whether two points are joined at exactly this clearance, steps included, with no fallback.
  bool joined(Point a, Point b, double clearance_mm) const;

 private:
  struct Memory;
  WalkFinder& finder() const;  // made when a question needs it

  std::unique_ptr<Memory> memory_;
};

}  // namespace stopwalk::floor
