#pragma once

#include "core/layout/layout.h"

namespace stopwalk::support {

// The sizes that docs/speed.md speaks of.
struct ShopSize {
  const char* name;
  int rooms;
  int machines;
};
inline constexpr ShopSize kShopSizes[] = {
    {"small", 2, 20}, {"big", 6, 100}, {"factory", 30, 1000}, {"hall", 100, 10000}};

// An invented shop of that size: rooms side by side in several rows, thick and thin walls and walls of no
// thickness, doors to every neighbour, machines in rows with aisles, some turned, benches along the walls, a
// station and one or two devices on each machine, a cut-off in each room and a phone in one room of six. Out of
// doors from every other room of the first row; four tape checks. Everything can be walked to. Always the same.
layout::Layout shopLayout(const ShopSize& size);

}  // namespace stopwalk::support
