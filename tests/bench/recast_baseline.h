#pragma once

#include <memory>
#include <vector>

#include "tests/bench/grid_baseline.h"

namespace stopwalk::bench {

// A navigation mesh as games use it: Recast's polygons (watershed regions, outlines within 1.3 cells) over
// the free cells of a grid, one tile; Detour's A* from polygon to polygon, and the taut string through them.
class RecastBaseline {
 public:
  // Nothing can be asked where `built()` is false: a tile numbers its corners and polygons in 16 bits.
  explicit RecastBaseline(const GridBaseline& grid);
  ~RecastBaseline();

  bool built() const;
  // Lengths in mm, the straight steps to the mesh included; infinity where there is no way.
  std::vector<double> lengths(Point from, const std::vector<Point>& to) const;

 private:
  struct Inside;
  std::unique_ptr<Inside> inside_;
};

}  // namespace stopwalk::bench
