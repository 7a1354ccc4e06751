#pragma once

#include <cstdint>
#include <vector>

#include "core/inspection/record.h"

namespace stopwalk::inspection {

// A check with those that correct it, in the order of writing. It counts where the first stands, and says
// what the last says. What was entered afterwards, such as from paper, is of the time that it gives.
struct CheckChain {
  std::vector<const Check*> checks;
  std::int64_t not_after = 0;    // when at the latest what they tell of was, in seconds as of instantOf()
  bool clock_was_ahead = false;  // a record that was written after the first was written at an earlier time
  bool clock_went_back = false;  // the first gives an earlier time than a record that was written before it

  const Check& first() const { return *checks.front(); }
  const Check& said() const { return *checks.back(); }
  bool failedOnce() const;
  // Whoever first wrote it and whoever corrected it say that it was worked, and stopped, and nobody that it
  // did not stay in: of what kind it was then is not on record. Of what is no stop, that it was looked at.
  bool passedThroughout(bool is_stop = true) const;
  // Whether each of them says that the device was no stop.
  bool isOfNoStop() const;
  bool writtenAtOnce() const;
  // Of it and its dated corrections the one with the earliest time that can be read, if any can.
  const Check& datedFirst() const;
  // The first and the last of the times that they give.
  const Moment& earliest() const { return datedFirst().at; }
  const Moment& latest() const;
  bool isUndated() const { return datedFirst().is_undated; }
  // Of the first of those times, or kUnreadDay.
  Date day() const { return isUndated() ? kUnreadDay : earliest().date; }
};

// Of each check that corrects no other one, in the order of writing.
std::vector<CheckChain> chainsOf(const Records& records);

// For each check the one that says when that was: of its chain the earliest. In the order of
// `records.checks`.
std::vector<const Check*> datedBy(const Records& records);

// When at the latest that was, in seconds as of instantOf(). A typed time is of its whole minute. In a round
// that was walked on paper the time of the round itself is filled in where no other is given: of such a check
// nobody knows more than that it was made until it was entered.
std::int64_t notAfter(const Check& check, const Records& records);

// Whether `pass` was surely made after `other`: by the order of writing where that tells, for a clock may
// have been wrong, else by the times given. Of the same time: not surely.
bool surelyAfter(const CheckChain& pass, const CheckChain& other);

}  // namespace stopwalk::inspection
