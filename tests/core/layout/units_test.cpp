#include "core/layout/units.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

namespace stopwalk::layout {
namespace {

using enum LengthUnit;

TEST(Number, IsTheWholeTextOrNone) {
  EXPECT_EQ(parseNumber("-12.5").value, -12.5);
  EXPECT_EQ(parseNumber("0").value, 0);
  EXPECT_EQ(parseNumber("0.5e3").value, 500);
  for (const char* text :
       {"", "-", ".", "abc", "+1", ".nan", ".inf", "nan", "inf", "-inf", "infinity", " 1", "~", "e5", "--1"})
    EXPECT_EQ(parseNumber(text).fault, NumberFault::NotANumber) << text;
  for (const char* text : {"010", "00", "-01", "08", "007.5"})
    EXPECT_EQ(parseNumber(text).fault, NumberFault::LeadingZero) << text;
  for (const char* text : {"12mm", "0x10", "1,5", "1_000", "1 ", "1.2.3", "1e", "12'"})
    EXPECT_EQ(parseNumber(text).fault, NumberFault::TrailingText) << text;
  for (const char* text : {"1e999", "-1e999"})
    EXPECT_EQ(parseNumber(text).fault, NumberFault::OutOfRange) << text;
}

TEST(Number, NegativeZeroIsZero) {
  EXPECT_FALSE(std::signbit(parseNumber("-0").value));
}

TEST(Number, TextIsShortestAndReadsBack) {
  EXPECT_EQ(numberText(0.1), "0.1");
  EXPECT_EQ(numberText(-0.0), "0");
  EXPECT_EQ(numberText(1e6), "1000000");
  EXPECT_EQ(numberText(12.5), "12.5");
  std::mt19937_64 random(1);
  for (int i = 0; i < 20000; ++i) {
    const double value = std::ldexp(static_cast<double>(random()), static_cast<int>(random() % 120) - 100);
    EXPECT_EQ(parseNumber(numberText(value)).value, value);
  }
}

TEST(Millimetres, AreTheNearestToTheExactProduct) {
  EXPECT_EQ(millimetres("4.035", Metre).value, 4035);
  EXPECT_EQ(millimetres("0.1", Metre).value, 100);
  EXPECT_EQ(millimetres("1", Inch).value, 25.4);
  EXPECT_EQ(millimetres("0.1", Inch).value, 2.54);
  EXPECT_EQ(millimetres("-3", Foot).value, -914.4);
  EXPECT_EQ(millimetres("0.7", Foot).value, 213.36);
  EXPECT_EQ(millimetres("1e3", Foot).value, 304800);
  EXPECT_FALSE(millimetres("1e307", Foot).ok());
}

TEST(FeetAndInches, ReadAsOnTheTape) {
  EXPECT_EQ(feetAndInches("12'"), 3657.6);
  EXPECT_EQ(feetAndInches("12' 6\""), 3810);
  EXPECT_EQ(feetAndInches("12' 6 1/2\""), 3822.7);
  EXPECT_EQ(feetAndInches("12'-6 1/2\""), 3822.7);
  EXPECT_EQ(feetAndInches("12'6\""), 3810);
  EXPECT_EQ(feetAndInches("-1' 6\""), -457.2);
  EXPECT_EQ(feetAndInches("3/4\""), 19.05);
  EXPECT_EQ(feetAndInches("6.25\""), 158.75);
  EXPECT_EQ(feetAndInches("30\""), 762);
}

TEST(FeetAndInches, RefuseWhatIsLikelyASlip) {
  for (const char* text :
       {"12",       "",         "'",        "\"",       "12' 14\"", "12' 6",    "12 6\"", "012'",
        "12' 06\"", "1' 3/2\"", "1' 1/0\"", "1' 0/4\"", "1.5'",     "1' 2' ",   "12''",   "1' 6\" ",
        " 1'",      "--1'",     "1' -6\"",  "1'  6\"",  "1234567'", "6 1 /2\"", "1/\"",   "6.\""})
    EXPECT_EQ(feetAndInches(text), std::nullopt) << text;
}

std::optional<double> readBack(const std::string& text, LengthUnit unit) {
  if (text.find_first_of("'\"") != std::string::npos) return feetAndInches(text);
  const Number number = millimetres(text, unit);
  return number.ok() ? std::optional(number.value) : std::nullopt;
}

TEST(LengthText, ReadsBackToTheSameBitsInEveryUnit) {
  std::mt19937_64 random(2);
  std::uniform_real_distribution<double> anywhere(-kLongest, kLongest), near(-10, 10);
  for (int i = 0; i < 5000; ++i) {
    const double values[] = {anywhere(random), near(random), std::round(anywhere(random)),
                             std::round(near(random) * 64) * 25.4 / 64, std::ldexp(near(random), -30)};
    for (const double mm : values)
      for (const LengthUnit unit : {Millimetre, Metre, Inch, Foot})
        ASSERT_EQ(readBack(lengthText(mm, unit), unit), mm) << lengthText(mm, unit);
  }
}

TEST(LengthText, IsWhatAPersonWouldWrite) {
  EXPECT_EQ(lengthText(1200, Millimetre), "1200");
  EXPECT_EQ(lengthText(1200, Metre), "1.2");
  EXPECT_EQ(lengthText(-0.5, Metre), "-0.0005");
  EXPECT_EQ(lengthText(25.4 * 6.5, Inch), "6.5");
  EXPECT_EQ(lengthText(3822.7, Foot), "12' 6 1/2\"");
  EXPECT_EQ(lengthText(3657.6, Foot), "12'");
  EXPECT_EQ(lengthText(-19.05, Foot), "-3/4\"");
  EXPECT_EQ(lengthText(0, Foot), "0");
  EXPECT_EQ(lengthText(1, Foot).substr(0, 5), "0.003");
}

TEST(ParseLength, TakesWhatPeopleType) {
  EXPECT_EQ(parseLength("900", Millimetre), 900);
  EXPECT_EQ(parseLength(" 1.2 m ", Millimetre), 1200);
  EXPECT_EQ(parseLength("90cm", Foot), 900);
  EXPECT_EQ(parseLength("900 mm", Inch), 900);
  EXPECT_EQ(parseLength("4' 6\"", Millimetre), 1371.6);
  EXPECT_EQ(parseLength("3 ft", Metre), 914.4);
  EXPECT_EQ(parseLength("2 in", Metre), 50.8);
  EXPECT_EQ(parseLength("3", Foot), 914.4);
  for (const char* text : {"", "m", "1.2 km", "1 2", "11 km", "10000001", "1e9 m", "nan"})
    EXPECT_EQ(parseLength(text, Millimetre), std::nullopt) << text;
}

TEST(FormatLength, IsShortAndHasItsUnit) {
  EXPECT_EQ(formatLength(1234.4, Millimetre), "1234 mm");
  EXPECT_EQ(formatLength(1200, Metre), "1.2 m");
  EXPECT_EQ(formatLength(-0.2, Millimetre), "0 mm");
  EXPECT_EQ(formatLength(25.4, Inch), "1 in");
  EXPECT_EQ(formatLength(1371.6, Foot), "4' 6\"");
  EXPECT_EQ(formatLength(0, Foot), "0'");
  EXPECT_EQ(formatLength(304.8 - 0.01, Foot), "1'");
}

}  // namespace
}  // namespace stopwalk::layout
