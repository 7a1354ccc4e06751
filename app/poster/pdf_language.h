#pragma once

#include <QByteArray>
#include <QString>

namespace stopwalk::poster {

// The PDF with what a reader aloud, a search and a printer want to know and Qt does not write: the language
// of the text, the title in the window's bar, the subject, and that it is to be printed at its own size.
// Null, with `why`, where the PDF cannot be read.
QByteArray withLanguage(const QByteArray& pdf, const QString& language, const QString& subject, QString& why);

}  // namespace stopwalk::poster
