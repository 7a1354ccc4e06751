#include "app/rounds/order_text.h"

#include <QCoreApplication>
#include <QStringList>

#include "app/rounds/words.h"
#include "core/audit/wording.h"
#include "core/planning/round_plan.h"

namespace stopwalk::rounds {
namespace {

class Words {
  Q_DECLARE_TR_FUNCTIONS(rounds)
};

QString gapText(const planning::InspectionWalk& walk) {
  const auto percent = planning::gapPercent(walk);
  if (!percent) return Words::tr("How much shorter another order might be is not known.");
  if (*percent <= 0) return Words::tr("No order is shorter.");
  return Words::tr("No order is shorter by more than %1 %.")
      .arg(QString::fromStdString(audit::decimal(*percent, 1)));
}

QString leftOutText(const layout::Layout& layout, const planning::InspectionWalk& walk,
                    std::span<const planning::InspectedDevice> devices) {
  QStringList names;
  for (const auto& left : walk.left_out) {
    const auto* device = planning::findDevice(devices, left.id);
    names << (device ? nameOf(layout, *device) : QString::fromStdString(left.id));
  }
  return Words::tr("On the plan no way leads to: %1. They come at the end.").arg(names.join(Words::tr(", ")));
}

}  // namespace

QString orderText(const layout::Layout& layout, const planning::RoundOrder& order,
                  const inspection::RoundWalk& how, std::span<const planning::InspectedDevice> devices) {
  if (!order.no_start.empty())
    return Words::tr("The walk cannot begin at %1: nobody can stand there.")
        .arg(QString::fromStdString(how.start));
  if (order.devices.empty()) return Words::tr("There is no device to inspect.");
  const QString length = QString::fromStdString(audit::lengthText(order.walk.length_mm / 1000, layout.unit));
  QStringList said{(how.after_hours ? Words::tr("The walk is %1, doors as after hours.")
                                    : Words::tr("The walk is %1, doors as in opening hours."))
                       .arg(length),
                   gapText(order.walk)};
  if (!order.walk.left_out.empty()) said << leftOutText(layout, order.walk, devices);
  return said.join(' ');
}

QString noWayText(const inspection::RoundWalk& how) {
  return how.after_hours ? Words::tr("On the plan no way leads here after hours.")
                         : Words::tr("On the plan no way leads here in opening hours.");
}

}  // namespace stopwalk::rounds
