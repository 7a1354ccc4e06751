#include "tests/support/neglected.h"

#include "tests/support/random.h"

namespace stopwalk::support {
namespace {

using layout::Layout;

template <class Things>
auto& oneOf(Things& things, Random& random) {
  return things[static_cast<std::size_t>(random.below(static_cast<int>(things.size())))];
}

void addStart(layout::Machine& machine, Random& random) {
  layout::Device start;
  start.id = "start";
  start.kind = "guarded-start";
  start.at = {random.between(-300, 300), -300};
  start.pin = random.chance(0.5) ? layout::Pin::Missing : layout::Pin::Fitted;
  machine.devices.push_back(std::move(start));
}

// Its only stop is in the hand.
void makeHeld(layout::Machine& machine) {
  machine.hand_held = true;
  machine.devices.front().kind = "trigger";
}

void neglectDevices(Layout& layout, layout::Machine& machine, Random& random) {
  const bool has_paddles = random.chance(0.2);
  for (layout::Device& d : machine.devices) {
    if (has_paddles && d.kind == "mushroom-button") d.kind = "paddle";
    if (random.chance(0.2)) d.height = random.between(300, 2200);
    if (random.chance(0.1)) d.height.reset();
    if (random.chance(0.1)) d.stops = layout::Stops{false, {oneOf(layout.machines, random).id}};
    if (random.chance(0.05)) d.stops = layout::Stops{};
    if (random.chance(0.1)) d.run_down = random.between(0.5, 4);
  }
}

void neglectCutOff(Layout& layout, layout::Device& cut_off, Random& random) {
  if (random.chance(0.6)) cut_off.stops = layout::Stops{false, {oneOf(layout.rooms, random).id}};
  if (random.chance(0.1)) cut_off.stops = layout::Stops{};
  if (random.chance(0.4)) cut_off.run_down = random.between(2, 20);
}

}  // namespace

Layout neglected(Layout layout, std::uint64_t seed) {
  Random random(seed ^ 0x2e91ec7);
  for (layout::Machine& m : layout.machines) {
    neglectDevices(layout, m, random);
    if (random.chance(0.1) && !m.devices.empty()) makeHeld(m);
    if (random.chance(0.2)) addStart(m, random);
    if (random.chance(0.1)) m.stations.push_back({"setter", layout::Role::Setter, {600, 0}, {}});
    if (random.chance(0.05)) m.stations.clear();
  }
  for (layout::Device& d : layout.devices) neglectCutOff(layout, d, random);
  for (layout::Door& d : layout.doors) {
    if (random.chance(0.3)) d.locked = layout::Locked::AfterHours;
    if (random.chance(0.3)) d.width = random.between(565, 609);
  }
  if (seed % 3 == 1) layout.phones.clear();
  return layout;
}

}  // namespace stopwalk::support
