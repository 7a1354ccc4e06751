#pragma once

#include <QByteArray>
#include <QImage>
#include <QString>
#include <utility>
#include <vector>

#include "app/poster/paper.h"

namespace stopwalk::poster {

// A text of any length, in HTML, to be laid on paper.
struct PagedText {
  QString title, subject;
  QString html;                                      // English
  std::vector<std::pair<QString, QImage>> pictures;  // by the name that the HTML calls them
  QString foot;                                      // at the foot of each page, beside `page x of y`
};

// As a PDF: tables repeat their heads, a word too long for its column is broken. Null, with `why`, if it
// cannot be made.
QByteArray pagedPdf(const PagedText& text, const Paper& paper, const QString& family, QString& why);

}  // namespace stopwalk::poster
