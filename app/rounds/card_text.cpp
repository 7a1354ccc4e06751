#include "app/rounds/card_text.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>

#include "app/plan/symbols.h"
#include "app/rounds/words.h"
#include "core/audit/stop_relation.h"
#include "core/audit/wording.h"
#include "core/planning/round_plan.h"

namespace stopwalk::rounds {
namespace {

class Words {
  Q_DECLARE_TR_FUNCTIONS(rounds)
};

constexpr double kMmPerM = 1000;

QString stopsText(const layout::Layout& layout, const planning::InspectedDevice& device,
                  const layout::DeviceKind& kind) {
  if (!kind.counts_as_stop) return Words::tr("Stops nothing: it is looked at, and never pressed.");
  if (device.machines.empty()) return Words::tr("Is wired to stop nothing.");
  if (device.machines.size() > 1 && device.machines.size() == layout.machines.size())
    return Words::tr("Stops every machine (%1).").arg(device.machines.size());
  QStringList names;
  for (const std::string& id : device.machines) names << machineName(layout, id);
  return Words::tr("Stops: %1").arg(names.join(Words::tr(", ")));
}

QString whereText(const layout::Layout& layout, const planning::InspectedDevice& device,
                  const audit::DeviceEntry& entry) {
  const QString room = device.room.empty() ? Words::tr("In no room") : roomName(layout, device.room);
  QString where = entry.machine ? Words::tr("%1, on the machine %2")
                                      .arg(room, machineName(layout, layout.machines[*entry.machine].id))
                                : Words::tr("%1, on a wall or post").arg(room);
  if (entry.device->height)
    where = Words::tr("%1, %2 above the floor")
                .arg(where,
                     QString::fromStdString(audit::lengthText(*entry.device->height / kMmPerM, layout.unit)));
  return Words::tr("%1 (%2)").arg(where, QString::fromStdString(device.id));
}

// In the shop's own words, or those of the kind.
QString howText(const planning::InspectedDevice& device, const audit::DeviceEntry& entry) {
  const std::string& own = entry.device->instruction;
  return howToTry(own.empty() ? ofKind(entry.kind->instruction) : QString::fromStdString(own),
                  entry.kind->counts_as_stop && !device.machines.empty());
}

QString alreadyText(const RoundUnderWay& round, const Counting& counting) {
  const inspection::Check* check = round.checkOf(round.device());
  if (!check) return {};
  QString word = wordOf(check->result).toLower();
  if (const QString but = counting.but(*check); !but.isEmpty()) word = Words::tr("%1, %2").arg(word, but);
  return Words::tr("Already checked in this round: %1. Record it again only if it was tested again.")
      .arg(word);
}

}  // namespace

CardText cardText(const RoundUnderWay& round, const layout::Layout& layout, const layout::DeviceKinds& kinds,
                  std::span<const planning::InspectedDevice> devices, const Counting& counting,
                  const plan::Theme& theme) {
  CardText text;
  text.place = round.place() + 1;
  text.of = round.order().size();
  text.checked = round.checked();
  text.round = round.round()->number;
  text.by = QString::fromStdString(round.round()->by);
  if (round.round()->entered) text.paper = *round.round();
  text.already = alreadyText(round, counting);
  const planning::InspectedDevice* device = planning::findDevice(devices, round.device());
  const auto entries = audit::devicesOf(layout, kinds);
  const auto entry = std::ranges::find(entries, round.device(), &audit::DeviceEntry::id);
  text.is_there = device && entry != entries.end();
  if (!text.is_there) {
    text.name = QString::fromStdString(round.device());
    text.where = Words::tr(
        "It is no longer on the plan under this id: of it can only be recorded that it was taken away.");
    return text;
  }
  text.is_stop = device->is_stop;
  text.symbol = plan::symbolIcon(entry->kind->symbol, plan::groundOf(*entry->kind), theme);
  text.name = nameOf(layout, *device);
  text.where = whereText(layout, *device, *entry);
  text.stops = stopsText(layout, *device, *entry->kind);
  text.how = howText(*device, *entry);
  return text;
}

}  // namespace stopwalk::rounds
