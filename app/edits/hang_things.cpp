#include "app/edits/hang_things.h"

#include <algorithm>
#include <initializer_list>

#include "app/edits/move_things.h"
#include "app/edits/step_names.h"
#include "app/edits/words.h"

namespace stopwalk::edits {
namespace {

// `place(layout, thing)` for the thing of that id, if it is of one of the kinds; a step of its name.
template <class Place>
Edit hang(const layout::Layout& layout, const std::string& id, std::initializer_list<ThingKind> kinds,
          Place place) {
  const auto thing = findThing(layout, id);
  if (!thing || std::ranges::find(kinds, thing->kind) == kinds.end()) return noStep(layout);
  layout::Layout after = layout;
  place(after, *thing);
  return step(layout, Words::tr("Move %1").arg(called(layout, *thing)), std::move(after));
}

}  // namespace

geometry::Point inFrame(const layout::Machine& machine, geometry::Point at) {
  return geometry::turned(at - machine.at, -machine.turn);
}

Edit hangOnWall(const layout::Layout& layout, const std::string& id, geometry::Point at, double faces) {
  const auto put = [&](auto& thing) {
    thing.at = rounded(at);
    thing.faces = wholeTurn(faces);
  };
  return hang(layout, id, {ThingKind::WallDevice, ThingKind::Phone},
              [&](layout::Layout& after, const Thing& thing) {
                if (thing.kind == ThingKind::WallDevice)
                  put(after.devices[thing.index]);
                else
                  put(after.phones[thing.index]);
              });
}

Edit hangDoor(const layout::Layout& layout, const std::string& id, geometry::Point at,
              const std::string& first, const std::string& second) {
  return hang(layout, id, {ThingKind::Door}, [&](layout::Layout& after, const Thing& thing) {
    layout::Door& door = after.doors[thing.index];
    door.at = rounded(at);
    door.first = first;
    door.second = second;
  });
}

Edit hangOnMachine(const layout::Layout& layout, const std::string& id, geometry::Point at, double faces) {
  return hang(layout, id, {ThingKind::MachineDevice}, [&](layout::Layout& after, const Thing& thing) {
    layout::Device& device = after.machines[thing.index].devices[thing.part];
    device.at = rounded(at);
    device.faces = wholeTurn(faces);
  });
}

}  // namespace stopwalk::edits
