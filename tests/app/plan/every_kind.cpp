#include "tests/app/plan/every_kind.h"

#include "tests/support/draw.h"

namespace stopwalk::plan {

layout::Layout everyKind() {
  layout::Layout l;
  l.rooms.push_back(draw::room("hall", draw::box(0, 0, 20000, 12000)));
  l.rooms.push_back(draw::room("store", draw::box(20400, 0, 30000, 12000)));
  l.rooms[0].name = "Hall";
  l.doors.push_back(draw::door("door", "hall", "store", {20000, 3000}, 1200, layout::Locked::AfterHours));
  l.fixtures.push_back(draw::bench("bench", {3000, 10000}, 2400, 900));
  layout::Machine lathe = draw::machine("lathe", {8000, 6000}, 2200, 950);
  lathe.name = "Lathe 1";
  lathe.turn = 30;
  lathe.hazard = draw::box(-400, -300, 400, 200);
  lathe.stations.push_back(draw::station("operator", {0, -1000}));
  lathe.devices.push_back(draw::device("bar", "foot-bar", {0, -475}));
  lathe.devices[0].length = 1800;
  lathe.devices.push_back(draw::device("start", "guarded-start", {900, -300}));
  l.machines.push_back(lathe);
  l.devices.push_back(draw::device("cut-off", "room-cut-off", {0, 6000}, 0));
  l.phones.push_back(draw::phone("phone", {10000, 0}, 90));
  layout::Note note;
  note.id = "note", note.at = {14000, 9000}, note.points_to = geometry::Point{16000, 10000};
  note.text = "Keep clear";
  l.notes.push_back(note);
  l.tape_checks.push_back({"tape", "cut-off", "phone", 11700, "", "", {}});
  l.underlay = layout::Underlay{"scan.png", {-9000, 0}, 10, 0, 0.4, {}};
  return l;
}

}  // namespace stopwalk::plan
