#include "app/rounds/counting.h"

#include <QCoreApplication>
#include <algorithm>

#include "app/rounds/reasons.h"
#include "core/planning/round_plan.h"

namespace stopwalk::rounds {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(stopwalk::rounds::Counting)
};

}  // namespace

Counting::Counting(const inspection::Records& records, const layout::Layout& layout,
                   std::span<const planning::InspectedDevice> devices, inspection::Date today) {
  const inspection::Reliance reliance(records, today);
  const inspection::AsOf now = planning::asOf(devices, today);
  for (const inspection::CheckChain& chain : inspection::chainsOf(records)) {
    const inspection::Check& said = chain.said();
    if (said.result != inspection::Result::Pass) continue;
    const auto device = std::ranges::find(now.devices, said.device, &inspection::DeviceNow::id);
    const auto pass = reliance.notCounted(chain, device == now.devices.end() ? nullptr : &*device);
    const bool is_doubted = pass && pass->why != inspection::Doubt::NotNamed;
    QString& but = passes_[said.number];
    const bool is_stop = device == now.devices.end() || device->is_stop;
    if (!is_doubted && !(is_stop ? inspection::passedPressed(said) : inspection::passedSeen(said)))
      but = is_stop ? Words::tr("only looked at") : Words::tr("not looked at");
    else if (pass)
      but = Words::tr("not counted: %1").arg(reasonText(*pass, namesOf(layout, pass->machines)));
  }
}

QString Counting::but(const inspection::Check& check) const {
  const auto pass = passes_.find(check.number);
  return pass == passes_.end() ? QString() : pass->second;
}

plan::StationState Counting::sign(const inspection::Check& check) const {
  if (check.result == inspection::Result::Fail) return plan::StationState::Fails;
  const auto pass = passes_.find(check.number);
  return pass != passes_.end() && pass->second.isEmpty() ? plan::StationState::Meets
                                                         : plan::StationState::Warns;
}

}  // namespace stopwalk::rounds
