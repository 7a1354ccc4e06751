#include "tests/support/shop_layout.h"

#include <algorithm>
#include <cmath>
#include <string>

#include "tests/support/random.h"

namespace stopwalk::support {
namespace {

using layout::Layout;
using layout::Point;

constexpr double kPitch_mm = 3400;   // from one machine to the next
constexpr double kMargin_mm = 1600;  // aisle along the walls

std::string numbered(const char* name, std::size_t number) {
  return name + std::to_string(number);
}

class Shop {
 public:
  explicit Shop(const ShopSize& size) : size_(size), random_(static_cast<std::uint64_t>(size.machines)) {
    columns_ = static_cast<int>(std::ceil(std::sqrt(size.rooms)));
    const int most = (size.machines + size.rooms - 1) / size.rooms;
    across_ = static_cast<int>(std::ceil(std::sqrt(1.6 * most)));
    const int deep = (most + across_ - 1) / across_;
    width_ = across_ * kPitch_mm + 2 * kMargin_mm;
    depth_ = deep * kPitch_mm + 2 * kMargin_mm;
  }

  Layout draw() {
    layout_.site.name = "Invented shop";
    for (int i = 0; i < size_.rooms; ++i) addRoom(i);
    for (int i = 0; i < size_.rooms; ++i) addDoors(i);
    for (int i = 0; i < columns_; i += 2) addExit(i);
    for (int i = 0; i < size_.rooms; ++i) furnish(i);
    for (int i = 0; i < 4; ++i) addTapeCheck();
    return std::move(layout_);
  }

 private:
  // Walls of no thickness, thin and thick ones by turns, the same along a whole row or column.
  static double wallsBefore(int index) {
    double sum = 0;
    for (int i = 0; i < index; ++i) sum += i % 3 == 0 ? 120 : i % 3 == 1 ? 0 : 300;
    return sum;
  }

  Point cornerOf(int room) const {
    const int column = room % columns_, row = room / columns_;
    return {column * width_ + wallsBefore(column), row * depth_ + wallsBefore(row)};
  }

  void addRoom(int i) {
    const Point a = cornerOf(i);
    layout::Room room;
    room.id = numbered("room-", static_cast<std::size_t>(i) + 1);
    room.name = room.id;
    room.outline = {a, {a.x + width_, a.y}, {a.x + width_, a.y + depth_}, {a.x, a.y + depth_}};
    layout_.rooms.push_back(std::move(room));
  }

  void addDoor(int first, int second, Point at) {
    layout::Door door;
    door.id = numbered("door-", layout_.doors.size() + 1);
    door.first = layout_.rooms[static_cast<std::size_t>(first)].id;
    door.second = layout_.rooms[static_cast<std::size_t>(second)].id;
    door.at = at;
    door.width = random_.between(1000, 1800);
    if (random_.chance(0.1)) door.locked = layout::Locked::AfterHours;
    layout_.doors.push_back(std::move(door));
  }

  void addDoors(int i) {
    const Point a = cornerOf(i);
    const int right = i + 1, above = i + columns_;
    if (right % columns_ != 0 && right < size_.rooms)
      addDoor(i, right, {a.x + width_, a.y + depth_ * random_.between(0.3, 0.7)});
    if (above < size_.rooms) addDoor(i, above, {a.x + width_ * random_.between(0.3, 0.7), a.y + depth_});
  }

  void addExit(int i) {
    layout::Door door;
    door.id = numbered("exit-", layout_.doors.size() + 1);
    door.first = layout_.rooms[static_cast<std::size_t>(i)].id;
    door.second = layout::kOutside;
    door.at = cornerOf(i) + Point{0.5 * width_, 0};
    door.width = 1200;
    layout_.doors.push_back(std::move(door));
  }

