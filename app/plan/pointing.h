#pragma once

// How near is near enough, the same for every tool.
namespace stopwalk::plan {

inline constexpr double kHit_px = 6;    // round a thing
inline constexpr double kSnap_px = 10;  // to what a place is pulled to
inline constexpr double kDrag_px = 10;  // the pointer may slip so far in a click, as Qt has it
inline constexpr double kGrid_mm = 10;

}  // namespace stopwalk::plan
