#include "tests/support/grid_layout.h"

#include <string>

#include "tests/support/random.h"
#include "tests/support/random_layout.h"

namespace stopwalk::support {
namespace {

using layout::Layout;
using layout::Point;

std::string numbered(const char* name, std::size_t number) {
  return name + std::to_string(number);
}

class Grid {
 public:
  explicit Grid(std::uint64_t seed) : random_(seed) {
    columns_ = 1 + random_.below(3);
    rows_ = 1 + random_.below(2);
    across_ = 2 + random_.below(3);
    deep_ = 1 + random_.below(3);
    machine_ = {500.0 * (1 + random_.below(3)), 500.0 * (1 + random_.below(2))};
    aisle_ = 700.0 + 100 * random_.below(12);
    wall_ = random_.chance(0.5) ? 0 : 200;
    room_ = {across_ * (machine_.x + aisle_) + aisle_, deep_ * (machine_.y + aisle_) + aisle_};
    door_ = 800.0 + 100 * random_.below(8);
    has_bars_ = random_.chance(0.5);
    has_exit_ = random_.chance(0.5);
  }

  Layout draw() {
    layout_.site.name = "Invented shop";
    for (int row = 0; row < rows_; ++row)
      for (int column = 0; column < columns_; ++column) addRoom(column, row);
    static constexpr double kTurns[] = {30, 45, 90, 180};
    return random_.chance(0.33) ? moved(std::move(layout_), kTurns[random_.below(4)], {})
                                : std::move(layout_);
  }

 private:
  void addRoom(int column, int row) {
    const Point a{column * (room_.x + wall_), row * (room_.y + wall_)};
    layout::Room room;
    room.id = room.name = numbered("room-", layout_.rooms.size() + 1);
    room.outline = {a, {a.x + room_.x, a.y}, {a.x + room_.x, a.y + room_.y}, {a.x, a.y + room_.y}};
    const std::string id = room.id;
    layout_.rooms.push_back(std::move(room));
    if (column > 0)
      addDoor(numbered("room-", layout_.rooms.size() - 1), id, {a.x - wall_, a.y + room_.y / 2});
    if (row > 0)
      addDoor(numbered("room-", layout_.rooms.size() - static_cast<std::size_t>(columns_)), id,
              {a.x + room_.x / 2, a.y - wall_});
    if (has_exit_ && row == 0) addDoor(id, layout::kOutside, {a.x + room_.x / 2, a.y});
    for (int x = 0; x < across_; ++x)
      for (int y = 0; y < deep_; ++y)
        addMachine(a + Point{aisle_ + machine_.x / 2 + x * (machine_.x + aisle_),
                             aisle_ + machine_.y / 2 + y * (machine_.y + aisle_)});
    addOnWalls(id, a);
  }

  void addDoor(const std::string& first, const std::string& second, Point at) {
    layout::Door door;
    door.id = numbered("door-", layout_.doors.size() + 1);
    door.first = first;
    door.second = second;
    door.at = at;
    door.width = door_;
    if (random_.chance(0.3)) door.locked = layout::Locked::AfterHours;
    layout_.doors.push_back(std::move(door));
  }

  void addMachine(Point at) {
    layout::Machine m;
    m.id = m.name = numbered("machine-", layout_.machines.size() + 1);
    m.at = at;
    m.footprint = layout::Rectangle{machine_.x, machine_.y};
    m.height = 1500;
    const double aside = machine_.x / 2, ahead = machine_.y / 2;
    m.stations.push_back({"operator", layout::Role::Operator, {0, -ahead - 350}, {}});
    if (random_.chance(0.5)) m.stations.push_back({"helper", layout::Role::Helper, {0, ahead + 350}, {}});
    const auto stop = [&](const char* id, Point on, double faces) {
      layout::Device d;
      d.id = id;
      d.kind = "mushroom-button";
      d.at = on;
      d.faces = faces;
      d.height = 1000;
      m.devices.push_back(std::move(d));
    };
    if (random_.chance(0.6)) stop("left", {-aside, 0}, 180), stop("right", {aside, 0}, 0);
    if (random_.chance(0.3)) stop("back", {0, ahead}, 90);
    if (has_bars_) {
      stop("bar", {0, -ahead}, 270);
      m.devices.back().kind = "foot-bar";
      m.devices.back().length = machine_.x;
    }
    layout_.machines.push_back(std::move(m));
  }

  void addOnWalls(const std::string& room, Point a) {
    const auto cutOff = [&](Point at, double faces) {
      layout::Device d;
      d.id = numbered("cut-off-", layout_.devices.size() + 1);
      d.kind = "room-cut-off";
      d.at = at;
      d.faces = faces;
      d.height = 1500;
      d.stops = layout::Stops{false, {room}};
      layout_.devices.push_back(std::move(d));
    };
    cutOff(a + Point{0, room_.y / 4}, 0);
    if (random_.chance(0.5)) cutOff(a + Point{room_.x, room_.y / 4}, 180);
    if (!random_.chance(0.6)) return;
    for (const double x : {0.25, 0.75}) {
      layout::Phone p;
      p.id = p.name = numbered("phone-", layout_.phones.size() + 1);
      p.at = a + Point{x * room_.x, room_.y};
      p.faces = 270;
      p.height = 1200;
      layout_.phones.push_back(std::move(p));
    }
  }

  Random random_;
  Layout layout_;
  int columns_ = 1, rows_ = 1, across_ = 2, deep_ = 1;
  Point machine_, room_;
  double aisle_ = 0, wall_ = 0, door_ = 0;
  bool has_bars_ = false, has_exit_ = false;
};

}  // namespace

Layout gridLayout(std::uint64_t seed) {
  return Grid(seed).draw();
}

}  // namespace stopwalk::support
