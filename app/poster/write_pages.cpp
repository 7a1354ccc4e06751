#include "app/poster/write_pages.h"

#include <QBuffer>
#include <QImage>
#include <QPageLayout>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <QPrinter>
#include <QSvgGenerator>
#include <cmath>

#include "app/poster/paint_page.h"
#include "app/poster/pdf_language.h"

namespace stopwalk::poster {
namespace {

constexpr double kMmPerInch = 25.4;
constexpr int kPdfDpi = 1200;

// The whole sheet: what the page leaves white, it leaves white itself.
QPageLayout layoutOf(const Page& page) {
  const bool wide = page.size.width() > page.size.height();
  const QSizeF upright = wide ? page.size.transposed() : page.size;
  QPageLayout layout(QPageSize(upright, QPageSize::Millimeter, QString(), QPageSize::ExactMatch),
                     wide ? QPageLayout::Landscape : QPageLayout::Portrait, QMarginsF(),
                     QPageLayout::Millimeter);
  layout.setMode(QPageLayout::FullPageMode);
  return layout;
}

}  // namespace

Bytes pdfOf(const Document& document) {
  QBuffer buffer;
  buffer.open(QIODevice::WriteOnly);
  QPdfWriter writer(&buffer);
  writer.setTitle(document.title());
  writer.setCreator("Stopwalk");
  writer.setResolution(kPdfDpi);
  writer.setPageLayout(layoutOf(document.pages.front()));
  QPainter painter;
  if (!painter.begin(&writer)) return {{}, "the PDF cannot be begun"};
  for (std::size_t i = 0; i < document.pages.size(); ++i) {
    if (i > 0) {
      writer.setPageLayout(layoutOf(document.pages[i]));
      writer.newPage();
    }
    paintPage(painter, document.pages[i], document.family, kPdfDpi / kMmPerInch);
  }
  if (!painter.end()) return {{}, "the PDF cannot be finished"};
  Bytes done;
  done.bytes = withLanguage(buffer.data(), document.language, document.subject, done.why);
  return done;
}

Bytes svgOf(const Document& document, std::size_t page) {
  const Page& p = document.pages[page];
  QBuffer buffer;
  QSvgGenerator svg;
  svg.setOutputDevice(&buffer);
  svg.setTitle(document.title().toHtmlEscaped());  // Qt writes both as they are
  svg.setDescription(document.subject.toHtmlEscaped());
  svg.setResolution(static_cast<int>(kMmPerInch * 100));  // a unit is a hundredth of a millimetre
  svg.setSize((p.size * 100).toSize());
  svg.setViewBox(QRectF(QPointF(), p.size * 100));
  QPainter painter;
  if (!painter.begin(&svg)) return {{}, "the SVG cannot be begun"};
  paintPage(painter, p, document.family, 100);
  painter.end();
  return {buffer.data(), {}};
}

Bytes pngOf(const Document& document, std::size_t page, int dpi) {
  const Page& p = document.pages[page];
  const double per_mm = dpi / kMmPerInch;
  QImage image(static_cast<int>(std::lround(p.size.width() * per_mm)),
               static_cast<int>(std::lround(p.size.height() * per_mm)), QImage::Format_RGB32);
  if (image.isNull()) return {{}, "there is not enough memory for a picture of this resolution"};
  image.setDotsPerMeterX(static_cast<int>(std::lround(per_mm * 1000)));
  image.setDotsPerMeterY(image.dotsPerMeterX());
  image.setText("Title", document.title());
  image.fill(Qt::white);
  QPainter painter(&image);
  paintPage(painter, p, document.family, per_mm);
  painter.end();
  QBuffer buffer;
  buffer.open(QIODevice::WriteOnly);
  if (!image.save(&buffer, "PNG")) return {{}, "the picture cannot be made"};
  return {buffer.data(), {}};
}

bool printOn(QPrinter& printer, const Document& document) {
  printer.setDocName(document.title());
  printer.setFullPage(true);
  QPainter painter;
  for (std::size_t i = 0; i < document.pages.size(); ++i) {
    const QPageLayout layout = layoutOf(document.pages[i]);
    printer.setPageSize(layout.pageSize());
    printer.setPageOrientation(layout.orientation());
    if (i == 0 ? !painter.begin(&printer) : !printer.newPage()) return false;
    const QPointF margin = printer.pageLayout().fullRectPixels(printer.resolution()).topLeft();
    painter.save();
    painter.translate(-margin);
    paintPage(painter, document.pages[i], document.family, printer.resolution() / kMmPerInch);
    painter.restore();
  }
  return painter.end();
}

}  // namespace stopwalk::poster
