#pragma once

#include <functional>
#include <map>
#include <optional>
#include <set>
#include <span>
#include <vector>

#include "core/floor/known_ends.h"
#include "core/floor/layer.h"
#include "core/floor/near_places.h"
#include "core/floor/taut.h"
#include "core/floor/walks.h"

namespace stopwalk::floor {

// What a finder has of the floor.
struct Extent {
  // A piece that is shut off along its edge: what is joined there is joined.
  Polygon edge = {};
  // A piece with holes: things are left out that no walk in question comes near. Of places, the steps and
  // what they are joined to are those known of the whole floor.
  const EndsAfter* known = nullptr;
  // Lines that the edge cuts, and that lie a millionth of a millimetre off for it.
  std::vector<Segment> cut = {};
  bool whole() const { return edge.empty() && !known; }
};

// Whether many walks are sought by growing from the places over all the floor, or each straight ahead, which
// is faster for few.
enum class Pass { OneForAll, OneEach };
inline constexpr std::size_t kFewWalks = 16;

// Finds walks over one floor anew, and remembers nothing but what it has built. Points are in the plan unless
// they are called local. What is found on a piece is so on the whole floor, if the piece holds all that a
// walk of that length can come near, and if it is not `unsure`.
class WalkFinder {
 public:
  WalkFinder(const Plan& plan, Point origin, double clearance, Paths paths, Extent extent = {})
      : mesh_(plan, origin),
        grid_(mesh_),
        clearance_(clearance),
        extent_(std::move(extent)),
        drawing_(mesh_, paths == Paths::Drawn) {}
  WalkFinder(const WalkFinder&) = delete;  // what it has built points into it
  WalkFinder& operator=(const WalkFinder&) = delete;

  Point local(Point in_plan) const { return mesh_.local(in_plan); }
  bool onFloor(Point local) const { return mesh_.floorTriangle(local) != Mesh::kNone; }
  double clearance() const { return clearance_; }
  Layer& layer(double clearance);
  // Whether the point lies in the region of that clearance.
  bool keeps(Point p, double clearance);
  // The one part of that region that a point steps to; none: not one for sure.
  std::optional<Mesh::Index> onePartOf(Point p, double clearance);
  // What was found of the steps of places, at the clearance.
  EndsTable takeEnds() { return layer(clearance_).takeEnds(); }

  // The parts of a place as local segments; points are segments of no length. Points off the floor are left
  // out.
  std::vector<Segment> localParts(const Place& place) const;
  bool joined(Layer& l, const std::vector<Segment>& from, const std::vector<Segment>& to);

  // The nearest of those listed.
  Nearest nearest(Point from, std::span<const Place> to, const std::vector<std::size_t>& which,
                  double at_most);
  // The nearest of many: those near in a straight line first, then twice as far, until none beyond can be
  // nearer.
  Nearest nearestOutwards(Point from, std::span<const Place> to, const NearPlaces& near);
  // Gives, one by one, the nearest of `to` for each of `from`.
  void forAll(std::span<const Point> from, std::span<const Place> to,
              const std::function<void(std::size_t, Nearest)>& give, Pass pass = Pass::OneForAll);
  std::vector<Reach> reach(std::span<const Point> from, std::span<const Place> to);

  // Of the answer given last, of a piece: whether it hangs on what is joined beyond the piece.
  bool unsure() const { return unsure_; }

 private:
  // What the labels of the search in hand stand for.
  struct End {
    std::size_t place = 0;
    Segment local;
    Exit exit;
    PartLanding landing;
    bool line = false;
  };
  // The widest stretch of whole millimetres below the clearance that needs the same steps throughout, and in
  // which there is a way.
  struct Stretch {
    int low, high;
  };

  void begin() { sought_narrow_ = unsure_ = false; }
  Nearest nearestOf(Point from, std::span<const Place> to, const std::vector<std::size_t>& which,
                    double at_most);
  const Ends& endsOf(Layer& l, const Segment& part);
  bool isSure(const Ends& ends, const Segment& part) const;
  bool mayBeParted(const Segment& from, const std::vector<Segment>& parts, const Nearest& best,
                   std::span<const Place> to);
  void addSources(Layer& l, RouteSearch& search, const std::vector<Segment>& parts, std::size_t place);
  void addTargets(Layer& l, RouteSearch& search, const std::vector<Segment>& parts, std::size_t place);
  // Which way the search went: from the point that is asked about, or to it.
  enum class Sought { There, Back };
  // The route found at the region's radius, measured at the clearance asked for; its path leads there.
  Walk measured(const Layer& l, const Route& route, Sought sought);
  Nearest oneAtTheClearance(Point from, std::span<const Place> to, char& unsure);
  std::vector<Nearest> allAtTheClearance(std::span<const Point> from, std::span<const Place> to,
                                         std::vector<char>& unsure);

  // The whole millimetres at which an end of the walk ceases to need a step; between them, a way at one
  // clearance is a way at every smaller one. (A place that lies in the region takes no step, and may be shut
  // in where a step would have led out.)
  void addStops(const std::vector<Segment>& parts, std::set<int>& stops) const;
  std::optional<Stretch> widestStretch(const std::vector<Segment>& from, const std::vector<Segment>& to,
                                       const std::set<int>& stops);
  // The widest whole millimetre below the clearance at which there is a way, if any.
  std::optional<double> widestWay(const std::vector<Segment>& from, const std::vector<Segment>& to);
  Walk narrow(const std::vector<Segment>& from, const std::vector<Segment>& to);
  // Places not joined at the clearance asked for may yet be nearer, at less.
  void narrowToo(Point from, std::span<const Place> to, const std::vector<std::size_t>& which, double at_most,
                 Nearest& best);

  Mesh mesh_;
  WallGrid grid_;
  double clearance_;
  Extent extent_;
  std::map<double, Layer> layers_;
  std::vector<End> from_ends_, to_ends_;
  CourseDrawing drawing_;
  bool sought_narrow_ = false, unsure_ = false;
};

}  // namespace stopwalk::floor
