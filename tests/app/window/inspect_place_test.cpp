// Rounds of inspection at the window, by keyboard.
#include <fcntl.h>
#include <sys/file.h>
#include <unistd.h>

#include <QMenuBar>
#include <QProgressBar>
#include <QPushButton>
#include <QWheelEvent>
#include <sstream>

#include "app/command_line/run.h"
#include "app/rounds/device_history.h"
#include "app/rounds/run_down_timer.h"
#include "tests/app/window/inspecting.h"

namespace stopwalk::window {
namespace {

using inspection::Result;
using inspection::Tried;

TEST_F(Inspecting, WalksAWholeRoundByKeyboardAsTheCommandLineWouldRecordIt) {
  openAndCome();
  startRound();
  const std::vector<std::string> order = round().order();
  ASSERT_GT(order.size(), 10u);
  for (std::size_t i = 0; i < order.size(); ++i) {
    ASSERT_EQ(round().device(), order[i]);
    ASSERT_EQ(card().entered(), rounds::Entered()) << "nothing is chosen before";
    type("123p");
    enter();
    ASSERT_EQ(onDisk().checks.size(), i + 1) << card().told().toStdString();
  }
  EXPECT_TRUE(round().isFinished());

  const QString other = pathOf("other.layout.yaml");
  QFile::copy(path, other);
  const auto run = [&](std::vector<std::string> args) {
    std::istringstream in;
    std::ostringstream out, err;
    ASSERT_EQ(app::run(std::move(args), app::Console{in, out, err}), 0) << err.str();
  };
  run({"round", "new", other.toStdString(), "--by", "Ada Example"});
  for (const std::string& device : order) {
    std::vector<std::string> args = {"round",    "record", other.toStdString(), "--round", "1",
                                     "--device", device,   "--result",          "pass"};
    const std::vector<std::string> tried = device.ends_with("/start")
                                               ? std::vector<std::string>{"seen"}
                                               : std::vector<std::string>{"clear", "legible", "pressed"};
    for (const std::string& test : tried) args.insert(args.end(), {"--check", test + "=yes"});
    run(std::move(args));
  }
  inspection::Records ours = onDisk(), theirs = records::readRecords(other.toStdString()).log.records;
  for (inspection::Records* records : {&ours, &theirs}) {
    for (auto& r : records->rounds) r.at = {};
    for (auto& c : records->checks) c.at = {};
  }
  EXPECT_EQ(ours, theirs);
}

TEST_F(Inspecting, ThePlanShowsWhatIsDueAndHowFarTheRoundHasCome) {
  std::optional<plan::InspectedOnPlan> shown;
  QObject::connect(&place(), &InspectPlace::onPlan, &place(), [&](const auto& now) { shown = now; });
  openAndCome();
  ASSERT_TRUE(becomes([&] { return shown.has_value(); }));
  const std::size_t devices = shown->devices.size();
  for (const auto& [id, device] : shown->devices) {
    EXPECT_EQ(device.mark, (plan::CheckMark{plan::CheckSign::Never, plan::CheckAge::Overdue})) << id;
    EXPECT_EQ(device.told, "Last check: never checked; overdue.") << id;
  }
  EXPECT_TRUE(shown->walk.empty());

  startRound();
  const std::vector<std::string> order = round().order();
  ASSERT_TRUE(becomes([&] { return shown && !shown->walk.empty(); }));
  EXPECT_GT(shown->walk.size(), 30u);  // at one or two nobody can stand
  EXPECT_EQ(shown->devices.size(), order.size());
  EXPECT_EQ(shown->devices.at(order[2]).text, "3");
  type("123p");
  enter();
  EXPECT_EQ(shown->devices.at(order[0]).mark.sign, plan::CheckSign::Passed);
  EXPECT_EQ(shown->devices.at(order[1]).mark.sign, plan::CheckSign::None);
  ASSERT_TRUE(becomes([&] { return shown && !shown->walk.empty() && shown->walk[0].is_next; }));
  EXPECT_EQ(std::ranges::count(shown->walk, true, &plan::InspectedOnPlan::Leg::is_next), 1);

  round().leave();
  ASSERT_TRUE(becomes([&] { return shown && shown->walk.empty(); }));
  EXPECT_EQ(shown->devices.size(), devices);
  EXPECT_EQ(shown->devices.at(order[0]).text, "today");
  key(Qt::Key_1, Qt::AltModifier);
  EXPECT_FALSE(shown.has_value());
}

// The walk that is drawn where one inspects is that of the round: no other is walked.
TEST_F(Inspecting, ThePlanShowsNoWalksOfTheAudit) {
  openAndCome();
  window->selection().set("table-saw");
  const auto painted = [&](bool with_report) {
    plan().showInspected(plan::InspectedOnPlan{});
    if (!with_report) plan().setReport(nullptr, false);
    return plan().grab().toImage();
  };
  ASSERT_TRUE(becomes([&] { return plan().isAudited(); }));
  const QImage with = painted(true);
  EXPECT_EQ(with, painted(false));
}

TEST_F(Inspecting, TheFormSaysWhatItsWalkComesToAndTheRoundIsWalkedSo) {
  openAndCome();
  key(Qt::Key_I, Qt::ControlModifier | Qt::ShiftModifier);
  rounds::StartForm& form = place().start();
  type(inspector());
  ASSERT_TRUE(becomes([&] { return form.order().contains("No order is shorter by more than"); }))
      << form.order().toStdString();
  EXPECT_TRUE(form.order().contains("doors as in opening hours"));
  EXPECT_TRUE(form.order().contains("no way leads to: ")) << form.order().toStdString();
  form.room()->setCurrentIndex(form.room()->findData("smithy"));
  emit form.room()->activated(form.room()->currentIndex());
  ASSERT_TRUE(becomes([&] { return form.order().contains("No order is shorter."); }))
      << form.order().toStdString();
  form.choose(rounds::StartForm::Over::All);
  form.hours()->setCurrentIndex(1);
  form.closed()->setChecked(true);
  form.beginAt()->setCurrentIndex(form.beginAt()->findData("lathe-1/operator"));
  emit form.beginAt()->activated(form.beginAt()->currentIndex());
  ASSERT_TRUE(becomes([&] { return form.order().contains("doors as after hours"); }));
  form.startButton()->click();
  ASSERT_TRUE(becomes([&] { return round().round().has_value(); })) << form.told().toStdString();
  const inspection::RoundWalk how{true, "lathe-1/operator", true};
  EXPECT_EQ(onDisk().rounds.back().walk, how);
  // The usual walk again, the next time.
  round().leave();
  key(Qt::Key_I, Qt::ControlModifier | Qt::ShiftModifier);
  EXPECT_EQ(form.walk(), inspection::RoundWalk());
  form.beginAt()->setCurrentIndex(form.beginAt()->findData("cnc-isolator"));
  form.startButton()->click();
  EXPECT_TRUE(form.told().contains("Nobody can stand")) << form.told().toStdString();
  EXPECT_EQ(onDisk().rounds.size(), 1u);
}

// Beside the button, with another that saves: nobody has to know where else to look.
TEST_F(Inspecting, ARoundOfALayoutWithUnsavedChangesAsksForItToBeSavedAndIsThenStarted) {
  openAndCome();
  layout::Layout other = layout();
  other.site.name = "Another name";
  window->goToPlace(WorkPlace::Draw);
  ASSERT_TRUE(window->document().edited().apply({"Rename", other}));
  come();
  ASSERT_TRUE(becomes([&] { return place().due().startButton()->isEnabled(); }));
  place().due().startButton()->click();
  settle();
  EXPECT_TRUE(place().due().told().contains("Save it first")) << place().due().told().toStdString();
  QPushButton* save = place().due().saveFirstButton();
  EXPECT_TRUE(save->isVisible());
  EXPECT_EQ(QApplication::focusWidget(), save);
  EXPECT_TRUE(window->isWindowModified()) << "nothing is saved unasked";
  key(Qt::Key_Space);
  EXPECT_FALSE(window->isWindowModified());
  ASSERT_TRUE(becomes([&] { return place().start().isVisible(); }));
  EXPECT_EQ(QApplication::focusWidget(), place().start().name());
  emit place().start().left();
  settle();
  EXPECT_TRUE(place().due().told().isEmpty());
  EXPECT_FALSE(save->isVisible());
}

TEST_F(Inspecting, TheCardOfADeviceThatNoWayLeadsToSaysSo) {
  openAndCome();
  startRound();
  const auto says = [&] {
    for (const auto* label : card().findChildren<QLabel*>())
      if (label->text().contains("On the plan no way leads here in opening hours.")) return true;
    return false;
  };
  EXPECT_FALSE(says());
  ASSERT_EQ(round().order().back(), "cnc-isolator");
  round().goTo("cnc-isolator");
  EXPECT_TRUE(becomes(says));
}

TEST_F(Inspecting, EntersARoundThatWasWalkedOnPaperWithItsOwnTime) {
  openAndCome();
  key(Qt::Key_I, Qt::ControlModifier | Qt::ShiftModifier);
  type(inspector());
  place().start().onPaper()->setFocus();
  type("yesterday");
  key(Qt::Key_Return);
  EXPECT_TRUE(place().start().told().contains("2026-03-02 09:15")) << place().start().told().toStdString();
  place().start().onPaper()->clear();
  type("2026-03-02 09:15+01:00");
  key(Qt::Key_Return);
  ASSERT_TRUE(becomes([&] { return round().round().has_value(); })) << place().start().told().toStdString();
  const auto walked = inspection::parseMoment("2026-03-02T09:15:00+01:00");
  EXPECT_EQ(round().round()->at, *walked);
  ASSERT_TRUE(round().round()->entered.has_value()) << "it was written today";
  EXPECT_GT(instantOf(*round().round()->entered), instantOf(*walked));
  card().second()->setText("Bo Example");
  for (int i = 1; i <= 3; ++i) {
    EXPECT_TRUE(card().recordButton()->text().contains("2 Mar"));
    type("123p");
    enter();
    const auto checks = onDisk().checks;
    ASSERT_EQ(checks.size(), static_cast<std::size_t>(i)) << card().told().toStdString();
    EXPECT_EQ(checks.back().at, *walked);
    ASSERT_TRUE(checks.back().entered.has_value());
    EXPECT_GT(instantOf(*checks.back().entered), instantOf(*walked));
    EXPECT_EQ(checks.back().second, "Bo Example");
  }
  type("123p");
  // Before the round there was no walk; and nothing was done tomorrow.
  for (const char* wrong : {"2026-03-01 09:15+01:00", "2999-03-02 09:15"}) {
    card().onPaper()->setText(wrong);
    enter();
    EXPECT_FALSE(card().told().isEmpty());
    EXPECT_EQ(onDisk().checks.size(), 3u);
  }
  card().onPaper()->clear();
  enter();
  ASSERT_EQ(onDisk().checks.size(), 4u);
  EXPECT_FALSE(onDisk().checks.back().entered.has_value());
  round().leave();
  EXPECT_TRUE(card().onPaper()->text().isEmpty()) << "the next round is walked now";
  goOnWithRound();
  type("123p");
  enter();
  ASSERT_EQ(onDisk().checks.size(), 5u) << card().told().toStdString();
  EXPECT_EQ(onDisk().checks.back().at, *walked) << "gone on with, it is still of its paper";
  EXPECT_TRUE(onDisk().checks.back().entered.has_value());
}

TEST_F(Inspecting, GoesBackToItsRoundAfterACheckOfAnotherWasCorrected) {
  openAndCome();
  startRound();
  const std::size_t first = round().round()->number;
  const std::string corrected = round().device();
  type("123p");
  enter();
  round().leave();
  startRound();
  const std::size_t second = round().round()->number;
  ASSERT_NE(second, first);
  key(Qt::Key_PageDown, Qt::ControlModifier);
  const std::string device = round().device();
  ASSERT_NE(device, corrected);
  const QString paper = QString::fromStdString(inspection::momentText(records::momentNow()));
  card().onPaper()->setText(paper);
  for (const bool leaves : {true, false}) {
    correct(onDisk().checks.front());
    ASSERT_EQ(round().round()->number, first);
    EXPECT_TRUE(card().onPaper()->text().isEmpty()) << "the paper was of the other round";
    if (leaves) {
      key(Qt::Key_Escape);
    } else {
      type("f");
      signAs("Bo Example");
      enter();
      ASSERT_EQ(onDisk().checks.size(), 2u) << card().told().toStdString();
      EXPECT_EQ(onDisk().checks.back().round, first);
      EXPECT_EQ(onDisk().checks.back().inspector, "Bo Example");
    }
    ASSERT_TRUE(round().round().has_value());
    EXPECT_EQ(round().round()->number, second);
    EXPECT_EQ(round().device(), device);
    EXPECT_EQ(card().onPaper()->text(), paper);
    EXPECT_EQ(card().inspector()->text(), inspector());
  }
}

TEST_F(Inspecting, WhatWasFoundInOneFileIsNotShownWithTheRecordsOfAnother) {
  openAndCome();
  bool is_shown = true;
  QObject::connect(&place(), &InspectPlace::onPlan,
                   [&](const auto& inspected) { is_shown = inspected.has_value(); });
  const QString other = pathOf("other.layout.yaml");
  ASSERT_TRUE(QFile::copy(path, other));
  window->openPath(other);
  EXPECT_FALSE(is_shown);
  EXPECT_TRUE(becomes([&] { return is_shown; }));
}

TEST_F(Inspecting, ARoundThatIsWrittenWhileAnotherFileIsOpenedIsNotTakenForOneOfThatFile) {
  openAndCome();
  const QString other = pathOf("other.layout.yaml");
  ASSERT_TRUE(QFile::copy(path, other));
  inspection::Round theirs{0, records::momentNow(), "Bo Example", "all", {}, {}};
  theirs.devices = {"saw/stop"};
  const std::string other_file = records::recordsFileOf(other.toStdString());
  ASSERT_EQ(records::appendRecord(other_file, theirs).written, records::Written::Yes);
  const int lock = ::open((file + ".lock").c_str(), O_RDWR | O_CREAT, 0666);
  ASSERT_EQ(::flock(lock, LOCK_EX | LOCK_NB), 0);
  key(Qt::Key_I, Qt::ControlModifier | Qt::ShiftModifier);
  type(inspector());
  key(Qt::Key_Return);
  ASSERT_TRUE(place().isWriting());
  window->openPath(other);
  ::close(lock);
  EXPECT_TRUE(becomes([&] { return !place().isWriting(); }));
  settle();
  ASSERT_EQ(onDisk().rounds.size(), 1u);
  EXPECT_FALSE(round().round().has_value());
}

TEST_F(Inspecting, TheCardSaysWhoBeganTheRound) {
  openAndCome();
  startRound();
  const auto* progress = card().findChild<QProgressBar*>();
  EXPECT_TRUE(progress->text().contains(inspector())) << progress->text().toStdString();
  EXPECT_EQ(round().round()->by, inspector().toStdString());
}

TEST_F(Inspecting, RecordsNothingWithoutAChosenResult) {
  openAndCome();
  startRound();
  enter();
  EXPECT_FALSE(card().told().isEmpty());
  type("3");
  enter();
  EXPECT_FALSE(card().told().isEmpty());
  EXPECT_TRUE(onDisk().checks.empty());
  EXPECT_TRUE(card().tried().box(Tried::Pressed)->answer().value_or(false)) << "what was entered stays";
}

TEST_F(Inspecting, APassSaysWhatWasTried) {
  openAndCome();
  startRound();
  type("p");
  enter();
  EXPECT_TRUE(onDisk().checks.empty());
  EXPECT_TRUE(card().told().contains("Tick")) << card().told().toStdString();
}

TEST_F(Inspecting, NoTwoDevicesAreCalledTheSame) {
  openAndCome();
  QStringList rows;
  const QTreeWidget& tree = *place().due().tree();
  for (int g = 0; g < tree.topLevelItemCount(); ++g)
    for (int i = 0; i < tree.topLevelItem(g)->childCount(); ++i)
      rows << tree.topLevelItem(g)->child(i)->text(0);
  EXPECT_GT(rows.size(), 30);
  EXPECT_EQ(rows.removeDuplicates(), 0);
}

TEST_F(Inspecting, ARoundIsStartedFromAnyPlaceInOneGo) {
  window->openPath(path);
  window->goToPlace(WorkPlace::Draw);
  key(Qt::Key_I, Qt::ControlModifier | Qt::ShiftModifier);
  EXPECT_TRUE(becomes([&] { return place().start().isVisible(); })) << window->sentence().toStdString();
}

TEST_F(Inspecting, EnterOnAButtonDoesWhatTheButtonSays) {
  openAndCome();
  key(Qt::Key_I, Qt::ControlModifier | Qt::ShiftModifier);
  type(inspector());
  for (auto* button : place().start().findChildren<QPushButton*>())
    if (button->text() == "Back") tabTo(button);
  key(Qt::Key_Return);
  EXPECT_FALSE(place().start().isVisible());
  EXPECT_TRUE(onDisk().rounds.empty());

  startRound();
  const std::string device = round().device();
  type("123p");
  for (auto* button : card().findChildren<QPushButton*>())
    if (button->accessibleName() == "Next device" || button->toolTip() == "Next device") tabTo(button);
  key(Qt::Key_Return);
  EXPECT_NE(round().device(), device);
  EXPECT_TRUE(onDisk().checks.empty());
}

TEST_F(Inspecting, EnterRecordsAlsoAfterAClickOnAButton) {
  openAndCome();
  startRound();
  for (auto* button : card().findChildren<QPushButton*>())
    if (button->accessibleName() == "Next device" || button->toolTip() == "Next device")
      QTest::mouseClick(button, Qt::LeftButton);
  type("123p");
  enter();
  EXPECT_EQ(onDisk().checks.size(), 1u);
}

// Nobody chooses by passing over.
TEST_F(Inspecting, TheWheelChangesNoChoiceOfTheForm) {
  openAndCome();
  key(Qt::Key_I, Qt::ControlModifier | Qt::ShiftModifier);
  QComboBox* doors = place().start().hours();
  const int was = doors->currentIndex();
  const QPoint at = doors->rect().center();
  QWheelEvent down(at, doors->mapToGlobal(at), {}, {0, -120}, Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase,
                   false);
  QApplication::sendEvent(doors, &down);
  EXPECT_EQ(doors->currentIndex(), was);
}

TEST_F(Inspecting, ALetterInTheMenuBarOpensAMenuAndSaysNothingOfTheDevice) {
  openAndCome();
  startRound();
  type("123f");
  window->menuBar()->setFocus();
  QTest::keyClick(window->menuBar(), Qt::Key_P);
  QTest::keyClick(window->menuBar(), Qt::Key_Escape);
  card().setFocus();
  type("x");
  EXPECT_EQ(card().entered().result, Result::Fail);
}

TEST_F(Inspecting, EnterRecordsAlsoAfterAClickOnTheClock) {
  openAndCome();
  startRound();
  QPushButton* clock = card().timer().findChild<QPushButton*>();
  QTest::mouseClick(clock, Qt::LeftButton);
  QTest::mouseClick(clock, Qt::LeftButton);
  type("123p");
  enter();
  EXPECT_EQ(onDisk().checks.size(), 1u) << card().told().toStdString();
  EXPECT_FALSE(card().timer().isRunning());
}

}  // namespace
}  // namespace stopwalk::window
