#pragma once

#include <QString>
#include <QStringList>
#include <QWidget>

#include "tests/app/panels/print.h"

namespace stopwalk::panels {

// What a screen reader would have no name for, among all that can take the keyboard in a widget.
QStringList namelessControls(const QWidget& widget);

}  // namespace stopwalk::panels
