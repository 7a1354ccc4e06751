#include <cmath>

#include "app/edits/hang_things.h"
#include "app/plan/tools/drag.h"
#include "app/plan/walls.h"

namespace stopwalk::plan {
namespace {

constexpr double kFromWall_mm = 600;  // so near, a thing goes onto the wall; farther out it stands on a post
constexpr double kFromMachine_mm = 200;   // so near, a device goes onto the machine's side
constexpr double kFarthestWall_mm = 1e5;  // a door is always in a wall

class HangDrag : public Drag {
 public:
  HangDrag(ToolHost& tool_host, std::string id, const PointerEvent& start)
      : Drag(tool_host), id_(std::move(id)), thing_(*edits::findThing(tool_host.layout(), id_)) {
    grip_ = edits::placeOf(tool_host.layout(), thing_).value_or(start.at) - start.at;
  }

  void moved(const PointerEvent& event) override {
    edit_ = editAt(event.at + grip_, event.snaps());
    if (edit_) host.preview(edit_->after);
  }

  std::optional<edits::Edit> finished() override { return std::move(edit_); }

 private:
  std::optional<edits::Edit> editAt(geometry::Point at, bool snaps) const {
    const layout::Layout& layout = host.layout();
    switch (thing_.kind) {
      case edits::ThingKind::Door:
        return doorAt(at);
      case edits::ThingKind::MachineDevice:
        return onMachine(at, snaps);
      case edits::ThingKind::WallDevice:
        return onWall(at, snaps, layout.devices[thing_.index].faces);
      case edits::ThingKind::Phone:
        return onWall(at, snaps, layout.phones[thing_.index].faces);
      default:
        return std::nullopt;
    }
  }

  std::optional<edits::Edit> doorAt(geometry::Point at) const {
    const auto wall = nearestWall(host.layout(), at, kFarthestWall_mm);
    if (!wall) return std::nullopt;
    const auto& door = host.layout().doors[thing_.index];
    return edits::hangDoor(host.layout(), id_, doorWithin(*wall, door.width),
                           host.layout().rooms[wall->room].id, roomBehind(host.layout(), *wall));
  }

  edits::Edit onWall(geometry::Point at, bool snaps, double faces) const {
    const auto wall = snaps ? nearestWall(host.layout(), at, kFromWall_mm) : std::nullopt;
    return edits::hangOnWall(host.layout(), id_, wall ? wall->at : at, wall ? wall->faces : faces);
  }

  edits::Edit onMachine(geometry::Point at, bool snaps) const {
    const layout::Machine& m = host.layout().machines[thing_.index];
    const geometry::Point in_frame = geometry::turned(at - m.at, -m.turn);
    const OnFootprint side = nearestSide(m.footprint, in_frame);
    if (snaps && geometry::distance(side.at, in_frame) <= kFromMachine_mm)
      return edits::hangOnMachine(host.layout(), id_, side.at, side.faces);
    return edits::hangOnMachine(host.layout(), id_, in_frame, m.devices[thing_.part].faces);
  }

  const std::string id_;
  const edits::Thing thing_;
  geometry::Point grip_;  // from the pointer to the thing
  std::optional<edits::Edit> edit_;
};

}  // namespace

std::unique_ptr<Drag> hangDrag(ToolHost& host, const std::string& id, const PointerEvent& start) {
  return std::make_unique<HangDrag>(host, id, start);
}

}  // namespace stopwalk::plan
