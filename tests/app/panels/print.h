#pragma once

#include <QStringList>
#include <ostream>

// For what a failed test says.
inline void PrintTo(const QString& text, std::ostream* out) {
  *out << '"' << text.toStdString() << '"';
}
inline void PrintTo(const QStringList& texts, std::ostream* out) {
  *out << '"' << texts.join("\", \"").toStdString() << '"';
}
