#include "core/inspection/schedule.h"

#include <algorithm>
#include <map>
#include <ranges>

#include "core/inspection/check_chain.h"
#include "core/inspection/person.h"

namespace stopwalk::inspection {
namespace {

void later(std::optional<Date>& date, Date other) {
  if (!date || *date < other) date = other;
}

// What all chains are held against.
struct Held {
  const Schedule& schedule;
  Reliance reliance;
};

// Failures are closed one by one, each by a pass that is surely later.
bool closes(const CheckChain& pass, const CheckChain& failed, const Check& failure, const Held& held) {
  const auto foundIt = [&](const Check* c) { return maybeSamePerson(c->inspector, failure.inspector); };
  return pass.passedThroughout() && surelyAfter(pass, failed) && !held.reliance.doubt(pass) &&
         !(held.schedule.retest_by_another && std::ranges::any_of(pass.checks, foundIt));
}

// Those of one device.
using Chains = std::vector<const CheckChain*>;

// The last failure that no pass closes; as a rule the next after it does, if any.
std::optional<FailedDevice> openFailure(const Chains& chains, const Held& held) {
  std::optional<FailedDevice> open;
  const CheckChain* last = nullptr;
  for (const CheckChain* chain : chains) {
    if (!chain->failedOnce() || (last && surelyAfter(*last, *chain))) continue;
    for (const Check* check : chain->checks) {
      if (check->result != Result::Fail) continue;
      if (std::ranges::any_of(std::views::reverse(chains),
                              [&](const CheckChain* other) { return closes(*other, *chain, *check, held); }))
        continue;
      open = FailedDevice{check->device, chain->latest().date, check->number, check->inspector};
      last = chain;
    }
  }
  return open;
}

void later(std::optional<NotCounted>& pass, const NotCounted& other) {
  if (!pass || pass->on <= other.on) pass = other;
}

// Puts in a pass, as far as it counts.
void addPass(DeviceState& state, const CheckChain& chain, const Held& held, const DeviceNow* now) {
  const Check& said = chain.said();
  NotCounted pass{said.number, chain.earliest().date};
  const auto doubt = held.reliance.doubt(chain);
  if (doubt) pass.why = *doubt;
  if (testedFor(said, Tried::Seen).value_or(true)) {
    if (doubt)
      later(state.seen_not_counted, pass);
    else
      later(state.seen, pass.on);
  }
  if (!doubt && now) pass.machines = notNamed(chain, now->machines);
  if (!pass.machines.empty()) pass.why = Doubt::NotNamed;
  const auto add = [&](std::optional<Date>& counted, std::optional<NotCounted>& not_counted) {
    if (doubt || !pass.machines.empty())
      later(not_counted, pass);
    else
      later(counted, pass.on);
  };
  if (passedPressed(said)) add(state.pressed, state.pressed_not_counted);
  if (passedInFull(said)) add(state.in_full, state.full_not_counted);
}

void dropEarlier(std::optional<NotCounted>& pass, const std::optional<Date>& counted) {
  if (pass && counted && pass->on <= *counted) pass.reset();
}

DeviceState stateOf(const std::string& device, const Chains& chains, const Held& held, const DeviceNow* now) {
  DeviceState state{.device = device, .failed = openFailure(chains, held)};
  const CheckChain *last = nullptr, *believed = nullptr;
  for (const CheckChain* chain : chains) {
    const auto isLast = [&](const CheckChain* other) { return !other || !surelyAfter(*other, *chain); };
    if (isLast(last)) last = chain;
    if (held.reliance.doubt(*chain) != Doubt::AfterToday && isLast(believed)) believed = chain;
    if (chain->said().result == Result::Pass) addPass(state, *chain, held, now);
  }
  dropEarlier(state.seen_not_counted, state.seen);
  dropEarlier(state.pressed_not_counted, state.pressed);
  dropEarlier(state.full_not_counted, state.in_full);
  state.last = last->said().number;
  if (believed) state.last_on = believed->earliest().date;
  return state;
}

std::map<std::string, Chains> byDevice(const std::vector<CheckChain>& chains) {
  std::map<std::string, Chains> devices;
  for (const CheckChain& chain : chains) devices[chain.first().device].push_back(&chain);
  return devices;
}

// When the next such test is due; none: as soon as can be.
std::optional<Date> monthsFrom(std::optional<Date> last, int months) {
  return last ? std::optional(monthsAfter(*last, months)) : std::nullopt;
}

// A pass that might have closed the failure, and counts for nothing.
std::optional<NotCounted> passSince(const FailedDevice& failed, const DeviceState& state) {
  const auto& pass = state.pressed_not_counted;
  return pass && pass->on >= failed.on ? pass : std::nullopt;
}

// All that will be due at a device some day.
std::vector<Due> comingFor(const std::string& device, const DeviceState& state, const Schedule& schedule) {
  std::vector<Due> coming;
  if (state.failed)
    coming.push_back({device, Due::What::Retest, std::nullopt, passSince(*state.failed, state)});
  coming.push_back({device, Due::What::Pressed, monthsFrom(state.pressed, schedule.pressed_months),
                    state.pressed_not_counted});
  coming.push_back(
      {device, Due::What::Full, monthsFrom(state.in_full, schedule.full_months), state.full_not_counted});
  if (schedule.seen_days)
    coming.push_back({device, Due::What::Seen,
                      state.seen ? std::optional(daysAfter(*state.seen, *schedule.seen_days)) : std::nullopt,
                      state.seen_not_counted});
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
    const Check* old = check.corrects ? records.findCheck(*check.corrects) : nullptr;
    const bool good = old && old->number < check.number && old->device == check.device;
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
  const std::vector<CheckChain> chains = chainsOf(records);
  const Held held{schedule, Reliance(records, as_of.today)};
  std::vector<DeviceState> states;
  for (const auto& [device, its] : byDevice(chains)) {
    const auto now = std::ranges::find(as_of.devices, device, &DeviceNow::id);
    states.push_back(stateOf(device, its, held, now == as_of.devices.end() ? nullptr : &*now));
  }
  return states;
}

const DeviceState* findState(std::span<const DeviceState> states, const std::string& device) {
  const auto at = std::ranges::lower_bound(states, device, {}, &DeviceState::device);
  return at != states.end() && at->device == device ? &*at : nullptr;
}

std::vector<FailedDevice> failedDevices(const Records& records, const Schedule& schedule, Date today) {
  const std::vector<CheckChain> chains = chainsOf(records);
  const Held held{schedule, Reliance(records, today)};
  std::vector<FailedDevice> failed;
  for (const auto& [device, its] : byDevice(chains))
    if (const auto open = openFailure(its, held)) failed.push_back(*open);
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

std::vector<const Check*> openActions(const Records& records, Date today) {
  const std::vector<CheckChain> chains = chainsOf(records);
  const Reliance reliance(records, today);
  std::vector<const Check*> all;
  for (const auto& [device, its] : byDevice(chains))
    for (const CheckChain* chain : its) {
      const auto isDone = [&](const CheckChain* other) {
        return other != chain && other->passedThroughout() && surelyAfter(*other, *chain) &&
               !reliance.doubt(*other);
      };
      // A correction that is silent about it takes nothing back.
      const auto asks = std::ranges::find_if(chain->checks.rbegin(), chain->checks.rend(),
                                             [](const Check* c) { return c->corrective.has_value(); });
      if (asks != chain->checks.rend() && std::ranges::none_of(its, isDone)) all.push_back(*asks);
    }
  std::ranges::sort(all, {}, &Check::number);
  return all;
}

}  // namespace stopwalk::inspection
