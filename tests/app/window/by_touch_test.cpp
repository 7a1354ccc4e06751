// A card asks what it must where that is seen, whether its result is chosen by a key or by a finger.
#include <QPointingDevice>
#include <QScrollArea>
#include <QScrollBar>

#include "app/rounds/failure_form.h"
#include "app/rounds/run_down_timer.h"
#include "tests/app/window/inspecting.h"

namespace stopwalk::window {
namespace {

using inspection::Result;

class ByTouch : public Inspecting {
 protected:
  QScrollArea& body() { return *card().findChild<QScrollArea*>(); }
  bool isInSight(QWidget* widget) {
    const QRect seen(QPoint(), body().viewport()->size());
    return seen.contains(QRect(widget->mapTo(body().viewport(), QPoint()), widget->size()));
  }
  QPoint inWindow(QWidget* widget, QPoint at) { return widget->mapTo(window.get(), at); }
  // Where it is at that moment, as a finger goes by what it sees.
  void tap(QWidget* widget) {
    ASSERT_TRUE(widget->isVisible() && widget->isEnabled());
    if (body().isAncestorOf(widget)) body().ensureWidgetVisible(widget);
    const QPoint at = inWindow(widget, widget->rect().center());
    by_ == By::Touch ? tapAt(at) : tapAsMouse(at);
    settle();
  }
  // Up (below 0) or down, by so many pixels.
  void draw(QWidget* widget, int by) {
    const QPoint from = inWindow(widget, widget->rect().center()), to = from + QPoint(0, by);
    if (by_ == By::Touch) {
      QTest::touchEvent(window->windowHandle(), finger_.get()).press(0, from);
      for (int step = 1; step <= 4; ++step)
        QTest::touchEvent(window->windowHandle(), finger_.get()).move(0, from + step * (to - from) / 4);
      QTest::touchEvent(window->windowHandle(), finger_.get()).release(0, to);
    } else {
      QWidget* on = window->childAt(from);
      ASSERT_TRUE(on);
      sendAsMouse(on, QEvent::MouseButtonPress, from);
      for (int step = 1; step <= 4; ++step) sendAsMouse(on, QEvent::MouseMove, from + step * (to - from) / 4);
      sendAsMouse(on, QEvent::MouseButtonRelease, to);
    }
    settle();
  }
  // What a platform hands on of a finger: touches, of which Qt makes a mouse, or a mouse that it made itself.
  enum class By { Touch, SystemsMouse };
  By by_ = By::Touch;

 private:
  void tapAt(QPoint at) {
    const int touch = ++touches_;  // screens number them on
    QTest::touchEvent(window->windowHandle(), finger_.get()).press(touch, at);
    QTest::qWait(20);
    QTest::touchEvent(window->windowHandle(), finger_.get()).release(touch, at);
  }
  // Two that come soon one after the other are a double click, as they are of the system.
  void tapAsMouse(QPoint at) {
    QWidget* widget = window->childAt(at);
    ASSERT_TRUE(widget);
    const bool twice = since_tap_.isValid() && since_tap_.elapsed() < QApplication::doubleClickInterval();
    sendAsMouse(widget, QEvent::MouseButtonPress, at);
    if (twice) sendAsMouse(widget, QEvent::MouseButtonDblClick, at);
    QTest::qWait(20);
    sendAsMouse(widget, QEvent::MouseButtonRelease, at);
    since_tap_.start();
  }
  void sendAsMouse(QWidget* to, QEvent::Type type, QPoint at) {
    const bool is_move = type == QEvent::MouseMove, is_up = type == QEvent::MouseButtonRelease;
    QMouseEvent event(type, to->mapFrom(window.get(), at), at, window->mapToGlobal(at),
                      is_move ? Qt::NoButton : Qt::LeftButton, is_up ? Qt::NoButton : Qt::LeftButton, {},
                      Qt::MouseEventSynthesizedBySystem);
    QSpontaneKeyEvent::setSpontaneous(&event);
    qApp->notify(to, &event);
  }

