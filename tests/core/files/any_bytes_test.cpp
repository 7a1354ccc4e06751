// Whatever bytes a log holds, it is read: no exception leaves its reading, and no failure is lost with it.
#include <gtest/gtest.h>

#include <random>

#include "core/files/inspection_log.h"
#include "tests/core/files/inspection_texts.h"

namespace stopwalk::files {
namespace {

using inspection::Result;

// Each function of a log's text, on the same.
void read(const std::string& text) {
  const InspectionLog log = readInspectionLog(text);
  const LogEnd end = endOfLog(text);
  ASSERT_EQ(end.lines, log.lines);
  ASSERT_EQ(end.whole_bytes + log.torn.size(), text.size());
  faultText(log);
  verifyLog(log, log.head());
}

TEST(AnyBytes, AreRead) {
  std::mt19937_64 random(3);
  const auto below = [&](std::size_t n) { return static_cast<std::size_t>(random() % n); };
  for (int i = 0; i < 4000; ++i) {
    std::string text;
    for (std::size_t left = below(200); left > 0; --left) text += static_cast<char>(below(256));
    ASSERT_NO_THROW(read(text)) << "log " << i;
  }
}

// Pieces of records, of what stands between them, and of numbers and texts that are hard to read.
TEST(AnyBytes, OfPiecesAreRead) {
  std::mt19937_64 random(4);
  const auto below = [&](std::size_t n) { return static_cast<std::size_t>(random() % n); };
  const std::string log = logOf(randomRecords(9, 6));
  const std::vector<std::string> hard = {"\n",
                                         "{\n",
                                         "}, {\n",
                                         "[",
                                         "]",
                                         "\"",
                                         "\\",
                                         "1e999",
                                         "-1e999",
                                         "\\ud800",
                                         "\xED\xB5",
                                         "\xFF\xFE",
                                         "\xFE\xFF",
                                         "\"result\":",
                                         "\"fail\"",
                                         "\"device\":",
                                         "\"device\":\"\xE0\x98\x81\"",
                                         std::string(3, '\0'),
                                         "{\"stopwalk_inspections\":",
                                         "\"machines\":[[\"a\"]]",
                                         "null"};
  for (int i = 0; i < 4000; ++i) {
    std::string text;
    for (std::size_t left = below(12); left > 0; --left)
      if (below(2) == 0)
        text += hard[below(hard.size())];
      else
        text += log.substr(below(log.size()), below(300));
    ASSERT_NO_THROW(read(text)) << "log " << i << "\n" << text;
  }
}

TEST(AnyBytes, OfANumberThatIsTooLargeAreRead) {
  ASSERT_NO_THROW(read("{\"stopwalk_inspections\":1e999"));
  ASSERT_NO_THROW(read("{\"stopwalk_inspections\":1,\"n\":1e999}\n"));
}

TEST(AnyBytes, NestedDeeplyAreRead) {
  const std::size_t deep = 100'000;
  for (const char* open : {"[", "{\"a\":"})
    for (const char* close : {"]", "}"}) {
      std::string text;
      for (std::size_t i = 0; i < deep; ++i) text += open;
      text += "1" + std::string(deep, *close);
      ASSERT_NO_THROW(read(text + "\n"));
      ASSERT_NO_THROW(read("{\"stopwalk_inspections\":" + text + "\n"));
    }
}

// One flipped bit makes a letter a form too long, or half of a pair.
TEST(AnyBytes, OfAFailureWithLettersOfSeveralAlphabetsAreAFailure) {
  inspection::Check failed;
  failed.device = "lathe/bar", failed.machines = {"lathe"}, failed.round = 1, failed.result = Result::Fail;
  failed.inspector = "Grün \u0E01\u0E49 \uD55C\uAE00 検査 \U0001F600", failed.note = failed.inspector;
  failed.at = *inspection::parseMoment("2026-03-02T09:15:00+01:00");
  const std::string text = logOf({failed});
  const std::size_t from = text.find("\"inspector\""), to = text.find("\"tested\"");
  for (std::size_t at = 0; at < text.size(); ++at)
    for (const int bit : {1, 2, 4, 8, 16, 32, 64, 128}) {
      std::string changed = text;
      changed[at] = static_cast<char>(changed[at] ^ bit);
      ASSERT_NO_THROW(read(changed)) << at << " by " << bit;
      if (at < from || at >= to) continue;  // the rest: hurt_lines_test.cpp
      const InspectionLog log = readInspectionLog(changed);
      ASSERT_EQ(log.records.checks.size(), 1u) << at << " by " << bit;
      EXPECT_EQ(log.records.checks[0].device, failed.device);
      EXPECT_EQ(log.records.checks[0].result, Result::Fail);
    }
}

}  // namespace
}  // namespace stopwalk::files
