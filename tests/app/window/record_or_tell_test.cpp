// What is not recorded as one may think is told, where one is.
#include <fcntl.h>
#include <sys/file.h>
#include <unistd.h>

#include "tests/app/window/inspecting.h"

namespace stopwalk::window {
namespace {

class RecordOrTell : public Inspecting {
 protected:
  // As long as it lives, somebody else writes.
  struct Held {
    explicit Held(const std::string& log) : lock(::open((log + ".lock").c_str(), O_RDWR | O_CREAT, 0666)) {
      EXPECT_EQ(::flock(lock, LOCK_EX | LOCK_NB), 0);
    }
    ~Held() { ::close(lock); }
    const int lock;
  };
};

TEST_F(RecordOrTell, AFailedDeviceSaysSoOnItsCardAndAPassThatDoesNotCloseItToo) {
  std::optional<plan::InspectedOnPlan> shown;
  QObject::connect(&place(), &InspectPlace::onPlan, &place(), [&](const auto& now) { shown = now; });
  openAndCome();
  startRound();
  const std::string device = round().device();
  type("2f");
  enter();
  EXPECT_FALSE(card().told().contains("still failed"));
  EXPECT_EQ(card().failedText(), "") << "of the next device";
  key(Qt::Key_PageUp, Qt::ControlModifier);
  EXPECT_TRUE(card().failedText().contains("stays failed until")) << card().failedText().toStdString();
  type("1p");  // only looked at
  enter();
  ASSERT_EQ(onDisk().checks.size(), 2u) << card().told().toStdString();
  EXPECT_TRUE(card().told().contains("still failed")) << card().told().toStdString();
  EXPECT_EQ(shown->devices.at(device).state, plan::StationState::Fails);
  round().goTo(device);
  EXPECT_FALSE(card().failedText().isEmpty());
  type("2p");
  enter();
  EXPECT_FALSE(card().told().contains("still failed")) << card().told().toStdString();
  EXPECT_EQ(shown->devices.at(device).state, plan::StationState::Meets);
  round().goTo(device);
  EXPECT_EQ(card().failedText(), "");
}

TEST_F(RecordOrTell, ACardThatWaitsForAnotherToBeWrittenSaysSo) {
  openAndCome();
  startRound();
  type("12p");
  {
    const Held held(file);
    key(Qt::Key_Return);
    ASSERT_TRUE(place().isWriting());
    key(Qt::Key_PageDown, Qt::ControlModifier);
    type("12p");
    key(Qt::Key_Return);
    EXPECT_TRUE(card().told().contains("still being written")) << card().told().toStdString();
  }
  ASSERT_TRUE(becomes([&] { return !place().isWriting(); }));
  EXPECT_TRUE(card().told().startsWith("Recorded as")) << card().told().toStdString();
  enter();
  EXPECT_EQ(onDisk().checks.size(), 2u) << card().told().toStdString();
}

TEST_F(RecordOrTell, TheWindowClosesOnceWhatIsBeingWrittenIsOnTheDisk) {
  openAndCome();
  startRound();
  type("12p");
  {
    const Held held(file);
    key(Qt::Key_Return);
    ASSERT_TRUE(place().isWriting());
    EXPECT_FALSE(window->close());
    EXPECT_TRUE(window->sentence().contains("is being written")) << window->sentence().toStdString();
    EXPECT_TRUE(window->isVisible());
  }
  EXPECT_TRUE(becomes([&] { return !window->isVisible(); }));
  EXPECT_EQ(onDisk().checks.size(), 1u);
}

TEST_F(RecordOrTell, TheWindowStaysOpenWhereNothingCameOntoTheDisk) {
  openAndCome();
  startRound();
  type("12p");
  const Held held(file);
  key(Qt::Key_Return);
  EXPECT_FALSE(window->close());
  ASSERT_TRUE(becomes([&] { return !place().isWriting(); }));
  QTest::qWait(50);
  EXPECT_TRUE(window->isVisible());
  EXPECT_TRUE(card().told().startsWith("Not recorded")) << card().told().toStdString();
}

TEST_F(RecordOrTell, NothingIsRecordedOutOfSight) {
  openAndCome();
  startRound();
  type("12p");
  key(Qt::Key_1, Qt::AltModifier);
  key(Qt::Key_Return, Qt::ControlModifier);
  EXPECT_EQ(window->workPlace(), WorkPlace::Inspect);
  QTest::qWait(100);
  EXPECT_TRUE(onDisk().checks.empty());
  key(Qt::Key_Return, Qt::ControlModifier);
  EXPECT_TRUE(becomes([&] { return onDisk().checks.size() == 1; }));
}

TEST_F(RecordOrTell, TheLineOfTheStartFormGoesByItsOwnName) {
  openAndCome();
  key(Qt::Key_I, Qt::ControlModifier | Qt::ShiftModifier);
  type(inspector());
  place().start().onPaper()->setText("yesterday");
  key(Qt::Key_Return);
  EXPECT_TRUE(place().start().told().startsWith("Walked on paper on yesterday:"))
      << place().start().told().toStdString();
}

}  // namespace
}  // namespace stopwalk::window
