#include "app/plan/inspection_layer.h"

#include "app/plan/arrow.h"
#include "app/plan/items/drawing.h"
#include "app/plan/legend_corner.h"
#include "app/plan/text.h"

namespace stopwalk::plan {
namespace {

constexpr int kImportance = 60;                   // above all names
constexpr double kBeside_px = 16, kOver_px = 24;  // from the middle of a device to its text
constexpr double kMark_px = 16;                   // a device with its mark, to each side

}  // namespace

InspectionLayer::InspectionLayer(InspectedOnPlan inspected) : inspected_(std::move(inspected)) {
  for (const auto& [id, device] : inspected_.devices) marks_.emplace(id, device.mark);
  legend_ = CheckLegend(inspected_.title, marks_);
}

bool InspectionLayer::isFailed(const std::string& id) const {
  const auto mark = marks_.find(id);
  return mark != marks_.end() && mark->second.sign == CheckSign::Failed;
}

QString InspectionLayer::told(const std::string& id) const {
  const auto device = inspected_.devices.find(id);
  return device == inspected_.devices.end() ? QString() : device->second.told;
}

QRectF InspectionLayer::legendBox(const Picture& picture, const ViewTransform& view,
                                  const QRectF& visible) const {
  if (legend_.isEmpty()) return {};
  KeptInSight kept;
  for (const auto& item : picture.items()) {
    if (item->bounds().empty()) continue;
    const QRectF box = view.toPixels(item->bounds());
    if (marks_.contains(item->id))
      kept.marks.push_back(box.adjusted(-kMark_px, -kMark_px, kMark_px, kMark_px));
    else if (item->layer == ItemLayer::Floor)
      kept.grounds.push_back(box);
  }
  return boxIn(freestPlace(legend_.size(), visible, kept), legend_.size(), visible);
}

std::vector<Label> InspectionLayer::labels(const Picture& picture, const ViewTransform& view) const {
  std::vector<Label> labels;
  const QFontMetricsF metrics{labelFont()};
  for (const auto& item : picture.items()) {
    const auto device = inspected_.devices.find(item->id);
    if (device == inspected_.devices.end() || device->second.text.isEmpty() || item->bounds().empty())
      continue;
    const geometry::Box box = item->bounds();
    const QPointF at = view.toPixels(0.5 * (box.low + box.high));
    Label label{device->second.text, {}, kImportance};
    const double beside = kBeside_px + metrics.horizontalAdvance(label.text) / 2;
    for (const QPointF by : {QPointF(beside, kOver_px / 3), QPointF(-beside, 0), QPointF(0, kOver_px),
                             QPointF(0, -kOver_px), QPointF(beside, kOver_px), QPointF(-beside, kOver_px),
                             QPointF(-beside, -kOver_px), QPointF(beside, -kOver_px)})
      label.middles.push_back(at + by);
    label.clear_of = ItemLayer::Station;
    label.of = item.get();
    labels.push_back(std::move(label));
  }
  return labels;
}

void InspectionLayer::paintWalk(QPainter& painter, const ViewTransform& view, const Theme& theme) const {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  for (const bool is_next : {false, true})
    for (const InspectedOnPlan::Leg& leg : inspected_.walk) {
      if (leg.is_next != is_next || leg.path.size() < 2) continue;
      const QPolygonF line = onScreen(leg.path, view);
      const QColor ink = is_next ? theme.selection : theme.quiet_ink;
      painter.setBrush(Qt::NoBrush);
      painter.setPen(
          QPen(ink, is_next ? 3 : 1.6, is_next ? Qt::SolidLine : Qt::DashLine, Qt::RoundCap, Qt::RoundJoin));
      painter.drawPolyline(line);
      painter.setPen(QPen(ink, 1));
      painter.setBrush(ink);
      paintArrow(painter, line[line.size() - 2], line.last());
    }
  painter.restore();
}

}  // namespace stopwalk::plan
