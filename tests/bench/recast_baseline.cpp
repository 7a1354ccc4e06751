#include "tests/bench/recast_baseline.h"

#include <DetourNavMesh.h>
#include <DetourNavMeshBuilder.h>
#include <DetourNavMeshQuery.h>
#include <Recast.h>

#include <algorithm>
#include <array>
#include <limits>

namespace stopwalk::bench {
namespace {

// Recast counts in metres, with y upwards.
constexpr float kMillimetre = 0.001f;
constexpr float kHeight = 2, kClimb = 0.1f;
constexpr int kMostNodes = 65535;
constexpr int kLongestPath = 8192;

template <auto release>
struct Release {
  template <class T>
  void operator()(T* held) const {
    release(held);
  }
};
template <class T, auto release>
using Held = std::unique_ptr<T, Release<release>>;
using PolyMesh = Held<rcPolyMesh, rcFreePolyMesh>;

using Spot = std::array<float, 3>;

Spot spotOf(Point p, Point low) {
  return {static_cast<float>(p.x - low.x) * kMillimetre, 0, static_cast<float>(p.y - low.y) * kMillimetre};
}

double apart_mm(const float* a, const float* b) {
  return distance(Point{a[0], a[2]}, Point{b[0], b[2]}) / kMillimetre;
}

// Nothing where Recast says no at any stage.
PolyMesh polygonsOver(const GridBaseline& grid) {
  rcContext quiet(false);
  const auto columns = static_cast<int>(grid.columns()), rows = static_cast<int>(grid.rows());
  const auto cell = static_cast<float>(grid.cell_mm()) * kMillimetre;
  const Spot low{0, 0, 0}, high{cell * static_cast<float>(columns), kHeight, cell * static_cast<float>(rows)};
  const Held<rcHeightfield, rcFreeHeightField> field(rcAllocHeightfield());
  if (!rcCreateHeightfield(&quiet, *field, columns, rows, low.data(), high.data(), cell, cell))
    return nullptr;
  for (int y = 0; y < rows; ++y)
    for (int x = 0; x < columns; ++x)
      if (grid.isFree(static_cast<GridBaseline::Cell>(x), static_cast<GridBaseline::Cell>(y)))
        rcAddSpan(&quiet, *field, x, y, 0, 1, RC_WALKABLE_AREA, 1);

  const Held<rcCompactHeightfield, rcFreeCompactHeightfield> compact(rcAllocCompactHeightfield());
  const Held<rcContourSet, rcFreeContourSet> outlines(rcAllocContourSet());
  PolyMesh polygons(rcAllocPolyMesh());
  constexpr int kWalkableHeight = 10, kWalkableClimb = 1, kSmallestRegion = 0, kMergedRegion = 400;
  constexpr float kOutlineError = 1.3f;
  const bool made = rcBuildCompactHeightfield(&quiet, kWalkableHeight, kWalkableClimb, *field, *compact) &&
                    rcBuildDistanceField(&quiet, *compact) &&
                    rcBuildRegions(&quiet, *compact, 0, kSmallestRegion, kMergedRegion) &&
                    rcBuildContours(&quiet, *compact, kOutlineError, 0, *outlines) &&
                    rcBuildPolyMesh(&quiet, *outlines, DT_VERTS_PER_POLYGON, *polygons);
  return made ? std::move(polygons) : nullptr;
}

Held<dtNavMesh, dtFreeNavMesh> meshOf(const rcPolyMesh& polygons) {
  std::vector<unsigned short> flags(static_cast<std::size_t>(polygons.npolys), 1);
  dtNavMeshCreateParams params{};
  params.verts = polygons.verts, params.vertCount = polygons.nverts;
  params.polys = polygons.polys, params.polyAreas = polygons.areas, params.polyFlags = flags.data();
  params.polyCount = polygons.npolys, params.nvp = polygons.nvp;
  params.walkableHeight = kHeight, params.walkableClimb = kClimb;
  std::copy_n(polygons.bmin, 3, params.bmin);
  std::copy_n(polygons.bmax, 3, params.bmax);
  params.cs = polygons.cs, params.ch = polygons.ch, params.buildBvTree = true;
  unsigned char* data = nullptr;
  int size = 0;
  if (!dtCreateNavMeshData(&params, &data, &size)) return nullptr;
  Held<dtNavMesh, dtFreeNavMesh> mesh(dtAllocNavMesh());
  if (dtStatusSucceed(mesh->init(data, size, DT_TILE_FREE_DATA))) return mesh;
  dtFree(data);
  return nullptr;
}

}  // namespace

struct RecastBaseline::Inside {
  struct Place {
    dtPolyRef polygon = 0;
    Spot at{};
    double step_mm = 0;
  };

  Place placeOf(Point p) const {
    const Spot spot = spotOf(p, low), reach{1, 1, 1};
    Place place;
    query->findNearestPoly(spot.data(), reach.data(), &filter, &place.polygon, place.at.data());
    place.step_mm = apart_mm(spot.data(), place.at.data());
    return place;
  }

  double between(const Place& from, const Place& to) {
    constexpr double kNone = std::numeric_limits<double>::infinity();
    if (!from.polygon || !to.polygon) return kNone;
    int crossed = 0, corners = 0;
    const dtStatus found = query->findPath(from.polygon, to.polygon, from.at.data(), to.at.data(), &filter,
                                           polygons.data(), &crossed, kLongestPath);
    if (dtStatusFailed(found) || dtStatusDetail(found, DT_PARTIAL_RESULT)) return kNone;
    query->findStraightPath(from.at.data(), to.at.data(), polygons.data(), crossed, string.data(), nullptr,
                            nullptr, &corners, kLongestPath);
    double length = from.step_mm + to.step_mm;
    for (int i = 1; i < corners; ++i) length += apart_mm(&string[3 * (i - 1)], &string[3 * i]);
    return length;
  }

  Point low;
  Held<dtNavMesh, dtFreeNavMesh> mesh;
  Held<dtNavMeshQuery, dtFreeNavMeshQuery> query{dtAllocNavMeshQuery()};
  dtQueryFilter filter;
  std::vector<dtPolyRef> polygons = std::vector<dtPolyRef>(kLongestPath);
  std::vector<float> string = std::vector<float>(3 * kLongestPath);
};

RecastBaseline::RecastBaseline(const GridBaseline& grid) : inside_(std::make_unique<Inside>()) {
  inside_->low = grid.low();
  if (const PolyMesh polygons = polygonsOver(grid)) inside_->mesh = meshOf(*polygons);
  if (inside_->mesh) inside_->query->init(inside_->mesh.get(), kMostNodes);
}

RecastBaseline::~RecastBaseline() = default;

bool RecastBaseline::built() const {
  return inside_->mesh != nullptr;
}

std::vector<double> RecastBaseline::lengths(Point from, const std::vector<Point>& to) const {
  const Inside::Place source = inside_->placeOf(from);
  std::vector<double> all;
  for (const Point p : to) all.push_back(inside_->between(source, inside_->placeOf(p)));
  return all;
}

}  // namespace stopwalk::bench
