#include "app/panels/details/section.h"

#include "app/edits/rename_id.h"
#include "app/edits/step_names.h"
#include "app/panels/fields/looking_only.h"

namespace stopwalk::panels {

Section::Section(const Desk& desk, std::vector<std::string> ids, QWidget* parent)
    : QWidget(parent), desk_(desk), ids_(std::move(ids)), form_(new QFormLayout(this)) {
  form_->setContentsMargins(0, 0, 0, 0);
  form_->setRowWrapPolicy(QFormLayout::WrapLongRows);
  form_->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
  form_->setVerticalSpacing(8);
}

void Section::refresh() {
  for (const Row& row : rows_) {
    const bool applies = !row.applies || row.applies();
    setShown(row, applies);
    row.field->setUnit(layout().unit);
    if (applies) row.show();
    setLookingOnly(*row.field, desk_.edited.isReadOnly());
  }
}

void Section::applyPending() {
  for (const Row& row : rows_) row.field->applyPending();
}

std::vector<edits::Thing> Section::things() const {
  std::vector<edits::Thing> things;
  for (const std::string& id : ids_)
    if (const auto thing = edits::findThing(layout(), id)) things.push_back(*thing);
  return things;
}

void Section::addRow(Field* field, std::function<void()> show, std::function<bool()> applies, Width width) {
  const bool whole = width == Width::Whole || !field->label();
  if (whole && field->label()) form_->addRow(field->label());
  if (whole)
    form_->addRow(field);
  else
    form_->addRow(field->label(), field);
  rows_.push_back({field, std::move(show), std::move(applies), whole});
}

void Section::setShown(const Row& row, bool shown) {
  if (row.whole && row.field->label()) form_->setRowVisible(row.field->label(), shown);
  form_->setRowVisible(row.field, shown);
}

void Section::addHeading(const QString& text) {
  auto* heading = new QLabel(text, this);
  QFont bold = heading->font();
  bold.setBold(true);
  heading->setFont(bold);
  heading->setContentsMargins(0, 8, 0, 0);
  form_->addRow(heading);
}

void Section::change(const QString& name, const QString& field,
                     const std::function<void(layout::Layout&)>& how) {
  layout::Layout after = layout();
  how(after);
  const auto all = things();
  const QString who = all.empty() ? tr("the workshop") : edits::called(layout(), all);
  apply(edits::step(layout(), name.arg(who), std::move(after), edits::mergeKey(field, layout(), all)));
}

void Section::apply(edits::Edit edit) {
  if (!desk_.edited.apply(std::move(edit))) refresh();
}

void Section::rename(const std::string& new_id) {
  const std::string old = ids_.front();
  edits::Edit edit = edits::renameId(layout(), old, new_id);
  const auto slash = old.find('/');
  ids_.front() = slash == std::string::npos ? new_id : old.substr(0, slash + 1) + new_id;
  if (!desk_.edited.apply(std::move(edit))) {
    ids_.front() = old;
    return refresh();
  }
  desk_.selection.set(ids_);
}

}  // namespace stopwalk::panels
