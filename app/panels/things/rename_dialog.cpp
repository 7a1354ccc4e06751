#include "app/panels/things/rename_dialog.h"

#include "app/edits/rename_id.h"
#include "app/edits/step_names.h"
#include "app/edits/visit_thing.h"

namespace stopwalk::panels {

namespace {

// Calls `f` with the name of a thing that has one.
template <class L, class F>
void withName(L& layout, const std::string& id, F f) {
  if (const auto thing = edits::findThing(layout, id))
    edits::visitThing(layout, *thing, [&](auto& t) {
      if constexpr (requires { t.name; }) f(t.name);
    });
}

}  // namespace

RenameDialog::RenameDialog(const Desk& desk, std::string id, QWidget* parent)
    : FormDialog(desk, tr("Rename"), tr("Rename"), parent), id_(std::move(id)) {
  withName(desk.edited.layout(), id_, [this](const std::string& name) {
    name_ = new TextField({tr("Name"), tr("As people call it.")});
    name_->show(name);
    addField(name_);
  });
  if (id_ == edits::kUnderlayId) return;
  new_id_ =
      new TextField({tr("Id"), tr("The short name by which other things of the file speak of this one.")},
                    [this](const std::string& typed) {
                      return edits::whyNotRename(this->desk().edited.layout(), id_, typed);
                    });
  new_id_->show(ownId());
  addField(new_id_);
}

std::string RenameDialog::ownId() const {
  return id_.substr(id_.find('/') + 1);
}

bool RenameDialog::carryOut() {
  const layout::Layout& before = desk().edited.layout();
  const auto thing = edits::findThing(before, id_);
  if (!thing || !new_id_) return true;
  layout::Layout after = before;
  if (name_) withName(after, id_, [this](std::string& name) { name = name_->value(); });
  const std::string full = id_.substr(0, id_.size() - ownId().size()) + new_id_->value();
  if (full != id_) after = edits::renameId(after, id_, new_id_->value()).after;
  const QString step = tr("Rename %1").arg(edits::called(before, *thing));
  std::vector<std::string> ids = desk().selection.ids();
  if (desk().edited.apply(edits::step(before, step, std::move(after))) && full != id_) {
    for (std::string& id : ids)
      if (id == id_) id = full;
    desk().selection.set(std::move(ids));
  }
  return true;
}

}  // namespace stopwalk::panels
