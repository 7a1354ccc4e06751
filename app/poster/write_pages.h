#pragma once

#include <QByteArray>
#include <QString>
#include <vector>

#include "app/poster/page.h"

class QPrinter;

// A document as bytes of a file, all by the same painting. What cannot be made gives no bytes and says why.
namespace stopwalk::poster {

struct Bytes {
  QByteArray bytes;
  QString why;  // empty: all is well
};

inline constexpr int kDpi = 150;       // of a picture, unless another is asked for
inline constexpr int kMostDpi = 1200;  // an A2 page of more would not fit in memory

Bytes pdfOf(const Document& document);
// One page each.
Bytes svgOf(const Document& document, std::size_t page);
Bytes pngOf(const Document& document, std::size_t page, int dpi);
// False if the printer would not take it. The pages come at their own size, whatever the printer's margins.
bool printOn(QPrinter& printer, const Document& document);

}  // namespace stopwalk::poster
