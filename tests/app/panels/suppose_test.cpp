#include <gtest/gtest.h>

#include <QSignalSpy>

#include "app/panels/suppose/suppose_panel.h"
#include "tests/app/panels/person.h"
#include "tests/app/panels/workshop.h"

namespace stopwalk::panels {
namespace {

class Suppose : public testing::Test {
 protected:
  void tick(const std::string& id) { panel.itemOf(id)->setCheckState(0, Qt::Checked); }

  Workshop shop;
  SupposePanel panel{shop.desk};
};

TEST_F(Suppose, TicksPutDevicesOutOfOrderAndShutDoors) {
  QSignalSpy told(&panel, &SupposePanel::changed);
  tick("saw-1/paddle");
  tick("d1");
  panel.afterHours()->click();
  EXPECT_EQ(told.count(), 3);
  EXPECT_EQ(panel.suppositions().out_of_order, std::vector<std::string>{"saw-1/paddle"});
  EXPECT_EQ(panel.suppositions().shut, std::vector<std::string>{"d1"});
  EXPECT_EQ(panel.suppositions().hours, floor::Hours::After);
  EXPECT_EQ(sentenceOf(panel.suppositions(), shop.layout(), shop.catalogue.kinds),
            "Paddle of Table saw 1 is out of order, Door d1 is shut, it is after hours");
  panel.itemOf("d1")->setCheckState(0, Qt::Unchecked);
  EXPECT_TRUE(panel.suppositions().shut.empty());
}

// Two machines of one name, and two phones: each line says which it means.
TEST_F(Suppose, ThoseOfOneNameAreToldApart) {
  layout::Layout twice = shop.layout();
  twice.machines.push_back(twice.machines[0]);
  twice.machines.back().id = "saw-9";
  ASSERT_FALSE(twice.phones.empty());
  twice.phones.push_back(twice.phones[0]);
  twice.phones.back().id = "phone-other";
  shop.edited.reset(twice);
  bringUp(panel);
  for (const char* id : {"saw-1/paddle", "saw-9/paddle", "phone-other"})
    ASSERT_TRUE(QTest::qWaitFor([&] { return panel.itemOf(id) != nullptr; }, 2000)) << id;
  EXPECT_EQ(panel.itemOf("saw-1/paddle")->text(0).toStdString(), "Paddle of Table saw 1 (saw-1)");
  EXPECT_EQ(panel.itemOf("saw-9/paddle")->text(0).toStdString(), "Paddle of Table saw 1 (saw-9)");
  EXPECT_NE(panel.itemOf("phone-other")->text(0), panel.itemOf(twice.phones[0].id)->text(0));
  tick("saw-9/paddle");
  EXPECT_EQ(sentenceOf(panel.suppositions(), shop.layout(), shop.catalogue.kinds),
            "Paddle of Table saw 1 (saw-9) is out of order");
}

TEST_F(Suppose, NamesAreReadWhole) {
  panel.resize(230, 600);
  bringUp(panel);
  QTreeWidgetItem* item = panel.itemOf("saw-1/paddle");
  QTest::qWait(50);
  const QRect row = panel.tree()->visualItemRect(item);
  QStyleOptionViewItem option;
  option.initFrom(panel.tree());
  const int beside = panel.tree()->style()->pixelMetric(QStyle::PM_IndicatorWidth);
  const QRect text = panel.tree()->fontMetrics().boundingRect(QRect(0, 0, row.width() - beside, 1000),
                                                              Qt::TextWordWrap, item->text(0));
  EXPECT_GE(row.height(), text.height()) << item->text(0).toStdString();
  EXPECT_LE(text.width(), row.width() - beside);
  EXPECT_TRUE(item->toolTip(0).contains(item->text(0)));
}

TEST_F(Suppose, GoesBackToHowItIs) {
  tick("saw-1/paddle");
  panel.put()->click();
  panel.clear()->click();
  EXPECT_TRUE(panel.suppositions().empty());
  EXPECT_FALSE(panel.clear()->isEnabled());
  EXPECT_EQ(panel.itemOf("saw-1/paddle")->checkState(0), Qt::Unchecked);
}

TEST_F(Suppose, PutsThingsInTheWayWhereOneLooks) {
  panel.setMiddle([] { return geometry::Point{3000, 2500}; });
  panel.put()->click();
  panel.put()->click();
  const auto& things = panel.suppositions().in_the_way;
  ASSERT_EQ(things.size(), 2u);
  EXPECT_NE(things[0].id, things[1].id);
  EXPECT_EQ(things[0].at, (geometry::Point{3000, 2500}));
}

TEST_F(Suppose, NeverTouchesTheLayout) {
  const layout::Layout before = shop.layout();
  tick("saw-1/paddle");
  panel.put()->click();
  EXPECT_EQ(shop.layout(), before);
  EXPECT_EQ(shop.edited.history().count(), 0);
}

TEST_F(Suppose, IsTickedByTheKeyboard) {
  bringUp(panel);
  panel.tree()->setFocus();
  panel.tree()->setCurrentItem(panel.itemOf("saw-2/paddle"));
  QTest::keyClick(panel.tree(), Qt::Key_Space);
  EXPECT_EQ(panel.suppositions().out_of_order, std::vector<std::string>{"saw-2/paddle"});
}

QAction* verb(const SupposePanel& panel, const QString& text) {
  for (Verb* verb : panel.verbs())
    if (verb->text().remove('&') == text) return verb;
  return nullptr;
}

TEST_F(Suppose, WhatIsPickedOnThePlanIsOutOfOrderOrShutByAnAction) {
  QAction* out = verb(panel, "What is picked is out of order");
  QAction* shut = verb(panel, "The door that is picked is shut");
  ASSERT_TRUE(out && shut);
  EXPECT_FALSE(out->isEnabled());
  EXPECT_EQ(out->toolTip(), "Pick a stop or a phone on the plan first.");
  EXPECT_EQ(shut->statusTip(), "Pick a door on the plan first.");
  shop.selection.set({"saw-1/paddle", "saw-2/paddle", "saw-1"});
  EXPECT_TRUE(out->isEnabled());
  EXPECT_FALSE(shut->isEnabled());
  out->trigger();
  EXPECT_EQ(panel.suppositions().out_of_order, (std::vector<std::string>{"saw-1/paddle", "saw-2/paddle"}));
  EXPECT_TRUE(out->isChecked());
  EXPECT_EQ(panel.itemOf("saw-1/paddle")->checkState(0), Qt::Checked);
  out->trigger();
  EXPECT_TRUE(panel.suppositions().empty());
  EXPECT_FALSE(out->isChecked());
  shop.selection.set("d1");
  shut->trigger();
  EXPECT_EQ(panel.suppositions().shut, std::vector<std::string>{"d1"});
}

TEST_F(Suppose, WhatIsTickedInTheListIsTickedInTheMenu) {
  shop.selection.set("saw-1/paddle");
  tick("saw-1/paddle");
  EXPECT_TRUE(verb(panel, "What is picked is out of order")->isChecked());
  panel.afterHours()->click();
  EXPECT_TRUE(verb(panel, "After hours")->isChecked());
  EXPECT_TRUE(panel.afterHours()->isChecked());
}

TEST_F(Suppose, TakesAwayTheOnlyThingInTheWayOrTheOneChosen) {
  QAction* take = verb(panel, "Take it away");
  EXPECT_EQ(take->toolTip(), "Nothing is put in the way.");
  panel.put()->click();
  panel.tree()->setCurrentItem(nullptr);
  EXPECT_TRUE(take->isEnabled());
  panel.put()->click();
  panel.tree()->setCurrentItem(nullptr);
  EXPECT_FALSE(take->isEnabled());
  panel.tree()->setCurrentItem(panel.itemOf("in-the-way-2"));
  take->trigger();
  ASSERT_EQ(panel.suppositions().in_the_way.size(), 1u);
  EXPECT_EQ(panel.suppositions().in_the_way[0].id, "in-the-way-1");
}

TEST_F(Suppose, OffersNoGuardedStart) {
  layout::Layout layout = smallShop();
  layout::Device start = layout.machines[0].devices[0];
  start.id = "start";
  start.kind = "guarded-start";
  layout.machines[0].devices.push_back(start);
  layout.machines[0].devices.push_back(layout.machines[0].devices[0]);
  layout.machines[0].devices.back().id = "stop-2";
  bringUp(panel);
  shop.edited.reset(layout);
  ASSERT_TRUE(QTest::qWaitFor([&] { return panel.itemOf("saw-1/stop-2") != nullptr; }));
  EXPECT_FALSE(panel.itemOf("saw-1/start"));
}

// A block is dragged: nothing of the list comes or goes but its line's words.
TEST_F(Suppose, TheListStaysWhileNothingThatItListsComesOrGoes) {
  panel.put()->click();
  planning::Suppositions moved = panel.suppositions();
  const std::string block = moved.in_the_way[0].id;
  const QString before = panel.itemOf(block)->text(0);
  QSignalSpy came(panel.tree()->model(), &QAbstractItemModel::rowsInserted);
  QSignalSpy went(panel.tree()->model(), &QAbstractItemModel::rowsRemoved);
  QSignalSpy anew(panel.tree()->model(), &QAbstractItemModel::modelReset);
  moved.in_the_way[0].at.x += 1500;
  moved.out_of_order = {"saw-1/paddle"};
  panel.set(moved);
  EXPECT_NE(panel.itemOf(block)->text(0), before);
  EXPECT_EQ(panel.itemOf("saw-1/paddle")->checkState(0), Qt::Checked);
  bringUp(panel);
  layout::Layout aside = shop.layout();
  aside.machines[0].at.x += 100;
  shop.edited.reset(aside);
  QTest::qWait(120);
  EXPECT_EQ(came.count() + went.count() + anew.count(), 0);
}

TEST_F(Suppose, IsOfTheLayoutAsItIsWhenItComesIntoSight) {
  layout::Layout more = smallShop();
  more.machines[0].devices.push_back(more.machines[0].devices[0]);
  more.machines[0].devices.back().id = "stop-2";
  shop.edited.reset(more);
  panel.show();
  EXPECT_TRUE(panel.itemOf("saw-1/stop-2"));
}

TEST_F(Suppose, OneNothingIsNoSentence) {
  EXPECT_EQ(sentenceOf({}, shop.layout(), shop.catalogue.kinds), "");
}

}  // namespace
}  // namespace stopwalk::panels
