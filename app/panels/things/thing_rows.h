#pragma once

#include <QString>
#include <string>
#include <vector>

#include "app/edits/things.h"
#include "core/audit/report.h"
#include "core/layout/device_kind.h"

namespace stopwalk::panels {

// A line of the list of things: what it is called and how it fares, all in words.
struct ThingRow {
  std::string id;      // of the thing; of a heading one that no thing can have
  std::string parent;  // the line it stands below; empty at the top
  QString text;
  QString brief = {};  // without what the line above says; empty: the same
  bool operator==(const ThingRow&) const = default;
};

// Everything on the plan: rooms with what stands in them, machines with what is on them; then what stands in
// no room, and the tape checks. Parents come first. Without a report nothing is said of how they fare.
std::vector<ThingRow> thingRows(const layout::Layout& layout, const layout::DeviceKinds& kinds,
                                const audit::Report* report);

}  // namespace stopwalk::panels
