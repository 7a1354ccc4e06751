#include "app/rounds/open_failure.h"

#include <QCoreApplication>
#include <algorithm>

#include "app/rounds/words.h"

namespace stopwalk::rounds {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(stopwalk::rounds::OpenFailure)
};

std::optional<inspection::FailedDevice> failureOf(const std::string& device,
                                                  const inspection::Records& records,
                                                  const inspection::Schedule& schedule,
                                                  inspection::Date today) {
  const auto failed = inspection::failedDevices(records, schedule, today);
  const auto found = std::ranges::find(failed, device, &inspection::FailedDevice::device);
  return found == failed.end() ? std::nullopt : std::optional(*found);
}

}  // namespace

QString openFailureText(const inspection::FailedDevice& failed, const inspection::Schedule& schedule) {
  const QString text = schedule.retest_by_another
                           ? Words::tr(
                                 "Failed on %1 (check %2): it stays failed until it passes a check of its "
                                 "own, made by another person than %3.")
                           : Words::tr(
                                 "Failed on %1 (check %2): it stays failed until it passes a check of its "
                                 "own.");
  const QString told = text.arg(dayText(failed.on)).arg(failed.check);
  return schedule.retest_by_another ? told.arg(QString::fromStdString(failed.found_by)) : told;
}

QString whyStillFailed(const inspection::Check& passed, const inspection::Records& records,
                       const inspection::Schedule& schedule, inspection::Date today) {
  if (passed.result != inspection::Result::Pass) return {};
  const auto failed = failureOf(passed.device, records, schedule, today);
  if (!failed) return {};
  if (passed.corrects) return Words::tr("It is still failed: a correction undoes no failure.");
  if (!inspection::passedPressed(passed))
    return Words::tr("It is still failed: it was not pressed, or what it stops did not stop.");
  inspection::Schedule by_anyone = schedule;
  by_anyone.retest_by_another = false;
  if (!failureOf(passed.device, records, by_anyone, today))
    return Words::tr("It is still failed: another person than %1, who found it, is to pass it.")
        .arg(QString::fromStdString(failed->found_by));
  return Words::tr("It is still failed: by the times given it is not sure that this was after check %1.")
      .arg(failed->check);
}

void markOpenFailures(plan::InspectedOnPlan& shown, std::span<const inspection::DeviceState> states) {
  for (auto& [id, device] : shown.devices) {
    const auto* state = inspection::findState(states, id);
    if (state && state->failed && device.state == plan::StationState::Meets)
      device.state = plan::StationState::Fails;
  }
}

}  // namespace stopwalk::rounds
