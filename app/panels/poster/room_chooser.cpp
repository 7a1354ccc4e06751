#include "app/panels/poster/room_chooser.h"

#include <QLabel>
#include <QVBoxLayout>
#include <algorithm>

#include "app/panels/poster/choice_list.h"
#include "core/layout/names.h"

namespace stopwalk::panels {
namespace {

QString textOf(const layout::Room& room, const QString& why_not) {
  const QString name = QString::fromStdString(layout::nameOf(room));
  return why_not.isEmpty() ? name : RoomChooser::tr("%1: %2").arg(name, why_not);
}

}  // namespace

RoomChooser::RoomChooser(QWidget* parent) : QWidget(parent) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  auto* label = new QLabel(tr("&Room"), this);
  list_ = choiceList(tr("Room that the poster is of"), this);
  label->setBuddy(list_);
  column->addWidget(label);
  column->addWidget(list_);
  connect(list_, &QListWidget::currentRowChanged, this, [this] {
    if (filling_) return;
    picked_ = chosen();
    emit changed();
  });
}

void RoomChooser::show(const layout::Layout& layout, const std::vector<QString>& why_not) {
  const std::string before = chosen();
  std::vector<ChoiceRow> rows;
  int first = -1, same = -1;
  for (std::size_t r = 0; r < layout.rooms.size(); ++r) {
    const layout::Room& room = layout.rooms[r];
    if (room.outdoors) continue;
    const QString why = r < why_not.size() ? why_not[r] : QString();
    const int row = static_cast<int>(rows.size());
    if (first < 0 && why.isEmpty()) first = row;
    if (room.id == picked_) same = row;
    rows.push_back({QString::fromStdString(room.id), textOf(room, why)});
  }
  filling_ = true;
  fillRows(*list_, rows);
  list_->setCurrentRow(same >= 0 ? same : std::max(first, rows.empty() ? -1 : 0));
  filling_ = false;
  if (chosen() != before) emit changed();
}

std::string RoomChooser::chosen() const {
  const QListWidgetItem* item = list_->currentItem();
  return item ? item->data(Qt::UserRole).toString().toStdString() : std::string();
}

void RoomChooser::choose(const std::string& room) {
  for (int row = 0; row < list_->count(); ++row)
    if (list_->item(row)->data(Qt::UserRole).toString().toStdString() == room) list_->setCurrentRow(row);
}

}  // namespace stopwalk::panels
