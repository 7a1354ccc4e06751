#include "core/inspection/schedule.h"

#include <algorithm>
#include <iterator>
#include <map>
#include <ranges>

#include "core/inspection/on_record.h"

namespace stopwalk::inspection {
namespace {

// When the next such test is due; none: as soon as can be.
std::optional<Date> monthsFrom(std::optional<Date> last, int months) {
  return last ? std::optional(monthsAfter(*last, months)) : std::nullopt;
}

// A pass that might have closed the failure, and counts for nothing.
std::optional<NotCounted> passSince(const FailedDevice& failed, const DeviceState& state) {
  const auto& pass = state.is_stop ? state.pressed_not_counted : state.seen_not_counted;
  return pass && pass->on >= failed.on ? pass : std::nullopt;
}

// When it is to be looked at next; what is no stop as often as a stop is worked, at the least.
Due nextLook(const std::string& device, const DeviceState& state, const Schedule& schedule) {
  Due look{device, Due::What::Seen, {}, state.seen_not_counted};
  if (!state.seen) return look;
  look.on = schedule.seen_days ? daysAfter(*state.seen, *schedule.seen_days)
                               : monthsAfter(*state.seen, schedule.pressed_months);
  return look;
}

// All that will be due at a device some day.
std::vector<Due> comingFor(const std::string& device, const DeviceState& state, const Schedule& schedule) {
  std::vector<Due> coming;
  if (state.failed)
    coming.push_back({device, Due::What::Retest, std::nullopt, passSince(*state.failed, state)});
  if (state.is_stop) {
    coming.push_back({device, Due::What::Pressed, monthsFrom(state.pressed, schedule.pressed_months),
                      state.pressed_not_counted});
    coming.push_back(
        {device, Due::What::Full, monthsFrom(state.in_full, schedule.full_months), state.full_not_counted});
  }
  if (schedule.seen_days || !state.is_stop) coming.push_back(nextLook(device, state, schedule));
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

std::vector<std::size_t> placesCorrected(const Records& records) {
  std::vector<std::size_t> places;
  for (const Check& check : records.checks) {
    const Check* old = check.corrects ? records.findCheck(*check.corrects, check.device) : nullptr;
    const bool good = old && old->number < check.number;
    places.push_back(good ? static_cast<std::size_t>(old - records.checks.data()) : places.size());
  }
  return places;
}

std::vector<std::size_t> correctedBy(const Records& records) {
  const std::vector<std::size_t> places = placesCorrected(records);
  std::vector<std::size_t> by(places.size(), 0);
  for (std::size_t i = 0; i < places.size(); ++i)
    if (places[i] != i) by[places[i]] = records.checks[i].number;
  return by;
}

std::vector<std::size_t> roundsOf(const Records& records) {
  const std::vector<std::size_t> places = placesCorrected(records);
  std::vector<std::size_t> rounds(places.size());
  for (std::size_t i = 0; i < places.size(); ++i)
    rounds[i] = places[i] == i ? records.checks[i].round : rounds[places[i]];
  return rounds;
}

std::vector<DeviceState> statesOf(const Records& records, const Schedule& schedule, const AsOf& as_of) {
  return OnRecord(records, schedule, as_of).states();
}

const DeviceState* findState(std::span<const DeviceState> states, const std::string& device) {
  const auto at = std::ranges::lower_bound(states, device, {}, &DeviceState::device);
  return at != states.end() && at->device == device ? &*at : nullptr;
}

std::vector<FailedDevice> failedDevices(const Records& records, const Schedule& schedule, const AsOf& as_of) {
  return OnRecord(records, schedule, as_of).failed();
}

std::map<std::size_t, ShortOfPass> passesShort(const Records& records, const Schedule& schedule,
                                               const AsOf& as_of) {
  return OnRecord(records, schedule, as_of).passesShort();
}

const ShortOfPass* findShort(const std::map<std::size_t, ShortOfPass>& passes, const Check& check) {
  const auto pass = passes.find(check.number);
  return pass != passes.end() && check.result == Result::Pass ? &pass->second : nullptr;
}

std::set<std::string> removedDevices(const Records& records, const Now& now) {
  return OnRecord(records, {}, {now}).removed();
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
                            const Schedule& schedule, Date day, std::span<const Check* const> open_actions) {
  std::optional<Date> next;
  const auto see = [&](const std::optional<Date>& on) {
    if (on && *on > day && (!next || *on < *next)) next = on;
  };
  eachComing(devices, states, schedule, [&](const Due& due) { see(due.on); });
  for (const Check* check : open_actions)
    if (check->corrective) see(check->corrective->due);
  return next;
}

std::vector<const Check*> openActions(const Records& records, const AsOf& as_of) {
  return OnRecord(records, {}, as_of).openActions();
}

}  // namespace stopwalk::inspection
