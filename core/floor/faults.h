#pragma once

#include <cstddef>
#include <span>
#include <string>
#include <vector>

#include "core/floor/floor_index.h"
#include "core/floor/plan.h"
#include "core/layout/layout.h"

namespace stopwalk::floor {

inline constexpr double kFromRoom_mm = 100;      // a wall device or phone may be this far outside
inline constexpr double kMachineOverlap_mm = 1;  // what stands closer only touches

// What is wrong with an outline, as the end of a sentence; empty if nothing.
std::string outlineTrouble(const Polygon& outline);

// The faults that show once rooms, passages and solids are built, in the order of the file: rooms that
// overlap, machines without a room or standing in one another, stations off the floor, devices and
// phones away from every room.
std::vector<Fault> placementFaults(const layout::Layout& layout, const Plan& plan, const FloorIndex& index);
// Those of these machines only, stations included.
std::vector<Fault> placementFaults(const layout::Layout& layout, const Plan& plan, const FloorIndex& index,
                                   std::span<const std::size_t> machines);

}  // namespace stopwalk::floor
