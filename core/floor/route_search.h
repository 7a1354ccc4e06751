#pragma once

#include <cstdint>
#include <functional>
#include <limits>
#include <optional>
#include <vector>

#include "core/floor/cone.h"
#include "core/floor/gate_ends.h"
#include "core/floor/landing.h"
#include "core/floor/shelves.h"
#include "core/floor/slots.h"
#include "core/floor/turns.h"

namespace stopwalk::floor {

// Walks that differ by less are equally long: the first in the file is taken.
inline constexpr double kSameLength_mm = 1e-6;

// A turn of a walk round a corner: `sense` +1 with the corner on the left, -1 on the right.
struct Turn {
  Mesh::Index corner = 0;
  int sense = 1;
  bool operator==(const Turn&) const = default;
};

// A walk found: from a source to a target, round the corners in between.
struct Route {
  int source = 0;
  int target = 0;
  double length = 0;  // at the region's radius, offsets of source and target included
  std::vector<Turn> turns;
  Point start, end;  // points of the region
  double landing_at = 0;
  bool tied = false;  // another as short goes elsewhere: which of them is found is left to the triangles
};

// Where on the landing a walk comes in that turns last round the disk, arriving there in a direction; the one
// minimum, found by golden section.
double nearestOn(const Landing& landing, const Disk& disk, Point arriving, double length);

// Shortest walks in one region by growing outwards from the sources: from each point or arc that is reached,
// the cone of directions in which a taut walk can go on is followed through the triangles, and each arc or
// target seen in it is a candidate, taken up in the order of distance. Every leg is held against the corners
// near it before it counts.
class RouteSearch {
 public:
  using Index = Mesh::Index;

  RouteSearch(const Mesh& mesh, const WallGrid& grid, const Region& region, const Turns& turns);

  // Forget sources and targets.
  void clear();
  // `offset` is the length of the step before it (or after it, for targets). `label` is given back.
  void addSource(Point p, double offset, int label);
  // A stretch of places as a source, for all() only.
  void addSource(const Landing& landing, int label);
  void addTarget(Point p, double offset, int label);
  void addLanding(const Landing& landing, int label);

  // The shortest route from any source to any target, if not longer than `at_most`; of equals, the lowest
  // target label.
  std::optional<Route> nearest(double at_most = std::numeric_limits<double>::infinity());
  // Gives, label by label, the shortest route to each target from any source. Labels count from 0 to below
  // `labels`.
  void all(int labels, const std::function<void(const Route&)>& found);

 private:
  struct Source {
    Point at;
    double offset;
    int label;
    Index triangle;
  };
  struct Target {
    Point at;
    double offset;
    int label;
    bool line;
    Landing landing;
  };
  // What leaves a stretch of places side by side, in the direction in which the walks from it are shortest:
  // at right angles, or aslant where the step in grows along the stretch.
  struct Beam {
    Point from, along, direction;  // `along` the stretch, unit
    double size;
    double step, growth;  // the step at `from`, and how much it grows a millimetre
    int label;
    std::vector<Index> triangles;  // that the stretch runs through
    double lateral(Point p) const { return cross(p - from, direction) / cross(along, direction); }
    double run(Point p) const { return cross(p - from, along) / cross(direction, along); }
  };
  // The part of a beam, by places along its stretch, in one triangle.
  struct Strip {
    Index triangle;
    Index entered;  // by its gate; kNone: it starts there
    double low, high;
  };
  // Where a walk has arrived: on an arc, turning one way.
  struct State {
    Index arc, corner;
    double length;
    Point direction, centre;
    Index parent;
    Index same;
    int label;
    std::int8_t sense;
    bool tied;
  };
  // A leg not yet confirmed: to an arc and sense, or to a target (~index).
  struct Leg {
    double length;
    Point direction;
    double at;
    Index from;
    Index to;
    bool tied = false;
  };
  // A cone not yet followed.
  struct Kept {
    Cone cone;
    Index from;
  };
  // A leg's slot, by the length of what it leads to.
  struct Next {
    double key;
    Index slot;
    bool operator>(const Next& other) const { return key > other.key; }
  };

  void start();
  template <class Found>
  void run(double at_most, Found found);
  void arrive(const Leg& leg);
  void note(Index target, Index triangle);
  std::vector<Index> trianglesOf(const Landing& landing) const;
  void addPoints(const Landing& landing, int label);
  void shine(const Beam& beam);
  void see(const Beam& beam, const Strip& strip);
  std::optional<Strip> stripIn(const Beam& beam, Index triangle) const;
  bool goOn(const Beam& beam, const Strip& strip, Index out, Strip& next) const;
  double leave(const Beam& beam, double at);
  void expand(Index state);
  void launch(const Source& source, Index index);
  void sweep(Cone begin);
  void see(const Cone& cone);
  void seeArc(const Turns::Span& span, const Cone& cone);
  void seePoint(Index target, const Cone& cone);
  void seeLanding(Index target, const Cone& cone);
  void seeEntry(Index target, const Cone& cone, double at);
  bool defer(const Cone& cone, const Turns::Gate& gate);
  double soonerUpTo(Point end, Point along, double reached) const;
  bool far(Cone& cone, Index gate);
  void follow(Cone cone);
  void keep(const Cone& cone, double key);
  void noteReached(const State& state);
  void takeUp(Index from);
  bool free(const Leg& leg) const;
  bool keepsClear(Point p, Point q) const;
  double lengthAlong(Point direction) const;
  void push(double length, double ahead, Point direction, double at, Index to);
  bool dominated(Index arc, int sense, double length, Point direction, int label);
  bool noteTies(const Leg& leg);
  bool comesFrom(Index state, Point direction, Index other, Point other_direction) const;
  int labelOf(Index from) const;
  double estimate(Point p) const;
  void trace(const Leg& leg, Route& route) const;
  void straighten(Route& route, bool may_touch) const;
  void settle(const Landing& landing, Route& route) const;
  Disk diskOf(const Turn& turn) const;
  Disk diskOf(Index from) const;

  const Mesh* mesh_;
  const WallGrid* grid_;
  const Region* region_;
  const Turns* turns_;
  double radius_;
  std::vector<Source> sources_;
  std::size_t launched_ = 0;  // of the sources; those after it are where beams leave their stretch
  std::vector<Beam> beams_;
  std::vector<Target> targets_;
  std::vector<Index> target_first_, target_next_;  // targets in a triangle
  std::vector<Index> target_of_;
  std::vector<State> states_;
  std::vector<Index> state_first_;  // by arc and sense
  std::vector<Index> touched_triangles_;
  std::vector<Index> touched_states_;
  std::vector<Index> touched_slots_;
  std::vector<Next> heap_;
  Slots<Leg> legs_;
  Shelves<Kept> kept_;
  std::vector<Cone> stack_;
  double horizon_ = 0, at_most_ = 0;
  // For walks to everywhere: how soon each end of a gate is reached.
  std::optional<GateEnds> ends_;
  std::vector<double> reached_;
  Point from_point_;
  // The source being expanded.
  Disk disk_{};
  Index from_ = 0;
  Index from_corner_ = 0;
  double from_length_ = 0;
  Point from_direction_;
  bool close_ = false;       // whether dominated() saw a walk as long
  bool informed_ = false;    // whether estimate() is used
  bool everywhere_ = false;  // whether the walks to all targets are wanted
};

}  // namespace stopwalk::floor
