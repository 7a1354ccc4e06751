#include "app/panels/reach/reach_chooser.h"

#include <gtest/gtest.h>

#include <QTest>

#include "tests/support/shop_layout.h"

namespace stopwalk::panels {
namespace {

using What = audit::ReachTarget::What;

class ReachChooserTest : public testing::Test {
 protected:
  ReachChooserTest() {
    edited.reset(shop);
    QObject::connect(&chooser, &ReachChooser::chosen, &chooser,
                     [this](auto target) { told.push_back(target); });
  }
  layout::Layout shop = support::shopLayout(support::kShopSizes[0]);
  edits::EditedLayout edited;
  ReachChooser chooser{edited};
  std::vector<std::optional<audit::ReachTarget>> told;
};

TEST_F(ReachChooserTest, ShowsNothingUntilSomethingIsChosen) {
  EXPECT_FALSE(chooser.target());
  EXPECT_TRUE(chooser.machineBox()->isHidden());
}

TEST_F(ReachChooserTest, IsWorkedByKeyboard) {
  QTest::keyClick(chooser.whatBox(), Qt::Key_Down);
  QTest::keyClick(chooser.whatBox(), Qt::Key_Down);
  ASSERT_EQ(told.size(), 2u);
  EXPECT_EQ(told[0], (audit::ReachTarget{What::Phone, ""}));
  EXPECT_EQ(told[1], (audit::ReachTarget{What::AnyStop, ""}));
  QTest::keyClick(chooser.whatBox(), Qt::Key_End);
  EXPECT_FALSE(chooser.machineBox()->isHidden());
  QTest::keyClick(chooser.machineBox(), Qt::Key_Down);
  EXPECT_EQ(chooser.target(), (audit::ReachTarget{What::MachineStop, shop.machines[1].id}));
}

TEST_F(ReachChooserTest, MachinesOfOneNameAreToldApart) {
  layout::Layout twice = shop;
  twice.machines[0].name = twice.machines[1].name = "Drill";
  edited.reset(twice);
  EXPECT_EQ(chooser.machineBox()->itemText(0).toStdString(), "Drill (" + twice.machines[0].id + ")");
  EXPECT_EQ(chooser.machineBox()->itemText(1).toStdString(), "Drill (" + twice.machines[1].id + ")");
  EXPECT_EQ(chooser.machineBox()->itemText(2).toStdString(), twice.machines[2].name);
}

TEST_F(ReachChooserTest, TheMachineStaysChosenWhileItIsThere) {
  chooser.whatBox()->setCurrentIndex(4);
  chooser.machineBox()->setCurrentIndex(1);
  told.clear();
  layout::Layout fewer = shop;
  fewer.machines.erase(fewer.machines.begin());
  edited.reset(fewer);
  EXPECT_EQ(chooser.target()->machine, shop.machines[1].id);
  EXPECT_TRUE(told.empty());
  fewer.machines.clear();
  edited.reset(fewer);
  EXPECT_FALSE(chooser.target());
  EXPECT_EQ(told.size(), 1u);
}

// Nor is the map of another machine's stop shown in its place.
TEST_F(ReachChooserTest, WhereTheMachineIsGoneNoneIsShownUntilOneIsChosenOrItIsBack) {
  chooser.whatBox()->setCurrentIndex(4);
  chooser.machineBox()->setCurrentIndex(1);
  layout::Layout renamed = shop;
  renamed.machines[1].id = "another";
  edited.reset(renamed);
  EXPECT_FALSE(chooser.target());
  EXPECT_FALSE(told.back());
  EXPECT_TRUE(chooser.machineBox()->shownText().startsWith("Choose"));
  edited.reset(renamed);
  EXPECT_FALSE(chooser.target()) << "with whatever is changed next";
  edited.reset(shop);
  ASSERT_TRUE(chooser.target());
  EXPECT_EQ(chooser.target()->machine, shop.machines[1].id);
  edited.reset(renamed);
  chooser.machineBox()->setCurrentIndex(1);
  ASSERT_TRUE(chooser.target());
  EXPECT_EQ(chooser.target()->machine, "another");
}

TEST_F(ReachChooserTest, IsNamedForThoseWhoDoNotSeeIt) {
  EXPECT_FALSE(chooser.whatBox()->accessibleName().isEmpty());
  EXPECT_FALSE(chooser.machineBox()->accessibleName().isEmpty());
}

TEST_F(ReachChooserTest, ALongNameMakesThePanelNoWiderAndEndsInAnEllipsis) {
  chooser.whatBox()->setCurrentIndex(chooser.whatBox()->count() - 1);
  const int narrow = chooser.minimumSizeHint().width();
  shop.machines[0].name = std::string(120, 'W');
  edited.reset(shop);
  EXPECT_EQ(chooser.minimumSizeHint().width(), narrow);
  chooser.resize(240, 120);
  chooser.show();
  EXPECT_TRUE(chooser.machineBox()->shownText().endsWith("…"));
  EXPECT_LT(chooser.machineBox()->shownText().size(), 30);
  EXPECT_EQ(chooser.machineBox()->toolTip(), QString(120, 'W'));
}

}  // namespace
}  // namespace stopwalk::panels
