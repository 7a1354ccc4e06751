#pragma once

#include <string>
#include <vector>

#include "app/edits/things.h"

namespace stopwalk::edits {

inline bool isOnMachine(const Thing& thing) {
  return thing.kind == ThingKind::Station || thing.kind == ThingKind::MachineDevice;
}

// Calls `f` with the value that `thing` stands for, a `layout::Room&` and so on.
template <class Layout, class F>
void visitThing(Layout& layout, const Thing& thing, F&& f) {
  switch (thing.kind) {
    case ThingKind::Underlay:
      return f(*layout.underlay);
    case ThingKind::Room:
      return f(layout.rooms[thing.index]);
    case ThingKind::Door:
      return f(layout.doors[thing.index]);
    case ThingKind::Fixture:
      return f(layout.fixtures[thing.index]);
    case ThingKind::Machine:
      return f(layout.machines[thing.index]);
    case ThingKind::Station:
      return f(layout.machines[thing.index].stations[thing.part]);
    case ThingKind::MachineDevice:
      return f(layout.machines[thing.index].devices[thing.part]);
    case ThingKind::WallDevice:
      return f(layout.devices[thing.index]);
    case ThingKind::Phone:
      return f(layout.phones[thing.index]);
    case ThingKind::Note:
      return f(layout.notes[thing.index]);
    case ThingKind::TapeCheck:
      return f(layout.tape_checks[thing.index]);
  }
}

// The things of those ids in their order, each once; unknown ids are ignored.
std::vector<Thing> knownThings(const layout::Layout& layout, const std::vector<std::string>& ids);
// The same without what is on a machine that is among them: it goes where the machine goes.
std::vector<Thing> chosenThings(const layout::Layout& layout, const std::vector<std::string>& ids);

}  // namespace stopwalk::edits
