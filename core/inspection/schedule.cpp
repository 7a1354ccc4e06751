#include "core/inspection/schedule.h"

#include <algorithm>
#include <iterator>
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

// Puts in a pass, as far as it counts.
void addPass(DeviceState& state, const CheckChain& chain, const Closing& closing) {
  const Check& said = chain.said();
  const DeviceNow* now = closing.now;
  if (contradictsPass(said, now && now->latches)) return;
  const auto add = [&](std::optional<Date>& counted, std::optional<NotCounted>& kept,
                       const std::optional<NotCounted>& pass) {
    if (pass)
      later(kept, *pass);
    else
      later(counted, chain.day());
  };
  const bool is_seen = state.is_stop ? testedFor(said, Tried::Seen).value_or(true) : passedSeen(said);
  if (is_seen) add(state.seen, state.seen_not_counted, lookNotCounted(chain, closing));
  if (!state.is_stop) return;
  const auto by_hand = notCounted(chain, closing);
  if (passedPressed(said)) add(state.pressed, state.pressed_not_counted, by_hand);
  if (passedInFull(said, !now || now->latches)) add(state.in_full, state.full_not_counted, by_hand);
}

void dropEarlier(std::optional<NotCounted>& pass, const std::optional<Date>& counted) {
  if (pass && counted && pass->on <= *counted) pass.reset();
}

DeviceState stateOf(const std::string& device, const Chains& chains, const Closing& closing) {
  DeviceState state{.device = device,
                    .failed = openFailure(chains, closing),
                    .is_stop = !closing.now || closing.now->is_stop};
  const CheckChain* last = nullptr;
  for (const CheckChain* chain : chains) {
    const bool is_to_come = closing.reliance.doubt(*chain, closing.now) == Doubt::AfterToday;
    if (!is_to_come && (!last || !surelyAfter(*last, *chain))) last = chain;
    if (chain->said().result == Result::Pass) addPass(state, *chain, closing);
  }
  dropEarlier(state.seen_not_counted, state.seen);
  dropEarlier(state.pressed_not_counted, state.pressed);
  dropEarlier(state.full_not_counted, state.in_full);
  if (last) state.last = last->said().number, state.last_on = last->day();
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

// Calls `each(device, its chains, closing)` for each that is on record, sorted.
template <class Each>
void eachDevice(const std::vector<CheckChain>& chains, bool by_another, const Records& records,
                const AsOf& as_of, Each each) {
  Closing closing{by_another, Reliance(records, as_of.now)};
  for (const auto& [device, its] : byDevice(chains)) {
    closing.now = findNow(as_of, device);
    closing.removals.clear();
    std::ranges::copy_if(its, std::back_inserter(closing.removals),
                         [](const CheckChain* chain) { return chain->said().removed; });
    each(device, its, closing);
  }
}

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

// The check of a chain that asks for something which no later pass has done; null: there is none. A
// correction that is silent about it takes nothing back.
const Check* openAction(const CheckChain& chain, const Chains& its, const Closing& closing) {
  const auto asks = std::ranges::find_if(chain.checks.rbegin(), chain.checks.rend(),
                                         [](const Check* c) { return c->corrective.has_value(); });
  if (asks == chain.checks.rend()) return nullptr;
  const auto isDone = [&](const CheckChain* other) {
    return other != &chain && !whyLeftOpen(*other, chain, **asks, closing);
  };
  return std::ranges::any_of(its, isDone) ? nullptr : *asks;
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
  const std::vector<CheckChain> chains = chainsOf(records);
  std::vector<DeviceState> states;
  eachDevice(chains, schedule.retest_by_another, records, as_of,
             [&](const std::string& device, const Chains& its, const Closing& closing) {
               states.push_back(stateOf(device, its, closing));
             });
  const auto on_record = static_cast<std::ptrdiff_t>(states.size());
  for (const DeviceNow& now : as_of.devices)
    if (!findState(std::span(states).first(static_cast<std::size_t>(on_record)), now.id))
      states.push_back({.device = now.id, .is_stop = now.is_stop});
  std::ranges::sort(states, {}, &DeviceState::device);
  return states;
}

const DeviceState* findState(std::span<const DeviceState> states, const std::string& device) {
  const auto at = std::ranges::lower_bound(states, device, {}, &DeviceState::device);
  return at != states.end() && at->device == device ? &*at : nullptr;
}

std::vector<FailedDevice> failedDevices(const Records& records, const Schedule& schedule, const AsOf& as_of) {
  const std::vector<CheckChain> chains = chainsOf(records);
  std::vector<FailedDevice> failed;
  eachDevice(chains, schedule.retest_by_another, records, as_of,
             [&](const std::string&, const Chains& its, const Closing& closing) {
               if (const auto open = openFailure(its, closing)) failed.push_back(*open);
             });
  return failed;
}

std::map<std::size_t, ShortOfPass> passesShort(const Records& records, const Schedule& schedule,
                                               const AsOf& as_of) {
  const std::vector<CheckChain> chains = chainsOf(records);
  std::map<std::size_t, ShortOfPass> passes;
  eachDevice(chains, schedule.retest_by_another, records, as_of,
             [&](const std::string&, const Chains& its, const Closing& closing) {
               for (const ShortOfPass& pass : shortOf(its, closing)) passes[pass.check] = pass;
             });
  return passes;
}

const ShortOfPass* findShort(const std::map<std::size_t, ShortOfPass>& passes, const Check& check) {
  const auto pass = passes.find(check.number);
  return pass != passes.end() && check.result == Result::Pass ? &pass->second : nullptr;
}

std::set<std::string> removedDevices(const Records& records, const Now& now) {
  const std::vector<CheckChain> chains = chainsOf(records);
  const Reliance reliance(records, now);
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

std::vector<const Check*> openActions(const Records& records, const AsOf& as_of) {
  const std::vector<CheckChain> chains = chainsOf(records);
  std::vector<const Check*> all;
  eachDevice(chains, false, records, as_of,
             [&](const std::string&, const Chains& its, const Closing& closing) {
               for (const CheckChain* chain : its)
                 if (const Check* asks = openAction(*chain, its, closing)) all.push_back(asks);
             });
  std::ranges::sort(all, {}, &Check::number);
  return all;
}

}  // namespace stopwalk::inspection
