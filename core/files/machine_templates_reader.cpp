#include "core/files/machine_templates_reader.h"

#include <algorithm>
#include <cassert>

#include "core/files/device_kinds_reader.h"
#include "core/files/resources.h"
#include "core/files/thing_reader.h"

namespace stopwalk::files {
namespace {

using layout::MachineTemplate;

template <class V, Is<MachineTemplate> T>
void describe(V& v, T& machine) {
  v.text("label", machine.label, Need::Required);
  v.footprint("footprint", machine.footprint);
  v.size("height", machine.height);
  v.seconds("run_down", machine.run_down);
  v.flag("hand_held", machine.hand_held);
  v.text("after_stop", machine.after_stop, Need::Optional);
  v.outline("hazard", machine.hazard, Need::Optional);
  v.list("stations", machine.stations);
  v.list("devices", machine.devices);
}

MachineTemplate readTemplate(Reading& reading, Node key, Node node) {
  MachineTemplate machine;
  if (const auto id = readId(key, reading.problems)) machine.key = *id;
  ThingReader reader(reading, node, "a machine template", Names::Machine, "");
  if (!reader.isMap()) return machine;
  reader.name(machine.key, key);
  describe(reader, machine);
  reader.finish();
  return machine;
}

std::vector<MachineTemplate> readTemplates(MapReader& map, Reading& reading) {
  std::vector<MachineTemplate> templates;
  const auto node = map.required("machine_templates");
  if (!node) return templates;
  if (!node->isMap()) {
    reading.problems.error(node->begin(),
                           "templates by their keys are expected here, such as `engine-lathe:`");
    return templates;
  }
  const auto items = node->items();
  for (auto i = items.begin(); i != items.end(); ++i) {
    const Node key = *i;
    ++i;
    templates.push_back(readTemplate(reading, key, *i));
  }
  return templates;
}

}  // namespace

Result<layout::MachineTemplates> readMachineTemplates(std::string_view text, const std::string& file,
                                                      const layout::DeviceKinds& kinds) {
  Problems problems(text, file);
  std::vector<MachineTemplate> templates;
  if (const auto tree = parseTree(text, problems)) {
    Reading reading(problems, kinds);
    MapReader map(tree->root(), problems, "a file of machine templates");
    if (const auto format = map.required("stopwalk_machine_templates")) readWhole(*format, 1, 1, problems);
    if (const auto unit = map.required("units")) reading.values.setUnit(readChoice(*unit, kUnits, problems));
    templates = readTemplates(map, reading);
    map.finish();
    reading.references.check();
  }
  return problems.result(layout::MachineTemplates(std::move(templates)));
}

const layout::MachineTemplates& bundledMachineTemplates() {
  static const layout::MachineTemplates templates = [] {
    auto read = readMachineTemplates(resource("machine-templates.yaml").value_or(""),
                                     "machine-templates.yaml", bundledDeviceKinds());
    assert(read.value && read.diagnostics.empty());
    return read.value.value_or(layout::MachineTemplates());
  }();
  return templates;
}

layout::MachineTemplates mergeMachineTemplates(const layout::MachineTemplates& base,
                                               const layout::MachineTemplates& own) {
  std::vector<MachineTemplate> templates = base.all();
  for (const MachineTemplate& machine : own.all()) {
    const auto same = std::find_if(templates.begin(), templates.end(),
                                   [&](const MachineTemplate& t) { return t.key == machine.key; });
    if (same != templates.end())
      *same = machine;
    else
      templates.push_back(machine);
  }
  return layout::MachineTemplates(std::move(templates));
}

}  // namespace stopwalk::files
