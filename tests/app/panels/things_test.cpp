#include <gtest/gtest.h>

#include "app/panels/things/move_dialog.h"
#include "app/panels/things/rename_dialog.h"
#include "app/panels/things/thing_list.h"
#include "tests/app/panels/person.h"
#include "tests/app/panels/workshop.h"
#include "tests/support/shop_layout.h"

namespace stopwalk::panels {
namespace {

std::shared_ptr<audit::Report> reportOf(audit::Status status, audit::Verdict verdict) {
  auto report = std::make_shared<audit::Report>();
  audit::StationReport station;
  station.id = "saw-2/operator";
  station.stop.status = status;
  station.stop.name = "its own paddle";
  station.stop.walk_m = 4.2;
  station.verdict = verdict;
  report->stations = {station};
  return report;
}

QString textOf(const std::vector<ThingRow>& rows, const std::string& id) {
  for (const ThingRow& row : rows)
    if (row.id == id) return row.text;
  return "(none)";
}

TEST(ThingRows, HoldEachThingOnceBelowItsParent) {
  for (const layout::Layout& layout : {smallShop(), support::shopLayout(support::kShopSizes[0])}) {
    const auto rows = thingRows(layout, plan::bundledCatalogue().kinds, nullptr);
    std::map<std::string, int> seen = {{"", 1}};
    for (const ThingRow& row : rows) {
      EXPECT_EQ(seen.count(row.parent), 1u) << row.id;
      EXPECT_EQ(++seen[row.id], 1) << row.id;
    }
    for (const edits::Thing& thing : edits::allThings(layout))
      EXPECT_EQ(seen.count(edits::idOf(layout, thing)), 1u) << edits::idOf(layout, thing);
  }
}

TEST(ThingRows, SayHowAStationFares) {
  const auto report = reportOf(audit::Status::Walk, audit::Verdict::Fails);
  const layout::DeviceKinds kinds = plan::bundledCatalogue().kinds;
  const auto rows = thingRows(smallShop(), kinds, report.get());
  EXPECT_EQ(textOf(rows, "saw-2/operator"), "Table saw 2, operator: walk 4.20 m to its own paddle, fails");
  EXPECT_EQ(textOf(rows, "saw-2"), "Table saw 2, machine: fails");
  EXPECT_EQ(textOf(rows, "saw-1"), "Table saw 1, machine");
  EXPECT_EQ(textOf(rows, "d1"), "Door d1 to Metal room, 1.80 m wide");
  EXPECT_EQ(textOf(rows, "cut-off"), "cut-off: room cut-off");
  EXPECT_EQ(textOf(rows, "t1"), "Tape check t1: saw-1/operator to phone-1, 4.25 m");
  const auto none = reportOf(audit::Status::None, audit::Verdict::Fails);
  EXPECT_EQ(textOf(thingRows(smallShop(), kinds, none.get()), "saw-2/operator"),
            "Table saw 2, operator: no stop, fails");
}

class ThingsOfShop : public testing::Test {
 protected:
  ThingsOfShop() : list(shop.desk) {
    bringUp(list);
    QObject::connect(&list, &ThingList::goTo, [this](const QString& id) { gone_to << id; });
  }

  QTreeWidgetItem* item(const QString& text) const {
    for (QTreeWidgetItemIterator it(list.tree()); *it; ++it)
      if ((*it)->data(0, Qt::AccessibleTextRole).toString().startsWith(text)) return *it;
    return nullptr;
  }

  void click(const QString& text, Qt::KeyboardModifiers modifiers = {}) {
    ASSERT_TRUE(item(text)) << text.toStdString();
    list.tree()->scrollToItem(item(text));
    QTest::mouseClick(list.tree()->viewport(), Qt::LeftButton, modifiers,
                      list.tree()->visualItemRect(item(text)).center());
  }

