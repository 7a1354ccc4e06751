#pragma once

#include <algorithm>
#include <functional>
#include <optional>
#include <unordered_map>
#include <utility>
#include <vector>

#include "core/floor/route_search.h"
#include "core/floor/steps.h"
#include "core/floor/turns.h"
#include "core/geometry/numbers_hash.h"

namespace stopwalk::floor {

// Everything about the ends of walks at one place: the points it steps out to, and for a line, its stretches.
struct Ends {
  std::vector<Exit> exits;
  std::vector<PartLanding> landings;
  bool refused = false;      // a step that a body does not follow was not taken
  std::optional<bool> sure;  // of a piece of the floor: whether they are those of the whole
  bool takesNoStep() const { return exits.size() == 1 && exits.front().piece == Region::kNone; }
  // Whether all its steps lead to one part, and none was refused.
  bool ofOnePart() const {
    if (refused) return false;
    const Mesh::Index part =
        exits.empty() ? landings.empty() ? Mesh::kNone : landings.front().part : exits.front().part;
    return std::all_of(exits.begin(), exits.end(), [&](const Exit& e) { return e.part == part; }) &&
           std::all_of(landings.begin(), landings.end(),
                       [&](const PartLanding& l) { return l.part == part; });
  }
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

using EndsTable = std::unordered_map<Segment, Ends, geometry::NumbersHash>;

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

  Ends& ends(const Segment& local) {
    const auto [it, fresh] = ends_.try_emplace(local);
    if (fresh) {
      const std::size_t refused_before = steps_.refused();
      if (local.a == local.b) {
        it->second.exits = steps_.from(local.a);
      } else {
        it->second.landings = steps_.fromLine(local.a, local.b);
      }
      it->second.refused = steps_.refused() != refused_before;
    }
    return it->second;
  }

  EndsTable takeEnds() { return std::move(ends_); }
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
  EndsTable ends_;
};

}  // namespace stopwalk::floor
