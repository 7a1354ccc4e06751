#include "app/panels/fields/check_field.h"

namespace stopwalk::panels {

CheckField::CheckField(FieldText text, QWidget* parent)
    : Field(text, parent), box_(new QCheckBox(text.name, this)) {
  setEditor(box_, Named::ByItself);
  connect(box_, &QCheckBox::clicked, this, [this](bool checked) {
    box_->setTristate(false);
    if (entered) entered(checked);
  });
}

void CheckField::show(bool value) {
  box_->setTristate(false);
  box_->setChecked(value);
}

void CheckField::showDiffering() {
  box_->setTristate(true);
  box_->setCheckState(Qt::PartiallyChecked);
}

}  // namespace stopwalk::panels
