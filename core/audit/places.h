#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "core/audit/stop_relation.h"
#include "core/floor/surroundings.h"
#include "core/layout/layout.h"

namespace stopwalk::audit {

// Where somebody stands: at a station, or to use a device or phone.
struct NamedPlace {
  std::string id;
  floor::Place place;  // empty: blocked
  std::optional<std::size_t> room;
  std::string reason;  // of being blocked
};

// The places of a layout that have an id: stations (`lathe-1/operator`), devices (`lathe-1/bar`,
// `cut-off-metal`), phones.
class Places {
 public:
  Places(const layout::Layout& layout, std::span<const DeviceEntry> devices,
         const floor::Surroundings& surroundings);

  const NamedPlace* find(const std::string& id) const;
  std::vector<std::string> ids() const;

 private:
  void add(NamedPlace place);

  std::vector<NamedPlace> places_;
  std::unordered_map<std::string, std::size_t> of_id_;
};

}  // namespace stopwalk::audit
