#pragma once

class QWidget;

namespace stopwalk::panels {

// Has a screen reader say what `widget` now says, wherever the keyboard is.
void announce(QWidget& widget);

}  // namespace stopwalk::panels
