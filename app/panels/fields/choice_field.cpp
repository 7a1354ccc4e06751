#include "app/panels/fields/choice_field.h"

#include <algorithm>

#include "app/panels/fields/value_field.h"
#include "app/panels/quiet_box.h"

namespace stopwalk::panels {

ChoiceField::ChoiceField(FieldText text, std::vector<Option> options, QWidget* parent)
    : Field(std::move(text), parent), box_(new QuietBox(this)), options_(std::move(options)) {
  box_->setFocusPolicy(Qt::StrongFocus);
  box_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  box_->setMinimumContentsLength(8);
  box_->setPlaceholderText(differText());
  setEditor(box_);
  describe(box_->view(), name());
  fill();
  connect(box_, &QComboBox::activated, this, [this](int index) {
    const std::string key = box_->itemData(index).toString().toStdString();
    if (key == key_ && !differ_) return;
    key_ = key;
    differ_ = false;
    if (entered) entered(key);
  });
}

void ChoiceField::setOptions(std::vector<Option> options) {
  if (options == options_) return;
  options_ = std::move(options);
  fill();
}

void ChoiceField::show(const std::string& key) {
  if (!differ_ && key == key_ && box_->currentIndex() >= 0) return;
  key_ = key;
  differ_ = false;
  fill();
}

void ChoiceField::showDiffering() {
  differ_ = true;
  fill();
}

void ChoiceField::fill() {
  box_->clear();
  for (const Option& o : options_) box_->addItem(o.text, QString::fromStdString(o.key));
  const QString key = QString::fromStdString(key_);
  if (!differ_ && box_->findData(key) < 0) box_->addItem(key, key);
  box_->setCurrentIndex(differ_ ? -1 : box_->findData(key));
}

}  // namespace stopwalk::panels
