// The walks of one audit, and the same questions put to general libraries in the same run. See docs/speed.md.
#include <benchmark/benchmark.h>

#include <algorithm>
#include <cmath>
#include <iterator>
#include <limits>
#include <memory>
#include <span>
#include <vector>

#include "core/floor/walks.h"
#include "tests/bench/bench_run.h"
#include "tests/bench/grid_baseline.h"
#include "tests/bench/recast_baseline.h"
#include "tests/bench/shop.h"
#include "tests/outside/oracle_geodesic.h"
#include "tests/outside/oracle_region.h"

namespace stopwalk::bench {
namespace {

using floor::Place;
using floor::Point;
using floor::Walks;
using support::kShopSizes;

std::vector<Point> pointsOf(const std::vector<Place>& places) {
  std::vector<Point> points;
  for (const Place& place : places) {
    points.insert(points.end(), place.points.begin(), place.points.end());
    for (const floor::Segment& line : place.lines) points.push_back(0.5 * (line.a + line.b));
  }
  return points;
}

void phoneToEveryStation(const Walks& walks, const Shop& shop) {
  benchmark::DoNotOptimize(walks.nearestForAll(shop.stations, std::span(shop.phones).first(1)));
}

void everyStationToItsStop(const Walks& walks, const Shop& shop) {
  for (std::size_t i = 0; i < shop.stations.size(); ++i)
    benchmark::DoNotOptimize(walks.nearest(shop.stations[i], shop.candidates[i]));
}

void everyStationToAnyStop(const Walks& walks, const Shop& shop) {
  benchmark::DoNotOptimize(walks.nearestForAll(shop.stations, shop.stops));
}

using Question = void (*)(const Walks&, const Shop&);

void cold(benchmark::State& state, const char* name, Question ask, floor::Paths paths) {
  const Shop& shop = shopOf(static_cast<std::size_t>(state.range(0)));
  run(state, name, "", [&] { ask(Walks(shop.plan, floor::kMeasuringClearance_mm, paths), shop); });
}

void warm(benchmark::State& state, const char* name, Question ask) {
  const Shop& shop = shopOf(static_cast<std::size_t>(state.range(0)));
  const Walks walks(shop.plan);
  ask(walks, shop);
  run(state, name, "", [&] { ask(walks, shop); });
}

// GEOS makes the region with 8 chords a quarter circle, CGAL triangulates it; neither is timed with the
// questions.
struct Baseline {
  explicit Baseline(const floor::Plan& plan)
      : region(plan, floor::kMeasuringClearance_mm, outside::Chords::InsideArc, 8) {}
  outside::OracleRegion region;
  outside::OracleGeodesic ways{region.parts()};
};

const Baseline& baselineOf(std::size_t size) {
  static std::size_t held = std::size(kShopSizes);
  static std::unique_ptr<Baseline> baseline;
  if (held != size) baseline = std::make_unique<Baseline>(shopOf(size).plan), held = size;
  return *baseline;
}

// How far the lengths are from the exact ones, in %, and how many stations got one where there is a walk.
void countErrors(benchmark::State& state, const Shop& shop, const std::vector<double>& lengths) {
  const auto exact = Walks(shop.plan).nearestForAll(shop.stations, std::span(shop.phones).first(1));
  double sum = 0, longest = 0, shortest = 0, answered = 0, asked = 0;
  for (std::size_t i = 0; i < exact.size(); ++i) {
    if (exact[i].walk.status != floor::WalkStatus::Walk || exact[i].walk.length_mm <= 0) continue;
    ++asked;
    if (!std::isfinite(lengths[i])) continue;
    ++answered;
    const double off = 100 * (lengths[i] / exact[i].walk.length_mm - 1);
    sum += std::abs(off), longest = std::max(longest, off), shortest = std::min(shortest, off);
  }
  state.counters["mean_%"] = sum / answered;
  state.counters["most_%"] = longest;
  state.counters["least_%"] = shortest;
  state.counters["answered"] = answered;
  state.counters["unanswered"] = asked - answered;
}

std::vector<Point> within(const outside::OracleGeodesic& ways, const std::vector<Point>& all) {
  std::vector<Point> held;
  for (const Point p : all)
    if (ways.holds(p)) held.push_back(p);
  return held;
}

void cgal(benchmark::State& state, const char* name, const char* against, bool to_phone) {
  const auto size = static_cast<std::size_t>(state.range(0));
  const Shop& shop = shopOf(size);
  const outside::OracleGeodesic& ways = baselineOf(size).ways;
  std::vector<Point> sources = within(ways, pointsOf(to_phone ? shop.phones : shop.stops));
  if (to_phone) sources.resize(1);
  const std::vector<Point> stations = within(ways, shop.stations);
  std::vector<double> lengths;
  run(state, name, against, [&] { lengths = ways.lengths(sources, stations); });
  if (to_phone) {
    std::vector<double> of_all;
    for (std::size_t next = 0; const Point station : shop.stations)
      of_all.push_back(ways.holds(station) ? lengths[next++] : std::numeric_limits<double>::infinity());
    return countErrors(state, shop, of_all);
  }
  state.counters["answered"] = static_cast<double>(stations.size());
}

void geos(benchmark::State& state) {
  const Shop& shop = shopOf(static_cast<std::size_t>(state.range(0)));
  run(state, "GEOS, region", "phone, cold", [&] {
    benchmark::DoNotOptimize(
        outside::OracleRegion(shop.plan, 305, outside::Chords::InsideArc, 8).parts().size());
  });
}

constexpr double kGridCell_mm = 50;

GridBaseline gridOf(const Shop& shop) {
  return {shop.plan, floor::kMeasuringClearance_mm, kGridCell_mm};
}

void gridBuild(benchmark::State& state) {
  const Shop& shop = shopOf(static_cast<std::size_t>(state.range(0)));
  run(state, "grid, build", "phone, cold", [&] { benchmark::DoNotOptimize(gridOf(shop).rows()); });
}

void gridPhone(benchmark::State& state) {
  const Shop& shop = shopOf(static_cast<std::size_t>(state.range(0)));
  const GridBaseline grid = gridOf(shop);
  std::vector<double> lengths;
  run(state, "grid, phone", "phone, warm",
      [&] { lengths = grid.lengths(shop.phones[0].points[0], shop.stations); });
  countErrors(state, shop, lengths);
}

// Over free cells that are there already: the making of those is the grid's.
void recastBuild(benchmark::State& state) {
  const GridBaseline grid = gridOf(shopOf(static_cast<std::size_t>(state.range(0))));
  bool built = true;
  run(state, "Recast, build", "phone, cold", [&] { built = RecastBaseline(grid).built(); });
  if (!built) state.SkipWithError("Recast made no mesh");
}

void recastPhone(benchmark::State& state) {
  const Shop& shop = shopOf(static_cast<std::size_t>(state.range(0)));
  const RecastBaseline mesh(gridOf(shop));
  if (!mesh.built()) return state.SkipWithError("Recast made no mesh");
  std::vector<double> lengths;
  run(state, "Recast, phone", "phone, warm",
      [&] { lengths = mesh.lengths(shop.phones[0].points[0], shop.stations); });
  countErrors(state, shop, lengths);
}

// Lengths, as the baselines find them; and the same with each walk drawn.
BENCHMARK_CAPTURE(cold, phone_to_every_station, "phone, cold", phoneToEveryStation, floor::Paths::LengthsOnly)
    ->Apply(allSizes);
BENCHMARK_CAPTURE(cold, phone_drawn, "phone, drawn", phoneToEveryStation, floor::Paths::Drawn)
    ->Apply(allSizes);
BENCHMARK_CAPTURE(warm, phone_to_every_station, "phone, warm", phoneToEveryStation)->Apply(allSizes);
BENCHMARK_CAPTURE(cold, every_station_to_its_stop, "its stop, cold", everyStationToItsStop,
                  floor::Paths::LengthsOnly)
    ->Apply(allSizes);
BENCHMARK_CAPTURE(warm, every_station_to_its_stop, "its stop, warm", everyStationToItsStop)->Apply(allSizes);
BENCHMARK_CAPTURE(cold, every_station_to_any_stop, "any stop, cold", everyStationToAnyStop,
                  floor::Paths::LengthsOnly)
    ->Apply(allSizes);
BENCHMARK(gridBuild)->Apply(allSizesOnce);
BENCHMARK(gridPhone)->Apply(allSizesOnce);
BENCHMARK(recastBuild)->Apply(allSizesOnce);
BENCHMARK(recastPhone)->Apply(allSizesOnce);
BENCHMARK(geos)->Apply(allSizesOnce);
BENCHMARK_CAPTURE(cgal, phone_to_every_station, "CGAL, phone", "phone, cold", true)->Apply(allSizesOnce);
BENCHMARK_CAPTURE(cgal, every_station_to_any_stop, "CGAL, any stop", "any stop, cold", false)
    ->Apply(allSizesOnce);

}  // namespace
}  // namespace stopwalk::bench
