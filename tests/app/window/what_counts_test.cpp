// What a pass will count for is said on its card, and what did not is said wherever the device is shown.
#include <QLabel>

#include "tests/app/window/inspecting.h"

namespace stopwalk::window {
namespace {

TEST_F(Inspecting, WhatWasNotTickedIsSaidBeforeAndAfterAndWhereverItIsDue) {
  openAndCome();
  startRound();
  const std::string device = round().device();
  const auto* counts = card().findChild<QLabel*>("counts");
  ASSERT_NE(counts, nullptr);
  EXPECT_FALSE(counts->isVisible()) << "nothing is chosen yet";
  type("123456p");
  const QString due = "full test, not ticked: \"Stays stopped when power returns\"";
  EXPECT_TRUE(counts->isVisible());
  EXPECT_TRUE(counts->font().bold());
  EXPECT_TRUE(card().counts().contains("stays due for: " + due)) << card().counts().toStdString();
  type("7");
  EXPECT_EQ(card().counts(), "It counts as: press, full test.");
  EXPECT_FALSE(counts->font().bold());
  type("7");  // no: it did not stay stopped
  EXPECT_TRUE(card().counts().contains("has not passed")) << card().counts().toStdString();
  type("7");
  EXPECT_TRUE(card().counts().contains(due)) << card().counts().toStdString();
  type("f");
  EXPECT_FALSE(counts->isVisible());
  type("p");
  enter();
  ASSERT_EQ(onDisk().checks.size(), 1u) << card().told().toStdString();
  EXPECT_TRUE(window->sentence().contains("Still due: " + due)) << window->sentence().toStdString();
  EXPECT_FALSE(counts->isVisible()) << "the next card has nothing chosen";
  EXPECT_TRUE(plan().tellsOfCheck(device).contains("Still due: " + due))
      << plan().tellsOfCheck(device).toStdString();
  round().leave();
  settle();
  EXPECT_TRUE(plan().tellsOfCheck(device).contains("Still due: " + due))
      << plan().tellsOfCheck(device).toStdString();
  QString row;
  place().due().pick(device);
  if (const auto* item = place().due().tree()->currentItem()) row = item->text(0);
  EXPECT_TRUE(row.contains("not ticked: \"Stays stopped when power returns\"")) << row.toStdString();
}

}  // namespace
}  // namespace stopwalk::window
