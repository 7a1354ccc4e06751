#include "core/inspection/check_chain.h"

#include <algorithm>
#include <cstdint>

#include "core/inspection/schedule.h"

namespace stopwalk::inspection {
namespace {

// What says when it was: the first, and corrections that were given a time of their own. Another correction's
// time is that of its writing.
std::vector<const Check*> dated(const CheckChain& chain) {
  std::vector<const Check*> all = {chain.checks.front()};
  for (const Check* check : chain.checks)
    if (check->entered && check != all.front()) all.push_back(check);
  return all;
}

bool isEarlier(const Check* a, const Check* b) {
  return instantOf(a->at) < instantOf(b->at);
}

}  // namespace

bool CheckChain::failedOnce() const {
  return std::ranges::any_of(checks, [](const Check* c) { return c->result == Result::Fail; });
}

bool CheckChain::passedThroughout() const {
  return std::ranges::all_of(checks, [](const Check* c) { return passedPressed(*c); });
}

bool CheckChain::writtenAtOnce() const {
  return std::ranges::none_of(checks, [](const Check* c) { return c->entered.has_value(); });
}

const Check& CheckChain::datedFirst() const {
  return *std::ranges::min(dated(*this), isEarlier);
}

const Moment& CheckChain::latest() const {
  return std::ranges::max(dated(*this), isEarlier)->at;
}

std::vector<CheckChain> chainsOf(const Records& records) {
  const std::vector<std::size_t> corrects = placesCorrected(records);
  std::vector<std::size_t> first(corrects.size());
  std::vector<CheckChain> chains(corrects.size());
  std::optional<std::int64_t> written;
  for (std::size_t i = 0; i < corrects.size(); ++i) {
    const Check& check = records.checks[i];
    first[i] = corrects[i] == i ? i : first[corrects[i]];
    chains[first[i]].checks.push_back(&check);
    if (first[i] == i) chains[i].clock_went_back = written && instantOf(writtenAt(check)) < *written;
    written = std::max(written, std::optional(instantOf(writtenAt(check))));
  }
  std::optional<std::int64_t> later;
  for (std::size_t i = corrects.size(); i-- > 0;) {
    const std::int64_t at = instantOf(writtenAt(records.checks[i]));
    if (first[i] == i) chains[i].clock_was_ahead = later && *later < at;
    later = later ? std::min(*later, at) : at;
  }
  std::erase_if(chains, [](const CheckChain& chain) { return chain.checks.empty(); });
  return chains;
}

std::vector<const Check*> datedBy(const Records& records) {
  std::vector<const Check*> by(records.checks.size());
  for (const CheckChain& chain : chainsOf(records))
    for (const Check* check : chain.checks)
      by[static_cast<std::size_t>(check - records.checks.data())] = &chain.datedFirst();
  return by;
}

// A check that is written at once is made when it is written, any other before it is written; and lines are
// written in the order of their numbers, whatever the clock said.
bool surelyAfter(const CheckChain& pass, const CheckChain& other) {
  const Check& last_dated = *dated(other).back();
  const std::int64_t passed = instantOf(pass.earliest()), then = instantOf(other.latest());
  if (pass.writtenAtOnce()) {
    if (pass.first().number > last_dated.number) return true;
    return !pass.clock_was_ahead && passed > then && passed <= instantOf(writtenAt(last_dated));
  }
  if (other.writtenAtOnce() && other.clock_went_back) return false;  // nobody knows when that was
  return passed > then;
}

}  // namespace stopwalk::inspection
