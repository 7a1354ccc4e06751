#include "tests/support/random_layout.h"

#include <algorithm>
#include <string>
#include <vector>

#include "tests/support/random.h"

namespace stopwalk::support {
namespace {

using geometry::Polygon;
using layout::Layout;
using layout::Point;

// A room's bounds before its shape is cut from them; the side walls stand upright over `low` to `high`, where
// doors may be.
struct Bay {
  double left, right, bottom, top;
  double low, high;
};

std::string numbered(const char* name, std::size_t number) {
  return name + std::to_string(number);
}

class Drawing {
 public:
  Drawing(std::uint64_t seed, const RandomLayoutOptions& options) : options_(options), random_(seed) {}

  Layout draw() {
    layout_.site.name = "Invented shop";
    const int rooms = 1 + random_.below(options_.most_rooms);
    for (int i = 0; i < rooms; ++i) addRoom();
    for (std::size_t i = 0; i + 1 < bays_.size(); ++i) addDoors(i);
    const int machines =
        options_.fewest_machines + random_.below(options_.most_machines - options_.fewest_machines + 1);
    for (int i = 0; i < machines; ++i) addMachine();
    for (int i = random_.below(4); i > 0; --i) addFixture();
    addOnWalls();
    const double turn = options_.turned && random_.chance(0.75) ? random_.between(0, 360) : 0;
    const bool far = options_.far_away && random_.chance(0.25);
    return moved(std::move(layout_), turn, far ? Point{1e6 + random_.between(0, 7), -1e6} : Point{});
  }

 private:
  void addRoom() {
    static constexpr double kThickness[] = {0, 60, 100, 240, 400};
    const double left = bays_.empty() ? 0 : bays_.back().right + kThickness[random_.below(5)];
    Bay bay{
        left, left + random_.between(3500, 8000), random_.between(-1200, 0), random_.between(4000, 7500), 0,
        0};
    bay.low = bay.bottom + 100;
    bay.high = bay.top - 100;
    layout::Room room;
    room.id = numbered("room-", bays_.size() + 1);
    room.name = room.id;
    room.outline = shape(bay);
    if (options_.awkward && random_.chance(0.3)) roughen(room.outline);
    if (random_.chance(0.3)) std::reverse(room.outline.begin(), room.outline.end());
    bays_.push_back(bay);
    layout_.rooms.push_back(std::move(room));
  }

  Polygon shape(Bay& bay) {
    const double w = bay.right - bay.left, h = bay.top - bay.bottom;
    const double cut_x = w * random_.between(0.25, 0.5), cut_y = h * random_.between(0.2, 0.45);
    const Point a{bay.left, bay.bottom}, b{bay.right, bay.bottom}, c{bay.right, bay.top},
        d{bay.left, bay.top};
    switch (random_.below(4)) {
      case 0:  // L, cut at the top right
        bay.high = bay.top - cut_y - 100;
        return {a, b, {c.x, c.y - cut_y}, {c.x - cut_x, c.y - cut_y}, {c.x - cut_x, c.y}, d};
      case 1:  // L, cut at the bottom left
        bay.low = bay.bottom + cut_y + 100;
        return {{a.x, a.y + cut_y}, {a.x + cut_x, a.y + cut_y}, {a.x + cut_x, a.y}, b, c, d};
      case 2:  // oblique roof line
        bay.high = bay.top - cut_y - 100;
        return {a, b, {c.x, c.y - cut_y}, d};
      default:
        return {a, b, c, d};
    }
  }

  // A corner twice, and an edge of a few hundredths of a millimetre, as people's drawings have them.
  void roughen(Polygon& outline) {
    const auto i = static_cast<std::size_t>(random_.below(static_cast<int>(outline.size())));
    outline.insert(outline.begin() + static_cast<std::ptrdiff_t>(i), outline[i]);
    const std::size_t j = outline.size() - 1;
    const Point along = geometry::unit(outline[0] - outline[j]);
    outline.push_back(outline[j] + random_.between(0.01, 0.2) * along);
  }

  void addDoors(std::size_t i) {
    const double low = std::max(bays_[i].low, bays_[i + 1].low),
                 high = std::min(bays_[i].high, bays_[i + 1].high);
    if (random_.chance(0.05)) return;
    const int doors = high - low > 3200 && random_.chance(0.3) ? 2 : 1;
    for (int k = 0; k < doors; ++k) {
      const double from = low + (high - low) * k / doors, to = low + (high - low) * (k + 1) / doors;
      double width = options_.narrow ? random_.between(555, 612) : random_.between(640, 1500);
      width = std::min(width, to - from - 20);
      if (width < 200) continue;
      layout::Door door;
      door.id = numbered("door-", layout_.doors.size() + 1);
      door.first = layout_.rooms[i].id;
      door.second = layout_.rooms[i + 1].id;
      door.at = {bays_[i].right, random_.between(from + width / 2 + 5, to - width / 2 - 5)};
      if (random_.chance(0.3)) std::swap(door.first, door.second), door.at.x = bays_[i + 1].left;
      door.width = width;
      if (random_.chance(0.1)) door.locked = layout::Locked::AfterHours;
      layout_.doors.push_back(door);
    }
  }

  Point somewhere(double margin) {
    const Bay& bay = bays_[static_cast<std::size_t>(random_.below(static_cast<int>(bays_.size())))];
    return {random_.between(bay.left + margin, bay.right - margin),
            random_.between(bay.bottom + margin, bay.top - margin)};
  }

