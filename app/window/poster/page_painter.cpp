#include "app/window/poster/page_painter.h"

#include <QPainter>
#include <algorithm>

#include "app/poster/paint_page.h"

namespace stopwalk::window {
namespace {

constexpr double kBetween_mm = 15;  // of two sheets

QImage paint(const PagePainter::Question& question) {
  QImage image(question.pixels * question.ratio, QImage::Format_RGB32);
  if (image.isNull()) return image;
  image.setDevicePixelRatio(question.ratio);
  image.fill(question.ground);
  QPainter painter(&image);
  const std::vector<geometry::Box> sheets = sheetsOf(*question.document);
  for (std::size_t i = 0; i < sheets.size(); ++i) {
    const QRectF sheet = question.view.toPixels(sheets[i]);
    if (!sheet.intersects(QRectF(QPointF(), question.pixels))) continue;
    painter.save();
    painter.fillRect(sheet, Qt::white);
    painter.setClipRect(sheet);
    painter.translate(sheet.topLeft());
    poster::paintPage(painter, question.document->pages[i], question.document->family,
                      question.view.pixelsPerMm());
    painter.restore();
  }
  return image;
}

}  // namespace

std::vector<geometry::Box> sheetsOf(const poster::Document& document) {
  std::vector<geometry::Box> sheets;
  double top = 0;
  for (const poster::Page& page : document.pages) {
    sheets.push_back({{0, top - page.size.height()}, {page.size.width(), top}});
    top -= page.size.height() + kBetween_mm;
  }
  return sheets;
}

PagePainter::PagePainter(QObject* parent) : QObject(parent), worker_([this] { work(); }) {}

PagePainter::~PagePainter() {
  next_.close();
  worker_.join();
}

void PagePainter::work() {
  while (auto question = next_.take()) {
    auto answer = std::make_shared<Answer>();
    answer->image = paint(*question);
    answer->of = std::move(*question);
    QMetaObject::invokeMethod(
        this, [this, answer] { emit painted(answer); }, Qt::QueuedConnection);
  }
}

}  // namespace stopwalk::window
