#pragma once

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QImage>
#include <QImageReader>
#include <QProcess>
#include <QRectF>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <algorithm>
#include <cmath>
#include <stdexcept>
#include <vector>

#include "app/poster/write_pages.h"

// The finished PDF as others see it: its text by pdftotext, its pages as pictures by pdftoppm, its codes by
// zbarimg.
namespace stopwalk::poster {

inline QByteArray outputOf(const QString& program, const QStringList& arguments) {
  QProcess process;
  process.start(program, arguments);
  EXPECT_TRUE(process.waitForFinished(60000)) << program.toStdString();
  EXPECT_EQ(process.exitCode(), 0) << process.readAllStandardError().toStdString();
  return process.readAllStandardOutput();
}

struct Word {
  QString text;
  QRectF box;  // mm; its height is that of the font
};

class Finished {
 public:
  // Small sheets are looked at more finely than large ones.
  explicit Finished(const Document& document)
      : dpi(document.pages[0].size.width() * document.pages[0].size.height() < 70000 ? 300 : 200),
        per_mm(dpi / 25.4),
        pixel_mm(1 / per_mm) {
    const Bytes pdf = pdfOf(document);
    EXPECT_TRUE(pdf.why.isEmpty()) << pdf.why.toStdString();
    QFile file(path("poster.pdf"));
    EXPECT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(pdf.bytes);
  }

  const int dpi;
  const double per_mm;
  const double pixel_mm;

  QString path(const QString& name) const { return folder_.filePath(name); }

  QString text() const { return outputOf("pdftotext", {"-layout", path("poster.pdf"), "-"}); }

  // Of the first page.
  std::vector<Word> words() const {
    std::vector<Word> words;
    const QString html = outputOf("pdftotext", {"-bbox", "-l", "1", path("poster.pdf"), "-"});
    static const QRegularExpression word(
        R"re(<word xMin="([\d.]+)" yMin="([\d.]+)" xMax="([\d.]+)" yMax="([\d.]+)">([^<]*)</word>)re");
    constexpr double kMmPerPoint = 25.4 / 72;
    for (auto at = word.globalMatch(html); at.hasNext();) {
      const auto m = at.next();
      const QPointF from(m.captured(1).toDouble(), m.captured(2).toDouble());
      const QPointF to(m.captured(3).toDouble(), m.captured(4).toDouble());
      words.push_back({m.captured(5), QRectF(from * kMmPerPoint, to * kMmPerPoint)});
    }
    return words;
  }

  // The first page.
  const QImage& picture() const {
    if (picture_.isNull()) {
      outputOf("pdftoppm", {"-r", QString::number(dpi), "-f", "1", "-l", "1", "-singlefile", "-png",
                            path("poster.pdf"), path("page")});
      QImageReader::setAllocationLimit(0);  // an A2 page is larger than Qt takes unasked
      picture_ = QImage(path("page.png")).convertToFormat(QImage::Format_RGB32);
      if (picture_.isNull()) throw std::runtime_error("no picture of the page");
    }
    return picture_;
  }

  QRgb at(double x_mm, double y_mm) const { return picture().pixel(int(x_mm * per_mm), int(y_mm * per_mm)); }

  // How high what differs from the ground is, within a box of the page, mm.
  template <class IsInk>
  double inkHeight(const QRectF& box_mm, IsInk&& is_ink) const {
    int top = 1 << 30, bottom = -1;
    for (int y = int(box_mm.top() * per_mm); y < int(box_mm.bottom() * per_mm); ++y)
      for (int x = int(box_mm.left() * per_mm); x < int(box_mm.right() * per_mm); ++x)
        if (is_ink(picture().pixel(x, y))) {
          top = std::min(top, y);
          bottom = std::max(bottom, y);
        }
    return bottom < 0 ? 0 : (bottom - top + 1) / per_mm;
  }

 private:
  QTemporaryDir folder_;
  mutable QImage picture_;
};

inline double luminance(QRgb colour) {
  const auto part = [](int value) {
    const double c = value / 255.0;
    return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
  };
  return 0.2126 * part(qRed(colour)) + 0.7152 * part(qGreen(colour)) + 0.0722 * part(qBlue(colour));
}

// WCAG 2: (L1 + 0.05) / (L2 + 0.05).
inline double contrast(QRgb a, QRgb b) {
  const double la = luminance(a) + 0.05, lb = luminance(b) + 0.05;
  return std::max(la, lb) / std::min(la, lb);
}

}  // namespace stopwalk::poster
