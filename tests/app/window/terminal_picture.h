#pragma once

#include <QImage>
#include <QString>
#include <string>

namespace stopwalk::window {

// What a terminal of so many columns shows: a command and what it wrote, with its colours, on a dark ground.
QImage terminalPicture(const QString& command, const std::string& written, int columns);

}  // namespace stopwalk::window
