#include "app/panels/things/form_dialog.h"

#include <QDialogButtonBox>
#include <QPushButton>

namespace stopwalk::panels {

FormDialog::FormDialog(const Desk& desk, const QString& title, const QString& verb, QWidget* parent)
    : QDialog(parent), desk_(desk) {
  setWindowTitle(title);
  auto* column = new QVBoxLayout(this);
  form_ = new QFormLayout;
  form_->setRowWrapPolicy(QFormLayout::WrapLongRows);
  form_->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
  column->addLayout(form_);
  refused_ = new QLabel(this);
  refused_->setWordWrap(true);
  refused_->hide();
  column->addWidget(refused_);
  column->addStretch(1);
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
  buttons->addButton(verb, QDialogButtonBox::AcceptRole)->setDefault(true);
  column->addWidget(buttons);
  connect(&desk_.edited, &edits::EditedLayout::refused, refused_, &QLabel::setText);
  connect(buttons, &QDialogButtonBox::accepted, this, &FormDialog::accept);
  connect(buttons, &QDialogButtonBox::rejected, this, &FormDialog::reject);
}

QLabel* FormDialog::say(const QString& text) {
  auto* label = new QLabel(text, this);
  label->setWordWrap(true);
  form_->addRow(label);
  return label;
}

bool FormDialog::refuse(const QString& why) {
  refused_->setText(why);
  return false;
}

void FormDialog::addField(Field* field) {
  form_->addRow(field->label(), field);
  field->setUnit(desk_.edited.layout().unit);
  if (fields_.empty()) field->setFocus();
  fields_.push_back(field);
}

void FormDialog::accept() {
  for (Field* field : fields_) field->applyPending();
  for (Field* field : fields_)
    if (!field->trouble().isEmpty()) return field->setFocus();
  refused_->clear();
  const bool done = carryOut() && refused_->text().isEmpty();
  refused_->setVisible(!refused_->text().isEmpty());
  if (done) QDialog::accept();
}

}  // namespace stopwalk::panels
