// What stands on a card and is not recorded becomes a record only of who entered it, on the day of it.
#include <QDir>
#include <QJsonDocument>
#include <QJsonObject>

#include "app/rounds/device_history.h"
#include "app/rounds/run_down_timer.h"
#include "tests/app/window/inspecting.h"

namespace stopwalk::window {
namespace {

class HalfEntered : public Inspecting {
 protected:
  // A round with a card on which a pass was chosen and a note written, left.
  void leaveACard() {
    openAndCome();
    startRound();
    type("123p");
    typeInto(card().note(), "sticks");
    round().leave();
    only_note.note = "sticks";
  }
  // As if all of it had been entered on that day.
  void enteredOn(const QString& day) {
    for (const QString& name : settings.allKeys()) {
      if (!name.startsWith("inspect/drafts/")) continue;
      QJsonObject draft = QJsonDocument::fromJson(settings.value(name).toByteArray()).object();
      draft["typed_on"] = day;
      settings.setValue(name, QJsonDocument(draft).toJson());
    }
  }
  rounds::Entered only_note;
};

TEST_F(HalfEntered, IsToldOfWhereItCannotBeKept) {
  openAndCome();
  startRound();
  settings.sync();
  type("1");
  settle();
  EXPECT_FALSE(window->sentence().contains("cannot be written")) << window->sentence().toStdString();
  ASSERT_TRUE(QFile::remove(settings.fileName()));
  ASSERT_TRUE(QDir().mkpath(settings.fileName() + "/in the way"));
  type("2");
  EXPECT_TRUE(becomes([&] { return window->sentence().contains("cannot be written"); }))
      << window->sentence().toStdString();
}

TEST_F(HalfEntered, OnAnotherDayNothingIsChosenAndItIsToldWhatWas) {
  leaveACard();
  enteredOn("2026-03-02");
  for (int i = 0; i < 2; ++i) {  // it is told as often as one comes, until something is chosen
    goOnWithRound();
    EXPECT_EQ(card().entered(), only_note);
    EXPECT_TRUE(card().notRecorded().startsWith("Entered on 2 Mar 2026 by Ada Example, not recorded: pass"))
        << card().notRecorded().toStdString();
    enter();
    EXPECT_TRUE(onDisk().checks.empty());
    EXPECT_TRUE(card().told().contains("Choose the result")) << card().told().toStdString();
    round().leave();
  }
  goOnWithRound();
  type("3p");
  round().leave();
  goOnWithRound();
  EXPECT_EQ(card().notRecorded(), "") << "it was chosen today";
  enter();
  ASSERT_EQ(onDisk().checks.size(), 1u) << card().told().toStdString();
  EXPECT_EQ(onDisk().checks[0].note, "sticks");
  EXPECT_EQ(onDisk().checks[0].tested.size(), 1u);
  EXPECT_EQ(card().notRecorded(), "") << "of the next device";
}

TEST_F(HalfEntered, UnderAnotherNameNothingIsChosen) {
  leaveACard();
  goOnWithRound("Grace Example");
  EXPECT_EQ(card().entered(), only_note);
  EXPECT_TRUE(card().notRecorded().contains("by Ada Example, not recorded"))
      << card().notRecorded().toStdString();
  enter();
  EXPECT_TRUE(onDisk().checks.empty());
}

// Where one comes to it from what is only looked at, too: of such a device nothing is pressed or timed.
TEST_F(HalfEntered, ADraftOfAnotherIsToldInFullWhateverKindTheCardBeforeWasOf) {
  openAndCome();
  startRound();
  const auto isLookedAt = [](const std::string& id) { return id.ends_with("/start"); };
  const std::vector<std::string> order = round().order();
  const auto looked_at = std::ranges::find_if(order, isLookedAt);
  const auto stop = std::ranges::find_if_not(order, isLookedAt);
  ASSERT_TRUE(looked_at != order.end() && stop != order.end());
  round().goTo(*stop);
  type("13p");
  card().timer().show({"2.41"});
  card().note()->setText("sticks");
  type("2");  // kept with the run
  round().goTo(*looked_at);
  signAs("Grace Example");
  round().goTo(*stop);
  const QString told = card().notRecorded();
  EXPECT_TRUE(told.contains("by Ada Example, not recorded: pass")) << told.toStdString();
  for (const char* found : {"Nothing in its way", "Marking legible", "Pressed", "2.41 s"})
    EXPECT_TRUE(told.contains(found)) << found << " in " << told.toStdString();
}

TEST_F(HalfEntered, ANameThatIsTypedAndRecordedAtOnceMakesNoRecordOfAnothersCheck) {
  leaveACard();
  for (const bool from_anywhere : {false, true}) {
    key(Qt::Key_C, Qt::ControlModifier | Qt::ShiftModifier);
    if (!from_anywhere) type("5");  // what is changed before the name is known makes it nobody else's
    typeInto(card().inspector(), "Grace Example");
    key(Qt::Key_Return, from_anywhere ? Qt::ControlModifier : Qt::NoModifier);
    EXPECT_TRUE(becomes([&] { return !place().isWriting(); }));
    EXPECT_TRUE(onDisk().checks.empty());
    EXPECT_FALSE(card().entered().result.has_value());
    EXPECT_TRUE(card().notRecorded().contains("Ada Example")) << card().notRecorded().toStdString();
    round().leave();
  }
}

TEST_F(HalfEntered, WithoutANameItIsOfWhoeverHasTheRoundOpen) {
  leaveACard();
  key(Qt::Key_C, Qt::ControlModifier | Qt::ShiftModifier);
  key(Qt::Key_PageDown, Qt::ControlModifier);
  type("12f");
  const rounds::Entered entered = card().entered();
  const std::string device = round().device();
  key(Qt::Key_PageUp, Qt::ControlModifier);
  key(Qt::Key_PageDown, Qt::ControlModifier);
  EXPECT_EQ(card().entered(), entered) << "the same one goes on";
  round().leave();
  key(Qt::Key_C, Qt::ControlModifier | Qt::ShiftModifier);
  round().goTo(device);
  EXPECT_EQ(card().entered(), rounds::Entered());
  EXPECT_TRUE(card().notRecorded().contains("without a name")) << card().notRecorded().toStdString();
}

TEST_F(HalfEntered, ANameThatIsPutRightLeavesWhatWasEntered) {
  openAndCome();
  startRound();
  card().inspector()->clear();
  type("123p");
  const rounds::Entered entered = card().entered();
  signAs("Ada Exmaple");
  card().inspector()->clear();
  signAs("Ada Example");
  EXPECT_EQ(card().entered(), entered);
  enter();
  ASSERT_EQ(onDisk().checks.size(), 1u) << card().told().toStdString();
  EXPECT_EQ(onDisk().checks[0].inspector, "Ada Example");
}

TEST_F(HalfEntered, ACorrectionByAnotherLeavesTheCardOfTheRoundAsItIs) {
  openAndCome();
  startRound();
  type("123p");
  enter();
  type("123p");
  const rounds::Entered entered = card().entered();
  correct(onDisk().checks.front());
  type("r");
  signAs("Grace Example");
  enter();
  ASSERT_EQ(onDisk().checks.size(), 2u) << card().told().toStdString();
  EXPECT_EQ(card().entered(), entered);
  EXPECT_EQ(card().notRecorded(), "");
}

}  // namespace
}  // namespace stopwalk::window
