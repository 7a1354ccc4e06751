#include "app/rounds/on_plan.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>

#include "app/plan/check_words.h"
#include "app/rounds/counts_for.h"
#include "app/rounds/words.h"
#include "core/planning/round_plan.h"

namespace stopwalk::rounds {
namespace {

using inspection::Due;
using plan::CheckAge;
using plan::CheckSign;

struct Words {
  Q_DECLARE_TR_FUNCTIONS(stopwalk::rounds::OnPlan)
};

constexpr int kMostDays = 60, kMostMonths = 24;

// A device by its records on a day.
struct Of {
  const std::string& id;
  const inspection::DeviceState* state;  // null: none
  std::span<const inspection::DeviceState> states;
  const inspection::Schedule& schedule;
  inspection::Date day;

  std::vector<Due> dueOn(inspection::Date then) const {
    return inspection::dueOn(std::span(&id, 1), states, schedule, then);
  }
};

// That what is told of the device is of, whatever failed before; null: it has none.
const inspection::Check* lastCheck(const inspection::DeviceState* state, const inspection::Records& records) {
  return state && state->last ? records.findCheck(*state->last, state->device) : nullptr;
}

CheckSign signOf(const inspection::DeviceState* state, const inspection::Check* last,
                 const Counting& counting) {
  if (state && state->failed) return CheckSign::Failed;
  return last ? counting.sign(*last) : CheckSign::Never;
}

// With why a pass is not all that it seems, and what is due all the same.
QString withWhy(QString told, const inspection::Check* last, const planning::InspectedDevice* device,
                const inspection::DeviceState* state, const ByRecords& by) {
  if (!last || !device) return told;
  if (const QString but = by.counting.but(*last); !but.isEmpty())
    told = Words::tr("%1 It does not count in full: %2.").arg(told, but);
  if (const QString due = stillDueText(*last, {*device, state, by.schedule, by.day}); !due.isEmpty())
    told = Words::tr("%1 Still due: %2.").arg(told, due);
  return told;
}

std::optional<inspection::Date> lastOf(const inspection::DeviceState& state, Due::What what) {
  switch (what) {
    case Due::What::Seen:
      return state.seen;
    case Due::What::Pressed:
      return state.pressed;
    case Due::What::Full:
      return state.in_full;
    case Due::What::Retest:
      break;
  }
  return std::nullopt;
}

// As many days again as have gone since it was last tested so, and that is due.
bool isHalfGone(const Of& of, Due::What what) {
  const auto last = of.state ? lastOf(*of.state, what) : std::nullopt;
  if (!last) return false;
  const auto due = of.dueOn(inspection::daysAfter(of.day, inspection::daysBetween(*last, of.day)));
  return std::ranges::find(due, what, &Due::what) != due.end();
}

CheckAge ageOf(const Of& of) {
  const auto due = of.dueOn(of.day);
  if (std::ranges::any_of(due, [&](const Due& d) { return inspection::isOverdue(d, of.day); }))
    return CheckAge::Overdue;
  if (!due.empty()) return CheckAge::Due;
  const auto half_gone = [&](Due::What what) { return isHalfGone(of, what); };
  return std::ranges::any_of(std::array{Due::What::Seen, Due::What::Pressed, Due::What::Full}, half_gone)
             ? CheckAge::HalfGone
             : CheckAge::Fresh;
}

// When something falls due that is not due yet; none: it is, or never will be.
std::optional<inspection::Date> nextOf(const Of& of) {
  if (!of.dueOn(of.day).empty()) return std::nullopt;
  return inspection::nextDue(std::span(&of.id, 1), of.states, of.schedule, of.day);
}

// What cannot be read of a check may be its day.
QString sinceText(std::optional<inspection::Date> last, inspection::Date day) {
  if (!last) return {};
  return *last == inspection::kUnreadDay ? QString("?") : ageText(inspection::daysBetween(*last, day));
}

QString tell(const plan::CheckMark& mark, std::optional<inspection::Date> last,
             std::optional<inspection::Date> next) {
  QString check = plan::wordOf(mark.sign);
  if (last && *last != inspection::kUnreadDay)
    check = Words::tr("%1 on %2", "passed; a day").arg(check, dayText(*last));
  QString age = plan::wordOf(mark.age);
  if (next) age = Words::tr("%1, next due on %2", "half of its time gone; a day").arg(age, dayText(*next));
  return Words::tr("Last check: %1; %2.").arg(check, age);
}

QString tellInRound(const QString& place, CheckSign sign) {
  return Words::tr("No. %1 of this round: %2.")
      .arg(place, sign == CheckSign::None ? Words::tr("not checked yet") : plan::wordOf(sign));
}

QString titleOfRound() {
  return Words::tr("In this round");
}

}  // namespace

QString ageText(int days) {
  if (days <= 0) return Words::tr("today");
  if (days <= kMostDays) return Words::tr("%1 d", "days").arg(days);
  const int months = days * 12 / 365;
  return months <= kMostMonths ? Words::tr("%1 mo", "months").arg(months)
                               : Words::tr("%1 y", "years").arg(days / 365);
}

plan::InspectedOnPlan dueOnPlan(const ByRecords& by) {
  plan::InspectedOnPlan shown;
  for (const planning::InspectedDevice& device : by.devices) {
    const Of of{device.id, inspection::findState(by.states, device.id), by.states, by.schedule, by.day};
    const inspection::Check* last = lastCheck(of.state, by.records);
    const auto last_on = of.state ? of.state->last_on : std::nullopt;
    const plan::CheckMark mark{signOf(of.state, last, by.counting), ageOf(of)};
    shown.devices[device.id] = {mark, sinceText(last_on, by.day),
                                withWhy(tell(mark, last_on, nextOf(of)), last, &device, of.state, by)};
  }
  return shown;
}

plan::InspectedOnPlan roundOnPlan(const RoundUnderWay& round, std::span<const planning::InspectionLeg> legs,
                                  const ByRecords& by) {
  plan::InspectedOnPlan shown;
  shown.title = titleOfRound();
  for (std::size_t i = 0; i < round.order().size(); ++i) {
    const std::string& id = round.order()[i];
    const inspection::Check* check = round.checkOf(id);
    const inspection::DeviceState* state = inspection::findState(by.states, id);
    const CheckSign sign = state && state->failed ? CheckSign::Failed
                           : check                ? by.counting.sign(*check)
                                                  : CheckSign::None;
    const QString place = QString::number(i + 1);
    const auto* device = planning::findDevice(by.devices, id);
    shown.devices[id] = {
        {sign, CheckAge::None}, place, withWhy(tellInRound(place, sign), check, device, state, by)};
  }
  for (const planning::InspectionLeg& leg : legs)
    if (leg.walk.found()) shown.walk.push_back({leg.walk.path, leg.to == round.device()});
  return shown;
}

}  // namespace stopwalk::rounds
