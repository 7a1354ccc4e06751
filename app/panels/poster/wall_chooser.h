#pragma once

#include <QListWidget>
#include <QPushButton>
#include <map>
#include <optional>
#include <string>

#include "app/poster/room_walls.h"

namespace stopwalk::panels {

// Which wall of the room the poster hangs on: by a list of them, or by a button that wants the plan, where
// one clicks. What was chosen is remembered for each room.
class WallChooser : public QWidget {
  Q_OBJECT

 public:
  explicit WallChooser(QWidget* parent = nullptr);

  // The walls of the room now chosen; an empty id: there is none.
  void show(const layout::Layout& layout, const std::string& room);
  // Where its poster was hung; nothing: where most wall is free.
  std::optional<geometry::Point> place() const { return placeOf(room_); }
  std::optional<geometry::Point> placeOf(const std::string& room) const;
  void hang(geometry::Point place);
  void forgetAll();

  QListWidget* list() const { return list_; }
  QPushButton* button() const { return button_; }

 signals:
  void changed();
  void planWanted(bool wanted);

 private:
  void chosenInList(int row);
  void selectRow();

  QPushButton* button_;
  QListWidget* list_;
  std::vector<poster::RoomWall> walls_;
  std::string room_;
  std::map<std::string, geometry::Point> places_;  // by the room's id
  bool filling_ = false;
};

// "Wall 2 of 6, 4.2 m, with the door to Wood room".
QString wallText(const layout::Layout& layout, const std::vector<poster::RoomWall>& walls, std::size_t wall);

}  // namespace stopwalk::panels
