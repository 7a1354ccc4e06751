#include "app/window/day_change.h"

#include <gtest/gtest.h>

namespace stopwalk::window {
namespace {

TEST(DayChange, TellsEachNewDayOnceAndAlsoADayThatIsSetBack) {
  QDate day(2026, 2, 28);
  DayChange change([&] { return day; });
  int told = 0;
  QObject::connect(&change, &DayChange::changed, [&] { ++told; });

  change.look();
  EXPECT_EQ(told, 0);
  day = day.addDays(1);
  change.look();
  change.look();
  EXPECT_EQ(told, 1);
  day = day.addDays(-3);  // a clock that was wrong
  change.look();
  EXPECT_EQ(told, 2);
}

}  // namespace
}  // namespace stopwalk::window
