// How far rounds have come, and what may be written down.
#include "core/inspection/round_progress.h"

#include <gtest/gtest.h>

#include "core/inspection/check_rules.h"

namespace stopwalk::inspection {
namespace {

Round roundOf(std::size_t number, std::vector<std::string> devices) {
  Round round;
  round.number = number;
  round.devices = std::move(devices);
  return round;
}

Check checkOf(std::size_t number, std::size_t round, const std::string& device, Result result) {
  Check check;
  check.number = number;
  check.round = round;
  check.device = device;
  check.result = result;
  return check;
}

// What was last said of a device in a round; none: nullptr.
const Check* checkIn(const Records& records, std::size_t round, const std::string& device) {
  const auto checks = checksIn(records, round);
  const auto at = checks.find(device);
  return at == checks.end() ? nullptr : at->second;
}

Records twoRounds() {
  Records records;
  records.rounds = {roundOf(1, {"a", "b"}), roundOf(4, {"c", "a"})};
  records.checks = {checkOf(2, 1, "a", Result::Fail), checkOf(3, 1, "b", Result::Pass),
                    checkOf(5, 4, "a", Result::Pass), checkOf(6, 1, "a", Result::Pass)};
  return records;
}

TEST(RoundProgress, WhatHasNoCheckInTheRoundIsStillToCome) {
  const Records records = twoRounds();
  EXPECT_TRUE(stillToCheck(records.rounds[0], records).empty());
  EXPECT_EQ(stillToCheck(records.rounds[1], records), std::vector<std::string>{"c"});
}

TEST(RoundProgress, TheLastCheckOfADeviceInARoundCounts) {
  const Records records = twoRounds();
  ASSERT_NE(checkIn(records, 1, "a"), nullptr);
  EXPECT_EQ(checkIn(records, 1, "a")->number, 6u);
  EXPECT_EQ(checkIn(records, 4, "c"), nullptr);
}

TEST(RoundProgress, ACorrectionOfAnEarlierCheckIsNoNewerOne) {
  Records records;
  records.rounds = {roundOf(1, {"a"})};
  records.checks = {checkOf(2, 1, "a", Result::Pass), checkOf(3, 1, "a", Result::Fail),
                    checkOf(4, 1, "a", Result::Pass)};
  records.checks[2].corrects = 2;
  EXPECT_EQ(checkIn(records, 1, "a")->result, Result::Fail);
  records.checks.push_back(checkOf(5, 1, "a", Result::NotTested));
  records.checks[3].corrects = 3;
  EXPECT_EQ(checkIn(records, 1, "a")->number, 5u);
}

TEST(RoundProgress, UnfinishedRoundsComeNewestFirst) {
  Records records = twoRounds();
  records.rounds.push_back(roundOf(7, {"d"}));
  const auto open = unfinishedRounds(records);
  ASSERT_EQ(open.size(), 2u);
  EXPECT_EQ(open[0]->number, 7u);
  EXPECT_EQ(open[1]->number, 4u);
}

TEST(CheckRules, WhatDoesNotStayStoppedContradictsAPassOnly) {
  for (const Tried test : kTried) {
    Check check = checkOf(1, 1, "a", Result::Pass);
    check.tested = {{test, false}};
    const bool contradicts = test == Tried::Clear || test == Tried::Legible ||
                             test == Tried::StaysStoppedReleased || test == Tried::StaysStoppedPower;
    EXPECT_EQ(contradictsPass(check), contradicts ? std::optional(test) : std::nullopt) << word(test);
    check.result = Result::Fail;
    EXPECT_EQ(contradictsPass(check), std::nullopt);
    check = checkOf(1, 1, "a", Result::Pass);
    check.tested = {{test, true}};
    EXPECT_EQ(contradictsPass(check), std::nullopt);
  }
}

// As older checks say it in one, and as it is said apart.
TEST(CheckRules, WhatIsClearAndLegibleWasSeen) {
  Check check = checkOf(1, 1, "a", Result::Pass);
  for (const Tried test : kTried)
    if (test != Tried::Seen) check.tested.emplace_back(test, true);
  EXPECT_TRUE(passedInFull(check));
  check.tested.erase(check.tested.begin());
  EXPECT_FALSE(passedInFull(check)) << "nothing is said of what is in its way";
  EXPECT_EQ(missingInFull(check), std::vector<Tried>{Tried::Clear});
  check.tested.insert(check.tested.begin(), {Tried::Seen, true});
  EXPECT_TRUE(passedInFull(check));
  check.tested.emplace_back(Tried::Clear, false);
  EXPECT_FALSE(passedInFull(check));
  EXPECT_FALSE(passedPressed(check));
}

TEST(CheckRules, WhatDoesNotStayInContradictsAPassOfAKindThatLatches) {
  Check check = checkOf(1, 1, "a", Result::Pass);
  for (const Tried test : kTried) check.tested.emplace_back(test, test != Tried::Latches);
  EXPECT_EQ(contradictsPass(check, true), Tried::Latches);
  EXPECT_EQ(contradictsPass(check, false), std::nullopt) << "a cord need not stay";
  EXPECT_FALSE(passedInFull(check));
  EXPECT_TRUE(passedInFull(check, false));
  EXPECT_TRUE(passedPressed(check)) << "it stopped";
  check.tested[5].second = true;
  ASSERT_EQ(check.tested[5].first, Tried::Latches);
  EXPECT_EQ(contradictsPass(check, true), std::nullopt);
  EXPECT_TRUE(passedInFull(check));
  check.tested.erase(check.tested.begin() + 5);
  EXPECT_TRUE(passedInFull(check)) << "not every kind latches";
}

TEST(CheckRules, ACorrectionIsOfAStandingCheckOfTheSameDevice) {
  Records records = twoRounds();
  EXPECT_EQ(correctionFault(records, 2, "a", 1), std::nullopt);
  EXPECT_EQ(correctionFault(records, 1, "a", 1), (CorrectionFault{CannotCorrect::Unknown, "", 0}));
  EXPECT_EQ(correctionFault(records, 2, "b", 1), (CorrectionFault{CannotCorrect::OtherDevice, "a", 0}));
  records.checks.push_back(checkOf(8, 1, "a", Result::Fail));
  records.checks.back().corrects = 2;
  EXPECT_EQ(correctionFault(records, 2, "a", 1), (CorrectionFault{CannotCorrect::Corrected, "a", 8}));
  EXPECT_EQ(correctionFault(records, 8, "a", 1), std::nullopt);
}

// As logs may hold it that were written before this was refused.
Records crossCorrected() {
  Records records;
  records.rounds = {roundOf(1, {"a"}), roundOf(3, {"a", "b"})};
  records.checks = {checkOf(2, 1, "a", Result::Fail), checkOf(4, 3, "a", Result::Pass)};
  records.checks[1].corrects = 2;
  return records;
}

TEST(RoundProgress, ACorrectionTicksTheRoundOfWhatItCorrects) {
  const Records records = crossCorrected();
  EXPECT_EQ(stillToCheck(records.rounds[1], records), (std::vector<std::string>{"a", "b"}));
  EXPECT_TRUE(stillToCheck(records.rounds[0], records).empty());
  ASSERT_EQ(unfinishedRounds(records).size(), 1u);
  EXPECT_EQ(unfinishedRounds(records)[0]->number, 3u);
  EXPECT_EQ(checkIn(records, 3, "a"), nullptr);
  EXPECT_EQ(checkIn(records, 1, "a")->number, 4u);
}

TEST(CheckRules, ACorrectionIsOfTheSameRound) {
  const Records records = twoRounds();
  EXPECT_EQ(correctionFault(records, 2, "a", 4), (CorrectionFault{CannotCorrect::OtherRound, "a", 0, 1}));
  EXPECT_EQ(correctionFault(crossCorrected(), 4, "a", 1), std::nullopt);
  EXPECT_EQ(correctionFault(crossCorrected(), 4, "a", 3),
            (CorrectionFault{CannotCorrect::OtherRound, "a", 0, 1}));
}

// What was to be done by a day may have been done since.
TEST(OverBeforeItBegan, IsHeldAgainstTheCheckThatIsCorrected) {
  Records records;
  Check fail;
  fail.number = 2, fail.device = "saw/stop", fail.result = Result::Fail;
  fail.at.date = *parseDate("2026-11-01");
  fail.corrective = Corrective{"mend it", "Bo Sample", parseDate("2026-11-10")};
  records.checks = {fail};
  EXPECT_FALSE(overBeforeItBegan(fail, {}));
  Check later = fail;
  later.number = 3, later.at.date = *parseDate("2026-11-27");
  EXPECT_EQ(overBeforeItBegan(later, records), parseDate("2026-11-10"));
  later.corrects = 2;
  EXPECT_FALSE(overBeforeItBegan(later, records));
  later.corrective->due = parseDate("2026-10-31");
  EXPECT_EQ(overBeforeItBegan(later, records), parseDate("2026-10-31"));
  later.corrective.reset();
  later.tagged_out = TagOut{"Bo Sample", parseDate("2026-10-31")};
  EXPECT_EQ(overBeforeItBegan(later, records), parseDate("2026-10-31"));
}

}  // namespace
}  // namespace stopwalk::inspection
