#include "app/plan/inspection_layer.h"

#include "app/plan/arrow.h"
#include "app/plan/items/drawing.h"

namespace stopwalk::plan {
namespace {

constexpr int kImportance = 60;  // above all names
constexpr double kBeside_px = 26, kOver_px = 22;

}  // namespace

InspectionLayer::InspectionLayer(InspectedOnPlan inspected) : inspected_(std::move(inspected)) {
  for (const auto& [id, device] : inspected_.devices) states_.emplace(id, device.state);
}

std::vector<Label> InspectionLayer::labels(const Picture& picture, const ViewTransform& view) const {
  std::vector<Label> labels;
  for (const auto& item : picture.items()) {
    const auto device = inspected_.devices.find(item->id);
    if (device == inspected_.devices.end() || device->second.text.isEmpty() || item->bounds().empty())
      continue;
    const geometry::Box box = item->bounds();
    const QPointF at = view.toPixels(0.5 * (box.low + box.high));
    Label label{device->second.text, {}, kImportance};
    for (const QPointF by :
         {QPointF(kBeside_px, 0), QPointF(-kBeside_px, 0), QPointF(0, kOver_px), QPointF(0, -kOver_px),
          QPointF(kBeside_px, kOver_px), QPointF(-kBeside_px, kOver_px), QPointF(kBeside_px, -kOver_px),
          QPointF(-kBeside_px, -kOver_px)})
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
