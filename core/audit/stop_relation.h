#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <unordered_map>
#include <vector>

#include "core/layout/device_kind.h"
#include "core/layout/layout.h"

namespace stopwalk::audit {

// A device with all that is known of it by name; indices are into the layout.
struct DeviceEntry {
  std::string id;  // `lathe-1/bar`, or that of a wall device
  const layout::Device* device = nullptr;
  const layout::DeviceKind* kind = nullptr;
  std::optional<std::size_t> machine;  // it is on; none: on a wall or post
};

// Every device in the order of the file's text.
std::vector<DeviceEntry> devicesOf(const layout::Layout& layout, const layout::DeviceKinds& kinds);

// Which device stops which machine. Devices and machines are named by their indices.
class StopRelation {
 public:
  // `rooms`: for each machine the room its origin is in. `out_of_order`: for each device whether it counts as
  // no stop all the same; empty: none.
  StopRelation(const layout::Layout& layout, std::span<const DeviceEntry> devices,
               std::span<const std::optional<std::size_t>> rooms, std::vector<bool> out_of_order = {});

  // Whether the device is wired to stop the machine; says nothing of whether it counts as a stop.
  bool stops(std::size_t device, std::size_t machine) const;
  bool stopsNothing(std::size_t device) const;
  // Those that it stops, in the order of the layout.
  std::vector<std::size_t> machinesOf(std::size_t device) const;
  // A stop by its kind that counts as none.
  bool isOutOfOrder(std::size_t device) const {
    return devices_[device].kind->counts_as_stop && !countsAsStop(device);
  }
  // Whether it names whole rooms or everything.
  bool stopsRooms(std::size_t device) const { return reach_[device].all || !reach_[device].rooms.empty(); }
  // Whether people would call it a cut-off: by its kind, or because it names whole rooms or everything.
  bool isCutOff(std::size_t device) const {
    return stopsRooms(device) || devices_[device].device->kind == "room-cut-off";
  }

  // The devices that count as a stop and stop this machine, in the order of the file's text. On a hand-held
  // machine only triggers count.
  std::vector<std::size_t> candidates(std::size_t machine) const;
  // The devices that count as a stop for everyone and stop every machine of the room.
  std::vector<std::size_t> cutOffs(std::size_t room) const;

  const std::vector<std::size_t>& machinesIn(std::size_t room) const { return machines_in_[room]; }
  // Seconds from this stop to rest; none: unknown.
  std::optional<double> runDown(std::size_t device, std::size_t machine) const;
  bool countsAsEmergencyStop(std::size_t device) const;
  bool isHeldAt(std::size_t device, std::size_t machine, const layout::Station& station) const;

 private:
  struct Reach {
    bool all = false;
    std::vector<std::size_t> machines;  // sorted
    std::vector<std::size_t> rooms;     // sorted
  };
  void readStops(std::size_t device, const layout::Stops& stops);
  void addByDevice(std::size_t device);
  bool countsAsStop(std::size_t device) const {
    return devices_[device].kind->counts_as_stop && (out_of_order_.empty() || !out_of_order_[device]);
  }

  const layout::Layout& layout_;
  std::vector<DeviceEntry> devices_;
  std::vector<std::optional<std::size_t>> rooms_;
  std::vector<bool> out_of_order_;
  std::unordered_map<std::string, std::size_t> machine_of_id_, room_of_id_;
  std::vector<Reach> reach_;
  std::vector<std::vector<std::size_t>> machines_in_;           // of each room
  std::vector<std::vector<std::size_t>> by_machine_, by_room_;  // devices that name it
  std::vector<std::size_t> by_all_;
};

}  // namespace stopwalk::audit
