#pragma once

#include <algorithm>
#include <cstdint>
#include <cstring>
#include <functional>
#include <optional>
#include <unordered_map>
#include <utility>
#include <vector>

#include "core/floor/route_search.h"
#include "core/floor/steps.h"
#include "core/floor/turns.h"

namespace stopwalk::floor {

struct SegmentHash {
  std::size_t operator()(const Segment& s) const {
    std::size_t h = 0;
    for (double v : {s.a.x, s.a.y, s.b.x, s.b.y}) {
      std::uint64_t bits = 0;
      std::memcpy(&bits, &v, sizeof bits);
      h = (h ^ bits) * 0x9e3779b97f4a7c15ULL;
      h ^= h >> 29;
    }
    return h;
  }
};

// Everything about the ends of walks at one place: the points it steps out to, and for a line, its stretches.
struct Ends {
  std::vector<Exit> exits;
  std::vector<PartLanding> landings;
  bool has(Mesh::Index part) const {
    return std::any_of(exits.begin(), exits.end(), [&](const Exit& e) { return e.part == part; }) ||
           std::any_of(landings.begin(), landings.end(),
                       [&](const PartLanding& l) { return l.part == part; });
  }
  bool joins(const Ends& other) const {
    return std::any_of(exits.begin(), exits.end(), [&](const Exit& e) { return other.has(e.part); }) ||
           std::any_of(landings.begin(), landings.end(),
                       [&](const PartLanding& l) { return other.has(l.part); });
  }
};

// The walkable region at one clearance, with all that walks in it need, made when first asked for.
class Layer {
 public:
  Layer(const Mesh& mesh, const WallGrid& grid, double clearance, std::function<const Region&()> body)
      : mesh_(mesh),
        grid_(grid),
        clearance_(clearance),
        region_(mesh, grid, clearance),
        steps_(mesh, grid, region_, std::move(body)) {}

  double clearance() const { return clearance_; }
  const Region& region() const { return region_; }

  const Ends& ends(const Segment& local) {
    const auto [it, fresh] = ends_.try_emplace(local);
    if (fresh) {
      if (local.a == local.b) {
        it->second.exits = steps_.from(local.a);
      } else {
        it->second.landings = steps_.fromLine(local.a, local.b);
      }
    }
    return it->second;
  }

  // Of a point, for once: not remembered.
  std::vector<Exit> exits(Point local) const { return steps_.from(local); }

  RouteSearch& search() {
    if (!search_) {
      turns_.emplace(mesh_, region_);
      search_.emplace(mesh_, grid_, region_, *turns_);
    }
    search_->clear();
    return *search_;
  }

 private:
  const Mesh& mesh_;
  const WallGrid& grid_;
  double clearance_;
  Region region_;
  Steps steps_;
  std::optional<Turns> turns_;
  std::optional<RouteSearch> search_;
  std::unordered_map<Segment, Ends, SegmentHash> ends_;
};

}  // namespace stopwalk::floor
