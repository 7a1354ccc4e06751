#include "app/rounds/on_plan.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>

#include "app/plan/check_words.h"
#include "app/rounds/words.h"

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

CheckSign signOf(const inspection::DeviceState* state, const inspection::Records& records,
                 const Counting& counting) {
  if (state && state->failed) return CheckSign::Failed;
  const inspection::Check* last = state && state->last ? records.findCheck(*state->last) : nullptr;
  return last ? counting.sign(*last) : CheckSign::Never;
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

plan::InspectedOnPlan dueOnPlan(std::span<const planning::InspectedDevice> devices,
                                const inspection::Records& records, const Counting& counting,
                                std::span<const inspection::DeviceState> states,
                                const inspection::Schedule& schedule, inspection::Date day) {
  plan::InspectedOnPlan shown;
  for (const planning::InspectedDevice& device : devices) {
    const Of of{device.id, inspection::findState(states, device.id), states, schedule, day};
    const auto last = of.state ? of.state->last_on : std::nullopt;
    const plan::CheckMark mark{signOf(of.state, records, counting), ageOf(of)};
    shown.devices[device.id] = {mark, sinceText(last, day), tell(mark, last, nextOf(of))};
  }
  return shown;
}

plan::InspectedOnPlan roundOnPlan(const RoundUnderWay& round, std::span<const planning::InspectionLeg> legs,
                                  const Counting& counting, std::span<const inspection::DeviceState> states) {
  plan::InspectedOnPlan shown;
  shown.title = titleOfRound();
  for (std::size_t i = 0; i < round.order().size(); ++i) {
    const std::string& id = round.order()[i];
    const inspection::Check* check = round.checkOf(id);
    const inspection::DeviceState* state = inspection::findState(states, id);
    const CheckSign sign = state && state->failed ? CheckSign::Failed
                           : check                ? counting.sign(*check)
                                                  : CheckSign::None;
    const QString place = QString::number(i + 1);
    shown.devices[id] = {{sign, CheckAge::None}, place, tellInRound(place, sign)};
  }
  for (const planning::InspectionLeg& leg : legs)
    if (leg.walk.found()) shown.walk.push_back({leg.walk.path, leg.to == round.device()});
  return shown;
}

}  // namespace stopwalk::rounds
