// The program's numbers against published ones. Each check names its source, and says where a value is only
// derived or common practice. Approach distances of machinery (ISO 13855) are not used by the
// program and not checked here; nor are letter heights of signs, which belong to the posters.
#include <gtest/gtest.h>

#include "core/audit/context.h"
#include "core/audit/profile.h"
#include "core/audit/rule.h"
#include "core/floor/surroundings.h"
#include "core/floor/walks.h"
#include "core/layout/units.h"

namespace stopwalk::outside {
namespace {

using layout::LengthUnit;

double fromFeet(const char* text) {
  return layout::millimetres(text, LengthUnit::Foot).value;
}
double fromInches(const char* text) {
  return layout::millimetres(text, LengthUnit::Inch).value;
}

// Published: standing forward grip reach of the 5th percentile woman 25.8 in (655 mm), Pheasant, Bodyspace,
// 1996, as tabulated; EN 859:2007 cl. 5.2.2 b): controls not more than 650 mm from the front edge of the
// table.
TEST(PublishedValues, HandReachIsThatOfASmallPerson) {
  EXPECT_EQ(floor::kHandReach_mm, 650);
  EXPECT_LE(floor::kHandReach_mm, 655);
  EXPECT_NEAR(fromInches("25.8"), 655, 0.5);
}

// Published: functional reach 26.7 in = 67.7 cm, extended 28.9 in = 73.5 cm, 34.9 in = 88.6 cm (NUREG-0700
// rev. 3, Table 11.4). Its inches are rounded to a tenth, so they agree to 1.3 mm.
TEST(PublishedValues, TabulatedReachesConvert) {
  EXPECT_NEAR(fromInches("26.7"), 677, 1.3);
  EXPECT_NEAR(fromInches("28.9"), 735, 1.3);
  EXPECT_NEAR(fromInches("34.9"), 886, 1.3);
}

// Published: NFPA 101 sec. 7.6.1, as quoted: 1 ft (305 mm) clearance. 12 in are 304.8 mm; the rule's own
// metric value is used.
TEST(PublishedValues, MeasuringClearanceIsOneFoot) {
  EXPECT_EQ(floor::kMeasuringClearance_mm, 305);
  EXPECT_NEAR(fromFeet("1"), floor::kMeasuringClearance_mm, 0.25);
}

// Published: 3.5 ft/s (MUTCD 2009 sec. 4E.06, as answered by the FHWA); 3.0 and 4.0 ft/s of the same text and
// its forerunner.
TEST(PublishedValues, WalkingSpeed) {
  EXPECT_NEAR(fromFeet("3.5") / 1000, audit::kSpeed_m_s, 0.0005);
  EXPECT_NEAR(fromFeet("3.0") / 1000, 0.914, 0.0005);
  EXPECT_NEAR(fromFeet("4.0") / 1000, 1.219, 0.0005);
}

// Published, worked: a crossing of 130 ft takes 37.1 s at 3.5 ft/s (discussion of MUTCD 2009).
TEST(PublishedValues, WorkedCrossing) {
  EXPECT_NEAR(audit::secondsFor(fromFeet("130") / 1000) - audit::kReaction_s, 37.1, 0.05);
}

// Published: 1.5 s for a surprised driver (Green, Transportation Human Factors 2(3), 2000, abstract): not
// shop users.
TEST(PublishedValues, Reaction) {
  EXPECT_EQ(audit::secondsFor(0), 1.5);
}

// Derived, t = 1.5 + d / v: 5 m at 1.2 m/s 5.667 s, with 10 s of run-down 15.667 s. The program walks
// at 1.067 m/s: the same form, so the distance is scaled by the speeds.
TEST(PublishedValues, TimeVectors) {
  const double at_1_2 = 5 * audit::kSpeed_m_s / 1.2;
  EXPECT_NEAR(audit::secondsFor(at_1_2), 5.667, 0.0005);
  EXPECT_NEAR(audit::secondsFor(at_1_2, 10), 15.667, 0.0005);
  EXPECT_NEAR(audit::secondsFor(5), 6.186, 0.0005);
  EXPECT_NEAR(audit::secondsFor(10.67) - audit::kReaction_s, 10, 0.001);
}

// ANSI Z358.1-2004, appendix B5 (not mandatory): about 55 ft in 10 s, 1.676 m/s. Derived: 15.7 s at 3.5 ft/s.
TEST(PublishedValues, FiftyFiveFeet) {
  EXPECT_NEAR(fromFeet("55") / 1000 / 10, 1.676, 0.0005);
  EXPECT_NEAR(audit::secondsFor(fromFeet("55") / 1000) - audit::kReaction_s, 15.7, 0.05);
}

struct Conversion {
  const char* feet;
  double metres;
};

// Published in feet, converted (derived, x 0.3048, to the centimetre): fire extinguishers 75, 50 and 30 ft
// (NFPA 10, as quoted); eyewash 55 ft (ANSI Z358.1-2004) and 100 ft (1990); alarm box 200 ft and 5 ft (IFC
// 907.4.2, as quoted); exit access 200 and 250 ft (IBC Table 1017.2); defibrillator 450 and 900 ft (placement
// guideline).
TEST(PublishedValues, FeetOfTravelLimits) {
  for (const Conversion& c : {Conversion{"75", 22.86},
                              {"50", 15.24},
                              {"30", 9.14},
                              {"55", 16.76},
                              {"100", 30.48},
                              {"200", 60.96},
                              {"250", 76.2},
                              {"5", 1.52},
                              {"3.5", 1.07},
                              {"450", 137.2},
                              {"900", 274.3}})
    EXPECT_NEAR(fromFeet(c.feet) / 1000, c.metres, c.metres > 100 ? 0.05 : 0.005) << c.feet << " ft";
}

// Published with both units: 28 in (71.1 cm) 29 CFR 1910.36(g)(2); 48 in (1220 mm) and 15 in (380 mm) ADA
// 2010 308.2.1; 44 in (1120 mm) 308.2.2. The metric ones are rounded to 10 mm there.
TEST(PublishedValues, InchesOfTheLawsConvert) {
  EXPECT_NEAR(fromInches("28"), 711, 0.5);
  EXPECT_NEAR(fromInches("48"), 1220, 5);
  EXPECT_NEAR(fromInches("15"), 380, 5);
  EXPECT_NEAR(fromInches("44"), 1120, 5);
}

double limitOf(const char* rule) {
  return audit::defaultProfile().of(*audit::findRule(rule)).limit();
}

// Published: run-down of ten seconds or less, HSE Woodworking Information Sheet 38 rev. 1; exit access 28 in,
// 29 CFR 1910.36(g)(2); accessible reach 1220 mm, ADA 2010 308.2.1. House rules: 5 m to a stop, 30 m to a
// phone.
TEST(PublishedValues, LimitsOfTheTeachingShop) {
  EXPECT_EQ(limitOf("slow-run-down"), 10);
  EXPECT_NEAR(limitOf("exit-width"), fromInches("28") / 1000, 0.0005);
  EXPECT_NEAR(limitOf("actuator-height-access"), 1.22, 1e-9);
  EXPECT_EQ(limitOf("stop-too-far"), 5);
  EXPECT_EQ(limitOf("phone-too-far"), 30);
}

}  // namespace
}  // namespace stopwalk::outside