  QElapsedTimer since_tap_;
  int touches_ = 0;
  std::unique_ptr<QPointingDevice> finger_{QTest::createTouchDevice()};
};

TEST_F(ByTouch, TheQuestionsOfAFailureAreInSightOnceItIsChosen) {
  openAndCome();
  startRound();
  for (const bool by_key : {true, false}) {
    body().verticalScrollBar()->setValue(0);
    tap(card().result().button(Result::Pass));
    if (by_key)
      type("f");
    else
      tap(card().result().button(Result::Fail));
    settle();
    const rounds::FailureForm& form = card().failure();
    for (QLineEdit* line : {form.taggedBy(), form.taggedUntil(), form.action(), form.todo()})
      EXPECT_TRUE(isInSight(line)) << line->accessibleName().toStdString();
  }
  EXPECT_FALSE(card().failure().isAncestorOf(QApplication::focusWidget())) << "keys go on choosing";
}

TEST_F(ByTouch, AWholeCardIsWalkedByAFinger) {
  using inspection::Tried;
  openAndCome();
  startRound();
  for (const By by : {By::Touch, By::SystemsMouse}) {
    by_ = by;
    const std::size_t before = onDisk().checks.size();
    const std::string device = round().device();
    for (const Tried test : {Tried::Clear, Tried::Legible, Tried::Pressed, Tried::Latches})
      tap(card().tried().box(test));
    tap(card().tried().box(Tried::Latches));  // once more: no
    tap(card().tried().box(Tried::Legible));
    tap(card().tried().box(Tried::Legible));  // and a third time: not tried
    for (const int ms : {60, 1, 700}) {       // sooner and later than two taps are one double tap
      tap(card().timer().button());
      ASSERT_TRUE(card().timer().isRunning());
      QTest::qWait(ms);
      tap(card().timer().button());
      ASSERT_FALSE(card().timer().isRunning()) << "the second tap stops the clock, after " << ms << " ms";
    }
    const std::vector<double> runs = card().timer().runs();
    ASSERT_EQ(runs.size(), 3u);
    EXPECT_GE(runs[2], 0.7);
    tap(card().note());
    EXPECT_EQ(QApplication::focusWidget(), card().note());
    type("sticks a little");
    tap(card().result().button(Result::Pass));
    tap(card().result().button(Result::Fail));
    tap(card().failure().taggedBy());
    type("Bo Example");
    tap(card().recordButton());
    ASSERT_TRUE(becomes([&] { return !place().isWriting(); }));
    ASSERT_EQ(onDisk().checks.size(), before + 1) << card().told().toStdString();
    const inspection::Check check = onDisk().checks.back();
    EXPECT_EQ(check.device, device);
    EXPECT_EQ(check.result, Result::Fail);
    EXPECT_EQ(check.tested, (std::vector<std::pair<Tried, bool>>{
                                {Tried::Clear, true}, {Tried::Pressed, true}, {Tried::Latches, false}}));
    EXPECT_EQ(check.run_down_s, runs);
    EXPECT_EQ(check.note, "sticks a little");
    EXPECT_EQ(check.tagged_out, (inspection::TagOut{"Bo Example", {}}));
    EXPECT_NE(round().device(), device) << "the next card";
    tap(card().previousButton());
    EXPECT_EQ(round().device(), device);
    tap(card().nextButton());
    while (round().device().ends_with("/start")) tap(card().nextButton());  // never pressed
  }
}

TEST_F(ByTouch, AFingerThatIsDrawnOverTheCardScrollsItAndTicksNothingOnItsWay) {
  openAndCome();
  window->resize(1024, 640);
  startRound();
  for (const By by : {By::Touch, By::SystemsMouse}) {
    by_ = by;
    body().verticalScrollBar()->setValue(0);
    ASSERT_GT(body().verticalScrollBar()->maximum(), 100);
    draw(card().tried().box(inspection::Tried::Legible), -100);
    EXPECT_EQ(body().verticalScrollBar()->value(), 100);
    EXPECT_TRUE(card().entered().tested.empty());
    EXPECT_FALSE(card().tried().box(inspection::Tried::Legible)->isDown());
    draw(card().tried().box(inspection::Tried::Legible), 60);
    EXPECT_EQ(body().verticalScrollBar()->value(), 40);
    tap(card().tried().box(inspection::Tried::Legible));
    EXPECT_EQ(card().entered().tested.size(), 1u) << "a tap still ticks";
    tap(card().tried().box(inspection::Tried::Legible));
    tap(card().tried().box(inspection::Tried::Legible));
  }
}

TEST_F(ByTouch, WhatIsStillToBeDoneIsAskedWhereverItIsRecorded) {
  openAndCome();
  startRound();
  EXPECT_TRUE(card().failure().isHidden());
  for (const Result result : inspection::kResults) {
    tap(card().result().button(result));
    EXPECT_EQ(card().failure().isHidden(), result == Result::Pass) << word(result);
  }
}

TEST_F(ByTouch, TheCardSaysWhatToWatch) {
  openAndCome();
  startRound();
  bool has_stop = false, has_other = false;
  for (const std::string& device : round().order()) {
    round().goTo(device);
    settle();
    QStringList said;
    for (const QLabel* label : card().findChildren<QLabel*>()) said << label->text();
    const QString all = said.join("\n");
    const bool is_start = all.contains("This starts the machine");
    has_other = has_other || is_start;
    has_stop = has_stop || !is_start;
    EXPECT_EQ(all.contains("with the work clear"), !is_start) << device;
    EXPECT_EQ(all.contains("must come to rest, and stay at rest"), !is_start) << device;
    EXPECT_EQ(all.contains("No stop. To look at"), is_start) << device;
  }
  EXPECT_TRUE(has_stop && has_other);
}

// What a finger aims at stays where it is.
TEST_F(ByTouch, ASentenceThatComesOrGoesMovesNothingThatIsPressed) {
  openAndCome();
  startRound();
  card().inspector()->clear();
  card().setFocus();
  settle();
  const std::vector<QWidget*> pressed = {card().recordButton(), card().inspector(), &card().result(),
                                         &card().tried()};
  const auto places = [&] {
    std::vector<QPoint> all;
    for (QWidget* widget : pressed) all.push_back(widget->mapTo(window.get(), QPoint()));
    return all;
  };
  const std::vector<QPoint> before = places();
  type("3p");
  settle();
  EXPECT_FALSE(card().counts().isEmpty());
  EXPECT_EQ(places(), before);
  enter();
  settle();
  EXPECT_FALSE(card().told().isEmpty()) << "nobody made it";
  EXPECT_EQ(places(), before);
}

}  // namespace
}  // namespace stopwalk::window
