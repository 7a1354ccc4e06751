#include "app/edits/change_things.h"

#include "app/edits/add_things.h"
#include "app/edits/step_names.h"
#include "app/edits/words.h"

namespace stopwalk::edits {
namespace {

QString nameOfChange(const QString& field, const QString& of) {
  return Words::tr("Change the %1 of %2").arg(field, of);
}

void setKind(layout::Device& device, const layout::DeviceKind& kind, double usual_length) {
  device.kind = kind.key;
  if (kind.shape == layout::Shape::Point)
    device.length.reset();
  else if (!device.length)
    device.length = usual_length;
}

}  // namespace

Edit changeStep(const layout::Layout& before, const QString& field, layout::Layout after,
                const std::vector<Thing>& changed) {
  if (changed.empty()) return noStep(before);
  return step(before, nameOfChange(field, called(before, changed)), std::move(after),
              mergeKey(field, before, changed));
}

Edit changeSiteStep(const layout::Layout& before, const QString& field, layout::Layout after) {
  return step(before, nameOfChange(field, Words::tr("the workshop")), std::move(after), field + " of (site)");
}

Edit changeRevisionStep(const layout::Layout& before, const QString& field, layout::Layout after) {
  return step(before, nameOfChange(field, Words::tr("the revision")), std::move(after),
              field + " of (revision)");
}

Edit setProfile(const layout::Layout& layout, const std::string& profile) {
  layout::Layout after = layout;
  after.profile = profile;
  return step(layout, Words::tr("Change the profile"), std::move(after), "profile");
}

Edit setUnit(const layout::Layout& layout, layout::LengthUnit unit) {
  layout::Layout after = layout;
  after.unit = unit;
  return step(layout, Words::tr("Change the unit"), std::move(after));
}

Edit setDeviceKind(const layout::Layout& layout, const std::vector<std::string>& ids,
                   const layout::DeviceKind& kind) {
  layout::Layout after = layout;
  std::vector<Thing> changed;
  for (const Thing& thing : knownThings(layout, ids)) {
    if (thing.kind == ThingKind::WallDevice)
      setKind(after.devices[thing.index], kind, kUsualBar_mm);
    else if (thing.kind == ThingKind::MachineDevice)
      setKind(after.machines[thing.index].devices[thing.part], kind, widthOf(layout.machines[thing.index]));
    else
      continue;
    changed.push_back(thing);
  }
  return changeStep(layout, Words::tr("kind"), std::move(after), changed);
}

}  // namespace stopwalk::edits
