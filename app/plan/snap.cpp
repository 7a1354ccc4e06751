#include "app/plan/snap.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>

#include "core/floor/walks.h"
#include "core/geometry/polygon.h"
#include "core/geometry/segment.h"

namespace stopwalk::plan {
namespace {

constexpr double kWay_mm = 2 * floor::kMeasuringClearance_mm;  // the clear width that is measured at
constexpr double kLevel_mm = 0.01;  // a side that rises no more over its length is level

bool isWithout(const std::vector<std::string>& without, const std::string& id) {
  return std::ranges::find(without, id) != without.end();
}

// One pull along one axis.
struct Pull {
  double by = 0;
  Point reference;
  Point target;
};

template <class Lines, class Coordinate>
std::optional<Pull> nearestLine(const Lines& lines, const std::vector<Point>& references, double tolerance,
                                Coordinate coordinate) {
  std::optional<Pull> best;
  double least = tolerance;
  int weight = 2;
  for (const Point r : references)
    for (const auto& line : lines) {
      const double by = line.at - coordinate(r);
      const double off = std::abs(by);
      if (off > tolerance || line.weight > weight || (line.weight == weight && off >= least)) continue;
      best = Pull{by, r, line.of};
      least = off;
      weight = line.weight;
    }
  return best;
}

double toGrid(double value, double grid) {
  return std::round(value / grid) * grid - value;
}

}  // namespace

SnapTargets::SnapTargets(const layout::Layout& layout, const std::vector<std::string>& without) {
  for (const auto& room : layout.rooms)
    if (!isWithout(without, room.id)) addOutline(room.outline, false);
  for (const auto& m : layout.machines)
    if (!isWithout(without, m.id)) addOutline(outlineInPlan(m.footprint, m.at, m.turn), true);
  for (const auto& f : layout.fixtures)
    if (!isWithout(without, f.id)) addOutline(outlineInPlan(f.footprint, f.at, f.turn), true);
}

void SnapTargets::addOutline(const geometry::Polygon& outline, bool is_solid) {
  for (std::size_t i = 0; i < outline.size(); ++i) {
    const Segment side = geometry::edgeOf(outline, i);
    const Point middle = geometry::at(side, 0.5);
    for (const Point p : {side.a, middle}) {
      upright_.push_back({p.x, p, 0});
      level_.push_back({p.y, p, 0});
    }
    edges_.push_back(side);
    if (!is_solid) continue;
    const bool is_level = std::abs(side.b.y - side.a.y) < kLevel_mm;
    const bool is_upright = std::abs(side.b.x - side.a.x) < kLevel_mm;
    for (const double way : {-kWay_mm, kWay_mm}) {
      if (is_level) level_.push_back({side.a.y + way, middle, 1});
      if (is_upright) upright_.push_back({side.a.x + way, middle, 1});
    }
  }
}

Snap SnapTargets::pull(const std::vector<Point>& references, double tolerance_mm, double grid_mm) const {
  Snap snap;
  if (references.empty()) return snap;

  // A slanting wall pulls before lines do: nothing else brings a corner onto it.
  double least = tolerance_mm;
  std::optional<Point> onto;
  for (const Segment& edge : edges_) {
    const Point d = edge.b - edge.a;
    if (std::abs(d.x) < kLevel_mm || std::abs(d.y) < kLevel_mm) continue;
    for (const Point r : references) {
      const Point foot = geometry::nearestPoint(edge, r);
      if (const double off = geometry::distance(r, foot); off < least) {
        least = off;
        onto = foot - r;
        snap.guides = {edge};
      }
    }
  }
  if (onto) {
    snap.by = *onto;
    return snap;
  }

  const auto x = nearestLine(upright_, references, tolerance_mm, [](Point p) { return p.x; });
  const auto y = nearestLine(level_, references, tolerance_mm, [](Point p) { return p.y; });
  snap.by.x = x ? x->by : grid_mm > 0 ? toGrid(references.front().x, grid_mm) : 0;
  snap.by.y = y ? y->by : grid_mm > 0 ? toGrid(references.front().y, grid_mm) : 0;
  if (x) snap.guides.push_back({{x->reference.x + x->by, x->target.y}, x->reference + snap.by});
  if (y) snap.guides.push_back({{y->target.x, y->reference.y + y->by}, y->reference + snap.by});
  return snap;
}

std::vector<Point> referencesOf(const layout::Footprint& footprint, Point at, double turn) {
  std::vector<Point> references{at};
  const geometry::Polygon outline = outlineInPlan(footprint, at, turn);
  for (std::size_t i = 0; i < outline.size(); ++i) {
    references.push_back(outline[i]);
    references.push_back(geometry::at(geometry::edgeOf(outline, i), 0.5));
  }
  return references;
}

}  // namespace stopwalk::plan
