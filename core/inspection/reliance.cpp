#include "core/inspection/reliance.h"

#include <algorithm>

namespace stopwalk::inspection {
namespace {

// When the first record behind a line was written; none: there is none.
std::optional<std::int64_t> writtenBehind(std::size_t line, const Records& records) {
  std::size_t number = 0;
  std::optional<std::int64_t> written;
  const auto see = [&](const auto& all) {
    const auto first = std::ranges::upper_bound(all, line, {}, [](const auto& r) { return r.number; });
    if (first == all.end() || (written && number < first->number)) return;
    number = first->number;
    written = instantOf(writtenAt(*first));
  };
  see(records.rounds);
  see(records.checks);
  return written;
}

}  // namespace

std::string reasonOf(const NotCounted& pass) {
  switch (pass.why) {
    case Doubt::NotAsWritten:
      return "the records are not as they were written";
    case Doubt::AfterToday:
      return "it is dated, or was entered, on a day that is still to come";
    case Doubt::NotNamed:
      break;  // below
  }
  std::string machines;
  for (const std::string& machine : pass.machines) machines += (machines.empty() ? "" : ", ") + machine;
  return "it did not test " + machines + ", which the device stops now";
}

std::string clauseOf(const NotCounted& pass) {
  return "check " + std::to_string(pass.check) + " of " + dateText(pass.on) +
         " does not count: " + reasonOf(pass);
}

Reliance::Reliance(const Records& records, Date today)
    : today_(today),
      unsure_to_(records.unsure_to),
      sure_since_(unsure_to_ == 0 ? std::nullopt : writtenBehind(unsure_to_, records)) {}

// What a line said that is no longer as it was written nobody knows: it may have been a failure of any
// device, or have taken a pass back: what makes good after it must be able to close a failure, or say that
// the device is gone. It was made before it was written, and so before the next line was.
bool Reliance::isAfterDoubt(const CheckChain& pass) const {
  if (unsure_to_ == 0) return true;
  if (pass.first().number <= unsure_to_ || !(pass.said().removed || pass.passedThroughout())) return false;
  return pass.writtenAtOnce() || instantOf(pass.earliest()) > sure_since_.value();
}

// When something was tested of which only the correction can be read, nobody knows.
std::optional<Doubt> Reliance::doubt(const CheckChain& pass) const {
  if (pass.first().corrects) return Doubt::NotAsWritten;
  if (!isAfterDoubt(pass)) return Doubt::NotAsWritten;
  const auto isToCome = [&](const Check* c) { return c->at.date > today_ || writtenAt(*c).date > today_; };
  if (std::ranges::any_of(pass.checks, isToCome)) return Doubt::AfterToday;
  return std::nullopt;
}

std::optional<NotCounted> Reliance::notCounted(const CheckChain& pass, const DeviceNow* now) const {
  NotCounted one{pass.said().number, pass.earliest().date};
  if (const auto why = doubt(pass)) {
    one.why = *why;
    return one;
  }
  if (now) one.machines = notNamed(pass, now->machines);
  one.why = Doubt::NotNamed;
  return one.machines.empty() ? std::nullopt : std::optional(one);
}

std::vector<std::string> notNamed(const CheckChain& pass, const std::vector<std::string>& machines) {
  std::vector<std::string> missing;
  for (const std::string& machine : machines)
    if (!std::ranges::all_of(pass.checks, [&](const Check* c) {
          return std::ranges::find(c->machines, machine) != c->machines.end();
        }))
      missing.push_back(machine);
  return missing;
}

}  // namespace stopwalk::inspection
