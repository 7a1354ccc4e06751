#include "core/audit/wording.h"

#include <gtest/gtest.h>

namespace stopwalk::audit {
namespace {

using layout::LengthUnit;

TEST(Wording, DecimalsWithoutTrailingZeros) {
  EXPECT_EQ(decimal(4.2), "4.2");
  EXPECT_EQ(decimal(12), "12");
  EXPECT_EQ(decimal(0.654), "0.65");
  EXPECT_EQ(decimal(-0.001), "0");
  EXPECT_EQ(decimal(1e7), "10000000");
}

TEST(Wording, LengthsInTheUnitsOfTheShop) {
  EXPECT_EQ(lengthText(4.2, LengthUnit::Millimetre), "4.2 m");
  EXPECT_EQ(lengthText(0.3048, LengthUnit::Foot), "1'");
  EXPECT_EQ(lengthText(0.0254 * 6.5, LengthUnit::Foot), "6 1/2\"");
  EXPECT_EQ(lengthText(0.0254 * 150.75, LengthUnit::Inch), "12' 6 3/4\"");
  EXPECT_EQ(lengthText(0.0254 * 144.25, LengthUnit::Foot), "12' 1/4\"");
  EXPECT_EQ(lengthText(0, LengthUnit::Foot), "0\"");
}

TEST(Wording, WhatBreaksALimitLooksDifferentFromIt) {
  EXPECT_EQ(lengthText(5.001, 5, LengthUnit::Metre), "5.001 m");
  EXPECT_EQ(lengthText(5.1, 5, LengthUnit::Metre), "5.1 m");
  EXPECT_EQ(lengthText(0.3048 + 0.001, 0.3048, LengthUnit::Foot), "1' 1/32\"");
}

TEST(Wording, ListsForPeople) {
  EXPECT_EQ(listed({"a"}), "a");
  EXPECT_EQ(listed({"a", "b"}), "a and b");
  EXPECT_EQ(listed({"a", "b", "c", "d", "e"}), "a, b, c, d and e");
  EXPECT_EQ(listed({"a", "b", "c", "d", "e", "f"}), "a, b, c, d and 2 more");
}

}  // namespace
}  // namespace stopwalk::audit
