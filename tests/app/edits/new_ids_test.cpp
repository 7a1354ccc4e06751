#include "app/edits/new_ids.h"

#include <gtest/gtest.h>

namespace stopwalk::edits {
namespace {

TEST(NewIds, CountOn) {
  Ids taken{"saw", "lathe-1", "lathe-2", "d9", "9", "x-123456789012"};
  EXPECT_EQ(freshId(taken, "saw"), "saw-2");
  EXPECT_EQ(freshId(taken, "saw"), "saw-3");
  EXPECT_EQ(freshId(taken, "lathe-1"), "lathe-3");
  EXPECT_EQ(freshId(taken, "lathe-5"), "lathe-5");
  EXPECT_EQ(freshId(taken, "d9"), "d10");
  EXPECT_EQ(freshId(taken, "9"), "9-2");
  EXPECT_EQ(freshId(taken, "x-123456789012"), "x-123456789012-2");
}

TEST(NewIds, NamesCountOnBehindASpace) {
  Ids taken{"Table saw", "Welder M200", ""};
  EXPECT_EQ(freshName(taken, "Table saw"), "Table saw 2");
  EXPECT_EQ(freshName(taken, "Table saw 2"), "Table saw 3");
  EXPECT_EQ(freshName(taken, "Welder M200"), "Welder M200 2");
  EXPECT_EQ(freshName(taken, ""), "");
}

TEST(NewIds, ComeFromNames) {
  EXPECT_EQ(idFrom("Table saw 2", "x"), "table-saw-2");
  EXPECT_EQ(idFrom("  (Yard)  phone! ", "x"), "yard-phone");
  EXPECT_EQ(idFrom("木", "room"), "room");
  EXPECT_EQ(idFrom("", "room"), "room");
}

}  // namespace
}  // namespace stopwalk::edits
