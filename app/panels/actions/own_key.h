#pragma once

#include <QKeySequence>
#include <functional>

class QWidget;

namespace stopwalk::panels {

// A key of the window's menus that does something else while `widget` has the keyboard. A shortcut of the
// widget would not do: both would mean the key, and neither would be done.
void giveOwnKey(QWidget& widget, const QKeySequence& key, std::function<void()> run);
// Each key that the system has for it.
void giveOwnKey(QWidget& widget, QKeySequence::StandardKey key, const std::function<void()>& run);

}  // namespace stopwalk::panels
