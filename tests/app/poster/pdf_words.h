#pragma once

#include "tests/app/poster/finished.h"

namespace stopwalk::poster {

// The words of each page of a PDF on the disk, where they are.
inline std::vector<std::vector<Word>> wordsOfPages(const QString& pdf) {
  static const QRegularExpression word(
      R"re(<word xMin="([\d.]+)" yMin="([\d.]+)" xMax="([\d.]+)" yMax="([\d.]+)">([^<]*)</word>)re");
  constexpr double kMmPerPoint = 25.4 / 72;
  std::vector<std::vector<Word>> pages;
  QStringList parts = QString::fromUtf8(outputOf("pdftotext", {"-bbox", pdf, "-"})).split("<page ");
  parts.removeFirst();
  for (const QString& part : parts) {
    std::vector<Word>& words = pages.emplace_back();
    for (auto at = word.globalMatch(part); at.hasNext();) {
      const auto m = at.next();
      const QPointF from(m.captured(1).toDouble(), m.captured(2).toDouble());
      const QPointF to(m.captured(3).toDouble(), m.captured(4).toDouble());
      words.push_back({m.captured(5), QRectF(from * kMmPerPoint, to * kMmPerPoint)});
    }
  }
  return pages;
}

inline QString textOfPdf(const QString& pdf) {
  return QString::fromUtf8(outputOf("pdftotext", {"-layout", pdf, "-"}));
}

// Whether each font of the PDF is in it, so that it prints alike everywhere.
inline bool hasAllFonts(const QString& pdf) {
  QStringList lines = QString::fromUtf8(outputOf("pdffonts", {pdf})).split('\n', Qt::SkipEmptyParts);
  if (lines.size() < 3) return false;
  const qsizetype column = lines[0].indexOf("emb");
  return std::ranges::all_of(lines.begin() + 2, lines.end(),
                             [&](const QString& line) { return line.mid(column, 3) == "yes"; });
}

// A page as picture, at 300 dots an inch.
inline QImage pictureOfPage(const QString& pdf, int page, const QString& folder) {
  const QString number = QString::number(page), to = folder + "/page-" + number;
  outputOf("pdftoppm", {"-r", "300", "-f", number, "-l", number, "-singlefile", "-png", pdf, to});
  return QImage(to + ".png").convertToFormat(QImage::Format_Grayscale8);
}

}  // namespace stopwalk::poster
