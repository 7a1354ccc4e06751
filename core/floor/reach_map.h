#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <vector>

#include "core/floor/plan.h"
#include "core/floor/walks.h"
#include "core/geometry/box.h"

namespace stopwalk::floor {

// What is known of one sample. Only a walk has a length.
enum class Sampled : std::uint8_t {
  OffFloor,
  Walk,        // at the measuring clearance
  OnlyNarrow,  // a body gets there, through a gap narrower than twice the clearance; not measured
  NoWay,       // to none of the places
};

// How far it is to walk from everywhere to the nearest of some places: samples on an upright grid over the
// floor, each the walk that `Walks::nearest` finds from there at the measuring clearance (to 0.02 mm), step
// out included. Between the samples nothing is known but what stands there: whether a wall or solid crosses
// the line to the next one. Sample (column, row) lies at `at(column, row)`; columns to the right, rows up.
class ReachMap {
 public:
  // An empty map: no columns, no rows.
  ReachMap() = default;
  // Samples `step_mm` > 0 apart, at the same places whatever the plan, so that one that changes a little
  // keeps its grid. Everywhere NoWay if there are no places. `walks` are those of the plan. Cost: see
  // docs/speed.md.
  ReachMap(const Plan& plan, const Walks& walks, std::span<const Place> to, double step_mm);

  double step_mm() const { return step_; }
  int columns() const { return columns_; }
  int rows() const { return rows_; }
  Point at(int column, int row) const { return low_ + step_ * Point{double(column), double(row)}; }

  Sampled state(int column, int row) const { return states_[index(column, row)]; }
  // None unless the state is Walk.
  std::optional<double> length_mm(int column, int row) const;
  // The longest of all; none if there is no walk at all.
  std::optional<double> longest_mm() const { return longest_; }

  // Whether nothing stands on the straight line to the next sample to the right, or above.
  bool openRight(int column, int row) const { return !shut_right_[index(column, row)]; }
  bool openUp(int column, int row) const { return !shut_up_[index(column, row)]; }

 private:
  std::size_t index(int column, int row) const {
    return static_cast<std::size_t>(row) * static_cast<std::size_t>(columns_) +
           static_cast<std::size_t>(column);
  }
  void markCrossed(const Plan& plan);
  void markCrossed(Segment wall);

  double step_ = 1;
  Point low_;
  int columns_ = 0, rows_ = 0;
  std::vector<Sampled> states_;
  std::vector<double> lengths_;
  std::vector<bool> shut_right_, shut_up_;
  std::optional<double> longest_;
};

// The finest round step (50, 100, 200, 250, 500 mm, 1 m ...) at which the box of the floor has no more than
// so many samples.
double stepFor(const Plan& plan, std::size_t most_samples);

}  // namespace stopwalk::floor
