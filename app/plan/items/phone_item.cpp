#include "app/plan/items/phone_item.h"

#include "app/plan/items/name_label.h"
#include "app/plan/text.h"

namespace stopwalk::plan {
namespace {

constexpr int kImportance = 60;
constexpr double kRoom_mm = 1100;

SymbolItem::Look lookOf(const layout::Phone& phone) {
  return {phone.at, phone.faces, "phone", Ground::Phone, kRoom_mm};
}

}  // namespace

PhoneItem::PhoneItem(const layout::Layout& layout, std::size_t phone)
    : SymbolItem({edits::ThingKind::Phone, phone}, layout.phones[phone].id, lookOf(layout.phones[phone])),
      name_(QString::fromStdString(layout.phones[phone].name)) {}

std::optional<Label> PhoneItem::label(const PaintContext& context) const {
  if (name_.isEmpty() || isDot(context)) return std::nullopt;
  const QRectF box = square(context).adjusted(-6, -6, 6, 6);
  const QSizeF size = textSize(name_, QFontMetricsF(labelFont()));
  const double dx = (box.width() + size.width()) / 2 + 2, dy = (box.height() + size.height()) / 2;
  const QPointF c = box.center();
  return Label{
      name_, {c + QPointF(dx, 0), c - QPointF(dx, 0), c - QPointF(0, dy), c + QPointF(0, dy)}, kImportance};
}

}  // namespace stopwalk::plan
