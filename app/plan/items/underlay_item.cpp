#include "app/plan/items/underlay_item.h"

#include <QDir>
#include <map>

#include "app/plan/items/drawing.h"

namespace stopwalk::plan {
namespace {

constexpr int kImportance = 10;
constexpr QSize kMissing(640, 480);  // pixels of a picture that cannot be read

geometry::Polygon frameOf(const layout::Underlay& underlay, QSize size) {
  const double w = size.width() * underlay.mm_per_pixel, h = size.height() * underlay.mm_per_pixel;
  geometry::Polygon frame{{0, 0}, {w, 0}, {w, h}, {0, h}};
  for (geometry::Point& p : frame) p = layout::toPlan(underlay.at, underlay.turn, p);
  return frame;
}

}  // namespace

Pictures picturesIn(const QString& folder) {
  return [folder, read = std::map<std::string, QImage>()](const std::string& name) mutable {
    auto found = read.find(name);
    if (found == read.end())
      found = read.emplace(name, QImage(QDir(folder).filePath(QString::fromStdString(name)))).first;
    return found->second;
  };
}

UnderlayItem::UnderlayItem(const layout::Layout& layout, const Pictures& pictures)
    : Item({edits::ThingKind::Underlay}, edits::kUnderlayId, Layer::Underlay),
      underlay_(*layout.underlay),
      image_(pictures ? pictures(underlay_.image) : QImage()),
      frame_(frameOf(underlay_, image_.isNull() ? kMissing : image_.size())) {}

std::optional<double> UnderlayItem::distanceTo(geometry::Point at, double) const {
  return frame_.distanceTo(at);
}

void UnderlayItem::paint(QPainter& painter, const PaintContext& context) const {
  const QPolygonF frame = onScreen(frame_.corners(), context.view);
  painter.setRenderHint(QPainter::Antialiasing);
  if (image_.isNull()) {
    QPen dashes = pen(context.theme.quiet_ink, 1);
    dashes.setDashPattern({6, 4});
    painter.setPen(dashes);
    painter.setBrush(Qt::NoBrush);
    painter.drawPolygon(frame);
  } else {
    painter.save();
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    painter.setOpacity(underlay_.opacity);
    const double scale = underlay_.mm_per_pixel * context.view.pixelsPerMm();
    painter.translate(context.view.toPixels(underlay_.at));
    painter.rotate(-underlay_.turn);
    painter.scale(scale, scale);
    painter.drawImage(QPointF(0, -image_.height()), image_);
    painter.restore();
  }
  paintOutlineMark(painter, context, frame);
}

std::optional<Label> UnderlayItem::label(const PaintContext& context) const {
  if (!image_.isNull()) return std::nullopt;
  const QRectF box = context.view.toPixels(frame_.box());
  return Label{QString::fromStdString(underlay_.image),
               {box.center(), {box.center().x(), box.top() + 12}},
               kImportance};
}

}  // namespace stopwalk::plan
