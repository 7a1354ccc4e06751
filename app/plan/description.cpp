#include "app/plan/description.h"

#include <algorithm>

#include "app/plan/words.h"
#include "core/audit/wording.h"
#include "core/geometry/box.h"

namespace stopwalk::plan {
namespace {

using edits::Thing;
using edits::ThingKind;

QString lengthOf(double mm, layout::LengthUnit unit) {
  return walkText(mm / 1000, unit);
}

QString sizeOf(const geometry::Polygon& outline, layout::LengthUnit unit) {
  const geometry::Box box = geometry::boxOf(outline);
  if (box.empty()) return "";
  return Words::tr("%1 by %2")
      .arg(lengthOf(box.high.x - box.low.x, unit), lengthOf(box.high.y - box.low.y, unit));
}

QString sizeOf(const layout::Footprint& footprint, layout::LengthUnit unit) {
  return sizeOf(layout::outlineInPlan(footprint, {0, 0}, 0), unit);
}

QString kindName(const layout::DeviceKinds& kinds, const std::string& key) {
  const layout::DeviceKind* kind = kinds.find(key);
  return QString::fromStdString(kind ? kind->label : key);
}

QString walksOf(const audit::StationReport& station, layout::LengthUnit unit) {
  return Words::tr("stop: %1; phone: %2").arg(describe(station.stop, unit), describe(station.phone, unit));
}

// Of every station of the machine, or of the one.
QString walks(const audit::Report* report, const std::string& machine, const std::string& station,
              layout::LengthUnit unit) {
  if (!report) return "";
  QStringList sentences;
  for (const auto& s : report->stations)
    if (s.machine == machine && (station.empty() || s.id == station))
      sentences << QString::fromStdString(s.name) + ": " + walksOf(s, unit);
  return sentences.isEmpty() ? "" : ". " + sentences.join(". ");
}

QString quoted(const layout::Layout& layout, const Thing& thing) {
  return QString::fromStdString(edits::nameOf(layout, thing));
}

}  // namespace

QString walkText(double metres, layout::LengthUnit unit) {
  return QString::fromStdString(audit::lengthCell(metres, unit));
}

QString describe(const audit::Nearest& nearest, layout::LengthUnit unit) {
  const QString name = QString::fromStdString(nearest.name);
  switch (nearest.status) {
    case audit::Status::AtHand:
      return Words::tr("%1, at hand").arg(name);
    case audit::Status::Walk:
      return Words::tr("%1, %2").arg(name, walkText(nearest.walk_m.value_or(0), unit));
    case audit::Status::Narrow:
      return Words::tr("%1, %2 through a narrow way").arg(name, walkText(nearest.walk_m.value_or(0), unit));
    case audit::Status::Unreachable:
      return Words::tr("no way to it");
    case audit::Status::None:
      return Words::tr("none");
    case audit::Status::Unmeasured:
      return Words::tr("not measured, the station is not on the floor");
  }
  return "";
}

QString describe(const layout::Layout& layout, const layout::DeviceKinds& kinds, const Thing& thing,
                 const audit::Report* report) {
  const layout::LengthUnit unit = layout.unit;
  const QString name = quoted(layout, thing);
  switch (thing.kind) {
    case ThingKind::Underlay:
      return Words::tr("Underlay picture");
    case ThingKind::Room:
      return Words::tr("%1, %2").arg(name, sizeOf(layout.rooms[thing.index].outline, unit));
    case ThingKind::Door:
      return Words::tr("Door %1, %2 wide").arg(name, lengthOf(layout.doors[thing.index].width, unit));
    case ThingKind::Fixture:
      return Words::tr("%1, %2").arg(name, sizeOf(layout.fixtures[thing.index].footprint, unit));
    case ThingKind::Machine: {
      const auto& m = layout.machines[thing.index];
      return Words::tr("%1, %2").arg(name, sizeOf(m.footprint, unit)) + walks(report, m.id, "", unit);
    }
    case ThingKind::Station: {
      const auto& m = layout.machines[thing.index];
      return Words::tr("Station %1").arg(name) + walks(report, m.id, edits::idOf(layout, thing), unit);
    }
    case ThingKind::MachineDevice:
      return Words::tr("%1 of %2")
          .arg(kindName(kinds, layout.machines[thing.index].devices[thing.part].kind),
               quoted(layout, {ThingKind::Machine, thing.index}));
    case ThingKind::WallDevice:
      return Words::tr("%1 %2").arg(kindName(kinds, layout.devices[thing.index].kind), name);
    case ThingKind::Phone:
      return Words::tr("Phone: %1").arg(name);
    case ThingKind::Note:
      return Words::tr("Note: %1").arg(QString::fromStdString(layout.notes[thing.index].text));
    case ThingKind::TapeCheck: {
      const auto& t = layout.tape_checks[thing.index];
      return Words::tr("Taped from %1 to %2: %3")
          .arg(QString::fromStdString(t.from), QString::fromStdString(t.to), lengthOf(t.taped, unit));
    }
  }
  return name;
}

}  // namespace stopwalk::plan
