#include "app/plan/items/tape_check_item.h"

#include "app/plan/items/drawing.h"
#include "core/layout/units.h"

namespace stopwalk::plan {
namespace {

constexpr int kImportance = 20;
constexpr double kLeastLabelled_px = 70;

std::optional<geometry::Point> placeOf(const layout::Layout& layout, const std::string& id) {
  const auto thing = edits::findThing(layout, id);
  return thing ? edits::placeOf(layout, *thing) : std::nullopt;
}

// Distances are read in metres to the centimetre, or in feet and inches.
QString distanceText(double mm, layout::LengthUnit unit) {
  if (unit == layout::LengthUnit::Inch || unit == layout::LengthUnit::Foot)
    return QString::fromStdString(layout::formatLength(mm, layout::LengthUnit::Foot));
  return QString::number(mm / 1000, 'f', 2) + " m";
}

}  // namespace

TapeCheckItem::TapeCheckItem(const layout::Layout& layout, std::size_t tape_check)
    : Item({edits::ThingKind::TapeCheck, tape_check}, layout.tape_checks[tape_check].id, Layer::Tape),
      length_(distanceText(layout.tape_checks[tape_check].taped, layout.unit)) {
  const auto from = placeOf(layout, layout.tape_checks[tape_check].from);
  const auto to = placeOf(layout, layout.tape_checks[tape_check].to);
  if (from && to) line_ = geometry::Segment{*from, *to};
}

geometry::Box TapeCheckItem::bounds() const {
  return line_ ? geometry::boxOf(*line_) : geometry::Box{};
}

std::optional<double> TapeCheckItem::distanceTo(geometry::Point at, double) const {
  return line_ ? std::optional(geometry::distance(*line_, at)) : std::nullopt;
}

void TapeCheckItem::paint(QPainter& painter, const PaintContext& context) const {
  if (!line_) return;
  const QLineF line(context.view.toPixels(line_->a), context.view.toPixels(line_->b));
  if (line.length() < 2) return;
  const bool marked = context.selected || context.hovered;
  QPen dashes = pen(marked ? context.theme.selection : context.theme.quiet_ink, context.selected ? 2.5 : 1.2);
  dashes.setDashPattern({8, 3, 1.5, 3});
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(dashes);
  painter.drawLine(line);
  dashes.setStyle(Qt::SolidLine);
  painter.setPen(dashes);
  const QPointF across = 5.0 * QPointF(-line.dy(), line.dx()) / line.length();
  painter.drawLine(line.p1() - across, line.p1() + across);
  painter.drawLine(line.p2() - across, line.p2() + across);
}

std::optional<Label> TapeCheckItem::label(const PaintContext& context) const {
  if (!line_) return std::nullopt;
  const QLineF line(context.view.toPixels(line_->a), context.view.toPixels(line_->b));
  if (line.length() < kLeastLabelled_px) return std::nullopt;
  return Label{length_,
               {line.center(), line.pointAt(0.4), line.pointAt(0.6), line.pointAt(0.25), line.pointAt(0.75)},
               kImportance};
}

}  // namespace stopwalk::plan
