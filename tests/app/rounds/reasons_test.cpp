// Why a pass does not do what it seems to: the window and the command line say the same.
#include "app/rounds/reasons.h"

#include <gtest/gtest.h>

#include "app/rounds/due_rows.h"

namespace stopwalk::rounds {
namespace {

using inspection::Doubt;
using inspection::LeftOpen;

const inspection::Date kDay = *inspection::parseDate("2026-03-02");

inspection::NotCounted notCounted(Doubt why) {
  return {3, kDay, why, {"saw", "planer"}};
}

TEST(Reasons, AreThoseOfTheCommandLine) {
  for (const Doubt why : inspection::kDoubts)
    EXPECT_EQ(reasonText(notCounted(why), {"saw", "planer"}).toStdString(),
              inspection::reasonOf(notCounted(why)));
  for (const LeftOpen why : inspection::kLeftOpen) {
    const inspection::ShortOfPass pass{
        3,
        notCounted(Doubt::AfterToday),
        why,
        inspection::FailedDevice{.device = "saw/stop", .check = 2, .found_by = "Ada Example"},
        {"saw", "planer"}};
    EXPECT_EQ(reasonText(pass, {"saw", "planer"}).toStdString(), inspection::reasonOf(pass));
  }
}

// The day that is still to come may be that of the entering alone.
TEST(Reasons, SpeakOfTheDayOfTheEnteringToo) {
  const std::string reason = inspection::reasonOf(notCounted(Doubt::AfterToday));
  EXPECT_NE(reason.find("dated, or was entered,"), std::string::npos) << reason;
}

TEST(Reasons, OfALineThatIsNotAsItWasWrittenAreSaidInTheWindowsOwnWords) {
  const std::string first =
      files::recordLine(inspection::Round{0, {kDay}, "Ada Example", "all", {}, {}}, 1, files::kNoLineBefore);
  const std::string second = files::recordLine(inspection::Round{0, {kDay}, "Bo Example", "all", {}, {}}, 2,
                                               files::endOfLog(first).head);
  const auto saidOf = [](const std::string& log) {
    const auto bad = files::readInspectionLog(log).bad;
    return bad.empty() ? "" : reasonText(bad.front().what).toStdString();
  };
  std::string changed = first;
  changed.replace(changed.find("Ada"), 3, "Bea");
  EXPECT_EQ(saidOf(first + second), "");
  EXPECT_EQ(saidOf(changed + second), "it was changed after it was written");
  EXPECT_EQ(saidOf("{}\n" + first), "it does not end as a record does");
  EXPECT_EQ(saidOf(second), "lines before it were changed, removed, put in or moved");
  EXPECT_EQ(saidOf(first.substr(0, first.size() - 1) + second), "the line break behind it is missing");
  EXPECT_EQ(saidOf("{\n" + first.substr(1)),
            "the file was rewritten by a formatter: one record a line is expected; take the file back from a "
            "copy");
  std::string wide;
  for (const char c : first) wide += c, wide += '\0';
  EXPECT_EQ(
      saidOf(wide),
      "the file was saved as UTF-16: one record a line is expected, as UTF-8; take the file back from a "
      "copy");
  EXPECT_EQ(reasonText(files::Wrong::NoRecord), "what it says is no record of this format, or more than one");
}

TEST(WhatIsDueNext, IsTheDayOfAnActionToo) {
  inspection::Records records;
  inspection::Check check;
  check.number = 2;
  check.device = "saw/stop";
  check.at.date = kDay;
  check.result = inspection::Result::NotTested;
  check.corrective = {"clear it", "Bo Example", inspection::parseDate("2026-03-20")};
  records.checks.push_back(check);
  const DueView view = dueView({}, {}, records, {}, inspection::openActions(records, {kDay}), {}, kDay);
  EXPECT_EQ(view.next, inspection::parseDate("2026-03-20"));
  EXPECT_EQ(summaryOf(view, 0), "Nothing is due until 20 Mar 2026.");
}

}  // namespace
}  // namespace stopwalk::rounds
