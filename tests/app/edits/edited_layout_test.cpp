#include "app/edits/edited_layout.h"

#include <gtest/gtest.h>

#include "app/edits/add_things.h"
#include "app/edits/layout_difference.h"
#include "tests/support/random_layout.h"

namespace stopwalk::edits {
namespace {

using layout::Layout;

Layout layoutOf(std::uint64_t seed) {
  return support::randomLayout(seed);
}

TEST(LayoutDifference, LeadsFromAnyLayoutToAnyOtherAndBack) {
  for (std::uint64_t seed = 0; seed < 200; ++seed) {
    const Layout before = layoutOf(seed), after = layoutOf(seed + 1000);
    const LayoutDifference difference(before, after);
    EXPECT_FALSE(difference.empty()) << seed;
    Layout layout = before;
    difference.redo(layout);
    EXPECT_EQ(layout, after) << seed;
    difference.undo(layout);
    EXPECT_EQ(layout, before) << seed;
  }
}

TEST(LayoutDifference, IsEmptyBetweenEqualLayouts) {
  EXPECT_TRUE(LayoutDifference(layoutOf(1), layoutOf(1)).empty());
}

Edit renameSite(const Layout& layout, const std::string& name, const QString& merge_key = {}) {
  Edit edit{"Rename the workshop", layout, merge_key};
  edit.after.site.name = name;
  return edit;
}

TEST(EditedLayout, KeepsAnEditAsOneNamedStep) {
  EditedLayout edited;
  const Layout before = edited.layout();
  ASSERT_TRUE(edited.apply(renameSite(edited.layout(), "Tin shed")));
  EXPECT_EQ(edited.history().undoText(), "Rename the workshop");
  EXPECT_EQ(edited.layout().site.name, "Tin shed");
  edited.history().undo();
  EXPECT_EQ(edited.layout(), before);
  edited.history().redo();
  EXPECT_EQ(edited.layout().site.name, "Tin shed");
}

TEST(EditedLayout, MakesNoStepOfAnEditThatChangesNothing) {
  EditedLayout edited;
  EXPECT_FALSE(edited.apply(renameSite(edited.layout(), "")));
  EXPECT_EQ(edited.history().count(), 0);
}

TEST(EditedLayout, RefusesWhileForLookingOnlyAndSaysWhy) {
  EditedLayout edited;
  QString why;
  QObject::connect(&edited, &EditedLayout::refused, [&](const QString& text) { why = text; });
  edited.setReadOnly(true);
  EXPECT_FALSE(edited.apply(renameSite(edited.layout(), "")));
  EXPECT_EQ(why, "") << "nothing was to be changed";
  EXPECT_FALSE(edited.apply(renameSite(edited.layout(), "Tin shed")));
  EXPECT_TRUE(why.contains("looking only"));
  EXPECT_EQ(edited.layout(), Layout());
  EXPECT_EQ(edited.history().count(), 0);
  edited.setReadOnly(false);
  EXPECT_TRUE(edited.apply(renameSite(edited.layout(), "Tin shed")));
}

TEST(EditedLayout, SaysWhyAStepCannotBe) {
  EditedLayout edited;
  QString why;
  QObject::connect(&edited, &EditedLayout::refused, [&](const QString& text) { why = text; });
  EXPECT_FALSE(edited.apply(addPhone(edited.layout(), "Yard phone", {1.1e7, 0}, 0).edit));
  EXPECT_TRUE(why.contains("10 km"));
  EXPECT_EQ(edited.history().count(), 0);
}

TEST(EditedLayout, MergesOnlyStepsOfOneKeyWithoutAPause) {
  EditedLayout edited;
  edited.apply(renameSite(edited.layout(), "T", "site name"));
  edited.apply(renameSite(edited.layout(), "Ti", "site name"));
  EXPECT_EQ(edited.history().count(), 1);
  edited.apply(renameSite(edited.layout(), "Tin", "another field"));
  EXPECT_EQ(edited.history().count(), 2);
  edited.pause();
  edited.apply(renameSite(edited.layout(), "Tins", "another field"));
  EXPECT_EQ(edited.history().count(), 3);
  edited.apply(renameSite(edited.layout(), "Tin s", ""));
  edited.apply(renameSite(edited.layout(), "Tin sh", ""));
  EXPECT_EQ(edited.history().count(), 5);
  while (edited.history().canUndo()) edited.history().undo();
  EXPECT_EQ(edited.layout(), Layout());
}

TEST(EditedLayout, DropsAMergedStepThatComesBackToTheBeginning) {
  EditedLayout edited;
  edited.apply(renameSite(edited.layout(), "T", "site name"));
  edited.apply(renameSite(edited.layout(), "", "site name"));
  EXPECT_EQ(edited.history().count(), 0);
}

TEST(EditedLayout, LeavesSnapshotsAsTheyWere) {
  EditedLayout edited;
  const auto snapshot = edited.snapshot();
  edited.apply(renameSite(edited.layout(), "Tin shed"));
  EXPECT_EQ(snapshot->site.name, "");
}

}  // namespace
}  // namespace stopwalk::edits
