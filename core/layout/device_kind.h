#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace stopwalk::layout {

enum class ActuatedBy { Hand, Foot, Release };
enum class Shape { Point, Line };

// What a kind of device does. Data, from resources/device-kinds.yaml or a shop's own file.
struct DeviceKind {
  std::string key;
  std::string label;
  ActuatedBy actuated_by = ActuatedBy::Hand;
  Shape shape = Shape::Point;
  bool counts_as_stop = false;
  bool counts_as_emergency_stop = false;
  bool latches = false;
  bool looks_like_stop = false;
  bool held = false;         // stops only for the one holding it
  bool height_band = false;  // the actuator height rules apply
  std::string symbol;
  std::string instruction;
  bool operator==(const DeviceKind&) const = default;
};

class DeviceKinds {
 public:
  DeviceKinds() = default;
  explicit DeviceKinds(std::vector<DeviceKind> kinds) : kinds_(std::move(kinds)) {}
  const DeviceKind* find(std::string_view key) const {
    for (const DeviceKind& k : kinds_)
      if (k.key == key) return &k;
    return nullptr;
  }
  const std::vector<DeviceKind>& all() const { return kinds_; }

 private:
  std::vector<DeviceKind> kinds_;
};

}  // namespace stopwalk::layout
