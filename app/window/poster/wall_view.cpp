#include "app/window/poster/wall_view.h"

#include <QMouseEvent>
#include <QPainter>

#include "app/panels/poster/wall_chooser.h"
#include "app/plan/text.h"
#include "core/geometry/box.h"

namespace stopwalk::window {
namespace {

constexpr double kMargin_px = 60;
constexpr double kNear_px = 40;  // a click this far from a wall is none at it
constexpr double kWall_px = 5;
constexpr double kNumber_px = 22;  // from the wall's line into the room

}  // namespace

WallView::WallView(QWidget* parent) : QWidget(parent), theme_(plan::Theme::of(palette())) {
  setFocusPolicy(Qt::StrongFocus);
  setMouseTracking(true);
  setAccessibleName(tr("Walls of the room"));
  setAccessibleDescription(
      tr("Arrow keys go from wall to wall, Enter hangs the poster there, Escape leaves. The list of walls "
         "does the same."));
}

void WallView::show(std::shared_ptr<const layout::Layout> layout,
                    std::shared_ptr<const layout::DeviceKinds> kinds, std::size_t room,
                    std::optional<geometry::Point> place) {
  const bool same = layout_ == layout && room_ == room;
  layout_ = std::move(layout);
  room_ = room;
  if (!same) {
    picture_ = plan::Picture(*layout_, *kinds);
    walls_ = poster::roomWalls(*layout_, room_);
    wall_.reset();
    place_.reset();
  }
  hangs_ = place ? poster::viewerStillAt(*layout_, room_, *place) : std::nullopt;
  if (!hangs_) hangs_ = poster::usualViewer(*layout_, room_);
  if (!same) fit();
  update();
}

void WallView::fit() {
  if (!layout_) return;
  view_.fit(geometry::boxOf(layout_->rooms[room_].outline), size(), kMargin_px);
}

std::optional<std::size_t> WallView::wallAt(QPointF pixel) const {
  const geometry::Point at = view_.toPlan(pixel);
  const auto wall = poster::nearestWall(walls_, at);
  if (!wall || geometry::distance(walls_[*wall].line, at) > kNear_px * view_.mmPerPixel())
    return std::nullopt;
  return wall;
}

void WallView::point(std::optional<std::size_t> wall, std::optional<geometry::Point> place) {
  wall_ = wall;
  place_ = place;
  emit said(wall_ ? panels::wallText(*layout_, walls_, *wall_)
                  : tr("Click the wall where the poster is to hang; Escape goes back to it."));
  update();
}

void WallView::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.fillRect(rect(), theme_.outside);
  if (!layout_) return;
  picture_.paint(painter, view_, theme_, QRectF(rect()), {});
  paintWalls(painter);
  if (hangs_) paintReader(painter, *hangs_);
}

void WallView::paintWalls(QPainter& painter) const {
  painter.setFont(plan::labelFont());
  const QFontMetricsF metrics(painter.font());
  for (std::size_t i = 0; i < walls_.size(); ++i) {
    const geometry::Segment line = walls_[i].line;
    const QLineF wall(view_.toPixels(line.a), view_.toPixels(line.b));
    const bool at = wall_ == i;
    painter.setPen(QPen(theme_.selection, at ? 2 * kWall_px : kWall_px / 2, Qt::SolidLine, Qt::FlatCap));
    painter.drawLine(wall);
    const geometry::Point in = -geometry::direction(walls_[i].viewer.up_deg);
    QRectF box(QPointF(), plan::textSize(QString::number(i + 1), metrics) + QSizeF(10, 4));
    box.setWidth(std::max(box.width(), box.height()));
    box.moveCenter(wall.center() + kNumber_px * QPointF(in.x, -in.y));
    painter.setPen(QPen(theme_.selection, at ? 3 : 1));
    painter.setBrush(theme_.floor);
    painter.drawRoundedRect(box, 5, 5);
    painter.setPen(theme_.ink);
    plan::paintText(painter, box, QString::number(i + 1));
  }
  if (!place_ || !wall_) return;
  painter.setPen(QPen(theme_.floor, 2));
  painter.setBrush(theme_.selection);
  painter.drawEllipse(view_.toPixels(geometry::nearestPoint(walls_[*wall_].line, *place_)), 7, 7);
}

// An arrow from where the reader stands to the poster: what they face.
void WallView::paintReader(QPainter& painter, const poster::Viewer& viewer) const {
  const geometry::Point up = geometry::direction(viewer.up_deg);
  const QPointF tip = view_.toPixels(viewer.at), ahead(up.x, -up.y), aside(ahead.y(), -ahead.x());
  painter.setPen(QPen(theme_.floor, 1.5));
  painter.setBrush(theme_.selection);
  painter.drawPolygon(QPolygonF{{tip, tip - 16 * ahead + 9 * aside, tip - 16 * ahead - 9 * aside}});
  const QString text = tr("Hangs here");
  const QFontMetricsF metrics(painter.font());
  QRectF box(QPointF(), plan::textSize(text, metrics) + QSizeF(8, 4));
  const double far = 20 + (std::abs(ahead.x()) * box.width() + std::abs(ahead.y()) * box.height()) / 2;
  box.moveCenter(tip + far * ahead);
  painter.setPen(QPen(theme_.selection, 1));
  painter.setBrush(theme_.floor);
  painter.drawRoundedRect(box, 4, 4);
  painter.setPen(theme_.ink);
  plan::paintText(painter, box, text);
}

void WallView::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  fit();
}

void WallView::mouseMoveEvent(QMouseEvent* event) {
  point(wallAt(event->position()), view_.toPlan(event->position()));
}

void WallView::mousePressEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton) return;
  const auto wall = wallAt(event->position());
  if (wall) emit picked(geometry::nearestPoint(walls_[*wall].line, view_.toPlan(event->position())));
}

void WallView::keyPressEvent(QKeyEvent* event) {
  const std::size_t count = walls_.size();
  const auto step = [&](std::size_t by) {
    if (count == 0) return;
    const std::size_t wall = wall_ ? (*wall_ + by) % count : 0;
    point(wall, walls_[wall].viewer.at);
  };
  switch (event->key()) {
    case Qt::Key_Left:
    case Qt::Key_Up:
      return step(count - 1);
    case Qt::Key_Right:
    case Qt::Key_Down:
      return step(1);
    case Qt::Key_Return:
    case Qt::Key_Enter:
      if (wall_ && place_) emit picked(geometry::nearestPoint(walls_[*wall_].line, *place_));
      return;
    case Qt::Key_Escape:
      return emit left();
    default:
      QWidget::keyPressEvent(event);
  }
}

void WallView::leaveEvent(QEvent*) {
  point(std::nullopt, std::nullopt);
}

void WallView::changeEvent(QEvent* event) {
  if (event->type() == QEvent::PaletteChange) theme_ = plan::Theme::of(palette());
  QWidget::changeEvent(event);
}

}  // namespace stopwalk::window
