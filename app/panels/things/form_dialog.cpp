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
  column->addStretch(1);
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
  buttons->addButton(verb, QDialogButtonBox::AcceptRole)->setDefault(true);
  column->addWidget(buttons);
  connect(buttons, &QDialogButtonBox::accepted, this, &FormDialog::accept);
  connect(buttons, &QDialogButtonBox::rejected, this, &FormDialog::reject);
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
  if (carryOut()) QDialog::accept();
}

}  // namespace stopwalk::panels
