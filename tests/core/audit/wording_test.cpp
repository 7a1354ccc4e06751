#include "core/audit/wording.h"

#include <gtest/gtest.h>

#include <string>

#include "core/audit/counted.h"
#include "tests/support/random.h"

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

// Inches, of feet and inches in words.
double inches(const std::string& text) {
  double sum = 0, number = 0;
  std::string part;
  const auto take = [&](double unit) {
    const std::size_t slash = part.find('/');
    number =
        slash == std::string::npos ? std::stod(part) : std::stod(part) / std::stod(part.substr(slash + 1));
    sum += number * unit;
    part.clear();
  };
  for (const char c : text) {
    if (c == '\'')
      take(12);
    else if (c == ' ' || c == '"') {
      if (!part.empty()) take(1);
    } else
      part += c;
  }
  return sum;
}

// 1.7 m are 66.93 inches: whoever hangs a button at 5' 7" must not read that up to 5' 7" is in order.
TEST(Wording, ABrokenLimitReadsAsBroken) {
  EXPECT_EQ(limitText(1.7, 1.7018, LengthUnit::Foot), "5' 6 15/16\"");
  EXPECT_EQ(lengthText(1.7018, 1.7, LengthUnit::Foot), "5' 7\"");
  EXPECT_EQ(limitText(1.7, 1.9, LengthUnit::Foot), "5' 7\"");
  EXPECT_EQ(limitText(1.7, 1.70001, LengthUnit::Millimetre), "1.7 m");
  support::Random random(1);
  for (int i = 0; i < 20000; ++i) {
    const double limit = random.between(0.3, 6),
                 apart = random.between(5e-6, random.chance(0.5) ? 0.002 : 0.02);
    const double measured = random.chance(0.5) ? limit + apart : limit - apart;
    const std::string said = lengthText(measured, limit, LengthUnit::Foot),
                      asked = limitText(limit, measured, LengthUnit::Foot);
    EXPECT_EQ(inches(said) > inches(asked), measured > limit) << said << " of " << asked;
    EXPECT_NE(said, asked);
  }
}

TEST(Wording, ListsForPeople) {
  EXPECT_EQ(listed({"a"}), "a");
  EXPECT_EQ(listed({"a", "b"}), "a and b");
  EXPECT_EQ(listed({"a", "b", "c", "d", "e"}), "a, b, c, d and e");
  EXPECT_EQ(listed({"a", "b", "c", "d", "e", "f"}), "a, b, c, d and 2 more");
}

TEST(Wording, OneIsNotSeveral) {
  EXPECT_EQ(counted(0, "machine"), "0 machines");
  EXPECT_EQ(counted(1, "machine"), "1 machine");
  EXPECT_EQ(counted(2, "machine"), "2 machines");
  EXPECT_EQ(counted(1, Verdict::Fails), "1 fails");
  EXPECT_EQ(counted(2, Verdict::Warns), "2 warn");
  EXPECT_EQ(counted(0, Verdict::Meets), "0 meet");
}

TEST(Wording, ALimitIsExact) {
  using enum layout::LengthUnit;
  EXPECT_EQ(limitText(0.795, Millimetre), "0.795 m");
  EXPECT_EQ(limitText(5, Millimetre), "5 m");
  EXPECT_EQ(limitText(0.65, Foot), "2' 1 1/2\"");
  EXPECT_EQ(limitSecondsText(15.25), "15.25 s");
  EXPECT_EQ(secondsText(15.02, 15), "15.02 s") << "told apart from the limit";
  EXPECT_EQ(secondsText(15.21, 15), "15.2 s");
}

TEST(Wording, InAColumnNoZeroIsDropped) {
  using enum layout::LengthUnit;
  EXPECT_EQ(lengthCell(12, Millimetre), "12.00 m");
  EXPECT_EQ(lengthCell(12.5, Metre), "12.50 m");
  EXPECT_EQ(lengthCell(0.004, Metre), "0.00 m");
  EXPECT_EQ(lengthCell(0.3048, Foot), "1'");
  EXPECT_EQ(secondsCell(4), "4.0 s");
}

}  // namespace
}  // namespace stopwalk::audit
