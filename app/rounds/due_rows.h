#pragma once

#include <QString>
#include <optional>
#include <span>
#include <vector>

#include "core/inspection/schedule.h"
#include "core/layout/layout.h"
#include "core/planning/inspected_devices.h"

namespace stopwalk::rounds {

enum class Urgency { Failed, Overdue, Due };
QString wordOf(Urgency urgency);

struct DueRow {
  std::string device;
  QString text;
  Urgency urgency = Urgency::Due;
};

struct DueGroup {
  QString title;  // with its counts
  std::vector<DueRow> rows;
};

// What is due on a day. Devices that failed come first, then by room in the order of the file, what is
// overdue first; then what is still to be done elsewhere.
struct DueView {
  std::vector<DueGroup> groups;
  std::size_t devices = 0, overdue = 0;          // on which something is due; of them those past their day
  std::size_t gone = 0;                          // that failed and are no longer on the plan
  std::size_t actions = 0, actions_overdue = 0;  // to be done by the day; of them those past their day
  std::optional<inspection::Date> next;          // when something falls due after the day
};
// What it comes to; `devices`: how many there are.
QString summaryOf(const DueView& view, std::size_t devices);

DueView dueView(const layout::Layout& layout, std::span<const planning::InspectedDevice> devices,
                const inspection::Records& records, std::span<const inspection::DeviceState> states,
                std::span<const inspection::Check* const> open_actions, const inspection::Schedule& schedule,
                inspection::Date day);

}  // namespace stopwalk::rounds
