#include "tests/support/furnished.h"

#include <string>
#include <vector>

#include "core/geometry/polygon.h"
#include "tests/support/random.h"

namespace stopwalk::support {
namespace {

using layout::Layout;

std::string numbered(const char* name, std::size_t number) {
  return name + std::to_string(number);
}

template <class Things>
auto& oneOf(Things& things, Random& random) {
  return things[static_cast<std::size_t>(random.below(static_cast<int>(things.size())))];
}

void addExit(Layout& layout, Random& random) {
  const layout::Room& room = oneOf(layout.rooms, random);
  const auto edge = geometry::edgeOf(
      room.outline, static_cast<std::size_t>(random.below(static_cast<int>(room.outline.size()))));
  layout::Door door;
  door.id = numbered("exit-", layout.doors.size() + 1);
  door.first = room.id;
  door.second = layout::kOutside;
  door.at = geometry::at(edge, random.between(0.2, 0.8));
  door.width = random.between(600, 1500);
  if (random.chance(0.2)) door.locked = layout::Locked::AfterHours;
  layout.doors.push_back(std::move(door));
}

void addHazard(layout::Machine& machine, Random& random) {
  const double x = random.between(400, 1400), y = random.between(400, 1400);
  machine.hazard = {{-x, -y}, {x, -y}, {x, y}, {-x, y}};
}

std::vector<std::string> placesOf(const Layout& layout) {
  std::vector<std::string> ids;
  for (const layout::Machine& m : layout.machines) {
    for (const layout::Station& s : m.stations) ids.push_back(m.id + "/" + s.id);
    for (const layout::Device& d : m.devices) ids.push_back(m.id + "/" + d.id);
  }
  for (const layout::Device& d : layout.devices) ids.push_back(d.id);
  for (const layout::Phone& p : layout.phones) ids.push_back(p.id);
  return ids;
}

}  // namespace

Layout furnished(Layout layout, std::uint64_t seed) {
  Random random(seed ^ 0xf0517);
  for (int exits = random.below(4); exits > 0; --exits) addExit(layout, random);
  if (layout.rooms.size() > 2 && random.chance(0.2)) oneOf(layout.rooms, random).outdoors = true;
  for (layout::Machine& m : layout.machines)
    if (random.chance(0.25)) addHazard(m, random);
  const std::vector<std::string> places = placesOf(layout);
  if (places.empty()) return layout;
  for (int n = random.below(4); n > 0; --n) {
    layout::TapeCheck& check = layout.tape_checks.emplace_back();
    check.id = numbered("tape-", layout.tape_checks.size());
    check.from = oneOf(places, random);
    check.to = oneOf(places, random);
    check.taped = random.between(1000, 9000);
  }
  for (const char* rule : {"exit-width", "stop-out-of-reach", "narrow-passage"}) {
    layout::AcceptedFinding& accepted = layout.accepted_findings.emplace_back();
    accepted.rule = rule;
    accepted.subject = oneOf(places, random);
    if (random.chance(0.5)) accepted.which = oneOf(places, random);
    accepted.reason = "invented";
    accepted.by = "Ada Example";
    accepted.until = "2027-12-31";
  }
  return layout;
}

}  // namespace stopwalk::support
