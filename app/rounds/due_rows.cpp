#include "app/rounds/due_rows.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>
#include <map>

#include "app/rounds/counts_for.h"
#include "app/rounds/reasons.h"
#include "app/rounds/words.h"
#include "core/planning/round_plan.h"

namespace stopwalk::rounds {
namespace {

using inspection::Date;
using inspection::Due;

class Words {
  Q_DECLARE_TR_FUNCTIONS(rounds)
};

// Why a pass counts for nothing.
QString whyNotCounted(const inspection::NotCounted& pass, const layout::Layout& layout) {
  return Words::tr("check %1 of %2 does not count: %3")
      .arg(pass.check)
      .arg(dayText(pass.on), reasonText(pass, namesOf(layout, pass.machines)));
}

QString dueClause(const Due& due, Date day) {
  if (!due.on)
    return (due.despite ? Words::tr("%1 to be done again") : Words::tr("%1 never passed"))
        .arg(wordOf(due.what));
  const int late = inspection::daysBetween(*due.on, day);
  if (late <= 0) return Words::tr("%1 due today").arg(wordOf(due.what));
  return late == 1 ? Words::tr("%1 overdue by 1 day").arg(wordOf(due.what))
                   : Words::tr("%1 overdue by %2 days").arg(wordOf(due.what)).arg(late);
}

QString failedClause(const inspection::FailedDevice& failed) {
  return failed.since == failed.on
             ? Words::tr("failed on %1, to be checked again once it is mended").arg(dayText(failed.on))
             : Words::tr("failed since %1, last on %2, to be checked again once it is mended")
                   .arg(dayText(failed.since), dayText(failed.on));
}

// With why, though it was checked since.
QString clauseOf(const Due& due, const inspection::Check* last, const inspection::DeviceNow* device,
                 const layout::Layout& layout, Date day) {
  const QString clause = dueClause(due, day);
  if (due.despite) return Words::tr("%1 (%2)").arg(clause, whyNotCounted(*due.despite, layout));
  const QString why = last && device ? whyNot(due.what, *last, *device) : QString();
  return why.isEmpty() ? clause
                       : Words::tr("%1 (check %2 of %3, %4)", "what is due; why that check was not it")
                             .arg(clause)
                             .arg(last->number)
                             .arg(dayText(last->at.date), why);
}

// Why nothing came of the last check.
QString notTried(const inspection::Check& last) {
  return Words::tr("%1 on %2", "could not be reached; a day")
      .arg(wordOf(last.result).toLower(), dayText(last.at.date));
}

// All that is due at one device.
struct DeviceDue {
  QStringList clauses;
  Urgency urgency = Urgency::Due;
};

// Nothing ever came of it: that is said once, not for each test.
bool isNew(const inspection::DeviceState* state) {
  return !state || (!state->seen && !state->pressed && !state->in_full && !state->failed &&
                    !state->seen_not_counted && !state->pressed_not_counted && !state->full_not_counted);
}

std::map<std::string, DeviceDue> dueByDevice(const std::vector<Due>& list, const layout::Layout& layout,
                                             std::span<const planning::InspectedDevice> devices,
                                             const inspection::Records& records,
                                             std::span<const inspection::DeviceState> states, Date day) {
  std::map<std::string, DeviceDue> by_device;
  std::map<std::string, QString> not_tried;
  for (const Due& due : list) {
    DeviceDue& one = by_device[due.device];
    const inspection::DeviceState* state = inspection::findState(states, due.device);
    const inspection::Check* last =
        state && state->last ? records.findCheck(*state->last, due.device) : nullptr;
    if (last && !last->is_undated &&
        (last->result == inspection::Result::NotTested || last->result == inspection::Result::NotAccessible))
      not_tried[due.device] = notTried(*last);
    if (isNew(state)) {
      one = {{Words::tr("never passed a check")}, Urgency::Overdue};
    } else if (due.what == Due::What::Retest) {
      one.urgency = Urgency::Failed;
      one.clauses << failedClause(*state->failed);
    } else {
      one.clauses << clauseOf(due, last, planning::findDevice(devices, due.device), layout, day);
      if (isOverdue(due, day)) one.urgency = std::min(one.urgency, Urgency::Overdue);
    }
  }
  for (const auto& [device, why] : not_tried) by_device[device].clauses << why;
  return by_device;
}

QString titleOf(const QString& name, const std::vector<DueRow>& rows) {
  const auto overdue = std::ranges::count(rows, Urgency::Overdue, &DueRow::urgency);
  return overdue > 0 ? Words::tr("%1: %2 due, %3 overdue").arg(name).arg(rows.size()).arg(overdue)
                     : Words::tr("%1: %2 due").arg(name).arg(rows.size());
}

// Puts in what is to be done elsewhere than at the card of a device.
void addActions(DueView& view, const layout::Layout& layout,
                std::span<const planning::InspectedDevice> devices,
                std::span<const inspection::Check* const> open_actions, Date day) {
  DueGroup group;
  for (const inspection::Check* check : open_actions) {
    const planning::InspectedDevice* device = planning::findDevice(devices, check->device);
    const inspection::Corrective& todo = *check->corrective;
    QString text = Words::tr("%1: %2, by %3")
                       .arg(device ? nameOf(layout, *device) : QString::fromStdString(check->device),
                            QString::fromStdString(todo.what), QString::fromStdString(todo.owner));
    if (todo.due) text = Words::tr("%1, until %2").arg(text, dayText(*todo.due));
    const bool is_overdue = todo.due && *todo.due < day;
    group.rows.push_back({check->device, text, is_overdue ? Urgency::Overdue : Urgency::Due});
    if (is_overdue) ++view.actions_overdue;
    if (todo.due && *todo.due <= day) ++view.actions;
  }
  group.title = Words::tr("Still to be done: %1").arg(group.rows.size());
  if (!group.rows.empty()) view.groups.push_back(std::move(group));
}

// What failed and the layout does not have, or not under that id.
std::vector<DueRow> goneRows(std::span<const planning::InspectedDevice> devices,
                             std::span<const inspection::DeviceState> states) {
  std::vector<DueRow> rows;
  for (const inspection::DeviceState& state : states)
    if (state.failed && !state.failed->removed && !planning::findDevice(devices, state.device))
      rows.push_back(
          {state.device,
           Words::tr(
               "%1: failed on %2, and no longer on the plan under this id. Enter: say that it was taken away")
               .arg(QString::fromStdString(state.device), dayText(state.failed->on)),
           Urgency::Failed});
  return rows;
}

}  // namespace

QString wordOf(Urgency urgency) {
  switch (urgency) {
    case Urgency::Failed:
      return Words::tr("Failed");
    case Urgency::Overdue:
      return Words::tr("Overdue");
    case Urgency::Due:
      return Words::tr("Due");
  }
  return {};
}

DueView dueView(const layout::Layout& layout, std::span<const planning::InspectedDevice> devices,
                const inspection::Records& records, std::span<const inspection::DeviceState> states,
                std::span<const inspection::Check* const> open_actions, const inspection::Schedule& schedule,
                Date day) {
  const auto ids = planning::idsOf(devices);
  const auto by_device =
      dueByDevice(inspection::dueOn(ids, states, schedule, day), layout, devices, records, states, day);
  DueView view;
  view.devices = by_device.size();
  view.next = inspection::nextDue(ids, states, schedule, day, open_actions);
  DueGroup failed;
  std::map<std::string, std::vector<DueRow>> in;  // by room
  for (const planning::InspectedDevice& device : devices) {
    const auto at = by_device.find(device.id);
    if (at == by_device.end()) continue;
    const DueRow row{
        device.id, Words::tr("%1: %2").arg(nameOf(layout, device), at->second.clauses.join(Words::tr("; "))),
        at->second.urgency};
    if (row.urgency != Urgency::Due) ++view.overdue;
    (row.urgency == Urgency::Failed ? failed.rows : in[device.room]).push_back(row);
  }
  const std::vector<DueRow> gone = goneRows(devices, states);
  view.gone = gone.size();
  failed.rows.insert(failed.rows.end(), gone.begin(), gone.end());
  failed.title = Words::tr("Failed: %1").arg(failed.rows.size());
  if (!failed.rows.empty()) view.groups.push_back(failed);
  const auto addRoom = [&](const std::string& id, const QString& name) {
    std::vector<DueRow>& rows = in[id];
    std::ranges::stable_sort(rows, {}, &DueRow::urgency);
    if (!rows.empty()) view.groups.push_back({titleOf(name, rows), rows});
  };
  for (const layout::Room& room : layout.rooms) addRoom(room.id, roomName(layout, room.id));
  addRoom("", Words::tr("In no room"));
  addActions(view, layout, devices, open_actions, day);
  return view;
}

QString summaryOf(const DueView& view, std::size_t devices) {
  QStringList said;
  if (view.devices > 0)
    said << Words::tr("%1 of %2 devices are due, %3 of them overdue.")
                .arg(view.devices)
                .arg(devices)
                .arg(view.overdue);
  if (view.gone > 0) said << Words::tr("Failed, and no longer on the plan: %1.").arg(view.gone);
  if (view.actions > 0)
    said << Words::tr("To be done by today: %1, overdue: %2.").arg(view.actions).arg(view.actions_overdue);
  if (said.isEmpty())
    said << (view.next ? Words::tr("Nothing is due until %1.").arg(dayText(*view.next))
                       : Words::tr("Nothing is due."));
  return said.join(' ');
}

}  // namespace stopwalk::rounds
