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

std::string listed(const std::vector<std::string>& machines) {
  std::string list;
  for (const std::string& machine : machines) list += (list.empty() ? "" : ", ") + machine;
  return list;
}

std::string reasonOf(const NotCounted& pass) {
  switch (pass.why) {
    case Doubt::NotAsWritten:
      return "the records are not as they were written";
    case Doubt::AfterToday:
      return "it is dated, or was entered, on a day that is still to come";
    case Doubt::TakenAway:
      return "it was made before the device was recorded as taken away";
    case Doubt::NotNamed:
      break;  // below
  }
  return "it did not test " + listed(pass.machines) + ", which the device stops now";
}

std::string clauseOf(const NotCounted& pass) {
  return "check " + std::to_string(pass.check) + " of " + dayText(pass.on) +
         " does not count: " + reasonOf(pass);
}

Reliance::Reliance(const Records& records, const Now& now)
    : now_(now),
      unsure_to_(records.unsure_to),
      sure_since_(unsure_to_ == 0 ? std::nullopt : writtenBehind(unsure_to_, records)) {}

// What a line said that is no longer as it was written nobody knows: it may have been a failure of any
// device, or have taken a pass back: what makes good after it must be able to close a failure, or say that
// the device is gone. It was made before it was written, and so before the next line was.
bool Reliance::isAfterDoubt(const CheckChain& pass, const DeviceNow* now) const {
  if (unsure_to_ == 0) return true;
  if (pass.first().number <= unsure_to_) return false;
  if (!pass.said().removed && !pass.passedThroughout(isOfStop(pass, now))) return false;
  const std::int64_t since = sure_since_.value_or(instantOf(writtenAt(pass.first())));  // it is that line
  return pass.writtenAtOnce() || instantOf(pass.earliest()) > since;
}

bool Reliance::isToCome(const CheckChain& chain) const {
  return std::ranges::any_of(chain.checks, [&](const Check* c) {
    return now_.isToCome(c->at) || now_.isToCome(writtenAt(*c));
  });
}

// When something was tested of which only the correction can be read, nobody knows.
std::optional<Doubt> Reliance::doubt(const CheckChain& pass, const DeviceNow* now) const {
  if (pass.first().corrects) return Doubt::NotAsWritten;
  if (!isAfterDoubt(pass, now)) return Doubt::NotAsWritten;
  if (isToCome(pass)) return Doubt::AfterToday;
  return std::nullopt;
}

std::optional<NotCounted> Reliance::lookNotCounted(const CheckChain& pass, const DeviceNow* now) const {
  const auto why = doubt(pass, now);
  return why ? std::optional(NotCounted{pass.said().number, pass.day(), *why}) : std::nullopt;
}

std::optional<NotCounted> Reliance::notCounted(const CheckChain& pass, const DeviceNow* now) const {
  if (const auto look = lookNotCounted(pass, now); look || !now || !now->is_stop) return look;
  const std::vector<std::string> missing = notNamed(pass, now->machines);
  if (missing.empty()) return std::nullopt;
  return NotCounted{pass.said().number, pass.day(), Doubt::NotNamed, missing};
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
