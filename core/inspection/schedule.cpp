#include "core/inspection/schedule.h"

#include <algorithm>
#include <map>

namespace stopwalk::inspection {
namespace {

// The same person may be written with another case, or blanks round the name.
std::string personOf(const std::string& name) {
  std::string plain;
  for (const char c : name)
    if (c != ' ') plain += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
  return plain;
}

// A check and those that correct it, in order. It counts where the first stands, and says what the last says.
using Chain = std::vector<const Check*>;

// The place of the check that this one takes the place of; its own for none.
std::size_t placeCorrected(const Records& records, std::size_t place) {
  const Check& check = records.checks[place];
  const Check* old = check.corrects ? records.findCheck(*check.corrects) : nullptr;
  return old && old->number < check.number && old->device == check.device
             ? static_cast<std::size_t>(old - records.checks.data())
             : place;
}

std::vector<Chain> chainsOf(const Records& records) {
  std::vector<std::size_t> first(records.checks.size());
  std::vector<Chain> chains(records.checks.size());
  for (std::size_t i = 0; i < records.checks.size(); ++i) {
    const std::size_t old = placeCorrected(records, i);
    first[i] = old == i ? i : first[old];
    chains[first[i]].push_back(&records.checks[i]);
  }
  std::erase_if(chains, [](const Chain& chain) { return chain.empty(); });
  return chains;
}

// Whoever first wrote it and whoever corrected it say that it was worked, and stopped.
bool passedThroughout(const Chain& chain) {
  return std::ranges::all_of(chain, [](const Check* c) { return passedPressed(*c); });
}

void later(std::optional<Date>& date, Date other) {
  if (!date || *date < other) date = other;
}

bool closes(const Chain& chain, const FailedDevice& failed, const Schedule& schedule) {
  return passedThroughout(chain) &&
         !(schedule.retest_by_another && personOf(chain.front()->inspector) == personOf(failed.found_by));
}

void take(DeviceState& state, const Chain& chain, const Schedule& schedule) {
  const Date day = chain.front()->at.date;
  for (const Check* check : chain)
    if (check->result == Result::Fail)
      state.failed = FailedDevice{check->device, day, check->number, check->inspector};
  if (state.failed && closes(chain, *state.failed, schedule)) state.failed.reset();
  const Check& said = *chain.back();
  state.last = said.number;
  if (said.result != Result::Pass) return;
  if (testedFor(said, Tried::Seen).value_or(true)) later(state.seen, day);
  if (passedPressed(said)) later(state.pressed, day);
  if (passedInFull(said)) later(state.in_full, day);
}

// When the next such test is due; none: as soon as can be.
std::optional<Date> monthsFrom(std::optional<Date> last, int months) {
  return last ? std::optional(monthsAfter(*last, months)) : std::nullopt;
}

// All that will be due at a device some day.
std::vector<Due> comingFor(const std::string& device, const DeviceState& state, const Schedule& schedule) {
  std::vector<Due> coming;
  if (state.failed) coming.push_back({device, Due::What::Retest, std::nullopt});
  coming.push_back({device, Due::What::Pressed, monthsFrom(state.pressed, schedule.pressed_months)});
  coming.push_back({device, Due::What::Full, monthsFrom(state.in_full, schedule.full_months)});
  if (schedule.seen_days)
    coming.push_back(
        {device, Due::What::Seen,
         state.seen ? std::optional(daysAfter(*state.seen, *schedule.seen_days)) : std::nullopt});
  return coming;
}

template <class Each>
void eachComing(std::span<const std::string> devices, std::span<const DeviceState> states,
                const Schedule& schedule, Each each) {
  for (const std::string& device : devices) {
    const DeviceState* state = findState(states, device);
    for (const Due& due : comingFor(device, state ? *state : DeviceState{}, schedule)) each(due);
  }
}

}  // namespace

std::vector<std::size_t> correctedBy(const Records& records) {
  std::vector<std::size_t> by(records.checks.size(), 0);
  for (std::size_t i = 0; i < records.checks.size(); ++i)
    if (const std::size_t old = placeCorrected(records, i); old != i) by[old] = records.checks[i].number;
  return by;
}

std::vector<DeviceState> statesOf(const Records& records, const Schedule& schedule) {
  std::map<std::string, DeviceState> states;
  for (const Chain& chain : chainsOf(records)) {
    DeviceState& state = states[chain.front()->device];
    state.device = chain.front()->device;
    take(state, chain, schedule);
  }
  std::vector<DeviceState> sorted;
  for (auto& [device, state] : states) sorted.push_back(std::move(state));
  return sorted;
}

const DeviceState* findState(std::span<const DeviceState> states, const std::string& device) {
  const auto at = std::ranges::lower_bound(states, device, {}, &DeviceState::device);
  return at != states.end() && at->device == device ? &*at : nullptr;
}

std::vector<FailedDevice> failedDevices(const Records& records, const Schedule& schedule) {
  std::vector<FailedDevice> failed;
  for (const DeviceState& state : statesOf(records, schedule))
    if (state.failed) failed.push_back(*state.failed);
  return failed;
}

std::string_view word(Due::What what) {
  switch (what) {
    case Due::What::Retest:
      return "retest";
    case Due::What::Pressed:
      return "pressed";
    case Due::What::Full:
      return "full";
    case Due::What::Seen:
      return "seen";
  }
  return "";
}

std::vector<Due> dueOn(std::span<const std::string> devices, std::span<const DeviceState> states,
                       const Schedule& schedule, Date day) {
  std::vector<Due> all;
  eachComing(devices, states, schedule, [&](const Due& due) {
    if (!due.on || *due.on <= day) all.push_back(due);
  });
  return all;
}

bool isOverdue(const Due& due, Date day) {
  return !due.on || *due.on < day;
}

std::optional<Date> nextDue(std::span<const std::string> devices, std::span<const DeviceState> states,
                            const Schedule& schedule, Date day) {
  std::optional<Date> next;
  eachComing(devices, states, schedule, [&](const Due& due) {
    if (due.on && *due.on > day && (!next || *due.on < *next)) next = due.on;
  });
  return next;
}

std::vector<const Check*> openActions(const Records& records) {
  std::map<std::string, std::vector<const Check*>> open;
  for (const Chain& chain : chainsOf(records)) {
    std::vector<const Check*>& actions = open[chain.front()->device];
    if (passedThroughout(chain)) actions.clear();
    if (chain.back()->corrective) actions.push_back(chain.back());
  }
  std::vector<const Check*> all;
  for (const auto& [device, actions] : open) all.insert(all.end(), actions.begin(), actions.end());
  std::ranges::sort(all, {}, &Check::number);
  return all;
}

}  // namespace stopwalk::inspection
