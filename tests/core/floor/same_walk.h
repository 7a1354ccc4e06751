#pragma once

#include <gtest/gtest.h>

#include "core/floor/walks.h"

namespace stopwalk::floor {

// A thousandth of the last digit that a report gives. What a length is measured from may be rounded another
// way.
inline constexpr double kSameWalk_mm = 1e-9;

inline void expectSame(const Nearest& a, const Nearest& b) {
  EXPECT_EQ(a.index, b.index);
  EXPECT_EQ(a.walk.status, b.walk.status);
  EXPECT_NEAR(a.walk.length_mm, b.walk.length_mm, kSameWalk_mm);
  ASSERT_EQ(a.walk.path.size(), b.walk.path.size());
  for (std::size_t i = 0; i < a.walk.path.size(); ++i)
    EXPECT_LT(distance(a.walk.path[i], b.walk.path[i]), kSameWalk_mm);
}

}  // namespace stopwalk::floor
