#pragma once

#include <optional>
#include <span>

#include "core/inspection/record.h"

// What may be written down as a check, whoever asks for it.
namespace stopwalk::inspection {

// Of one run. House rule: longer than any machine runs on.
inline constexpr double kMostRunDown_s = 3600;

// What may be tried at a device: what is no stop is looked at only.
std::span<const Tried> mayBeTried(bool is_stop);

// What was tried and was not so, though the check says that it passed; none: they agree. `latches`: the
// device is of a kind that stays in when pressed.
std::optional<Tried> contradictsPass(const Check& check, bool latches = false);

// The day until which its machine is tagged out, or something is to be done, where that is before the check,
// or before the one that it corrects; none: there is no such.
std::optional<Date> overBeforeItBegan(const Check& check, const Records& records);

// Whether it says that the device passed what closes a failure: a stop that it was worked, and nothing
// against that whatever its kind was then; what is no stop that it was looked at.
bool workedAsAsked(const Check& check, bool is_stop);

// Why a check cannot take the place of another.
enum class CannotCorrect {
  Unknown,      // there is no check of that number
  OtherDevice,  // it is of `device`
  OtherRound,   // it is of `round`
  Corrected     // by the check `by` already
};
struct CorrectionFault {
  CannotCorrect why = CannotCorrect::Unknown;
  std::string device;  // that the old one is of
  std::size_t by = 0;
  std::size_t round = 0;  // that the old one is of
  bool operator==(const CorrectionFault&) const = default;
};
// None: a check of `device` in `round` may correct that of the number.
std::optional<CorrectionFault> correctionFault(const Records& records, std::size_t number,
                                               const std::string& device, std::size_t round);

}  // namespace stopwalk::inspection
