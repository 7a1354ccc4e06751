#include "app/panels/details/details.h"

#include <gtest/gtest.h>

#include "app/panels/fields/check_field.h"
#include "app/panels/fields/choice_field.h"
#include "app/panels/fields/each_seconds_field.h"
#include "app/panels/fields/outline_field.h"
#include "app/panels/fields/text_field.h"
#include "app/panels/fields/tick_field.h"
#include "tests/app/panels/person.h"
#include "tests/app/panels/workshop.h"

namespace stopwalk::panels {
namespace {

class DetailsOfShop : public testing::Test {
 protected:
  DetailsOfShop() : details(shop.desk) { bringUp(details); }

  void select(std::vector<std::string> ids) {
    shop.selection.set(std::move(ids));
    QApplication::processEvents();
  }

  template <class F>
  F* shown(const QString& name) const {
    for (Field* field : details.section()->findChildren<Field*>())
      if (field->name() == name && field->isVisibleTo(&details)) {
        if (auto* f = dynamic_cast<F*>(field)) return f;
      }
    return nullptr;
  }
  LineField* line(const QString& name) const { return shown<LineField>(name); }

  void type(const QString& name, const QString& text) {
    ASSERT_TRUE(line(name)) << name.toStdString();
    enter(line(name)->line(), text);
  }
  void choose(const QString& name, const QString& text) {
    auto* field = shown<ChoiceField>(name);
    ASSERT_TRUE(field) << name.toStdString();
    pick(*field->box(), text);
  }
  static void pick(QComboBox& box, const QString& text) {
    const int index = box.findText(text);
    ASSERT_GE(index, 0) << text.toStdString();
    box.setCurrentIndex(index);
    emit box.activated(index);
  }

