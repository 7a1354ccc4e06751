#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/layout/layout.h"

namespace stopwalk::layout {

// A common machine to start from: editable defaults, not facts about any maker's machine. Stations and devices are in the
// machine's frame. From resources/machine-templates.yaml or a shop's own file.
struct MachineTemplate {
  std::string key;
  std::string label;
  Footprint footprint;
  std::optional<double> height;
  std::optional<double> run_down;
  bool hand_held = false;
  std::string after_stop;
  geometry::Polygon hazard;  // empty: none drawn
  std::vector<Station> stations;
  std::vector<Device> devices;
  bool operator==(const MachineTemplate&) const = default;
};

class MachineTemplates {
 public:
  MachineTemplates() = default;
  explicit MachineTemplates(std::vector<MachineTemplate> templates) : templates_(std::move(templates)) {}
  const MachineTemplate* find(std::string_view key) const {
    for (const MachineTemplate& t : templates_)
      if (t.key == key) return &t;
    return nullptr;
  }
  const std::vector<MachineTemplate>& all() const { return templates_; }

 private:
  std::vector<MachineTemplate> templates_;
};

}  // namespace stopwalk::layout
