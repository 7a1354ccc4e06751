#include "app/plan/items/fixture_item.h"

#include "app/plan/items/drawing.h"
#include "app/plan/items/name_label.h"

namespace stopwalk::plan {
namespace {

constexpr int kImportance = 40;

}  // namespace

FixtureItem::FixtureItem(const layout::Layout& layout, std::size_t fixture)
    : Item({edits::ThingKind::Fixture, fixture}, layout.fixtures[fixture].id, Layer::Fixture),
      outline_(layout::outlineInPlan(layout.fixtures[fixture].footprint, layout.fixtures[fixture].at,
                                     layout.fixtures[fixture].turn)),
      at_(layout.fixtures[fixture].at),
      name_(QString::fromStdString(layout.fixtures[fixture].name)) {}

std::optional<double> FixtureItem::distanceTo(geometry::Point at, double) const {
  return outline_.distanceTo(at);
}

void FixtureItem::paint(QPainter& painter, const PaintContext& context) const {
  const Theme& theme = context.theme;
  const QPolygonF outline = onScreen(outline_.corners(), context.view);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(Qt::NoPen);
  painter.setBrush(theme.fixture);
  painter.drawPolygon(outline);
  const QRectF box = outline.boundingRect();
  if (std::min(box.width(), box.height()) > 6)
    hatch(painter, outline, context.view.toPixels(at_), 7, pen(theme.hatch, 1));
  painter.setPen(pen(theme.quiet_ink, stroke(context.view, 1)));
  painter.setBrush(Qt::NoBrush);
  painter.drawPolygon(outline);
  paintOutlineMark(painter, context, outline);
}

void FixtureItem::addCovered(const PaintContext& context, std::vector<QRectF>& boxes) const {
  boxes.push_back(context.view.toPixels(outline_.box()));
}

std::optional<Label> FixtureItem::label(const PaintContext& context) const {
  auto label = nameLabel(name_, context.view.toPixels(outline_.box()), kImportance);
  if (label) label->plain = {};  // text on a hatch is hard to read
  return label;
}

}  // namespace stopwalk::plan
