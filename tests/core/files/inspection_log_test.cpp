// The log as text: what is read again, and what of later changes shows.
#include "core/files/inspection_log.h"

#include <gtest/gtest.h>

#include "tests/core/files/inspection_texts.h"

namespace stopwalk::files {
namespace {

TEST(InspectionLog, IsReadAsItWasWritten) {
  for (std::uint64_t seed = 1; seed <= 200; ++seed) {
    const std::vector<inspection::Record> written = randomRecords(seed, 12);
    const InspectionLog log = readInspectionLog(logOf(written));
    EXPECT_TRUE(log.bad.empty()) << "seed " << seed << ": " << log.bad.front().why;
    EXPECT_EQ(log.torn, "");
    EXPECT_EQ(log.records, recordsOf(written)) << "seed " << seed;
    EXPECT_EQ(verifyLog(log).line, 0u);
    EXPECT_EQ(verifyLog(log, log.head()).line, 0u);
  }
}

// Longer than what a core reads at once.
TEST(InspectionLog, ALongOneIsReadInItsOrder) {
  const std::vector<inspection::Record> written = randomRecords(5, 2000);
  const std::string text = logOf(written);
  const InspectionLog log = readInspectionLog(text);
  EXPECT_EQ(log.records, recordsOf(written));
  EXPECT_EQ(verifyLog(log, log.head()).line, 0u);

  std::vector<std::string> lines = linesOf(text);
  lines[1499][lines[1499].size() / 2] ^= 1;
  lines.erase(lines.begin() + 700);
  std::string changed;
  for (const std::string& line : lines) changed += line;
  const InspectionLog bad = readInspectionLog(changed);
  ASSERT_GE(bad.bad.size(), 2u);
  EXPECT_EQ(bad.bad.front().line, 701u);
  const auto isOf = [](std::size_t line) { return [=](const BadLine& b) { return b.line == line; }; };
  EXPECT_EQ(std::ranges::find_if(bad.bad, isOf(1499))->what, Wrong::Changed);
  EXPECT_EQ(bad.lines, 1999u);
}

TEST(InspectionLog, EmptyOneIsWhole) {
  const InspectionLog log = readInspectionLog("");
  EXPECT_EQ(log.lines, 0u);
  EXPECT_EQ(log.head(), kNoLineBefore);
  EXPECT_EQ(verifyLog(log).line, 0u);
}

TEST(InspectionLog, TornLineIsSetAsideAndTheRestIsRead) {
  const std::string text = logOf(randomRecords(3, 5)), four = logOf(randomRecords(3, 4));
  ASSERT_TRUE(text.starts_with(four));
  for (std::size_t size = four.size() + 1; size + 1 < text.size(); ++size) {
    const InspectionLog log = readInspectionLog(text.substr(0, size));
    ASSERT_EQ(log.lines, 4u);
    ASSERT_EQ(log.torn, text.substr(four.size(), size - four.size()));
    ASSERT_EQ(log.records, recordsOf(randomRecords(3, 4)));
    ASSERT_TRUE(log.bad.empty());
    ASSERT_EQ(verifyLog(log).line, 5u);
    ASSERT_EQ(endOfLog(text.substr(0, size)).whole_bytes, four.size());
    ASSERT_EQ(endOfLog(text.substr(0, size)).head, log.head());
  }
}

TEST(InspectionLog, RecordThatLostItsLineBreakOnlyIsWhole) {
  std::string text = logOf(randomRecords(3, 5));
  text.pop_back();
  const InspectionLog log = readInspectionLog(text);
  EXPECT_EQ(log.lines, 5u);
  EXPECT_EQ(log.torn, "");
  const LogEnd end = endOfLog(text);
  EXPECT_EQ(end.lines, 5u);
  EXPECT_FALSE(end.ends_line);
  EXPECT_EQ(end.head, log.head());
}

// Every byte of a log, each to several others.
TEST(InspectionLog, AnyByteThatIsChangedShows) {
  const std::string text = logOf(randomRecords(7, 5));
  for (std::size_t at = 0; at < text.size(); ++at)
    for (const int by : {1, 2, 4, 8, 16, 32, 64, 128}) {
      std::string changed = text;
      changed[at] = static_cast<char>(changed[at] ^ by);
      const LogVerdict v = verifyLog(readInspectionLog(changed));
      const std::size_t line =
          1 + static_cast<std::size_t>(std::count(text.begin(), text.begin() + static_cast<long>(at), '\n'));
      ASSERT_EQ(v.line, line) << "byte " << at << " by " << by << ": " << v.why;
    }
}

TEST(InspectionLog, BytePutInOrTakenOutShows) {
  const std::string text = logOf(randomRecords(8, 4));
  for (std::size_t at = 0; at + 1 < text.size(); ++at) {
    ASSERT_NE(verifyLog(readInspectionLog(std::string(text).erase(at, 1))).line, 0u) << at;
    for (const char c : {' ', '\n', '0', '}'}) {
      std::string more = text;
      more.insert(at, 1, c);
      ASSERT_NE(verifyLog(readInspectionLog(more)).line, 0u) << at << " " << c;
    }
  }
}

class ChangedLines : public testing::Test {
 protected:
  std::size_t firstBad() const {
    std::string text;
    for (const std::string& line : lines) text += line;
    return verifyLog(readInspectionLog(text)).line;
  }
  static constexpr std::size_t kLines = 9;
  const std::vector<std::string> whole = linesOf(logOf(randomRecords(11, kLines)));
  std::vector<std::string> lines = whole;
};

TEST_F(ChangedLines, RemovedOneShowsWhereItWas) {
  for (std::size_t i = 0; i + 1 < kLines; ++i) {
    lines = whole;
    lines.erase(lines.begin() + static_cast<long>(i));
    EXPECT_EQ(firstBad(), i + 1);
  }
}

TEST_F(ChangedLines, SwappedOnesShow) {
  for (std::size_t i = 0; i < kLines; ++i)
    for (std::size_t j = i + 1; j < kLines; ++j) {
      lines = whole;
      std::swap(lines[i], lines[j]);
      EXPECT_EQ(firstBad(), i + 1);
    }
}

TEST_F(ChangedLines, RepeatedOneShows) {
  for (std::size_t from = 0; from < kLines; ++from)
    for (std::size_t to = 0; to <= kLines; ++to) {
      lines = whole;
      lines.insert(lines.begin() + static_cast<long>(to), whole[from]);
      EXPECT_NE(firstBad(), 0u) << from << " at " << to;
    }
}

// With its own hash made right again: then the line after it no longer follows.
TEST_F(ChangedLines, RewrittenOneShowsAtTheNext) {
  std::vector<inspection::Record> records = randomRecords(11, kLines);
  const std::vector<std::string> hashes = readInspectionLog(logOf(records)).hashes;
  for (std::size_t i = 0; i + 1 < kLines; ++i) {
    lines = whole;
    const std::string before = i == 0 ? kNoLineBefore : hashes[i - 1];
    lines[i] = recordLine(randomRecords(99, 1).front(), i + 1, before);
    EXPECT_EQ(firstBad(), i + 2);
    lines = whole;
    lines.insert(lines.begin() + static_cast<long>(i),
                 recordLine(randomRecords(99, 1).front(), i + 1, before));
    EXPECT_EQ(firstBad(), i + 2);
  }
}

// What does not show without a head that was kept elsewhere.
TEST_F(ChangedLines, CutEndShowsAgainstTheHeadOnly) {
  const std::string head = readInspectionLog(logOf(randomRecords(11, kLines))).head();
  for (std::size_t left = 0; left < kLines; ++left) {
    std::string text;
    for (std::size_t i = 0; i < left; ++i) text += whole[i];
    const InspectionLog log = readInspectionLog(text);
    EXPECT_EQ(verifyLog(log).line, 0u);
    EXPECT_EQ(verifyLog(log, head).line, left + 1);
  }
}

TEST_F(ChangedLines, OldHeadShowsWhatCameSince) {
  const InspectionLog log = readInspectionLog(logOf(randomRecords(11, kLines)));
  for (std::size_t i = 0; i < kLines; ++i) {
    const LogVerdict v = verifyLog(log, log.hashes[i]);
    EXPECT_EQ(v.line, 0u);
    EXPECT_EQ(v.since, kLines - 1 - i);
  }
}

// Whoever changed a line may have put it in.
TEST(InspectionLog, OfALineThatWasChangedItIsNotBelievedThatTheDeviceWasNoStop) {
  inspection::Check check;
  check.device = "saw/start", check.inspector = "Ada Example", check.note = "pin missing";
  check.at = *inspection::parseMoment("2026-03-02T09:15:00+01:00");
  check.result = inspection::Result::Fail, check.no_stop = true;
  std::string text = logOf({check});
  EXPECT_NE(text.find(R"("machines":[],"no_stop":true,"room")"), std::string::npos) << text;
  EXPECT_TRUE(readInspectionLog(text).records.checks.at(0).no_stop);
  text.replace(text.find("missing"), 7, "is lost");
  EXPECT_FALSE(readInspectionLog(text).records.checks.at(0).no_stop);
  check.no_stop = false;
  EXPECT_EQ(logOf({check}).find("no_stop"), std::string::npos) << "as it ever was";
}

inspection::Check failureOf(const std::string& device) {
  inspection::Check c;
  c.device = device, c.machines = {"saw"}, c.inspector = "Ada Example", c.round = 1;
  c.at = *inspection::parseMoment("2026-03-02T09:15:00+01:00");
  c.result = inspection::Result::Fail;
  return c;
}

// By an editor of another system, by one that ends lines with blanks, or by a formatter of JSON.
TEST(InspectionLog, AFailureIsReadFromALineOfAnotherForm) {
  const std::vector<inspection::Record> written = {failureOf("saw/stop"), failureOf("lathe/bar")};
  const std::vector<std::pair<std::string, std::string>> changes = {
      {"\n", "\r\n"},  {"\n", " \n"},       {"\n", "\r"},
      {"\":", "\": "}, {"\"}\n", "\" }\n"}, {"{\"st", "\xEF\xBB\xBF{\"st"}};
  for (const auto& [from, to] : changes) {
    std::string text = logOf(written);
    for (std::size_t at = 0; (at = text.find(from, at)) != std::string::npos; at += to.size())
      text.replace(at, from.size(), to);
    const InspectionLog log = readInspectionLog(text);
    ASSERT_EQ(log.records.checks.size(), 2u) << text;
    EXPECT_EQ(log.records.checks[1].device, "lathe/bar");
    EXPECT_EQ(log.records.checks[1].at, failureOf("").at);
    EXPECT_EQ(log.records.unsure_to, 2u);
    EXPECT_EQ(log.bad.size(), 2u);
    EXPECT_EQ(unreadText(log), "");
  }
}

TEST(InspectionLog, AFailureIsReadWhateverElseOfItsLineCannotBe) {
  for (const auto& [from, to] :
       std::vector<std::pair<std::string, std::string>>{{"2026-03", "2026-xx"},
                                                        {"\"machines\"", "\"Machines\""},
                                                        {"\"record\"", "\"rekord\""},
                                                        {"\"check\"", "\"chexk\""},
                                                        {"ions\":1", "ions\":2"},
                                                        {"\"sha256\":\"", "\"sha256x:\""}}) {
    const std::vector<inspection::Record> written = {failureOf("saw/stop"), failureOf("saw/stop")};
    std::string text = logOf(written);
    text.replace(text.rfind(from), from.size(), to);
    const InspectionLog log = readInspectionLog(text);
    ASSERT_EQ(log.records.checks.size(), 2u) << text;
    EXPECT_EQ(log.records.checks[1].device, "saw/stop");
    EXPECT_EQ(log.records.checks[1].result, inspection::Result::Fail);
    EXPECT_EQ(log.records.checks[1].at, failureOf("").at) << "or that of the line before";
    EXPECT_EQ(log.records.unsure_to, 2u);
  }
}

TEST(InspectionLog, WhatIsNoTrueBeginningOfARecordIsALine) {
  const std::string text = logOf({failureOf("saw/stop"), failureOf("lathe/bar")});
  for (const char byte : {' ', '\r', 'x', '"', '}', ','}) {
    std::string changed = text;
    changed.back() = byte;
    const InspectionLog log = readInspectionLog(changed);
    EXPECT_EQ(log.torn, "");
    ASSERT_EQ(log.records.checks.size(), 2u) << byte;
    EXPECT_EQ(log.records.unsure_to, 2u);
    const LogEnd end = endOfLog(changed);
    EXPECT_EQ(end.whole_bytes, changed.size());
    EXPECT_EQ(end.head, log.head());
    EXPECT_FALSE(end.ends_line);
  }
  std::string broken = text.substr(0, text.size() - 1);
  broken.replace(broken.rfind("\"result\":"), 9, "\"result\"{");
  EXPECT_EQ(unreadText(readInspectionLog(broken)), "") << "it says fail";
  broken.replace(broken.rfind("fail"), 4, "fxil");
  EXPECT_EQ(unreadText(readInspectionLog(broken)), "") << "it says nothing else of its device";
  broken.replace(broken.rfind("\"device\""), 8, "\"devise\"");
  EXPECT_EQ(readInspectionLog(broken).torn, "");
  EXPECT_EQ(unreadText(readInspectionLog(broken)),
            "One line can no longer be read: it may have been a failure.");
}

// What some file systems leave of a file that grew when the power failed.
TEST(InspectionLog, ZerosAtTheEndAreTorn) {
  const std::string text = logOf({failureOf("saw/stop"), failureOf("lathe/bar")});
  const std::size_t first = text.find('\n') + 1;
  for (const std::size_t kept : {std::size_t{0}, std::size_t{30}}) {
    const std::string tail = text.substr(first, kept) + std::string(100, '\0');
    const InspectionLog log = readInspectionLog(text.substr(0, first) + tail);
    EXPECT_EQ(log.torn, tail);
    EXPECT_EQ(log.lines, 1u);
    EXPECT_EQ(log.records.unsure_to, 0u);
    EXPECT_NE(faultText(log).find("A failure may be in it"), std::string::npos);
  }
}

TEST(InspectionLog, RecordsThatLostTheLineBreakBetweenThemAreBothRead) {
  const std::vector<inspection::Record> written = randomRecords(5, 6);
  for (const std::string between : {"", "x", " "}) {
    std::string text = logOf(written);
    text.replace(text.find('\n'), 1, between);
    const InspectionLog log = readInspectionLog(text);
    EXPECT_EQ(log.lines, 6u);
    inspection::Records read = recordsOf(written);
    read.unsure_to = log.records.unsure_to;
    EXPECT_EQ(log.records, read) << between;
    ASSERT_FALSE(log.bad.empty());
    EXPECT_EQ(log.bad[0].line, 1u);
    EXPECT_EQ(endOfLog(text).lines, 6u);
  }
}

TEST(InspectionLog, LinesThatAreNoRecordsAreNamedAndPassedBy) {
  std::string text = logOf(randomRecords(5, 3));
  text += "{}\n\nnot a record\n{\"stopwalk_inspections\":2}\n[1,2\n";
  const InspectionLog log = readInspectionLog(text);
  EXPECT_EQ(log.lines, 7u) << "the last goes on with what was begun before it";
  EXPECT_EQ(log.bad.size(), 4u);
  EXPECT_EQ(unreadText(log), "4 lines can no longer be read: a failure may be among them.");
  inspection::Records read = recordsOf(randomRecords(5, 3));
  read.unsure_to = 7;
  EXPECT_EQ(log.records, read);
}

}  // namespace
}  // namespace stopwalk::files
