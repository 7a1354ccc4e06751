#pragma once

#include <gtest/gtest.h>

#include <QTest>
#include <QWidget>

#include "tests/app/panels/print.h"

// What a person does, and sees.
namespace stopwalk::panels {

// Types over what stands in a line, without entering it.
inline void typeOver(QWidget* line, const QString& text) {
  line->setFocus();
  QTest::keyClick(line, Qt::Key_A, Qt::ControlModifier);
  if (text.isEmpty()) QTest::keyClick(line, Qt::Key_Delete);
  QTest::keyClicks(line, text);
}

inline void enter(QWidget* line, const QString& text) {
  typeOver(line, text);
  QTest::keyClick(line, Qt::Key_Return);
}

// Shown in a window that is active, so that the keyboard is there.
inline void bringUp(QWidget& widget, int width = 360, int height = 640) {
  widget.resize(width, height);
  widget.show();
  widget.activateWindow();
  ASSERT_TRUE(QTest::qWaitForWindowActive(&widget));
}

}  // namespace stopwalk::panels
