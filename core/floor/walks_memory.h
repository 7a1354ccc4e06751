#pragma once

#include <functional>
#include <memory>
#include <optional>
#include <span>
#include <vector>

#include "core/floor/floor_pieces.h"
#include "core/floor/known_walks.h"
#include "core/floor/walk_change.h"
#include "core/floor/walk_finder.h"
#include "core/floor/walks.h"

namespace stopwalk::floor {

// The floor without what is being moved, kept while that is: where it is put next only takes floor away. A
// walk found here that keeps clear of it is therefore still the shortest.
struct Lifted {
  std::vector<std::size_t> solids;  // that are moved: into the plan's
  Walks floor;
  std::unique_ptr<const WalkChange> back = nullptr;  // that they stand where they do
  Walks::Count count = {};                           // of the answers given since then
  // Those that what was put back leaves as they are.
  std::optional<Nearest> nearest(Point from, std::span<const Place> to, double at_most);
  void nearestForAll(std::span<const Point> from, std::span<const Place> to, const FloorPieces::Give& give);
};

// What walks are made of, and what is known of them.
struct Walks::Memory {
  Memory(const Plan& of, double at, Paths drawn) : plan(of), clearance(at), paths(drawn), known(at) {}

  Plan plan;
  double clearance;
  Paths paths;
  bool remembers = false;
  KnownWalks known;
  std::size_t found = 0;
  std::size_t sought = 0;  // in pieces
  std::unique_ptr<WalkFinder> finder;
  std::unique_ptr<FloorPieces> pieces;
  std::unique_ptr<Lifted> lifted;  // once something is moved; then `known` is of this very floor only
  KnownWalks before{0};            // the move
  std::vector<Segment> touched;    // by the last move
  std::unique_ptr<const WalkChange> put_back_before;  // where the moved stood until the last move
  bool lifted_just_now = false;                       // by the last move

  // In a piece of the floor is sought what a change has taken away: few walks, near the change.
  FloorPieces* usePieces(std::size_t walks);
  Guess likely(const KnownWalks::Group& group, Point from, Asked asked);
  void note(KnownWalks::Group& group, Point from, const Nearest& nearest, double at_most) {
    ++found;
    known.note(group, from, {nearest, at_most});
  }
  // Puts down what was lifted, and lifts these. Whether the parts of the floor stay.
  bool lift(std::vector<std::size_t> solids);
  void putBack();
};

}  // namespace stopwalk::floor
