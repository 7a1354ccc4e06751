#include "core/files/device_kinds_reader.h"

#include <algorithm>
#include <cassert>

#include "core/files/map_reader.h"
#include "core/files/resources.h"

namespace stopwalk::files {
namespace {

using layout::ActuatedBy;
using layout::DeviceKind;
using layout::Shape;

constexpr const char* kGuardedStart = "guarded-start";

const Choices<ActuatedBy> kActuatedBy = {
    {"hand", ActuatedBy::Hand}, {"foot", ActuatedBy::Foot}, {"release", ActuatedBy::Release}};
const Choices<Shape> kShapes = {{"point", Shape::Point}, {"line", Shape::Line}};

void setText(MapReader& map, const char* key, std::string& text) {
  if (const auto node = map.optional(key))
    if (const auto read = readText(*node, map.problems())) text = *read;
}

void setFlag(MapReader& map, const char* key, bool& flag) {
  if (const auto node = map.optional(key))
    if (const auto read = readFlag(*node, map.problems())) flag = *read;
}

DeviceKind readKind(Node key, Node node, Problems& problems) {
  DeviceKind kind;
  if (const auto id = readId(key, problems)) kind.key = *id;
  MapReader map(node, problems, "a device kind");
  if (!map.isMap()) return kind;
  setText(map, "label", kind.label);
  if (const auto by = map.required("actuated_by"))
    kind.actuated_by = readChoice(*by, kActuatedBy, problems).value_or(kind.actuated_by);
  if (const auto shape = map.required("shape"))
    kind.shape = readChoice(*shape, kShapes, problems).value_or(kind.shape);
  if (const auto stops = map.required("counts_as_stop")) {
    kind.counts_as_stop = readFlag(*stops, problems).value_or(kind.counts_as_stop);
    if (kind.counts_as_stop && kind.key == kGuardedStart)
      problems.error(stops->begin(),
                     "a guarded start prevents a start and stops nothing: `false` is expected here; a device "
                     "that stops a machine is of another kind");
  }
  setFlag(map, "counts_as_emergency_stop", kind.counts_as_emergency_stop);
  setFlag(map, "latches", kind.latches);
  setFlag(map, "held", kind.held);
  // What is left out is looked at rather than overlooked.
  kind.looks_like_stop = kind.counts_as_stop && !kind.held;
  setFlag(map, "looks_like_stop", kind.looks_like_stop);
  kind.height_band = kind.actuated_by == ActuatedBy::Hand && !kind.held;
  setFlag(map, "height_band", kind.height_band);
  setText(map, "symbol", kind.symbol);
  setText(map, "instruction", kind.instruction);
  map.finish();
  if (kind.label.empty()) kind.label = kind.key;
  return kind;
}

}  // namespace

Result<layout::DeviceKinds> readDeviceKinds(std::string_view text, const std::string& file) {
  Problems problems(text, file);
  std::vector<DeviceKind> kinds;
  if (const auto tree = parseTree(text, problems)) {
    MapReader map(tree->root(), problems, "a file of device kinds");
    if (const auto format = map.required("stopwalk_device_kinds")) readWhole(*format, 1, 1, problems);
    if (const auto node = map.required("device_kinds")) {
      if (node->isMap()) {
        const auto items = node->items();
        for (auto i = items.begin(); i != items.end(); ++i) {
          const Node key = *i;
          ++i;
          kinds.push_back(readKind(key, *i, problems));
        }
      } else {
        problems.error(node->begin(), "kinds by their keys are expected here, such as `mushroom-button:`");
      }
    }
    map.finish();
  }
  return problems.result(layout::DeviceKinds(std::move(kinds)));
}

const layout::DeviceKinds& bundledDeviceKinds() {
  static const layout::DeviceKinds kinds = [] {
    auto read = readDeviceKinds(resource("device-kinds.yaml").value_or(""), "device-kinds.yaml");
    assert(read.value && read.diagnostics.empty());
    return read.value.value_or(layout::DeviceKinds());
  }();
  return kinds;
}

layout::DeviceKinds mergeDeviceKinds(const layout::DeviceKinds& base, const layout::DeviceKinds& own) {
  std::vector<DeviceKind> kinds = base.all();
  for (const DeviceKind& kind : own.all()) {
    const auto same =
        std::find_if(kinds.begin(), kinds.end(), [&](const DeviceKind& k) { return k.key == kind.key; });
    if (same != kinds.end())
      *same = kind;
    else
      kinds.push_back(kind);
  }
  return layout::DeviceKinds(std::move(kinds));
}

}  // namespace stopwalk::files
