#include "app/window/notice_bar.h"

#include <gtest/gtest.h>

#include <QPointer>
#include <QPushButton>
#include <QTest>

namespace stopwalk::window {
namespace {

QPushButton* button(const NoticeBar& bar) {
  return bar.findChild<QPushButton*>();
}

// While something is dragged it is shown at each step: neither laid out nor told anew.
TEST(NoticeBar, OneThatSaysAndOffersTheSameStaysAndDoesWhatItWasShownWithLast) {
  NoticeBar bar;
  QStringList done;
  const auto show = [&](const QString& text, const QString& does) {
    bar.show("what if", text, {{"Back", [&done, does] { done << does; }}});
  };
  show("What if it is late?", "first");
  QPointer<QPushButton> shown = button(bar);
  show("What if it is late?", "second");
  QTest::qWait(1);
  ASSERT_TRUE(shown) << "laid out anew";
  shown->click();
  EXPECT_EQ(done, QStringList{"second"});
  EXPECT_EQ(bar.text(), "");
  show("What if it is late?", "third");
  show("What if it is later?", "fourth");
  QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
  EXPECT_EQ(bar.text(), "What if it is later?");
  button(bar)->click();
  EXPECT_EQ(done.last(), "fourth");
}

TEST(NoticeBar, ADoneThingMayShowItsNoticeAgain) {
  NoticeBar bar;
  bar.show("audit", "Not computed.", {{"Again", [&] { bar.show("audit", "Not computed.", {}); }}});
  button(bar)->click();
  EXPECT_EQ(bar.text(), "Not computed.");
}

}  // namespace
}  // namespace stopwalk::window
