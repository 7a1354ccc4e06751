#include <gtest/gtest.h>

#include <QMainWindow>
#include <QMenuBar>
#include <algorithm>
#include <cmath>

#include "app/panels/actions/action_finder.h"
#include "app/panels/moment_ago.h"
#include "app/panels/problems/problem_list.h"
#include "tests/app/panels/person.h"

namespace stopwalk::panels {
namespace {

using audit::Severity;

TEST(ProblemList, ShowsTheWorstFirstAndGoesThere) {
  ProblemList list;
  bringUp(list);
  EXPECT_FALSE(list.list()->isVisible());
  QStringList gone_to;
  QObject::connect(&list, &ProblemList::goTo, [&](const QString& id) { gone_to << id; });
  list.setProblems({{"d1", Severity::Warn, "The door is narrow."},
                    {"n1", Severity::Note, "Look here."},
                    {"saw-1/operator", Severity::Fail, "Too far from its stop."}});
  ASSERT_EQ(list.list()->count(), 3);
  EXPECT_EQ(list.list()->item(0)->text(), "Fails: Too far from its stop.");
  EXPECT_EQ(list.list()->item(2)->text(), "Note: Look here.");
  list.list()->setFocus();
  list.list()->setCurrentRow(0);
  QTest::keyClick(list.list(), Qt::Key_Return);
  EXPECT_EQ(gone_to, QStringList{"saw-1/operator"});
  list.setProblems({});
  EXPECT_FALSE(list.list()->isVisible());
}

class FinderInWindow : public testing::Test {
 protected:
  FinderInWindow() {
    QMenu* edit = window.menuBar()->addMenu("&Edit");
    undo = edit->addAction("&Undo Move saw");
    undo->setShortcut(Qt::CTRL | Qt::Key_Z);
    edit->addSeparator();
    off = edit->addAction("Redo");
    off->setEnabled(false);
    window.menuBar()->addMenu("&File")->addAction("Save &as...");
    QObject::connect(undo, &QAction::triggered, [this] { ++undone; });
    QObject::connect(off, &QAction::triggered, [this] { ++undone; });
    bringUp(window);
  }

  QStringList lines(const ActionFinder& finder) const {
    QStringList texts;
    for (int i = 0; i < finder.list()->count(); ++i)
      if (!finder.list()->item(i)->isHidden()) texts << finder.list()->item(i)->text();
    return texts;
  }

  QMainWindow window;
  QAction* undo = nullptr;
  QAction* off = nullptr;
  int undone = 0;
};

TEST_F(FinderInWindow, ListsAllActionsWithMenuAndShortcut) {
  ActionFinder finder(&window);
  EXPECT_EQ(lines(finder), (QStringList{"Edit: Redo", "Edit: Undo Move saw (Ctrl+Z)", "File: Save as"}));
}

TEST_F(FinderInWindow, RunsWhatWasTyped) {
  ActionFinder finder(&window);
  bringUp(finder);
  QTest::keyClicks(finder.search(), "undo");
  EXPECT_EQ(lines(finder).size(), 1);
  QTest::keyClick(finder.search(), Qt::Key_Return);
  QApplication::processEvents();
  EXPECT_EQ(undone, 1);
  EXPECT_FALSE(finder.isVisible());
}

TEST_F(FinderInWindow, DoesNotRunWhatCannotBeDoneNow) {
  ActionFinder finder(&window);
  bringUp(finder);
  QTest::keyClicks(finder.search(), "redo");
  QTest::keyClick(finder.search(), Qt::Key_Return);
  QApplication::processEvents();
  EXPECT_EQ(undone, 0);
  EXPECT_TRUE(finder.isVisible());
}

// WCAG 2.1, 1.4.3 (from memory): 4.5:1 for text; the formula of its relative luminance, from memory.
double luminance(const QColor& colour) {
  const auto linear = [](double c) { return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4); };
  return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) + 0.0722 * linear(colour.blueF());
}

TEST(MomentAgo, WhatIsPaledIsStillToBeReadInLightAndDark) {
  for (const auto& [ink, ground] :
       {std::pair(QColor(Qt::black), QColor(Qt::white)), std::pair(QColor(Qt::black), QColor(239, 239, 239)),
        std::pair(QColor(Qt::white), QColor(35, 38, 41)), std::pair(QColor(Qt::white), QColor(53, 53, 53))}) {
    QWidget widget;
    QPalette palette;
    palette.setColor(QPalette::Text, ink);
    palette.setColor(QPalette::Base, ground);
    widget.setPalette(palette);
    showPale(widget, true);
    const double a = luminance(widget.palette().color(QPalette::Text)), b = luminance(ground);
    EXPECT_GE((std::max(a, b) + 0.05) / (std::min(a, b) + 0.05), 4.5) << ground.name().toStdString();
    EXPECT_NE(widget.palette().color(QPalette::Text), ink) << "it is paler";
  }
}

}  // namespace
}  // namespace stopwalk::panels
