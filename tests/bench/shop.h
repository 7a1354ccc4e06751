#pragma once

#include <cstddef>
#include <vector>

#include "core/floor/plan.h"
#include "core/floor/walks.h"
#include "tests/support/shop_layout.h"

namespace stopwalk::bench {

// One of the benchmark's shops, and the places that its audit asks about.
struct Shop {
  explicit Shop(const support::ShopSize& size);

  floor::Plan plan;
  std::vector<floor::Point> stations;
  std::vector<floor::Place> stops;                    // standing places of all that stops a machine
  std::vector<std::vector<floor::Place>> candidates;  // for each station: those that stop its machine
  std::vector<floor::Place> phones;
};

// Of kShopSizes; built on first use.
const Shop& shopOf(std::size_t size);

}  // namespace stopwalk::bench
