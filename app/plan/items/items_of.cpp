#include <algorithm>

#include "app/plan/items/device_item.h"
#include "app/plan/items/door_item.h"
#include "app/plan/items/fixture_item.h"
#include "app/plan/items/item.h"
#include "app/plan/items/machine_item.h"
#include "app/plan/items/note_item.h"
#include "app/plan/items/phone_item.h"
#include "app/plan/items/room_item.h"
#include "app/plan/items/station_item.h"
#include "app/plan/items/tape_check_item.h"
#include "app/plan/items/underlay_item.h"
#include "app/plan/items/wall_item.h"

namespace stopwalk::plan {
namespace {

using edits::ThingKind;

// Which things are as they were in an earlier layout in which each has the same place in the order of
// painting; none at all where that differs.
class AsBefore {
 public:
  AsBefore(const layout::Layout& now, const std::optional<EarlierItems>& earlier)
      : machines_(now.machines.size()), fixtures_(now.fixtures.size()) {
    if (!earlier || !standAlike(now, earlier->layout)) return;
    rest_ = true;
    note(machines_, now.machines, earlier->layout.machines);
    note(fixtures_, now.fixtures, earlier->layout.fixtures);
  }
  bool machine(std::size_t m) const { return machines_[m] != 0; }
  bool fixture(std::size_t f) const { return fixtures_[f] != 0; }
  bool rest() const { return rest_; }  // all that is neither, nor hangs on a machine

 private:
  static bool standAlike(const layout::Layout& a, const layout::Layout& b) {
    const auto sameParts = [](const layout::Machine& m, const layout::Machine& n) {
      return m.stations.size() == n.stations.size() && m.devices.size() == n.devices.size();
    };
    return a.unit == b.unit && a.rooms == b.rooms && a.underlay == b.underlay && a.doors == b.doors &&
           a.devices == b.devices && a.phones == b.phones && a.notes == b.notes &&
           a.tape_checks.size() == b.tape_checks.size() && a.fixtures.size() == b.fixtures.size() &&
           std::ranges::equal(a.machines, b.machines, sameParts);
  }
  template <class Thing>
  static void note(std::vector<char>& same, const std::vector<Thing>& now, const std::vector<Thing>& before) {
    for (std::size_t i = 0; i < now.size(); ++i) same[i] = now[i] == before[i];
  }

  std::vector<char> machines_, fixtures_;
  bool rest_ = false;
};

class Maker {
 public:
  Maker(const layout::Layout& layout, const std::optional<EarlierItems>& earlier)
      : layout_(layout), earlier_(earlier ? &earlier->items : nullptr) {}

  template <class T, class... Arguments>
  void add(bool is_as_before, Arguments&&... arguments) {
    items_.push_back(is_as_before
                         ? (*earlier_)[items_.size()]
                         : std::make_shared<const T>(layout_, std::forward<Arguments>(arguments)...));
  }
  template <class T, class List>
  void addAll(bool are_as_before, const List& list) {
    for (std::size_t i = 0; i < list.size(); ++i) add<T>(are_as_before, i);
  }
  Items take() { return std::move(items_); }

 private:
  const layout::Layout& layout_;
  const Items* earlier_;
  Items items_;
};

}  // namespace

Items itemsOf(const layout::Layout& layout, const layout::DeviceKinds& kinds, const Pictures& pictures,
              std::optional<EarlierItems> earlier) {
  const AsBefore as_before(layout, earlier);
  const bool rest = as_before.rest();
  Maker make(layout, earlier);
  // A yard goes under the walls of the house that stands beside it.
  for (std::size_t i = 0; i < layout.rooms.size(); ++i)
    if (layout.rooms[i].outdoors) make.add<RoomItem>(rest, i);
  for (std::size_t i = 0; i < layout.rooms.size(); ++i)
    if (!layout.rooms[i].outdoors) make.add<WallItem>(rest, i);
  for (std::size_t i = 0; i < layout.rooms.size(); ++i)
    if (!layout.rooms[i].outdoors) make.add<RoomItem>(rest, i);
  if (layout.underlay) make.add<UnderlayItem>(rest, pictures);
  for (std::size_t i = 0; i < layout.fixtures.size(); ++i) make.add<FixtureItem>(as_before.fixture(i), i);
  for (std::size_t i = 0; i < layout.machines.size(); ++i) make.add<MachineItem>(as_before.machine(i), i);
  make.addAll<TapeCheckItem>(false, layout.tape_checks);  // from and to what may have moved
  make.addAll<DoorItem>(rest, layout.doors);
  for (std::size_t m = 0; m < layout.machines.size(); ++m)
    for (std::size_t s = 0; s < layout.machines[m].stations.size(); ++s)
      make.add<StationItem>(as_before.machine(m), m, s);
  for (std::size_t m = 0; m < layout.machines.size(); ++m)
    for (std::size_t d = 0; d < layout.machines[m].devices.size(); ++d)
      make.add<DeviceItem>(as_before.machine(m), kinds, edits::Thing{ThingKind::MachineDevice, m, d});
  for (std::size_t d = 0; d < layout.devices.size(); ++d)
    make.add<DeviceItem>(rest, kinds, edits::Thing{ThingKind::WallDevice, d});
  make.addAll<PhoneItem>(rest, layout.phones);
  make.addAll<NoteItem>(rest, layout.notes);
  return make.take();
}

}  // namespace stopwalk::plan
