#include "app/panels/things/move_dialog.h"

#include "app/edits/move_things.h"
#include "app/edits/step_names.h"
#include "app/edits/visit_thing.h"

namespace stopwalk::panels {

MoveDialog::MoveDialog(const Desk& desk, QWidget* parent)
    : FormDialog(desk, tr("Move or turn"), tr("Move"), parent) {
  right_ =
      new LengthField({tr("To the right by"), tr("Less than 0: to the left.")}, Range::Any, Known::Always);
  up_ = new LengthField({tr("Up by"), tr("On the plan. Less than 0: down.")}, Range::Any, Known::Always);
  turn_ = new NumberField({tr("Turn by"), tr("Degrees counter-clockwise, each on its own place.")},
                          angleKind(), Known::Always);
  for (Field* field : {static_cast<Field*>(right_), static_cast<Field*>(up_), static_cast<Field*>(turn_)})
    addField(field);
  right_->show(0);
  up_->show(0);
  turn_->show(0);
  right_->line()->selectAll();
}

bool MoveDialog::carryOut() {
  const layout::Layout& before = desk().edited.layout();
  const auto& ids = desk().selection.ids();
  const layout::Point by = {right_->value().value_or(0), up_->value().value_or(0)};
  const double turn_deg = turn_->value().value_or(0);
  edits::Edit edit = edits::moveThings(before, ids, by);
  if (turn_deg != 0 && edit.refused.isEmpty()) {
    edits::Edit turned = edits::turnThings(edit.after, ids, turn_deg);
    if (by != layout::Point{})
      turned.name = tr("Move and turn %1").arg(edits::called(before, edits::chosenThings(before, ids)));
    edit = std::move(turned);
  }
  edit.merge_key.clear();
  desk().edited.apply(std::move(edit));
  return true;
}

}  // namespace stopwalk::panels
