#include "core/inspection/check_rules.h"

#include <algorithm>

#include "core/inspection/check_chain.h"
#include "core/inspection/schedule.h"

namespace stopwalk::inspection {

std::span<const Tried> mayBeTried(bool is_stop) {
  static constexpr Tried kLook[] = {Tried::Seen, Tried::Clear, Tried::Legible};
  return is_stop ? std::span<const Tried>(kTried) : std::span<const Tried>(kLook);
}

std::optional<Tried> contradictsPass(const Check& check, bool latches) {
  if (check.result != Result::Pass) return std::nullopt;
  for (const Tried test :
       {Tried::Clear, Tried::Legible, Tried::StaysStoppedReleased, Tried::StaysStoppedPower})
    if (testedFor(check, test) == false) return test;
  if (latches && testedFor(check, Tried::Latches) == false) return Tried::Latches;
  return std::nullopt;
}

std::optional<Date> overBeforeItBegan(const Check& check, const Records& records) {
  Date day = check.at.date;
  if (const Check* old = check.corrects ? records.findCheck(*check.corrects, check.device) : nullptr)
    day = std::min(day, datedBy(records)[static_cast<std::size_t>(old - records.checks.data())]->at.date);
  const auto tagged_until = check.tagged_out ? check.tagged_out->until : std::nullopt;
  const auto due = check.corrective ? check.corrective->due : std::nullopt;
  for (const auto& until : {tagged_until, due})
    if (until && *until < day) return until;
  return std::nullopt;
}

bool workedAsAsked(const Check& check, bool is_stop) {
  return is_stop ? passedPressed(check) && !contradictsPass(check, true) : passedSeen(check);
}

std::optional<CorrectionFault> correctionFault(const Records& records, std::size_t number,
                                               const std::string& device, std::size_t round) {
  const Check* old = records.findCheck(number, device);
  if (!old) old = records.findCheck(number);
  if (!old) return CorrectionFault{CannotCorrect::Unknown, {}, 0};
  if (old->device != device) return CorrectionFault{CannotCorrect::OtherDevice, old->device, 0};
  const auto place = static_cast<std::size_t>(old - records.checks.data());
  if (const std::size_t its = roundsOf(records)[place]; its != round)
    return CorrectionFault{CannotCorrect::OtherRound, old->device, 0, its};
  if (const std::size_t by = correctedBy(records)[place])
    return CorrectionFault{CannotCorrect::Corrected, old->device, by};
  return std::nullopt;
}

}  // namespace stopwalk::inspection
