#pragma once

#include <QStyleOptionComboBox>
#include <QStylePainter>

#include "app/panels/quiet_box.h"

namespace stopwalk::panels {

// A choice as wide as its place, whatever is to be chosen: a long name ends in an ellipsis.
class ElidedBox : public QuietBox {
 public:
  explicit ElidedBox(QWidget* parent = nullptr) : QuietBox(parent) {
    setSizeAdjustPolicy(AdjustToMinimumContentsLengthWithIcon);
    setMinimumContentsLength(8);
  }
  QString shownText() const { return elided(option()); }

 protected:
  void paintEvent(QPaintEvent*) override {
    QStylePainter painter(this);
    QStyleOptionComboBox option = this->option();
    painter.drawComplexControl(QStyle::CC_ComboBox, option);
    option.currentText = elided(option);
    painter.drawControl(QStyle::CE_ComboBoxLabel, option);
  }

 private:
  // With what asks for a choice where none is made.
  QStyleOptionComboBox option() const {
    QStyleOptionComboBox option;
    initStyleOption(&option);
    if (currentIndex() < 0) option.currentText = placeholderText();
    return option;
  }
  QString elided(const QStyleOptionComboBox& option) const {
    const QRect field =
        style()->subControlRect(QStyle::CC_ComboBox, &option, QStyle::SC_ComboBoxEditField, this);
    return fontMetrics().elidedText(option.currentText, Qt::ElideRight, field.width());
  }
};

}  // namespace stopwalk::panels
