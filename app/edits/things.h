#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/layout/layout.h"

// What can be pointed at in a layout, by its id as seen from outside (`lathe-1/bar` for what is on a
// machine).
namespace stopwalk::edits {

enum class ThingKind {
  Underlay,
  Room,
  Door,
  Fixture,
  Machine,
  Station,        // of a machine
  MachineDevice,  // on a machine
  WallDevice,     // on a wall or post
  Phone,
  Note,
  TapeCheck
};

// The underlay has no id of its own; this one no thing can have.
inline constexpr const char* kUnderlayId = "(underlay)";

// Where a thing stands in a layout: `index` into its list (for what is on a machine: into machines), `part`
// into the machine's stations or devices. Good until the layout changes.
struct Thing {
  ThingKind kind = ThingKind::Room;
  std::size_t index = 0;
  std::size_t part = 0;
  bool operator==(const Thing&) const = default;
};

std::optional<Thing> findThing(const layout::Layout& layout, std::string_view id);
std::string idOf(const layout::Layout& layout, const Thing& thing);
// What people call it: the name of a room, machine, fixture or phone; else its id.
std::string nameOf(const layout::Layout& layout, const Thing& thing);
// Every thing, in the order of the file; what is on a machine behind the machine.
std::vector<Thing> allThings(const layout::Layout& layout);

// Where it is in the plan; of a room or tape check none.
std::optional<geometry::Point> placeOf(const layout::Layout& layout, const Thing& thing);

}  // namespace stopwalk::edits
