#include "core/inspection/moment.h"

#include <gtest/gtest.h>

#include <tuple>
#include <vector>

namespace stopwalk::inspection {
namespace {

TEST(Moment, IsReadAsItIsWritten) {
  for (const char* text :
       {"2026-03-02T09:15:00+01:00", "2024-02-29T23:59:59-11:30", "0001-01-01T00:00:00+00:00"}) {
    const auto moment = parseMoment(text);
    ASSERT_TRUE(moment) << text;
    EXPECT_EQ(momentText(*moment), text);
  }
}

TEST(Moment, RefusesWhatIsNone) {
  for (const char* text :
       {"", "2026-03-02", "2026-02-29T09:15:00+01:00", "2026-03-02T24:00:00+01:00",
        "2026-03-02T09:60:00+01:00", "2026-03-02T09:15:60+01:00", "2026-03-02T09:15:00Z",
        "2026-03-02 09:15:00+01:00", "2026-03-02T09:15:00+01:00 ", "2026-13-02T09:15:00+01:00",
        "2o26-03-02T09:15:00+01:00", "2026-03-02T09:15:00*01:00"})
    EXPECT_FALSE(parseMoment(text)) << text;
}

// Derived: 1970-01-01T00:00:00 UTC is 0; 2000-03-01 is day 11,017.
TEST(Moment, InstantsAreOfUtc) {
  EXPECT_EQ(instantOf(*parseMoment("1970-01-01T01:00:00+01:00")), 0);
  EXPECT_EQ(instantOf(*parseMoment("2000-02-29T23:59:59-01:30")), 11'017 * 86'400 + 5'399);
}

TEST(TypedMoment, TakesWhatPeopleType) {
  for (const auto& [text, second, zone] : std::vector<std::tuple<const char*, int, std::optional<int>>>{
           {"2026-03-02T09:15:00+01:00", 33'300, 60},
           {"2026-03-02 09:15", 33'300, {}},
           {"2026-03-02T09:15:07", 33'307, {}},
           {"2026-03-02 09:15Z", 33'300, 0},
           {"2026-03-02 00:00:01-11:30", 1, -690}}) {
    const auto typed = parseTyped(text);
    ASSERT_TRUE(typed) << text;
    EXPECT_EQ(dateText(typed->date), "2026-03-02");
    EXPECT_EQ(typed->second, second) << text;
    EXPECT_EQ(typed->zone_min, zone) << text;
  }
}

TEST(TypedMoment, RefusesWhatIsNone) {
  for (const char* text :
       {"", "2026-03-02", "2026-03-02 9:15", "2026-03-02 09", "2026-03-02 24:00", "2026-02-30 09:15",
        "2026-03-02 09:15:60", "2026-03-02 09:15 +01:00", "2026-03-02 09:15+1", "2026-03-02 09:15z",
        "2026-03-02_09:15", "yesterday", "02.03.2026 09:15", "2026-03-02 09:15:00+01:00x"})
    EXPECT_FALSE(parseTyped(text)) << text;
}

TEST(Date, MonthsEndWhereTheyEnd) {
  const auto after = [](const char* from, int months) {
    return dateText(monthsAfter(*parseDate(from), months));
  };
  EXPECT_EQ(after("2026-01-31", 1), "2026-02-28");
  EXPECT_EQ(after("2024-01-31", 1), "2024-02-29");
  EXPECT_EQ(after("2026-12-15", 1), "2027-01-15");
  EXPECT_EQ(after("2024-02-29", 12), "2025-02-28");
}

TEST(Date, DaysAreCounted) {
  const Date date = *parseDate("2026-02-27");
  EXPECT_EQ(dateText(daysAfter(date, 2)), "2026-03-01");
  for (int days = -800; days <= 800; days += 7) EXPECT_EQ(daysBetween(date, daysAfter(date, days)), days);
}

}  // namespace
}  // namespace stopwalk::inspection
