// What is entered on a card: kept as it is, and recorded only where it says something.
#include "app/rounds/entered.h"

#include <gtest/gtest.h>

#include <QTemporaryDir>
#include <random>

#include "app/rounds/drafts.h"
#include "core/inspection/schedule.h"

namespace stopwalk::rounds {
namespace {

using inspection::Result;
using inspection::Tried;

Entered someEntered(std::mt19937& random) {
  const auto one_of = [&](int n) { return static_cast<int>(random() % static_cast<unsigned>(n)); };
  Entered e;
  for (const Tried test : inspection::kTried)
    if (one_of(2)) e.tested.emplace_back(test, one_of(2) == 1);
  if (const int r = one_of(5); r < 4) e.result = inspection::kResults[static_cast<std::size_t>(r)];
  for (int i = one_of(11); i > 0; --i) e.run_down << (one_of(5) ? runText(one_of(500) / 100.0) : "2,x");
  for (QString* text :
       {&e.note, &e.second, &e.action, &e.tagged_by, &e.tagged_until, &e.todo, &e.owner, &e.until})
    if (one_of(2)) *text = QString::fromUtf8("Ä \"quoted\" \\ %1").arg(one_of(100));
  return e;
}

TEST(Entered, IsReadBackAsItWasKept) {
  QTemporaryDir folder;
  std::mt19937 random(7);
  for (int i = 0; i < 200; ++i) {
    const Entered entered = someEntered(random);
    EXPECT_EQ(enteredIn(asText(entered)), entered) << i;
    const CardKey key{"shop.inspections.jsonl", 3, "2026-03-02T09:15:00+01:00", "lathe-1/bar",
                      static_cast<std::size_t>(i)};
    const Draft draft{entered, {"Ada \"Example\"", inspection::parseDate("2026-03-02"), "a visit"}};
    {
      QSettings settings(folder.filePath("s.ini"), QSettings::IniFormat);
      Drafts(settings).keep(key, draft);
    }
    QSettings settings(folder.filePath("s.ini"), QSettings::IniFormat);
    EXPECT_EQ(Drafts(settings).read(key).has_value(), entered != Entered()) << i;
    EXPECT_EQ(Drafts(settings).read(key).value_or(draft), draft) << i;
    CardKey other = key;
    other.records_file = "other.inspections.jsonl";
    EXPECT_FALSE(Drafts(settings).read(other));
    other = key;
    other.begun = "2026-03-02T09:16:00+01:00";
    EXPECT_FALSE(Drafts(settings).read(other));
  }
  EXPECT_EQ(enteredIn("no JSON {"), Entered());
}

TEST(Entered, WhatIsLongPastIsForgotten) {
  QTemporaryDir folder;
  QSettings settings(folder.filePath("s.ini"), QSettings::IniFormat);
  Drafts drafts(settings);
  Entered entered;
  entered.note = "sticks";
  const auto key = [](std::size_t round) { return CardKey{"shop.inspections.jsonl", round, "", "saw/stop"}; };
  drafts.keep(key(1), {entered, {"Ada Example", inspection::parseDate("2026-03-01"), ""}});
  drafts.keep(key(2), {entered, {"Ada Example", inspection::parseDate("2026-03-02"), ""}});
  drafts.forgetBefore(*inspection::parseDate("2026-03-02"));
  EXPECT_FALSE(drafts.read(key(1)));
  EXPECT_TRUE(drafts.read(key(2)));
}

TEST(Entered, ARunIsTypedWithAPointOrAComma) {
  EXPECT_EQ(runTyped("2.4"), 2.4);
  EXPECT_EQ(runTyped(" 2,45 s"), 2.45);
  EXPECT_EQ(runTyped("3600"), 3600);
  for (const char* wrong : {"", "x", "-1", "3600.1", "1,234.5", "2 4", "2.4 ms", "1e99", "nan", "2m"})
    EXPECT_FALSE(runTyped(wrong)) << wrong;
  EXPECT_EQ(enteredIn(R"({"run_down_s":[2.41,3]})").run_down, (QStringList{"2.41", "3"})) << "kept earlier";
}

TEST(Entered, ATagOutSaysByWhomAndUntilWhichDay) {
  Entered entered;
  entered.result = Result::Fail;
  entered.tagged_until = "2026-03-09";
  EXPECT_EQ(whatIsMissing(entered, false), "Say who tagged the machine out.");
  entered.tagged_by = "Bo Example";
  EXPECT_EQ(whatIsMissing(entered, false), "");
  inspection::Check check;
  put(entered, check);
  EXPECT_EQ(check.tagged_out, (inspection::TagOut{"Bo Example", inspection::parseDate("2026-03-09")}));
  EXPECT_EQ(enteredOf(check).tagged_until, entered.tagged_until);
  entered.tagged_until = "Monday";
  EXPECT_TRUE(whatIsMissing(entered, false).startsWith("Until Monday")) << "no day is guessed or left out";
}

// It would be recorded as nobody, and nobody would be told.
TEST(Entered, ATickInThePlaceOfANameIsAskedFor) {
  const QString tick = QString::fromUtf8("\u2713");
  Entered entered;
  entered.result = Result::Fail;
  entered.tagged_by = tick;
  EXPECT_EQ(whatIsMissing(entered, false), "Say who tagged the machine out: " + tick + " is no name.");
  entered.result = Result::NotTested;
  EXPECT_TRUE(whatIsMissing(entered, false).startsWith("Say who tagged")) << "whatever came of it";
  entered.tagged_by.clear();
  entered.owner = tick;
  EXPECT_EQ(whatIsMissing(entered, false), "Say who does what is still to be done: " + tick + " is no name.");
  entered.owner.clear();
  entered.second = tick;
  for (const Result result : inspection::kResults) {
    entered.result = result;
    entered.tested = {{Tried::Pressed, true}};
    EXPECT_TRUE(whatIsMissing(entered, false).startsWith("Say who the second person was")) << word(result);
  }
  entered.second = " ";
  EXPECT_EQ(whatIsMissing(entered, false), "");
}

TEST(Entered, WhatMustStayInAndDoesNotHasNotPassed) {
  Entered entered;
  entered.result = Result::Pass;
  entered.tested = {{Tried::Pressed, true}, {Tried::Latches, false}};
  EXPECT_TRUE(whatIsMissing(entered, true).contains("stay in")) << whatIsMissing(entered, true).toStdString();
  EXPECT_EQ(whatIsMissing(entered, false), "");
}

TEST(Entered, WhatIsInItsWayOrCannotBeReadHasNotPassed) {
  Entered entered;
  entered.result = Result::Pass;
  for (const Tried test : {Tried::Clear, Tried::Legible}) {
    entered.tested = {{test, false}, {Tried::Pressed, true}};
    EXPECT_TRUE(whatIsMissing(entered, false).endsWith("has not passed: choose the failure.")) << word(test);
    entered.tested[0].second = true;
    EXPECT_EQ(whatIsMissing(entered, false), "");
  }
}

TEST(Entered, NoPassIsRecordedThatDoesNotSayWhatWasTried) {
  std::mt19937 random(11);
  for (int i = 0; i < 500; ++i) {
    const Entered entered = someEntered(random);
    if (!whatIsMissing(entered, false).isEmpty()) continue;
    ASSERT_TRUE(entered.result);
    inspection::Check check;
    put(entered, check);
    EXPECT_EQ(check.result, *entered.result);
    if (check.result == Result::Pass) {
      EXPECT_FALSE(check.tested.empty());
      const bool pressed = inspection::testedFor(check, Tried::Pressed).value_or(false) ||
                           inspection::testedFor(check, Tried::PressedRunning).value_or(false);
      EXPECT_EQ(inspection::passedPressed(check), pressed) << "only what was ticked is claimed";
    }
    EXPECT_TRUE(check.result != Result::Pass ||
                (check.action.empty() && !check.corrective && !check.tagged_out));
    EXPECT_EQ(!check.action.empty() || check.corrective || check.tagged_out,
              check.result != Result::Pass && asksForMending(entered))
        << "nothing that was typed gets lost";
  }
}

}  // namespace
}  // namespace stopwalk::rounds