  Workshop shop;
  Details details;
};

TEST_F(DetailsOfShop, ChangeTheHeightOfAMachineInOneNamedStep) {
  select({"saw-1"});
  EXPECT_EQ(details.title(), "Table saw 1");
  type("Height", "1.2 m");
  EXPECT_EQ(shop.layout().machines[0].height, 1200);
  EXPECT_EQ(shop.lastStep(), "Change the height of Table saw 1");
  shop.edited.history().undo();
  EXPECT_EQ(shop.layout(), smallShop());
  EXPECT_EQ(line("Height")->line()->text(), "870 mm");
}

TEST_F(DetailsOfShop, MakeOneStepOfManySteppings) {
  select({"saw-1"});
  line("At x")->line()->setFocus();
  for (int i = 0; i < 5; ++i) QTest::keyClick(line("At x")->line(), Qt::Key_Up);
  EXPECT_EQ(shop.layout().machines[0].at.x, 3050);
  EXPECT_EQ(shop.edited.history().count(), 1);
  EXPECT_EQ(shop.lastStep(), "Move Table saw 1");
}

TEST_F(DetailsOfShop, OfSeveralMachinesSayWhatDiffersAndSetItForAll) {
  select({"saw-1", "saw-2"});
  EXPECT_EQ(details.title(), "2 things");
  EXPECT_EQ(line("Height")->line()->placeholderText(), "differ");
  EXPECT_EQ(line("Width")->line()->text(), "1900 mm");
  EXPECT_FALSE(line("Id"));
  type("Run-down", "2.5");
  EXPECT_EQ(shop.layout().machines[0].run_down, 2.5);
  EXPECT_EQ(shop.layout().machines[1].run_down, 2.5);
  EXPECT_EQ(shop.edited.history().count(), 1);
  EXPECT_EQ(shop.layout().machines[0].height, 870);
  EXPECT_EQ(shop.layout().machines[1].height, 900);
}

TEST_F(DetailsOfShop, OfSeveralKindsShowWhatTheyHaveInCommon) {
  select({"saw-1", "bench-1"});
  EXPECT_FALSE(line("Height"));
  type("At y", "2000");
  EXPECT_EQ(shop.layout().machines[0].at.y, 2000);
  EXPECT_EQ(shop.layout().fixtures[0].at.y, 2000);
  type("Turn", "90");
  EXPECT_EQ(shop.layout().machines[0].turn, 90);
  EXPECT_EQ(shop.layout().fixtures[0].turn, 90);
  EXPECT_EQ(shop.edited.history().count(), 2);
}

TEST_F(DetailsOfShop, GiveAnotherIdAndStayAtTheThing) {
  select({"saw-1"});
  type("Id", "saw-2");
  EXPECT_TRUE(line("Id")->trouble().contains("saw-2")) << line("Id")->trouble().toStdString();
  type("Id", "big saw");
  EXPECT_NE(line("Id")->trouble(), "");
  EXPECT_EQ(shop.layout(), smallShop());
  type("Id", "big-saw");
  QApplication::processEvents();
  EXPECT_EQ(shop.layout().machines[0].id, "big-saw");
  EXPECT_EQ(shop.layout().tape_checks[0].from, "big-saw/operator");
  EXPECT_EQ(shop.selection.ids(), std::vector<std::string>{"big-saw"});
  EXPECT_EQ(details.title(), "Table saw 1");
  EXPECT_TRUE(line("Id")->line()->hasFocus());
}

TEST_F(DetailsOfShop, EnterWhatIsBeingTypedWhenTheSelectionGoesOn) {
  select({"saw-1"});
  typeOver(line("Name")->line(), "Long saw");
  select({"saw-2"});
  EXPECT_EQ(shop.layout().machines[0].name, "Long saw");
  EXPECT_EQ(shop.layout().machines[1].name, "Table saw 2");
}

TEST_F(DetailsOfShop, TakeWhatIsTypedInACellWhenTheSelectionGoesOn) {
  select({"metal"});
  QTableWidget* table = shown<OutlineField>("Corners")->table();
  table->setFocus();
  table->setCurrentCell(1, 0);
  QTest::keyClick(table, Qt::Key_F2);
  QTest::keyClicks(QApplication::focusWidget(), "19 m");
  select({"saw-1"});
  EXPECT_EQ(shop.layout().rooms[1].outline[1].x, 19000);
  EXPECT_EQ(details.title(), "Table saw 1");
}

TEST_F(DetailsOfShop, GoWhileAFieldHasTheKeyboard) {
  select({"saw-1"});
  typeOver(line("Height")->line(), "12");
  shop.edited.reset({});
  QApplication::processEvents();
  QTest::qWait(10);
  EXPECT_EQ(details.title(), "The workshop");
  EXPECT_EQ(shop.layout(), layout::Layout());
}

TEST_F(DetailsOfShop, ShowTheWorkshopWhenNothingIsSelectedOrItIsGone) {
  EXPECT_EQ(details.title(), "The workshop");
  type("Workshop", "");
  EXPECT_NE(line("Workshop")->trouble(), "");
  type("Workshop", "Tin shed");
  type("Emergency call", "555-0100 from the yard phone");
  type("Number", "3");
  type("Day", "2026-03-02");
  type("Profile", "strict");
  choose("Unit", "feet and inches");
  EXPECT_EQ(shop.layout().site.name, "Tin shed");
  EXPECT_EQ(shop.layout().site.emergency_call, "555-0100 from the yard phone");
  EXPECT_EQ(shop.layout().revision->number, 3);
  EXPECT_EQ(shop.layout().revision->date, "2026-03-02");
  EXPECT_EQ(shop.layout().profile, "strict");
  EXPECT_EQ(shop.layout().unit, layout::LengthUnit::Foot);
  select({"saw-1"});
  EXPECT_EQ(line("Width")->line()->text(), "6' 2 13/16\"");
  shop.edited.reset({});
  QApplication::processEvents();
  EXPECT_EQ(details.title(), "The workshop");
}

TEST_F(DetailsOfShop, ChangeTheCornersOfARoom) {
  select({"metal"});
  auto* outline = shown<OutlineField>("Corners");
  ASSERT_TRUE(outline);
  outline->table()->item(1, 0)->setText("19 m");
  EXPECT_EQ(shop.layout().rooms[1].outline[1], (layout::Point{19000, 0}));
  outline->table()->item(1, 1)->setText("far");
  EXPECT_NE(outline->trouble(), "");
  outline->table()->setCurrentCell(0, 0);
  QTest::mouseClick(outline->addButton(), Qt::LeftButton);
  ASSERT_EQ(shop.layout().rooms[1].outline.size(), 5u);
  EXPECT_EQ(shop.layout().rooms[1].outline[1], (layout::Point{14000, 0}));
  QTest::mouseClick(outline->removeButton(), Qt::LeftButton);
  EXPECT_EQ(shop.layout().rooms[1].outline.size(), 4u);
  QTest::mouseClick(outline->removeButton(), Qt::LeftButton);
  EXPECT_EQ(shop.layout().rooms[1].outline.size(), 3u);
  EXPECT_FALSE(outline->removeButton()->isEnabled());
}

TEST_F(DetailsOfShop, GiveAMachineAHazardOutlineAndTakeItAway) {
  select({"saw-1"});
  auto* outline = shown<OutlineField>("Hazard outline");
  QTest::mouseClick(outline->addButton(), Qt::LeftButton);
  EXPECT_EQ(shop.layout().machines[0].hazard.size(), 4u);
  EXPECT_EQ(shop.lastStep(), "Change the hazard outline of Table saw 1");
  QTest::mouseClick(outline->removeButton(), Qt::LeftButton);
  QTest::mouseClick(outline->removeButton(), Qt::LeftButton);
  EXPECT_TRUE(shop.layout().machines[0].hazard.empty());
}

TEST_F(DetailsOfShop, MakeAFootprintOfCornersAndBack) {
  select({"bench-1"});
  choose("Footprint", "By corners");
  EXPECT_EQ(std::get<geometry::Polygon>(shop.layout().fixtures[0].footprint).size(), 4u);
  EXPECT_FALSE(line("Width"));
  EXPECT_TRUE(shown<OutlineField>("Footprint corners"));
  choose("Footprint", "Rectangle");
  EXPECT_EQ(shop.layout().fixtures[0].footprint, smallShop().fixtures[0].footprint);
}

TEST_F(DetailsOfShop, OfferTheKindsThatCameWithTheSameThingSelected) {
  select({"cut-off"});
  layout::DeviceKind plate;
  plate.key = "knee-plate";
  plate.label = "Knee plate";
  shop.catalogue.kinds = layout::DeviceKinds({plate});
  details.rebuild();
  ASSERT_TRUE(shown<ChoiceField>("Kind"));
  EXPECT_GE(shown<ChoiceField>("Kind")->box()->findText("Knee plate"), 0);
}

TEST_F(DetailsOfShop, ShowTheFieldsOfWhatIsNowCalledTheSame) {
  select({"bench-1"});
  auto other = smallShop();
  other.phones[0].id = "bench-1";
  other.fixtures.clear();
  other.tape_checks.clear();
  shop.edited.reset(other);
  QApplication::processEvents();
  EXPECT_TRUE(line("Faces"));
  EXPECT_FALSE(line("Turn"));
}

TEST_F(DetailsOfShop, TickWhatACutOffStops) {
  select({"cut-off"});
  auto* stops = shown<TickField>("Stops");
  ASSERT_TRUE(stops);
  pick(*stops->box(), "every machine");
  EXPECT_EQ(shop.layout().devices[0].stops, (layout::Stops{true, {}}));
  pick(*stops->box(), "those ticked");
  ASSERT_TRUE(stops->list()->isVisible());
  stops->list()->findItems("Room: Wood room", Qt::MatchExactly)[0]->setCheckState(Qt::Checked);
  stops->list()->findItems("Table saw 2", Qt::MatchExactly)[0]->setCheckState(Qt::Checked);
  EXPECT_EQ(shop.layout().devices[0].stops, (layout::Stops{false, {"wood", "saw-2"}}));
  pick(*stops->box(), "nothing yet");
  EXPECT_EQ(shop.layout().devices[0].stops, std::nullopt);
}

TEST_F(DetailsOfShop, StopsOfSeveralMachinesGoOnStoppingTheirOwn) {
  select({"saw-1/paddle", "saw-2/paddle"});
  pick(*shown<TickField>("Stops")->box(), "those ticked");
  EXPECT_EQ(shop.layout().machines[0].devices[0].stops, (layout::Stops{false, {"saw-1"}}));
  EXPECT_EQ(shop.layout().machines[1].devices[0].stops, (layout::Stops{false, {"saw-2"}}));
  // What is said already stays, also when it is chosen again.
  const layout::Layout said = shop.layout();
  pick(*shown<TickField>("Stops")->box(), "those ticked");
  EXPECT_EQ(shop.layout(), said);
  pick(*shown<TickField>("Stops")->box(), "every machine");
  pick(*shown<TickField>("Stops")->box(), "those ticked");
  EXPECT_EQ(shop.layout(), said);
}

TEST_F(DetailsOfShop, TriggersOfSeveralMachinesGoOnBeingHeld) {
  auto triggers = smallShop();
  for (layout::Machine& m : triggers.machines) m.devices[0].kind = "trigger";
  triggers.machines[1].stations[0].id = "feeder";
  shop.edited.reset(triggers);
  select({"saw-1/paddle", "saw-2/paddle"});
  auto* held = shown<TickField>("Held at");
  ASSERT_TRUE(held);
  pick(*held->box(), "those ticked");
  EXPECT_EQ(shop.layout().machines[0].devices[0].held_at, std::vector<std::string>{"operator"});
  EXPECT_EQ(shop.layout().machines[1].devices[0].held_at, std::vector<std::string>{"feeder"});
}

TEST_F(DetailsOfShop, TakeARunDownForEachMachineThatIsStopped) {
  select({"saw-1/paddle"});
  EXPECT_FALSE(shown<EachSecondsField>("Run-down of each machine"));
  auto* stops = shown<TickField>("Stops");
  pick(*stops->box(), "every machine");
  auto* each = shown<EachSecondsField>("Run-down of each machine");
  ASSERT_TRUE(each);
  ASSERT_EQ(each->table()->rowCount(), 2);
  each->table()->item(1, 1)->setText("4 s");
  EXPECT_EQ(shop.layout().machines[0].devices[0].run_down_each,
            (std::vector<std::pair<std::string, double>>{{"saw-2", 4}}));
  each->table()->item(1, 1)->setText("long");
  EXPECT_NE(each->trouble(), "");
  each->table()->item(1, 1)->setText("");
  EXPECT_TRUE(shop.layout().machines[0].devices[0].run_down_each.empty());
}

TEST_F(DetailsOfShop, ShowOfADeviceWhatGoesWithItsKind) {
  select({"saw-1/paddle"});
  EXPECT_FALSE(line("Length"));
  EXPECT_FALSE(shown<TickField>("Held at"));
  choose("Kind", "Trigger");
  auto* held = shown<TickField>("Held at");
  ASSERT_TRUE(held);
  pick(*held->box(), "those ticked");
  held->list()->item(0)->setCheckState(Qt::Checked);
  EXPECT_EQ(shop.layout().machines[0].devices[0].held_at, std::vector<std::string>{"operator"});
  choose("Kind", "Foot bar");
  ASSERT_TRUE(line("Length"));
  EXPECT_TRUE(shop.layout().machines[0].devices[0].length);
  type("Length", "1.8 m");
  EXPECT_EQ(shop.layout().machines[0].devices[0].length, 1800);
  choose("Kind", "Guarded start with pin");
  choose("Pin", "missing");
  EXPECT_EQ(shop.layout().machines[0].devices[0].pin, layout::Pin::Missing);
  choose("Emergency stop", "no");
  EXPECT_EQ(shop.layout().machines[0].devices[0].emergency, false);
  choose("Kind", "Switch thrown to horizontal");
  choose("Thrown to the", "left");
  EXPECT_EQ(shop.layout().machines[0].devices[0].direction, layout::ThrowDirection::Left);
  type("Instruction", "Throw it flat.");
  EXPECT_EQ(shop.layout().machines[0].devices[0].instruction, "Throw it flat.");
}

TEST_F(DetailsOfShop, ChangeDoorsPhonesNotesChecksStationsAndTheUnderlay) {
  select({"d1"});
  choose("Leads to", "outside");
  choose("Locked", "after hours");
  type("Clear width", "90 cm");
  EXPECT_EQ(shop.layout().doors[0].second, "outside");
  EXPECT_EQ(shop.layout().doors[0].locked, layout::Locked::AfterHours);
  EXPECT_EQ(shop.layout().doors[0].width, 900);
  select({"phone-1"});
  type("Faces", "0");
  type("Height", "1200");
  EXPECT_EQ(shop.layout().phones[0].height, 1200);
  select({"n1"});
  type("Text", "Bar stock");
  QTest::mouseClick(shown<CheckField>("Points to something")->box(), Qt::LeftButton, {}, {8, 8});
  type("Points to x", "5200");
  EXPECT_EQ(shop.layout().notes[0].points_to, (layout::Point{5200, 5500}));
  select({"t1"});
  type("Taped", "14.25 m");
  type("By", "A. Person");
  choose("To", "Yard phone");
  EXPECT_EQ(shop.layout().tape_checks[0].taped, 14250);
  select({"saw-1/operator"});
  choose("Role", "helper");
  type("To the back", "-1 m");
  EXPECT_EQ(shop.layout().machines[0].stations[0].role, layout::Role::Helper);
  EXPECT_EQ(shop.layout().machines[0].stations[0].at.y, -1000);
  select({edits::kUnderlayId});
  type("Millimetres a pixel", "12.5");
  type("Strength", "1.5");
  EXPECT_EQ(shop.layout().underlay->mm_per_pixel, 12.5);
  EXPECT_EQ(shop.layout().underlay->opacity, 0.4);
  EXPECT_NE(line("Strength")->trouble(), "");
}

TEST_F(DetailsOfShop, FitIn360PixelsForEachKindOfThing) {
  for (const edits::Thing& thing : edits::allThings(shop.layout())) {
    select({edits::idOf(shop.layout(), thing)});
    EXPECT_LE(details.widget()->minimumSizeHint().width(), details.viewport()->width())
        << edits::idOf(shop.layout(), thing);
  }
}

TEST_F(DetailsOfShop, AreGoneThroughByTabFromTopToBottom) {
  for (const char* id : {"saw-1", "saw-1/paddle", "d1", "wood"}) {
    select({id});
    QTest::qWait(20);
    auto* first = details.section()->findChildren<Field*>().front()->focusProxy();
    first->setFocus();
    int last = first->mapTo(details.widget(), QPoint()).y();
    int gone_through = 1;
    while (true) {
      QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
      const QWidget* now = QApplication::focusWidget();
      if (now == first || !details.section()->isAncestorOf(now)) break;
      const int y = now->mapTo(details.widget(), QPoint()).y();
      EXPECT_GE(y, last) << id << ": " << now->accessibleName().toStdString();
      last = y;
      ASSERT_LT(++gone_through, 60) << id;
    }
    EXPECT_GT(gone_through, 4) << id;
  }
}

TEST_F(DetailsOfShop, ShowTheProblemsOfWhatIsSelected) {
  details.setProblems(
      {{"saw-1/operator", audit::Severity::Fail, "Too far."}, {"d1", audit::Severity::Warn, "Narrow."}});
  select({"saw-1"});
  QStringList texts;
  for (const QLabel* label : details.findChildren<QLabel*>())
    if (label->isVisible()) texts << label->text();
  EXPECT_TRUE(texts.contains("Fails: Too far.")) << texts.join("; ").toStdString();
  EXPECT_FALSE(texts.contains("Warns: Narrow."));
}

// Of what is on a machine too, and of a machine called `saw-1` none of another called `saw`.
TEST_F(DetailsOfShop, ShowTheFirstProblemsOfMuchAndHowManyMoreThereAre) {
  std::vector<Problem> problems(100, {"saw-1/operator", audit::Severity::Fail, "Too far."});
  problems.push_back({"saw-1-b/operator", audit::Severity::Fail, "Another's."});
  details.setProblems(problems);
  const auto shown = [&] {
    QTest::qWait(1);  // what is laid out is shown a moment later
    QStringList texts;
    for (const QLabel* label : details.findChildren<QLabel*>())
      if (label->isVisible()) texts << label->text();
    return texts;
  };
  for (const std::vector<std::string>& ids :
       {std::vector<std::string>{"saw-1"}, {"saw-1/operator", "saw-2"}}) {
    select(ids);
    EXPECT_EQ(shown().count("Fails: Too far."), 40) << ids[0];
    EXPECT_TRUE(shown().contains("and 60 more"));
    EXPECT_FALSE(shown().contains("Fails: Another's."));
  }
  problems.resize(40);
  details.setProblems(problems);
  EXPECT_EQ(shown().count("Fails: Too far."), 40);
  EXPECT_FALSE(shown().contains("and 60 more"));
}

TEST_F(DetailsOfShop, ShowTheProblemsFoundWhileNothingWasSelectedForAMoment) {
  select({"saw-1"});
  shop.selection.clear();
  details.setProblems({{"saw-1/operator", audit::Severity::Fail, "Too far."}});
  select({"saw-1"});
  QStringList texts;
  for (const QLabel* label : details.findChildren<QLabel*>())
    if (label->isVisible()) texts << label->text();
  EXPECT_TRUE(texts.contains("Fails: Too far.")) << texts.join("; ").toStdString();
}

}  // namespace
}  // namespace stopwalk::panels
