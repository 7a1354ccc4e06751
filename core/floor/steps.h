#pragma once

#include <functional>
#include <span>
#include <vector>

#include "core/floor/region.h"
#include "core/floor/route_search.h"

namespace stopwalk::floor {

// House rule: nobody steps further than this to begin a walk.
inline constexpr double kLongestStep_mm = 1000;

// A point of the region from which, or to which, one straight step leads; the place itself where that lies in
// the region.
struct Exit {
  Point at;
  double step = 0;
  Mesh::Index part = Mesh::kNone;
  Point outward;  // the way the point moves as the clearance grows; zero where it is not on a single piece
  // What of the boundary it lies on, so that neighbouring places are known to step alike.
  Mesh::Index piece = Mesh::kNone;
  int feature = 0;
};

struct PartLanding {
  Landing landing;
  Mesh::Index part = Mesh::kNone;
  Point outward;  // Straight only
  Mesh::Index piece = Mesh::kNone;
};

// Steps out of what is nearer than the clearance: straight to the nearest point seen of each connected part
// of the region.
class Steps {
 public:
  // `body` gives the region of the body's half-width when it is needed; empty where the region is at least as
  // wide.
  Steps(const Mesh& mesh, const WallGrid& grid, const Region& region, std::function<const Region&()> body)
      : mesh_(&mesh), grid_(&grid), region_(&region), body_(std::move(body)) {}

  // All that are equally near for each part. `p` on the floor, local, on the lattice.
  std::vector<Exit> from(Point p) const;
  // For a line of places on the floor, as stretches that step alike.
  std::vector<PartLanding> fromLine(Point a, Point b) const;
  // How many parts were left out so far for a body does not pass to them.
  std::size_t refused() const { return refused_; }

 private:
  struct Candidate {
    Point at;
    double step;
    Mesh::Index piece;
    int feature;
    bool nearest = true;  // of its piece; else one of those asked once the nearest is hidden
  };
  // The same, of the pieces that may be near it.
  std::vector<Exit> from(Point p, std::span<const Mesh::Index> near) const;
  std::vector<Exit> outOf(Point p, std::span<const Mesh::Index> near) const;
  std::vector<Mesh::Index> piecesNear(Point a, Point b) const;
  Candidate nearestOn(Point p, Mesh::Index piece) const;
  void addAllRound(Point p, Mesh::Index piece, std::vector<Candidate>& candidates) const;
  void addBehind(Point p, const Candidate& hidden, std::vector<Candidate>& candidates) const;
  void addShadows(Point p, Mesh::Index piece, double least, std::vector<Candidate>& candidates) const;
  struct Sides {
    bool left, right;
  };
  Sides passable(Mesh::Index corner, Point d) const;
  bool sees(Point p, Point q) const;
  bool allowed(Point p, Point q) const;
  Exit exitOf(const Candidate& candidate) const;
  bool isCrowded(Point a, Point b, std::span<const Exit> at_a, std::span<const Exit> at_b) const;
  static bool isStraight(std::span<const Exit> at_a, std::span<const Exit> at_middle,
                         std::span<const Exit> at_b);
  void stepAlike(Point a, Point b, const std::vector<Exit>& at_a, const std::vector<Exit>& at_b, int depth,
                 std::span<const Mesh::Index> near, std::vector<PartLanding>& landings) const;

  const Mesh* mesh_;
  const WallGrid* grid_;
  const Region* region_;
  std::function<const Region&()> body_;
  mutable std::size_t refused_ = 0;
};

}  // namespace stopwalk::floor
