#pragma once

#include <cstdint>

#include "core/layout/layout.h"

namespace stopwalk::support {

// A shop drawn with a ruler: alike rooms side by side with doors in the middle of their walls, alike machines
// in rows and columns, stations and stops on several sides of each, cut-offs and phones in the middles of
// walls. Many walks are as long as another, and many run along a row of corners. One in three is turned as a
// whole. The same seed gives the same layout.
layout::Layout gridLayout(std::uint64_t seed);

}  // namespace stopwalk::support
