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

class Maker {
 public:
  explicit Maker(const layout::Layout& layout) : layout_(layout) {}

  template <class T, class... Arguments>
  void add(Arguments&&... arguments) {
    items_.push_back(std::make_unique<T>(layout_, std::forward<Arguments>(arguments)...));
  }
  template <class T, class List>
  void addAll(const List& list) {
    for (std::size_t i = 0; i < list.size(); ++i) add<T>(i);
  }
  std::vector<std::unique_ptr<Item>> take() { return std::move(items_); }

 private:
  const layout::Layout& layout_;
  std::vector<std::unique_ptr<Item>> items_;
};

}  // namespace

std::vector<std::unique_ptr<Item>> itemsOf(const layout::Layout& layout, const layout::DeviceKinds& kinds,
                                           const Pictures& pictures) {
  Maker make(layout);
  // A yard goes under the walls of the house that stands beside it.
  for (std::size_t i = 0; i < layout.rooms.size(); ++i)
    if (layout.rooms[i].outdoors) make.add<RoomItem>(i);
  for (std::size_t i = 0; i < layout.rooms.size(); ++i)
    if (!layout.rooms[i].outdoors) make.add<WallItem>(i);
  for (std::size_t i = 0; i < layout.rooms.size(); ++i)
    if (!layout.rooms[i].outdoors) make.add<RoomItem>(i);
  if (layout.underlay) make.add<UnderlayItem>(pictures);
  make.addAll<FixtureItem>(layout.fixtures);
  make.addAll<MachineItem>(layout.machines);
  make.addAll<TapeCheckItem>(layout.tape_checks);
  make.addAll<DoorItem>(layout.doors);
  for (std::size_t m = 0; m < layout.machines.size(); ++m)
    for (std::size_t s = 0; s < layout.machines[m].stations.size(); ++s) make.add<StationItem>(m, s);
  for (std::size_t m = 0; m < layout.machines.size(); ++m)
    for (std::size_t d = 0; d < layout.machines[m].devices.size(); ++d)
      make.add<DeviceItem>(kinds, edits::Thing{ThingKind::MachineDevice, m, d});
  for (std::size_t d = 0; d < layout.devices.size(); ++d)
    make.add<DeviceItem>(kinds, edits::Thing{ThingKind::WallDevice, d});
  make.addAll<PhoneItem>(layout.phones);
  make.addAll<NoteItem>(layout.notes);
  return make.take();
}

}  // namespace stopwalk::plan