  void furnish(int i) {
    const int from = static_cast<int>(static_cast<long>(size_.machines) * i / size_.rooms);
    const int to = static_cast<int>(static_cast<long>(size_.machines) * (i + 1) / size_.rooms);
    const Point a = cornerOf(i);
    for (int k = from; k < to; ++k) {
      const int place = k - from;
      addMachine(a + Point{kMargin_mm + (place % across_ + 0.5) * kPitch_mm,
                           kMargin_mm + (place / across_ + 0.5) * kPitch_mm});
    }
    for (const double x : {0.12, 0.88}) addBench(a + Point{x * width_, 350});
    addOnWalls(i, a);
  }

  void addBench(Point at) {
    layout::Fixture bench;
    bench.id = numbered("bench-", layout_.fixtures.size() + 1);
    bench.name = "Bench";
    bench.at = at;
    bench.footprint = layout::Rectangle{1400, 700};
    bench.height = 900;
    layout_.fixtures.push_back(std::move(bench));
  }

  void addMachine(Point at) {
    layout::Machine machine;
    machine.id = numbered("machine-", layout_.machines.size() + 1);
    machine.name = machine.id;
    machine.at = at + Point{random_.between(-100, 100), random_.between(-100, 100)};
    machine.turn = random_.chance(0.6) ? 90.0 * random_.below(4) : random_.between(0, 360);
    const double width = random_.between(500, 1800), depth = random_.between(500, 1000);
    machine.footprint = layout::Rectangle{width, depth};
    machine.height = random_.between(900, 1900);
    machine.run_down = random_.between(1, 12);
    machine.stations.push_back({"operator", layout::Role::Operator, {0, -depth / 2 - 400}, {}});
    addDevices(machine, width, depth);
    layout_.machines.push_back(std::move(machine));
  }

  void addDevices(layout::Machine& machine, double width, double depth) {
    const auto device = [&](const char* id, const char* kind, double x, double height) -> layout::Device& {
      layout::Device made;
      made.id = id;
      made.kind = kind;
      made.at = {x, -depth / 2};
      made.height = height;
      return machine.devices.emplace_back(std::move(made));
    };
    device("stop", "mushroom-button", width * random_.between(-0.5, 0.5), 1100);
    if (random_.chance(0.3)) device("bar", "foot-bar", 0, 150).length = width * 0.8;
    if (random_.chance(0.2)) device("start", "guarded-start", 0.3 * width, 1100).pin = layout::Pin::Fitted;
  }

  void addOnWalls(int i, Point a) {
    layout::Device cut_off;
    cut_off.id = numbered("cut-off-", layout_.devices.size() + 1);
    cut_off.kind = "room-cut-off";
    cut_off.at = a + Point{0, 0.15 * depth_};
    cut_off.faces = 0;
    cut_off.height = 1500;
    cut_off.stops = layout::Stops{false, {layout_.rooms[static_cast<std::size_t>(i)].id}};
    layout_.devices.push_back(std::move(cut_off));
    if (i % 6 != 0) return;
    layout::Phone phone;
    phone.id = numbered("phone-", layout_.phones.size() + 1);
    phone.name = "Phone";
    phone.at = a + Point{width_, 0.85 * depth_};
    phone.faces = 180;
    phone.height = 1200;
    layout_.phones.push_back(std::move(phone));
  }

  // From one operator to another two machines on: across an aisle.
  void addTapeCheck() {
    const std::size_t number = layout_.tape_checks.size(), of = number * layout_.machines.size() / 5;
    layout::TapeCheck& check = layout_.tape_checks.emplace_back();
    check.id = numbered("tape-", number + 1);
    check.from = layout_.machines[of].id + "/operator";
    check.to = layout_.machines[of + 2].id + "/operator";
    check.taped = 7000;
  }

  ShopSize size_;
  Random random_;
  Layout layout_;
  int columns_ = 1, across_ = 1;
  double width_ = 0, depth_ = 0;
};

}  // namespace

Layout shopLayout(const ShopSize& size) {
  return Shop(size).draw();
}

}  // namespace stopwalk::support
