#include "tests/app/panels/workshop.h"

namespace stopwalk::panels {

namespace {

layout::Machine saw(const std::string& id, const std::string& name, layout::Point at) {
  layout::Machine m;
  m.id = id;
  m.name = name;
  m.kind = "table-saw";
  m.at = at;
  m.footprint = layout::Rectangle{1900, 950};
  m.height = 870;
  layout::Station station;
  station.id = "operator";
  station.at = {-300, -925};
  m.stations = {station};
  layout::Device paddle;
  paddle.id = "paddle";
  paddle.kind = "paddle";
  paddle.at = {-350, -475};
  m.devices = {paddle};
  return m;
}

layout::Room room(const std::string& id, const std::string& name, double left_mm) {
  layout::Room r;
  r.id = id;
  r.name = name;
  r.outline = {{left_mm, 0}, {left_mm + 9000, 0}, {left_mm + 9000, 7000}, {left_mm, 7000}};
  return r;
}

}  // namespace

layout::Layout smallShop() {
  layout::Layout l;
  l.site.name = "Invented shop";
  l.rooms = {room("wood", "Wood room", 0), room("metal", "Metal room", 9000)};
  layout::Door door;
  door.id = "d1";
  door.first = "wood";
  door.second = "metal";
  door.at = {9000, 3500};
  door.width = 1800;
  l.doors = {door};
  layout::Fixture bench;
  bench.id = "bench-1";
  bench.name = "Bench";
  bench.at = {4000, 1200};
  bench.footprint = layout::Rectangle{2400, 900};
  l.fixtures = {bench};
  l.machines = {saw("saw-1", "Table saw 1", {3000, 4500}), saw("saw-2", "Table saw 2", {12000, 4500})};
  l.machines[1].height = 900;
  layout::Device cut_off;
  cut_off.id = "cut-off";
  cut_off.kind = "room-cut-off";
  cut_off.at = {0, 2000};
  cut_off.faces = 0;
  l.devices = {cut_off};
  layout::Phone phone;
  phone.id = "phone-1";
  phone.name = "Yard phone";
  phone.at = {0, 3000};
  l.phones = {phone};
  layout::Note note;
  note.id = "n1";
  note.at = {5000, 5000};
  note.text = "Keep clear";
  l.notes = {note};
  layout::TapeCheck check;
  check.id = "t1";
  check.from = "saw-1/operator";
  check.to = "phone-1";
  check.taped = 4250;
  l.tape_checks = {check};
  l.underlay = layout::Underlay{};
  l.underlay->image = "scan.png";
  return l;
}

}  // namespace stopwalk::panels
