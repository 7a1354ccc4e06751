#include <cmath>

#include "app/edits/hang_things.h"
#include "app/plan/tools/drag.h"
#include "app/plan/walls.h"

namespace stopwalk::plan {
namespace {

constexpr double kFromMachine_mm = 200;   // so near, a device goes onto the machine's side
constexpr double kFarthestWall_mm = 1e5;  // a door is always in a wall

class HangDrag : public Drag {
 public:
  HangDrag(ToolHost& tool_host, std::string id, const PointerEvent& start)
      : Drag(tool_host), id_(std::move(id)) {
    const auto thing = edits::findThing(tool_host.layout(), id_);
    if (thing) grip_ = edits::placeOf(tool_host.layout(), *thing).value_or(start.at) - start.at;
  }

  void moved(const PointerEvent& event) override {
    edit_ = editAt(event.at + grip_, event.snaps());
    if (edit_) host.preview(edit_->after);
  }

  std::optional<edits::Edit> finished() override { return std::move(edit_); }

 private:
  std::optional<edits::Edit> editAt(geometry::Point at, bool snaps) const {
    const layout::Layout& layout = host.layout();
    const auto thing = edits::findThing(layout, id_);
    if (!thing) return std::nullopt;
    switch (thing->kind) {
      case edits::ThingKind::Door:
        return doorAt(layout.doors[thing->index], at);
      case edits::ThingKind::MachineDevice:
        return onMachine(layout.machines[thing->index], thing->part, at, snaps);
      case edits::ThingKind::WallDevice:
        return onWall(at, snaps, layout.devices[thing->index].faces);
      case edits::ThingKind::Phone:
        return onWall(at, snaps, layout.phones[thing->index].faces);
      default:
        return std::nullopt;
    }
  }

  std::optional<edits::Edit> doorAt(const layout::Door& door, geometry::Point at) const {
    const auto wall = nearestWall(host.layout(), at, kFarthestWall_mm);
    if (!wall) return std::nullopt;
    return edits::hangDoor(host.layout(), id_, doorWithin(*wall, door.width),
                           host.layout().rooms[wall->room].id, roomBehind(host.layout(), *wall));
  }

  edits::Edit onWall(geometry::Point at, bool snaps, double faces) const {
    const auto wall = snaps ? nearestWall(host.layout(), at, kFromWall_mm) : std::nullopt;
    return edits::hangOnWall(host.layout(), id_, wall ? wall->at : at, wall ? wall->faces : faces);
  }

  edits::Edit onMachine(const layout::Machine& m, std::size_t device, geometry::Point at, bool snaps) const {
    const geometry::Point in_frame = edits::inFrame(m, at);
    const OnFootprint side = nearestSide(m.footprint, in_frame);
    if (snaps && geometry::distance(side.at, in_frame) <= kFromMachine_mm)
      return edits::hangOnMachine(host.layout(), id_, side.at, side.faces);
    return edits::hangOnMachine(host.layout(), id_, in_frame, m.devices[device].faces);
  }

  const std::string id_;
  geometry::Point grip_;  // from the pointer to the thing
  std::optional<edits::Edit> edit_;
};

}  // namespace

std::unique_ptr<Drag> hangDrag(ToolHost& host, const std::string& id, const PointerEvent& start) {
  return std::make_unique<HangDrag>(host, id, start);
}

}  // namespace stopwalk::plan
