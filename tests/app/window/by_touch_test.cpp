// A card asks what it must where that is seen, whether its result is chosen by a key or by a finger.
#include <QPointingDevice>
#include <QScrollArea>
#include <QScrollBar>

#include "app/rounds/failure_form.h"
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
  void tap(QWidget* widget) {
    ASSERT_TRUE(widget->isVisible() && widget->isEnabled());
    const QPoint at = inWindow(widget, widget->rect().center());
    QTest::touchEvent(window->windowHandle(), finger_.get()).press(0, at);
    QTest::qWait(20);
    QTest::touchEvent(window->windowHandle(), finger_.get()).release(0, at);
    settle();
  }

 private:
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

}  // namespace
}  // namespace stopwalk::window