  Workshop shop;
  ThingList list;
  QStringList gone_to;
};

TEST_F(ThingsOfShop, SayTheMachineToTheReaderAndNotTwiceToTheEye) {
  list.setReport(reportOf(audit::Status::Walk, audit::Verdict::Fails));
  list.refresh();
  const QTreeWidgetItem* station = item("Table saw 2, operator: walk 4.20 m to its own paddle, fails");
  ASSERT_TRUE(station);
  EXPECT_EQ(station->text(0), "operator: walk 4.20 m to its own paddle, fails");
}

TEST_F(ThingsOfShop, SelectOnThePlanInTheOrderOfSelecting) {
  click("Table saw 2, machine");
  click("Yard phone", Qt::ControlModifier);
  click("Table saw 1, machine", Qt::ControlModifier);
  EXPECT_EQ(shop.selection.ids(), (std::vector<std::string>{"saw-2", "phone-1", "saw-1"}));
}

TEST_F(ThingsOfShop, FollowTheSelectionOfThePlan) {
  shop.selection.set(std::vector<std::string>{"d1", "saw-1/operator"});
  ASSERT_EQ(list.tree()->selectedItems().size(), 2);
  EXPECT_EQ(list.tree()->currentItem()->data(0, Qt::AccessibleTextRole), "Table saw 1, operator");
  shop.selection.clear();
  EXPECT_TRUE(list.tree()->selectedItems().isEmpty());
}

TEST_F(ThingsOfShop, AreFoundByTypingANameOrAnId) {
  list.tree()->setFocus();
  QTest::keyClicks(list.tree(), "phone-1");
  EXPECT_FALSE(item("Yard phone")->isHidden());
  EXPECT_TRUE(item("Table saw 1, machine")->isHidden());
  EXPECT_FALSE(item("Wood room")->isHidden());
  list.search()->setText("saw 2 oper");
  EXPECT_FALSE(item("Table saw 2, operator")->isHidden());
  EXPECT_TRUE(item("Table saw 2, paddle")->isHidden());
}

TEST_F(ThingsOfShop, GoToThePlanOnEnter) {
  click("Table saw 2, paddle");
  QTest::keyClick(list.tree(), Qt::Key_Return);
  EXPECT_EQ(gone_to, QStringList{"saw-2/paddle"});
}

TEST_F(ThingsOfShop, AreRemovedAndDuplicatedByKeys) {
  click("Table saw 1, machine");
  QTest::keyClick(list.tree(), Qt::Key_D, Qt::ControlModifier);
  ASSERT_EQ(shop.layout().machines.size(), 3u);
  ASSERT_EQ(shop.selection.ids().size(), 1u);
  EXPECT_EQ(list.tree()->currentItem()->isSelected(), true);
  QTest::keyClick(list.tree(), Qt::Key_Delete);
  EXPECT_EQ(shop.layout(), smallShop());
  EXPECT_TRUE(shop.selection.empty());
}

TEST_F(ThingsOfShop, ShowWhatChangedElsewhere) {
  auto renamed = smallShop();
  renamed.machines[0].name = "Long saw";
  shop.edited.apply({"Rename", renamed});
  QTest::qWait(100);
  EXPECT_TRUE(item("Long saw, machine"));
  EXPECT_FALSE(item("Table saw 1, machine"));
  shop.edited.reset({});
  list.refresh();
  EXPECT_EQ(list.tree()->topLevelItemCount(), 0);
}

TEST_F(ThingsOfShop, KeepWhatWasFoldedWhenThingsComeAndGo) {
  item("Wood room")->setExpanded(false);
  auto more = smallShop();
  more.rooms.pop_back();
  more.doors.clear();
  shop.edited.apply({"Remove", more});
  list.refresh();
  EXPECT_FALSE(item("Wood room")->isExpanded());
  EXPECT_TRUE(item("In no room")->isExpanded());
}

TEST_F(ThingsOfShop, AreMovedAndTurnedByTypedNumbers) {
  shop.selection.set("saw-1");
  MoveDialog dialog(shop.desk);
  bringUp(dialog);
  const auto lines = dialog.findChildren<LineField*>();
  ASSERT_EQ(lines.size(), 3);
  enter(lines[0]->line(), "far");
  EXPECT_TRUE(dialog.isVisible());
  EXPECT_EQ(shop.layout(), smallShop());
  typeOver(lines[0]->line(), "1.5 m");
  typeOver(lines[2]->line(), "90");
  QTest::keyClick(lines[2]->line(), Qt::Key_Return);
  EXPECT_FALSE(dialog.isVisible());
  EXPECT_EQ(shop.layout().machines[0].at, (layout::Point{4500, 4500}));
  EXPECT_EQ(shop.layout().machines[0].turn, 90);
  EXPECT_EQ(shop.lastStep(), "Move and turn Table saw 1");
  EXPECT_EQ(shop.edited.history().count(), 1);
}

TEST_F(ThingsOfShop, AreRenamedInOneStep) {
  shop.selection.set("saw-1");
  RenameDialog dialog(shop.desk, "saw-1");
  bringUp(dialog);
  const auto lines = dialog.findChildren<LineField*>();
  ASSERT_EQ(lines.size(), 2);
  typeOver(lines[0]->line(), "Long saw");
  enter(lines[1]->line(), "saw-2");
  EXPECT_TRUE(dialog.isVisible());
  enter(lines[1]->line(), "long-saw");
  EXPECT_FALSE(dialog.isVisible());
  EXPECT_EQ(shop.layout().machines[0].name, "Long saw");
  EXPECT_EQ(shop.layout().machines[0].id, "long-saw");
  EXPECT_EQ(shop.selection.ids(), std::vector<std::string>{"long-saw"});
  EXPECT_EQ(shop.edited.history().count(), 1);
}

// A dialog that was refused stays, and says why.
template <class Dialog>
void expectRefused(const Dialog& dialog, const QString& why) {
  EXPECT_TRUE(dialog.isVisible());
  bool says = false;
  for (const QLabel* label : dialog.template findChildren<QLabel*>())
    says |= label->isVisible() && label->text().contains(why);
  EXPECT_TRUE(says);
}

TEST_F(ThingsOfShop, ARefusedMoveDoesNotTurnEither) {
  shop.selection.set("saw-1");
  MoveDialog dialog(shop.desk);
  bringUp(dialog);
  const auto lines = dialog.findChildren<LineField*>();
  typeOver(lines[0]->line(), "9999 m");
  enter(lines[2]->line(), "90");
  expectRefused(dialog, "10 km");
  EXPECT_EQ(shop.layout(), smallShop());
  enter(lines[0]->line(), "1 m");
  EXPECT_FALSE(dialog.isVisible());
  EXPECT_EQ(shop.layout().machines[0].at, (layout::Point{4000, 4500}));
}

TEST_F(ThingsOfShop, LookingOnlyTheDialogsStayAndSayWhy) {
  shop.selection.set("saw-1");
  shop.edited.setReadOnly(true);
  RenameDialog rename(shop.desk, "saw-1");
  bringUp(rename);
  enter(rename.findChildren<LineField*>()[0]->line(), "Long saw");
  expectRefused(rename, "looking only");
  MoveDialog move(shop.desk);
  bringUp(move);
  enter(move.findChildren<LineField*>()[0]->line(), "1 m");
  expectRefused(move, "looking only");
  EXPECT_EQ(shop.layout(), smallShop());
}

TEST_F(ThingsOfShop, RenamingWhatIsNotThereChangesNothing) {
  RenameDialog dialog(shop.desk, "gone");
  bringUp(dialog);
  dialog.accept();
  EXPECT_EQ(shop.layout(), smallShop());
}

}  // namespace
}  // namespace stopwalk::panels
