#include "core/inspection/schedule.h"

#include <algorithm>
#include <map>
#include <ranges>

#include "core/inspection/check_chain.h"
#include "core/inspection/check_rules.h"

namespace stopwalk::inspection {
namespace {

void later(std::optional<Date>& date, Date other) {
  if (!date || *date < other) date = other;
}

void later(std::optional<NotCounted>& pass, const NotCounted& other) {
  if (!pass || pass->on <= other.on) pass = other;
}

// Puts in a pass, as far as it counts. Of what it was looked at for, no machines are asked.
void addPass(DeviceState& state, const CheckChain& chain, const Reliance& reliance, const DeviceNow* now) {
  const Check& said = chain.said();
  if (contradictsPass(said, now && now->latches)) return;
  const auto add = [&](std::optional<Date>& counted, std::optional<NotCounted>& kept, const DeviceNow* of) {
    if (const auto pass = reliance.notCounted(chain, of))
      later(kept, *pass);
    else
      later(counted, chain.earliest().date);
  };
  if (testedFor(said, Tried::Seen).value_or(true)) add(state.seen, state.seen_not_counted, nullptr);
  if (passedPressed(said)) add(state.pressed, state.pressed_not_counted, now);
  if (passedInFull(said, !now || now->latches)) add(state.in_full, state.full_not_counted, now);
}

void dropEarlier(std::optional<NotCounted>& pass, const std::optional<Date>& counted) {
  if (pass && counted && pass->on <= *counted) pass.reset();
}

DeviceState stateOf(const std::string& device, const Chains& chains, const Closing& closing,
                    const DeviceNow* now) {
  DeviceState state{.device = device, .failed = openFailure(chains, closing)};
  const CheckChain *last = nullptr, *believed = nullptr;
  for (const CheckChain* chain : chains) {
    const auto isLast = [&](const CheckChain* other) { return !other || !surelyAfter(*other, *chain); };
    if (isLast(last)) last = chain;
    if (closing.reliance.doubt(*chain) != Doubt::AfterToday && isLast(believed)) believed = chain;
    if (chain->said().result == Result::Pass) addPass(state, *chain, closing.reliance, now);
  }
  dropEarlier(state.seen_not_counted, state.seen);
  dropEarlier(state.pressed_not_counted, state.pressed);
  dropEarlier(state.full_not_counted, state.in_full);
  state.last = last->said().number;
  if (believed) state.last_on = believed->earliest().date;
  return state;
}

const DeviceNow* findNow(const AsOf& as_of, const std::string& device) {
  const auto now = std::ranges::find(as_of.devices, device, &DeviceNow::id);
  return now == as_of.devices.end() ? nullptr : &*now;
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
  const Closing closing{schedule.retest_by_another, Reliance(records, as_of.today)};
  std::vector<DeviceState> states;
  for (const auto& [device, its] : byDevice(chains))
    states.push_back(stateOf(device, its, closing, findNow(as_of, device)));
  return states;
}

const DeviceState* findState(std::span<const DeviceState> states, const std::string& device) {
  const auto at = std::ranges::lower_bound(states, device, {}, &DeviceState::device);
  return at != states.end() && at->device == device ? &*at : nullptr;
}

std::vector<FailedDevice> failedDevices(const Records& records, const Schedule& schedule, Date today) {
  const std::vector<CheckChain> chains = chainsOf(records);
  const Closing closing{schedule.retest_by_another, Reliance(records, today)};
  std::vector<FailedDevice> failed;
  for (const auto& [device, its] : byDevice(chains))
    if (const auto open = openFailure(its, closing)) failed.push_back(*open);
  return failed;
}

std::map<std::size_t, ShortOfPass> passesShort(const Records& records, const Schedule& schedule,
                                               const AsOf& as_of) {
  const std::vector<CheckChain> chains = chainsOf(records);
  const Closing closing{schedule.retest_by_another, Reliance(records, as_of.today)};
  std::map<std::size_t, ShortOfPass> passes;
  for (const auto& [device, its] : byDevice(chains))
    for (const ShortOfPass& pass : shortOf(its, closing, findNow(as_of, device))) passes[pass.check] = pass;
  return passes;
}

std::set<std::string> removedDevices(const Records& records, Date today) {
  const std::vector<CheckChain> chains = chainsOf(records);
  const Reliance reliance(records, today);
  std::set<std::string> removed;
  for (const auto& [device, its] : byDevice(chains))
    if (isRemoved(its, reliance)) removed.insert(device);
  return removed;
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
