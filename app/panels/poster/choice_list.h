#pragma once

#include <QListWidget>
#include <vector>

namespace stopwalk::panels {

// A row of a short list that one thing is chosen from.
struct ChoiceRow {
  QString key;  // its data
  QString text;
};

// A list with long rows wrapped, as high as its rows up to some.
QListWidget* choiceList(const QString& name, QWidget* parent);
// Keeps the rows that are the same, so that nothing moves under the pointer.
void fillRows(QListWidget& list, const std::vector<ChoiceRow>& rows);

}  // namespace stopwalk::panels
