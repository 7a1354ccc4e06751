#include "core/inspection/on_record.h"

#include <algorithm>
#include <iterator>
#include <utility>

#include "core/inspection/check_rules.h"
#include "core/inspection/person.h"
#include "core/inspection/tests_of_pass.h"

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
  static const DeviceNow kUnknown;
  const Check& said = chain.said();
  const DeviceNow& device = closing.now ? *closing.now : kUnknown;
  if (contradictsPass(said, closing.now && device.latches)) return;
  const auto add = [&](std::optional<Date>& counted, std::optional<NotCounted>& kept,
                       const std::optional<NotCounted>& pass) {
    if (pass)
      later(kept, *pass);
    else
      later(counted, chain.day());
  };
  if (isTest(said, Due::What::Seen, device))
    add(state.seen, state.seen_not_counted, lookNotCounted(chain, closing));
  if (!device.is_stop) return;
  const auto by_hand = notCounted(chain, closing);
  if (isTest(said, Due::What::Pressed, device)) add(state.pressed, state.pressed_not_counted, by_hand);
  if (isTest(said, Due::What::Full, device)) add(state.in_full, state.full_not_counted, by_hand);
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
    const bool is_to_come = closing.reliance.isToCome(*chain);
    if (!is_to_come && (!last || !surelyAfter(*last, *chain))) last = chain;
    if (chain->said().result == Result::Pass) addPass(state, *chain, closing);
  }
  dropEarlier(state.seen_not_counted, state.seen);
  dropEarlier(state.pressed_not_counted, state.pressed);
  dropEarlier(state.full_not_counted, state.in_full);
  if (last) state.last = last->said().number, state.last_on = last->day();
  return state;
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

LastLine lastLine(const Records& records) {
  LastLine last;
  const auto see = [&](const auto& all) {
    for (const auto& record : all) {
      last.number = std::max(last.number, record.number);
      last.latest = std::max(last.latest, std::optional(instantOf(writtenAt(record))));
    }
  };
  see(records.rounds);
  see(records.checks);
  return last;
}

// Puts a check behind all others into the chains of its device, and returns its own.
CheckChain& addTo(std::vector<CheckChain>& chains, const Check& check, const Records& records,
                  const LastLine& last) {
  const std::int64_t written = instantOf(writtenAt(check));
  for (CheckChain& chain : chains)
    chain.clock_was_ahead = chain.clock_was_ahead || written < instantOf(writtenAt(chain.first()));
  const auto isCorrected = [&](const CheckChain& chain) {
    return std::ranges::any_of(chain.checks, [&](const Check* c) { return c->number == check.corrects; });
  };
  if (const auto chain = std::ranges::find_if(chains, isCorrected); check.corrects && chain != chains.end()) {
    chain->checks.push_back(&check);
    if (check.entered) chain->not_after = std::max(chain->not_after, notAfter(check, records));
    return *chain;
  }
  return chains.emplace_back(std::vector<const Check*>{&check}, notAfter(check, records), false,
                             last.latest && written < *last.latest);
}

std::vector<Due::What> countsAs(const CheckChain& chain, const Closing& closing) {
  if (chain.said().result != Result::Pass) return {};
  DeviceState alone{.device = {}, .is_stop = !closing.now || closing.now->is_stop};
  addPass(alone, chain, closing);
  std::vector<Due::What> counts;
  if (alone.pressed) counts.push_back(Due::What::Pressed);
  if (alone.in_full) counts.push_back(Due::What::Full);
  if (alone.seen) counts.push_back(Due::What::Seen);
  return counts;
}

}  // namespace

OnRecord::OnRecord(const Records& records, const Schedule& schedule, AsOf as_of)
    : records_(records),
      by_another_(schedule.retest_by_another),
      as_of_(std::move(as_of)),
      reliance_(records, as_of_.now),
      last_(lastLine(records)),
      chains_(chainsOf(records)) {
  for (const CheckChain& chain : chains_) of_[chain.first().device].push_back(&chain);
  for (const DeviceNow& device : as_of_.devices) now_.emplace(device.id, &device);
}

const Chains& OnRecord::of(const std::string& device) const {
  static const Chains kNone;
  const auto at = of_.find(device);
  return at == of_.end() ? kNone : at->second;
}

const DeviceNow* OnRecord::now(const std::string& device) const {
  const auto at = now_.find(device);
  return at == now_.end() ? nullptr : at->second;
}

Closing OnRecord::closingOf(const std::string& device, const Chains& its, bool by_another) const {
  Closing closing{by_another, reliance_, now(device)};
  std::ranges::copy_if(its, std::back_inserter(closing.removals),
                       [](const CheckChain* chain) { return chain->said().removed; });
  return closing;
}

std::vector<DeviceState> OnRecord::states() const {
  std::vector<DeviceState> states;
  for (const auto& [device, its] : of_)
    states.push_back(stateOf(device, its, closingOf(device, its, by_another_)));
  for (const auto& [device, now] : now_)
    if (!of_.contains(device)) states.push_back({.device = device, .is_stop = now->is_stop});
  std::ranges::sort(states, {}, &DeviceState::device);
  return states;
}

std::vector<FailedDevice> OnRecord::failed() const {
  std::vector<FailedDevice> failed;
  for (const auto& [device, its] : of_)
    if (auto open = openFailure(its, closingOf(device, its, by_another_))) failed.push_back(*std::move(open));
  return failed;
}

std::map<std::size_t, ShortOfPass> OnRecord::passesShort() const {
  std::map<std::size_t, ShortOfPass> passes;
  for (const auto& [device, its] : of_)
    for (ShortOfPass& pass : shortOf(its, closingOf(device, its, by_another_)))
      passes[pass.check] = std::move(pass);
  return passes;
}

std::vector<const Check*> OnRecord::openActions() const {
  std::vector<const Check*> all;
  for (const auto& [device, its] : of_) {
    const Closing closing = closingOf(device, its, false);
    for (const CheckChain* chain : its)
      if (const Check* asks = openAction(*chain, its, closing)) all.push_back(asks);
  }
  std::ranges::sort(all, {}, &Check::number);
  return all;
}

std::set<std::string> OnRecord::removed() const {
  std::set<std::string> removed;
  for (const auto& [device, its] : of_)
    if (isRemoved(its, reliance_)) removed.insert(device);
  return removed;
}

IfRecorded OnRecord::ifRecorded(Check check) const {
  check.number = std::max(last_.number, records_.unsure_to) + 1;  // of a line that is not read, too
  const Chains& its = of(check.device);
  std::vector<CheckChain> with;
  for (const CheckChain* chain : its) with.push_back(*chain);
  const CheckChain& own = addTo(with, check, records_, last_);
  Chains all;
  for (const CheckChain& chain : with) all.push_back(&chain);
  const bool is_named = !nameOf(check.inspector).empty();
  const Closing closing = closingOf(check.device, all, by_another_ && is_named);
  IfRecorded told{stateOf(check.device, its, closingOf(check.device, its, by_another_)),
                  stateOf(check.device, all, closing)};
  told.counts = countsAs(own, closing);
  told.on = own.day();
  for (const ShortOfPass& pass : shortOf(all, closing))
    if (pass.check == check.number) told.short_of = pass;
  return told;
}

}  // namespace stopwalk::inspection
