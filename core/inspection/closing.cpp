#include "core/inspection/closing.h"

#include <algorithm>
#include <ranges>
#include <set>

#include "core/inspection/check_rules.h"
#include "core/inspection/person.h"

namespace stopwalk::inspection {
namespace {

struct Failure {
  const CheckChain* chain = nullptr;
  const Check* check = nullptr;
};

// One of two people surely is another than who found it, whoever that was.
bool isPassedByTwo(const Failure& failure, const Chains& chains, const Closing& closing) {
  if (!closing.by_another || !nameOf(failure.check->inspector).empty()) return false;
  Closing by_anybody = closing;
  by_anybody.by_another = false;
  std::set<std::string> people;
  for (const CheckChain* pass : chains) {
    const std::string& by = pass->first().inspector;
    if (std::ranges::all_of(pass->checks, [&](const Check* c) { return c->inspector == by; }) &&
        !whyLeftOpen(*pass, *failure.chain, *failure.check, by_anybody))
      people.insert(by);
  }
  return std::ranges::any_of(people, [&](const std::string& one) {
    return std::ranges::any_of(people,
                               [&](const std::string& other) { return !maybeSamePerson(one, other); });
  });
}

std::vector<Failure> openFailures(const Chains& chains, const Closing& closing) {
  std::vector<Failure> open;
  for (const CheckChain* chain : chains)
    for (const Check* check : chain->checks)
      if (check->result == Result::Fail &&
          std::ranges::none_of(
              std::views::reverse(chains),
              [&](const CheckChain* other) { return !whyLeftOpen(*other, *chain, *check, closing); }) &&
          !isPassedByTwo({chain, check}, chains, closing))
        open.push_back({chain, check});
  return open;
}

// As a rule that which was found last.
const Failure& lastOf(const std::vector<Failure>& open) {
  const Failure* last = &open.front();
  for (const Failure& one : open)
    if (!surelyAfter(*last->chain, *one.chain)) last = &one;
  return *last;
}

// Whether a pass was written, or is said to have been made, after a failure.
bool mayBeAfter(const CheckChain& pass, const Check& failure) {
  return pass.said().number > failure.number || failure.is_undated ||
         instantOf(pass.earliest()) > instantOf(failure.at);
}

// Of what the layout does not have looking will do only where it was no stop when it failed and when it
// passed.
bool mustBePressed(const CheckChain& pass, const Check& failure, const DeviceNow* now) {
  return isOfStop(pass, now) || (!now && !failure.no_stop);
}

}  // namespace

// A machine that it stops no longer may only have another id now.
std::vector<std::string> machinesToTest(const std::vector<std::string>& failed, const DeviceNow* now) {
  if (!now) return failed;
  const bool are_known = std::ranges::all_of(failed, [&](const std::string& machine) {
    return std::ranges::find(now->machines, machine) != now->machines.end();
  });
  return failed.empty() || !are_known ? now->machines : failed;
}

std::optional<LeftOpen> whyLeftOpen(const CheckChain& pass, const CheckChain& failed, const Check& failure,
                                    const Closing& closing) {
  const bool is_stop = mustBePressed(pass, failure, closing.now);
  if (!pass.passedThroughout(is_stop))
    return workedAsAsked(pass.said(), is_stop) ? LeftOpen::Correction
           : is_stop                           ? LeftOpen::NotPressed
                                               : LeftOpen::NotSeen;
  if (closing.reliance.doubt(pass, closing.now)) return LeftOpen::InDoubt;
  if (is_stop && !notNamed(pass, machinesToTest(failure.machines, closing.now)).empty())
    return LeftOpen::NotNamed;
  if (!surelyAfter(pass, failed)) return LeftOpen::NotSurelyAfter;
  const auto foundIt = [&](const Check* c) { return maybeSamePerson(c->inspector, failure.inspector); };
  if (closing.by_another && std::ranges::any_of(pass.checks, foundIt)) return LeftOpen::SamePerson;
  return std::nullopt;
}

std::optional<FailedDevice> openFailure(const Chains& chains, const Closing& closing) {
  const std::vector<Failure> open = openFailures(chains, closing);
  if (open.empty()) return std::nullopt;
  const Failure& last = lastOf(open);
  const auto dayOf = [](const Failure& f) {
    return f.check->is_undated ? kUnreadDay : f.chain->latest().date;
  };
  return FailedDevice{last.check->device,
                      dayOf(last),
                      last.check->number,
                      last.check->inspector,
                      std::ranges::min(open | std::views::transform(dayOf)),
                      isRemoved(chains, closing.reliance),
                      last.check->machines,
                      last.check->no_stop};
}

bool isFinderKnown(const FailedDevice& failed) {
  return !nameOf(failed.found_by).empty();
}

std::string whoElse(const FailedDevice& failed) {
  return isFinderKnown(failed)
             ? "another person than " + failed.found_by
             : "another person than who found it, " + kUnreadName + ": by two different people, a check each";
}

bool isRemoved(const Chains& chains, const Reliance& reliance) {
  const auto asks = [](const Check* c) { return c->result == Result::Fail || c->corrective; };
  // Whoever checked it found it there, and nobody fails or mends what is gone.
  const auto isOfItsTime = [&](const CheckChain* chain) {
    return !chain->said().removed || std::ranges::any_of(chain->checks, asks);
  };
  return std::ranges::any_of(chains, [&](const CheckChain* removed) {
    return removed->said().removed && !reliance.doubt(*removed, nullptr) &&
           std::ranges::all_of(chains, [&](const CheckChain* other) {
             return !isOfItsTime(other) || surelyAfter(*removed, *other);
           });
  });
}

std::optional<NotCounted> lookNotCounted(const CheckChain& pass, const Closing& closing) {
  if (const auto in_doubt = closing.reliance.lookNotCounted(pass, closing.now)) return in_doubt;
  const auto mayBeLater = [&](const CheckChain* removal) { return !surelyAfter(pass, *removal); };
  if (!closing.now || std::ranges::none_of(closing.removals, mayBeLater)) return std::nullopt;
  return NotCounted{pass.said().number, pass.day(), Doubt::TakenAway};
}

std::optional<NotCounted> notCounted(const CheckChain& pass, const Closing& closing) {
  const auto look = lookNotCounted(pass, closing);
  return look ? look : closing.reliance.notCounted(pass, closing.now);
}

std::vector<ShortOfPass> shortOf(const Chains& chains, const Closing& closing) {
  std::vector<ShortOfPass> all;
  const std::vector<Failure> open = openFailures(chains, closing);
  const auto failed = openFailure(chains, closing);
  for (const CheckChain* chain : chains) {
    if (chain->said().result != Result::Pass) continue;
    ShortOfPass one{chain->said().number, notCounted(*chain, closing)};
    if (failed && mayBeAfter(*chain, *lastOf(open).check)) {
      one.left_open = whyLeftOpen(*chain, *lastOf(open).chain, *lastOf(open).check, closing);
      one.failed = failed;
      if (one.left_open == LeftOpen::NotNamed)
        one.not_named = notNamed(*chain, machinesToTest(failed->machines, closing.now));
    }
    if (one.not_counted || one.left_open) all.push_back(one);
  }
  return all;
}

std::string reasonOf(const ShortOfPass& pass) {
  switch (pass.left_open.value()) {
    case LeftOpen::Correction:
      return "a correction undoes no failure";
    case LeftOpen::NotPressed:
      return "it was not pressed, or did not stay in, or what it stops did not stop or stay stopped";
    case LeftOpen::InDoubt:
      return "this check counts for nothing: " + reasonOf(*pass.not_counted);
    case LeftOpen::NotSeen:
      return "it does not say that it was looked at";
    case LeftOpen::NotNamed:
      return "it did not test " + listed(pass.not_named);
    case LeftOpen::NotSurelyAfter:
      return "by the times given it is not sure that this was after check " +
             std::to_string(pass.failed->check);
    case LeftOpen::SamePerson:
      return isFinderKnown(*pass.failed)
                 ? "another person than " + pass.failed->found_by + ", who found it, is to pass it"
                 : "it was found by " + kUnreadName +
                       ": two different people are to pass it, in a check each";
  }
  return "";
}

std::string clauseOf(const ShortOfPass& pass) {
  std::string text;
  if (pass.not_counted) text = "counts for nothing: " + reasonOf(*pass.not_counted);
  if (pass.left_open && pass.left_open != LeftOpen::InDoubt)
    text += (text.empty() ? "" : "; ") + ("leaves the failure open: " + reasonOf(pass));
  return text;
}

}  // namespace stopwalk::inspection
