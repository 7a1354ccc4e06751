#pragma once

#include <map>
#include <memory>
#include <vector>

#include "core/floor/plan.h"
#include "core/floor/walks.h"
#include "tests/outside/oracle_geodesic.h"
#include "tests/outside/oracle_region.h"

namespace stopwalk::outside {

struct OracleWalk {
  floor::WalkStatus status = floor::WalkStatus::Unreachable;
  double length_mm = 0;
  double clearance_mm = 0;
  // A hair in the drawing decides between two answers: not to be compared.
  bool doubtful = false;
};

// The walking distances of docs/measuring.md once more: the region by GEOS, the ways by CGAL, steps and
// narrow passages by the letter of the definition. Slow.
class OracleWalks {
 public:
  OracleWalks(const floor::Plan& plan, double clearance_mm, Chords chords = Chords::InsideArc);

  std::vector<OracleWalk> fromOne(Point from, const std::vector<Point>& to);
  const OracleRegion& region() { return levelAt(clearance_).region; }

 private:
  struct Level {
    OracleRegion region;
    std::map<std::size_t, OracleGeodesic> ways;
  };
  // A way into one part of the region.
  struct Entry {
    std::size_t part;
    Point at;
    double step;
    bool doubtful;
  };

  Level& levelAt(double clearance);
  std::vector<Entry> entries(Point place, double clearance);
  std::vector<OracleWalk> at(double clearance, Point from, const std::vector<Point>& to);
  OracleWalk narrow(Point from, Point to);

  floor::Plan plan_;
  double clearance_;
  Chords chords_;
  std::map<double, Level> levels_;
  std::map<std::pair<double, std::pair<double, double>>, std::vector<Entry>> entries_;
};

}  // namespace stopwalk::outside
