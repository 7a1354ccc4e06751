#include "app/panels/poster/wall_chooser.h"

#include <QLabel>
#include <QVBoxLayout>
#include <algorithm>

#include "app/panels/poster/choice_list.h"
#include "core/audit/wording.h"

namespace stopwalk::panels {
namespace {

constexpr double kMmPerM = 1000;

QString roomName(const layout::Layout& layout, const std::string& id) {
  if (id == layout::kOutside) return WallChooser::tr("outside");
  const auto room = std::ranges::find(layout.rooms, id, &layout::Room::id);
  return QString::fromStdString(room == layout.rooms.end() || room->name.empty() ? id : room->name);
}

}  // namespace

QString wallText(const layout::Layout& layout, const std::vector<poster::RoomWall>& walls, std::size_t wall) {
  const poster::RoomWall& w = walls[wall];
  const double length_m = geometry::length(w.line.b - w.line.a) / kMmPerM;
  const QString text = WallChooser::tr("Wall %1 of %2, %3")
                           .arg(wall + 1)
                           .arg(walls.size())
                           .arg(QString::fromStdString(audit::lengthText(length_m, layout.unit)));
  QStringList doors;
  for (const std::string& to : w.doors_to) doors << roomName(layout, to);
  doors.removeDuplicates();
  if (doors.isEmpty()) return text;
  return w.doors_to.size() == 1
             ? WallChooser::tr("%1, with the door to %2").arg(text, doors.front())
             : WallChooser::tr("%1, with doors to %2").arg(text, doors.join(WallChooser::tr(", ")));
}

WallChooser::WallChooser(QWidget* parent) : QWidget(parent) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  auto* label = new QLabel(tr("Where it han&gs"), this);
  button_ = new QPushButton(tr("&Choose the wall on the plan"), this);
  button_->setCheckable(true);
  button_->setAutoDefault(false);
  button_->setToolTip(tr("Shows the plan of the room: click the wall where the poster is to hang"));
  list_ = choiceList(tr("Wall that the poster hangs on"), this);
  label->setBuddy(list_);
  column->addWidget(label);
  column->addWidget(button_);
  column->addWidget(list_);
  connect(button_, &QPushButton::toggled, this, &WallChooser::planWanted);
  connect(list_, &QListWidget::currentRowChanged, this, &WallChooser::chosenInList);
}

void WallChooser::show(const layout::Layout& layout, const std::string& room) {
  room_ = room;
  const auto found = std::ranges::find(layout.rooms, room, &layout::Room::id);
  const bool there = found != layout.rooms.end();
  const auto index = static_cast<std::size_t>(found - layout.rooms.begin());
  walls_ = there ? poster::roomWalls(layout, index) : std::vector<poster::RoomWall>();
  if (const auto place = this->place(); place && (!there || !poster::viewerStillAt(layout, index, *place)))
    places_.erase(room);

  std::vector<ChoiceRow> rows;
  if (const auto usual = there ? poster::usualViewer(layout, index) : std::nullopt)
    rows.push_back(
        {{}, tr("Where most wall is free: wall %1").arg(*poster::nearestWall(walls_, usual->at) + 1)});
  for (std::size_t w = 0; w < walls_.size(); ++w) rows.push_back({{}, wallText(layout, walls_, w)});
  filling_ = true;
  fillRows(*list_, rows);
  selectRow();
  filling_ = false;
  setEnabled(!walls_.empty());
}

std::optional<geometry::Point> WallChooser::placeOf(const std::string& room) const {
  const auto found = places_.find(room);
  return found == places_.end() ? std::nullopt : std::optional(found->second);
}

void WallChooser::hang(geometry::Point place) {
  if (room_.empty()) return;
  places_[room_] = place;
  filling_ = true;
  selectRow();
  filling_ = false;
  emit changed();
}

void WallChooser::forgetAll() {
  places_.clear();
}

void WallChooser::selectRow() {
  const auto place = this->place();
  const auto wall = place ? poster::nearestWall(walls_, *place) : std::nullopt;
  list_->setCurrentRow(wall ? static_cast<int>(*wall) + 1 : 0);
}

void WallChooser::chosenInList(int row) {
  if (filling_ || row < 0) return;
  if (row == 0)
    places_.erase(room_);
  else
    places_[room_] = walls_[static_cast<std::size_t>(row) - 1].viewer.at;
  emit changed();
}

}  // namespace stopwalk::panels