  layout::Footprint footprint(double& width, double& depth) {
    width = random_.between(300, 2000);
    depth = random_.between(300, 1000);
    const double w = width / 2, d = depth / 2;
    if (!random_.chance(0.25)) return layout::Rectangle{width, depth};
    if (random_.chance(0.5)) return Polygon{{-w, -d}, {w, -d}, {w, 0}, {0, 0}, {0, d}, {-w, d}};
    return Polygon{{-w, 0}, {0, -d}, {w, 0}, {w / 2, d}, {-w / 3, d * 0.8}};
  }

  // Where a thing stands: mostly anywhere; else flush with a side wall, through it, or against the machine
  // before it.
  void place(double width, double depth, Point& at, double& turn) {
    at = somewhere(250);
    turn = random_.chance(0.5) ? 90.0 * random_.below(4) : random_.between(0, 360);
    if (!options_.awkward || !random_.chance(0.3)) return;
    const Bay& bay = bays_[static_cast<std::size_t>(random_.below(static_cast<int>(bays_.size())))];
    turn = 0;
    switch (random_.below(3)) {
      case 0:
        at.x = bay.left + width / 2;
        break;
      case 1:
        at.x = bay.right - width * random_.between(0.1, 0.4);
        break;
      default:
        if (last_.width == 0) return;
        turn = last_.turn;
        at = layout::toPlan(last_.at, turn, {(last_.width + width) / 2, (depth - last_.depth) / 2});
    }
  }

  void addMachine() {
    layout::Machine machine;
    machine.id = numbered("machine-", layout_.machines.size() + 1);
    machine.name = machine.id;
    double width = 0, depth = 0;
    machine.footprint = footprint(width, depth);
    place(width, depth, machine.at, machine.turn);
    if (random_.chance(0.7)) machine.height = random_.between(700, 1900);
    if (random_.chance(0.5)) machine.run_down = random_.between(1, 14);
    last_ = {width, depth, machine.at, machine.turn};
    addStations(machine, width, depth);
    addDevices(machine, width, depth);
    layout_.machines.push_back(std::move(machine));
  }

  void addStations(layout::Machine& machine, double width, double depth) {
    machine.stations.push_back(
        {"operator", layout::Role::Operator, {0, -depth / 2 - random_.between(150, 700)}, {}});
    if (random_.chance(0.3))
      machine.stations.push_back(
          {"helper", layout::Role::Helper, {0, depth / 2 + random_.between(150, 700)}, {}});
    if (random_.chance(0.1)) machine.stations[0].at = {random_.between(-0.4, 0.4) * width, -depth / 2};
  }

  void addDevices(layout::Machine& machine, double width, double depth) {
    layout::Device stop;
    stop.id = "stop";
    stop.kind = "mushroom-button";
    stop.at = {random_.between(-0.5, 0.5) * width, -depth / 2};
    stop.height = random_.between(700, 1500);
    machine.devices.push_back(stop);
    if (!random_.chance(0.4)) return;
    layout::Device bar;
    bar.id = "bar";
    bar.kind = "foot-bar";
    bar.at = {0, -depth / 2};
    bar.length = width * random_.between(0.5, 1);
    bar.height = 150;
    machine.devices.push_back(bar);
  }

  void addFixture() {
    layout::Fixture bench;
    bench.id = numbered("bench-", layout_.fixtures.size() + 1);
    bench.name = "Bench";
    double width = 0, depth = 0;
    bench.footprint = footprint(width, depth);
    place(width, depth, bench.at, bench.turn);
    if (random_.chance(0.6)) bench.height = 900;
    layout_.fixtures.push_back(std::move(bench));
  }

  void addOnWalls() {
    layout::Device cut_off;
    cut_off.id = "cut-off";
    cut_off.kind = "room-cut-off";
    cut_off.at = {bays_[0].left, random_.between(bays_[0].low, bays_[0].high)};
    cut_off.faces = 0;
    cut_off.height = 1500;
    cut_off.stops = layout::Stops{true, {}};
    layout_.devices.push_back(cut_off);
    layout::Phone phone;
    phone.id = "phone";
    phone.name = "Phone";
    phone.at = {bays_.back().right, random_.between(bays_.back().low, bays_.back().high)};
    phone.faces = 180;
    layout_.phones.push_back(phone);
  }

  struct Last {
    double width = 0, depth = 0;
    Point at;
    double turn = 0;
  };

  RandomLayoutOptions options_;
  Random random_;
  Layout layout_;
  std::vector<Bay> bays_;
  Last last_;
};

}  // namespace

Layout randomLayout(std::uint64_t seed, const RandomLayoutOptions& options) {
  return Drawing(seed, options).draw();
}

Layout moved(Layout layout, double turn, Point by) {
  const auto move = [&](Point& p) { p = layout::toPlan(by, turn, p); };
  for (layout::Room& room : layout.rooms)
    for (Point& p : room.outline) move(p);
  for (layout::Door& door : layout.doors) move(door.at);
  for (layout::Fixture& fixture : layout.fixtures) move(fixture.at), fixture.turn += turn;
  for (layout::Machine& machine : layout.machines) move(machine.at), machine.turn += turn;
  for (layout::Device& device : layout.devices) move(device.at), device.faces += turn;
  for (layout::Phone& phone : layout.phones) move(phone.at), phone.faces += turn;
  for (layout::Note& note : layout.notes) {
    move(note.at);
    if (note.points_to) move(*note.points_to);
  }
  return layout;
}

}  // namespace stopwalk::support
