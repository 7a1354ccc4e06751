#include "app/panels/suppose/block_dialog.h"

namespace stopwalk::panels {

BlockDialog::BlockDialog(const Desk& desk, const layout::Fixture& block, QWidget* parent)
    : FormDialog(desk, tr("Something in the way"), tr("Put it there"), parent), block_(block) {
  const QString middle = tr("Of its middle, on the plan.");
  x_ = new LengthField({tr("At x"), middle}, Range::Any, Known::Always);
  y_ = new LengthField({tr("At y"), middle}, Range::Any, Known::Always);
  width_ = new LengthField({tr("Width"), tr("Across the plan.")}, Range::Positive, Known::Always);
  depth_ = new LengthField({tr("Depth"), tr("Up the plan.")}, Range::Positive, Known::Always);
  for (LengthField* field : {x_, y_, width_, depth_}) addField(field);
  const auto& size = std::get<layout::Rectangle>(block_.footprint);
  x_->show(block_.at.x);
  y_->show(block_.at.y);
  width_->show(size.width);
  depth_->show(size.depth);
  x_->line()->selectAll();
}

bool BlockDialog::carryOut() {
  if (!x_->value() || !y_->value() || !width_->value() || !depth_->value()) return false;
  block_.at = {*x_->value(), *y_->value()};
  block_.footprint = layout::Rectangle{*width_->value(), *depth_->value()};
  return true;
}

}  // namespace stopwalk::panels
