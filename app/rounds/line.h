#pragma once

#include <QBoxLayout>
#include <QLabel>
#include <QLineEdit>

#include "app/rounds/big_button.h"

namespace stopwalk::rounds {

// A line to type in that a finger meets, below its label.
inline QLineEdit* addLine(QBoxLayout& column, const QString& label, const QString& hint, QWidget* parent) {
  auto* text = new QLabel(label, parent);
  auto* line = new QLineEdit(parent);
  line->setMinimumHeight(kTouch_px);
  line->setPlaceholderText(hint);
  line->setAccessibleName(QString(label).remove('&'));
  text->setBuddy(line);
  column.addWidget(text);
  column.addWidget(line);
  return line;
}

}  // namespace stopwalk::rounds
