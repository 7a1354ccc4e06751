#include "app/rounds/on_plan.h"

#include <QCoreApplication>

namespace stopwalk::rounds {
namespace {

using plan::StationState;

struct Words {
  Q_DECLARE_TR_FUNCTIONS(stopwalk::rounds::OnPlan)
};

constexpr int kMostDays = 60, kMostMonths = 24;

}  // namespace

QString ageText(int days) {
  if (days <= 0) return Words::tr("today");
  if (days <= kMostDays) return Words::tr("%1 d", "days").arg(days);
  const int months = days * 12 / 365;
  return months <= kMostMonths ? Words::tr("%1 mo", "months").arg(months)
                               : Words::tr("%1 y", "years").arg(days / 365);
}

plan::InspectedOnPlan dueOnPlan(std::span<const planning::InspectedDevice> devices,
                                std::span<const inspection::DeviceState> states,
                                const inspection::Schedule& schedule, inspection::Date day) {
  plan::InspectedOnPlan shown;
  for (const planning::InspectedDevice& device : devices) {
    const auto* state = inspection::findState(states, device.id);
    const auto last = state ? state->last_on : std::nullopt;
    const bool is_due = !inspection::dueOn(std::span(&device.id, 1), states, schedule, day).empty();
    const bool failed = state && state->failed;
    shown.devices[device.id] = {failed   ? StationState::Fails
                                : is_due ? StationState::Warns
                                         : StationState::Meets,
                                !last ? Words::tr("never", "checked")
                                : *last == inspection::kUnreadDay
                                    ? QString("?")
                                    : ageText(inspection::daysBetween(*last, day))};
  }
  return shown;
}

plan::InspectedOnPlan roundOnPlan(const RoundUnderWay& round, std::span<const planning::InspectionLeg> legs,
                                  const Counting& counting, std::span<const inspection::DeviceState> states) {
  plan::InspectedOnPlan shown;
  for (std::size_t i = 0; i < round.order().size(); ++i) {
    const std::string& id = round.order()[i];
    const inspection::Check* check = round.checkOf(id);
    const inspection::DeviceState* state = inspection::findState(states, id);
    const bool is_failed = state && state->failed;
    shown.devices[id] = {is_failed ? StationState::Fails
                         : check   ? counting.sign(*check)
                                   : StationState::NotAudited,
                         QString::number(i + 1)};
  }
  for (const planning::InspectionLeg& leg : legs)
    if (leg.walk.found()) shown.walk.push_back({leg.walk.path, leg.to == round.device()});
  return shown;
}

}  // namespace stopwalk::rounds
