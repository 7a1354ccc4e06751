#pragma once

#include <QString>
#include <optional>
#include <span>
#include <vector>

#include "app/rounds/entered.h"
#include "core/inspection/schedule.h"

// What a pass counts for by what was tried at it, and what stays due all the same.
namespace stopwalk::rounds {

// A device as the layout and its records have it on a day.
struct DeviceOn {
  inspection::DeviceNow now;
  const inspection::DeviceState* state = nullptr;  // null: none
  inspection::Schedule schedule;
  inspection::Date day{};

  std::vector<inspection::Due> due() const;
};

// The fewest things that would have to be ticked besides for the pass to be each of these tests.
std::vector<inspection::Tried> notTicked(const inspection::Check& pass,
                                         std::span<const inspection::Due::What> tests,
                                         const inspection::DeviceNow& device);

// Before it is recorded, what it will and will not count for, in sentences; of what is no pass nothing.
// `by`: who inspects, as far as it is typed.
struct WillCount {
  QString text;
  bool is_short = false;  // something stays due or failed
};
WillCount willCountFor(const Entered& entered, const DeviceOn& device, const QString& by);

// What is due at the device on the day though the check passed, as that did not try all of it: "full test,
// not ticked: …"; empty: nothing.
QString stillDueText(const inspection::Check& check, const DeviceOn& device);
// Why the check is not that test though it passed: "not ticked: …"; empty: it is, or did not pass.
QString whyNot(inspection::Due::What test, const inspection::Check& check,
               const inspection::DeviceNow& device);

}  // namespace stopwalk::rounds
