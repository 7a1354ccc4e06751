#include "core/inspection/check_chain.h"

#include <algorithm>
#include <iterator>
#include <map>
#include <optional>
#include <ranges>

#include "core/inspection/check_rules.h"
#include "core/inspection/schedule.h"

namespace stopwalk::inspection {
namespace {

// What says when it was: the first, and corrections that were given a time of their own. Another correction's
// time is that of its writing.
std::vector<const Check*> dated(const CheckChain& chain) {
  std::vector<const Check*> all = {chain.checks.front()};
  for (const Check* check : chain.checks)
    if (check->entered && check != all.front()) all.push_back(check);
  if (all.size() > 1 && all.front()->is_undated) all.erase(all.begin());
  return all;
}

// Where a line is not as it was written, that the time was filled in is not known either.
bool mayBeFilledIn(const Check& check, const Records& records) {
  if (check.round <= records.unsure_to && records.unsure_to != 0) return true;
  const Round* round = records.findRound(check.round);
  return round && round->entered && instantOf(round->at) == instantOf(check.at);
}

// When each record was written, in the order of the lines.
struct Line {
  std::size_t number = 0;
  std::int64_t written = 0;
};
std::vector<Line> linesOf(const Records& records) {
  std::vector<Line> rounds, checks, lines;
  for (const Round& r : records.rounds) rounds.push_back({r.number, instantOf(writtenAt(r))});
  for (const Check& c : records.checks) checks.push_back({c.number, instantOf(writtenAt(c))});
  std::ranges::merge(rounds, checks, std::back_inserter(lines), {}, &Line::number, &Line::number);
  return lines;
}

// Sees whether the clock was right when the first of a chain was written.
void tellClocks(std::vector<CheckChain>& chains, const std::vector<Line>& lines) {
  std::map<std::size_t, CheckChain*> of;
  for (CheckChain& chain : chains) of[chain.first().number] = &chain;
  const auto see = [&](const Line& line, auto tell) {
    if (const auto at = of.find(line.number); at != of.end()) tell(*at->second);
  };
  std::optional<std::int64_t> latest_before, earliest_behind;
  for (const Line& line : lines) {
    see(line, [&](CheckChain& c) { c.clock_went_back = latest_before && line.written < *latest_before; });
    latest_before = std::max(latest_before, std::optional(line.written));
  }
  for (const Line& line : std::views::reverse(lines)) {
    see(line, [&](CheckChain& c) { c.clock_was_ahead = earliest_behind && *earliest_behind < line.written; });
    earliest_behind = std::min(earliest_behind.value_or(line.written), line.written);
  }
}

bool isEarlier(const Check* a, const Check* b) {
  return instantOf(a->at) < instantOf(b->at);
}

}  // namespace

bool CheckChain::failedOnce() const {
  return std::ranges::any_of(checks, [](const Check* c) { return c->result == Result::Fail; });
}

bool CheckChain::passedThroughout(bool is_stop) const {
  return std::ranges::all_of(checks, [is_stop](const Check* c) { return workedAsAsked(*c, is_stop); });
}

bool CheckChain::isOfNoStop() const {
  return std::ranges::all_of(checks, &Check::no_stop);
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
  for (std::size_t i = 0; i < corrects.size(); ++i) {
    first[i] = corrects[i] == i ? i : first[corrects[i]];
    chains[first[i]].checks.push_back(&records.checks[i]);
  }
  std::erase_if(chains, [](const CheckChain& chain) { return chain.checks.empty(); });
  for (CheckChain& chain : chains) {
    chain.not_after = notAfter(chain.first(), records);
    for (const Check* check : dated(chain))
      chain.not_after = std::max(chain.not_after, notAfter(*check, records));
  }
  tellClocks(chains, linesOf(records));
  return chains;
}

std::int64_t notAfter(const Check& check, const Records& records) {
  if (!check.entered) return instantOf(check.at);
  if (mayBeFilledIn(check, records)) return std::max(instantOf(check.at), instantOf(*check.entered));
  return instantOf(check.at) + (check.at.second % 60 == 0 ? 59 : 0);
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
  const std::int64_t passed = instantOf(pass.earliest()), then = other.not_after;
  if (pass.writtenAtOnce()) {
    if (pass.first().number > last_dated.number) return true;
    return !pass.clock_was_ahead && passed > then && passed <= instantOf(writtenAt(last_dated));
  }
  if (other.writtenAtOnce() && other.clock_went_back) return false;  // nobody knows when that was
  return passed > then;
}

}  // namespace stopwalk::inspection
