#include "app/window/poster/page_view.h"

#include <QMouseEvent>
#include <QNativeGestureEvent>
#include <QPainter>
#include <algorithm>

#include "app/plan/text.h"
#include "app/plan/wheel.h"

namespace stopwalk::window {
namespace {

constexpr double kMargin_px = 20;
constexpr double kStep_px = 60;  // of an arrow key

bool sameSheets(const std::shared_ptr<const poster::Document>& a,
                const std::shared_ptr<const poster::Document>& b) {
  return a && b && std::ranges::equal(a->pages, b->pages, {}, &poster::Page::size, &poster::Page::size);
}

bool sameView(const PagePainter::Question& a, const PagePainter::Question& b) {
  return a.view == b.view && a.pixels == b.pixels && a.ratio == b.ratio && a.ground == b.ground;
}

}  // namespace

PageView::PageView(QWidget* parent) : QWidget(parent), theme_(plan::Theme::of(palette())) {
  setFocusPolicy(Qt::StrongFocus);
  setAttribute(Qt::WA_OpaquePaintEvent);
  setAccessibleName(tr("Poster"));
  setCursor(Qt::OpenHandCursor);
  connect(&painter_, &PagePainter::painted, this, [this](std::shared_ptr<const PagePainter::Answer> answer) {
    picture_ = std::move(answer);
    update();
  });
}

void PageView::show(std::shared_ptr<const poster::Document> document, const QString& sentence) {
  const bool fits_anew = !sameSheets(document, document_);
  document_ = std::move(document);
  sentence_ = sentence;
  setAccessibleDescription(
      document_ ? tr("%1, sheets: %2").arg(document_->title()).arg(document_->pages.size()) : sentence_);
  if (fits_anew)
    fit();
  else
    viewChanged();
}

void PageView::setCurrent(bool is_current) {
  is_current_ = is_current;
  update();
}

bool PageView::isPainted() const {
  return document_ && picture_ && picture_->of.document == document_ && sameView(picture_->of, question());
}

PagePainter::Question PageView::question() const {
  return {document_, view_, size(), devicePixelRatioF(), theme_.outside};
}

void PageView::viewChanged() {
  if (document_) painter_.ask(question());
  update();
}

void PageView::fit() {
  sheet_ = 0;
  goToSheet(0);
}

void PageView::goToSheet(int index) {
  if (!document_) return update();
  const std::vector<geometry::Box> sheets = sheetsOf(*document_);
  sheet_ = std::clamp(index, 0, static_cast<int>(sheets.size()) - 1);
  view_.fit(sheets[static_cast<std::size_t>(sheet_)], size(), kMargin_px);
  is_fitted_ = true;
  viewChanged();
}

void PageView::zoomBy(double factor) {
  view_.zoomAt(QPointF(width() / 2.0, height() / 2.0), factor);
  is_fitted_ = false;
  viewChanged();
}

void PageView::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.fillRect(rect(), theme_.outside);
  if (document_) paintPicture(painter);
  if (!document_ && is_current_) paintMark(painter, sentence_, true);
  if (!is_current_) paintMark(painter, tr("Being made…"), !document_);
}

// Until the picture of this view is there, the last one, moved and stretched over the white sheets.
void PageView::paintPicture(QPainter& painter) const {
  if (isPainted()) return painter.drawImage(QPointF(), picture_->image);
  for (const geometry::Box& sheet : sheetsOf(*document_)) painter.fillRect(view_.toPixels(sheet), Qt::white);
  if (!picture_ || !sameSheets(picture_->of.document, document_)) return;
  const plan::ViewTransform& was = picture_->of.view;
  const QSizeF pixels = picture_->of.pixels;
  for (const geometry::Box& sheet : sheetsOf(*document_)) {
    painter.save();
    painter.setClipRect(view_.toPixels(sheet));
    const QPointF corner = view_.toPixels(was.toPlan(QPointF()));
    painter.drawImage(QRectF(corner, pixels * (view_.pixelsPerMm() / was.pixelsPerMm())), picture_->image);
    painter.restore();
  }
}

void PageView::paintMark(QPainter& painter, const QString& text, bool in_the_middle) const {
  painter.setFont(plan::labelFont());
  const QFontMetricsF metrics(painter.font());
  const QString lines = plan::wrapped(text, width() - 6 * kMargin_px, metrics);
  QRectF box(QPointF(), plan::textSize(lines, metrics));
  box.moveCenter({width() / 2.0, in_the_middle ? height() / 2.0 : kMargin_px});
  if (!in_the_middle) {
    QColor ground = theme_.label_ground;
    ground.setAlpha(255);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(theme_.ink, 1));
    painter.setBrush(ground);
    painter.drawRoundedRect(box.adjusted(-8, -3, 8, 3), 4, 4);
  }
  painter.setPen(theme_.ink);
  plan::paintText(painter, box, lines);
}

void PageView::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  if (is_fitted_)
    goToSheet(sheet_);
  else
    viewChanged();
}

void PageView::mousePressEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton && event->button() != Qt::MiddleButton) return;
  panned_from_ = event->position();
  setCursor(Qt::ClosedHandCursor);
}

void PageView::mouseMoveEvent(QMouseEvent* event) {
  if (!panned_from_) return;
  view_.pan(event->position() - *panned_from_);
  panned_from_ = event->position();
  is_fitted_ = false;
  viewChanged();
}

void PageView::mouseReleaseEvent(QMouseEvent*) {
  panned_from_.reset();
  setCursor(Qt::OpenHandCursor);
}

void PageView::wheelEvent(QWheelEvent* event) {
  plan::zoomOrPan(view_, *event);
  is_fitted_ = false;
  event->accept();
  viewChanged();
}

void PageView::keyPressEvent(QKeyEvent* event) {
  const auto pan = [&](double x, double y) {
    view_.pan({x * kStep_px, y * kStep_px});
    is_fitted_ = false;
    viewChanged();
  };
  switch (event->key()) {
    case Qt::Key_PageDown:
      return goToSheet(sheet_ + 1);
    case Qt::Key_PageUp:
      return goToSheet(sheet_ - 1);
    case Qt::Key_Left:
      return pan(1, 0);
    case Qt::Key_Right:
      return pan(-1, 0);
    case Qt::Key_Up:
      return pan(0, 1);
    case Qt::Key_Down:
      return pan(0, -1);
    default:
      QWidget::keyPressEvent(event);
  }
}

void PageView::changeEvent(QEvent* event) {
  if (event->type() == QEvent::PaletteChange) {
    theme_ = plan::Theme::of(palette());
    viewChanged();
  }
  QWidget::changeEvent(event);
}

bool PageView::event(QEvent* event) {
  if (event->type() != QEvent::NativeGesture) return QWidget::event(event);
  const auto* gesture = static_cast<QNativeGestureEvent*>(event);
  if (gesture->gestureType() != Qt::ZoomNativeGesture) return false;
  view_.zoomAt(gesture->position(), 1 + gesture->value());
  is_fitted_ = false;
  viewChanged();
  return true;
}

}  // namespace stopwalk::window
