// A failure is read from whatever became of its line, as long as that says which device failed.
#include "core/files/failures_in_text.h"

#include <gtest/gtest.h>

#include "core/files/inspection_log.h"
#include "core/files/sha256.h"
#include "tests/core/files/inspection_texts.h"

namespace stopwalk::files {
namespace {

using inspection::Result;

inspection::Check checkOf(const std::string& device, Result result, const std::string& note = "") {
  inspection::Check c;
  c.device = device, c.machines = {"saw"}, c.inspector = "Ada Example", c.round = 1, c.note = note;
  c.at = *inspection::parseMoment("2026-03-02T09:15:00+01:00");
  c.result = result;
  return c;
}

// A failure between two passes, its line changed.
InspectionLog changed(const std::string& from, const std::string& to, const std::string& note = "stuck") {
  std::vector<std::string> lines =
      linesOf(logOf({checkOf("saw/stop", Result::Pass), checkOf("lathe/bar", Result::Fail, note),
                     checkOf("saw/stop", Result::Pass)}));
  EXPECT_NE(lines[1].find(from), std::string::npos);
  lines[1].replace(lines[1].rfind(from), from.size(), to);
  return readInspectionLog(lines[0] + lines[1] + lines[2]);
}

std::vector<std::string> failedIn(const InspectionLog& log) {
  std::vector<std::string> devices;
  for (const inspection::Check& c : log.records.checks)
    if (c.result == Result::Fail) devices.push_back(c.device);
  return devices;
}

const std::vector<std::string> kBar = {"lathe/bar"};

TEST(FailuresInText, StandWhateverBecameOfTheLine) {
  const std::vector<std::pair<std::string, std::string>> changes = {
      {"stuck",
       "st\xFF"
       "ck"},  // saved by an editor of another coding
      {"stuck",
       "st\x01"
       "ck"},
      {"stuck", "st\"ck"},
      {"\"}\n", "\n"},  // the end is lost
      {"\"sha256\":\"", "\"sha"},
      {"\"tested\":{}", "\"tested\":{"},
      {"\"result\":\"fail\"", "\"result\":\"fail\",\"result\":\"pass\""},
      {"\"result\":\"fail\"", "\"result\":\"pass\",\"result\":\"fail\""},
      {"\"result\":\"fail\"", "\"result\" : \"f"},
      {"\"result\":\"fail\"", "\"result\":\"Fail\""},
      {"\"result\":\"fail\"", "\"result\":\"pail\""},
      {"\"result\":\"fail\"", "\"result\":\"\""},
      {"\"result\":\"fail\",", ""},
      {"\"device\":\"lathe/bar\"", "\"device\":\"lathe/bar\",\"device\":\"lathe/bar\""},
      {"\n", ""}};  // run into the next
  for (const auto& [from, to] : changes) {
    const InspectionLog log = changed(from, to);
    EXPECT_EQ(failedIn(log), kBar) << from << " -> " << to;
    EXPECT_GE(log.records.unsure_to, 2u);
    EXPECT_EQ(unreadText(log), "") << from << " -> " << to;
  }
}

TEST(FailuresInText, HaveTheTimeAndWhoFoundThem) {
  const InspectionLog log = changed("\"}\n", "\n");
  EXPECT_EQ(log.records.checks[1].at, checkOf("", Result::Fail).at);
  EXPECT_EQ(log.records.checks[1].inspector, "Ada Example");
  EXPECT_EQ(changed("stuck",
                    "st\xFF"
                    "ck")
                .records.checks[1]
                .note,
            "st\uFFFD"
            "ck")
      << "all that can be read";
}

TEST(FailuresInText, StandInALineThatRanIntoTheNext) {
  std::vector<std::string> lines =
      linesOf(logOf({checkOf("saw/stop", Result::Pass), checkOf("lathe/bar", Result::Fail),
                     checkOf("saw/stop", Result::Fail)}));
  const std::vector<std::string> both = {"lathe/bar", "saw/stop"};
  const std::string cut = lines[1].substr(0, lines[1].size() - 41);
  EXPECT_EQ(failedIn(readInspectionLog(lines[0] + cut + lines[2])), both);
  EXPECT_EQ(failedIn(readInspectionLog(lines[0] + "x" + lines[1].substr(0, lines[1].size() - 1) + lines[2])),
            both);
  for (std::string* line : {&lines[0], &lines[1], &lines[2]}) {
    line->pop_back();
    line->insert(1, " ");
  }
  EXPECT_EQ(failedIn(readInspectionLog(lines[0] + lines[1] + lines[2] + "\n")), both)
      << "and into another form";
  EXPECT_EQ(failedIn(readInspectionLog("[" + lines[0] + "," + lines[1] + "," + lines[2] + "]")), both);
}

// Each with those that stand behind its own name.
TEST(FailuresInText, HaveTheMachinesWhereThoseCanBeRead) {
  const auto machinesIn = [](const std::string& text) {
    std::vector<std::vector<std::string>> all;
    for (const ReadRecord& read : failuresIn(text))
      all.push_back(std::get<inspection::Check>(*read.record).machines);
    return all;
  };
  using Lists = std::vector<std::vector<std::string>>;
  const std::string two = R"("device":"a/b","machines":["a","]\"["],"x" "device":"c/d","machines" : [ "c" ])";
  EXPECT_EQ(machinesIn(two + R"(,"result":"fail")"), (Lists{{"a", "]\"["}, {"c"}}));
  for (const char* list : {"[\"c\"", "[\"c]", "[c]", "{}", "[\"c\",3]", "", "[]"})
    EXPECT_EQ(machinesIn(R"("device":"c/d","machines":)" + std::string(list) + R"(,"result":"fail")"),
              Lists{{}})
        << list;
  const InspectionLog log = changed("\"}\n", "\n");
  EXPECT_EQ(log.records.checks[1].machines, std::vector<std::string>{"saw"});
}

TEST(FailuresInText, HaveEachItsOwnTimeAndFinder) {
  const std::string text =
      R"("device":"a/b","at":"2026-03-02T09:15:00+01:00","inspector":"Ada" "device":"c/d",)"
      R"("at":"2026-03-03T09:15:00+01:00","inspector":"Bo","result":"fail")";
  const std::vector<ReadRecord> read = failuresIn(text);
  ASSERT_EQ(read.size(), 2u);
  const auto& first = std::get<inspection::Check>(*read[0].record);
  EXPECT_EQ(first.inspector, "Ada");
  EXPECT_EQ(momentText(first.at), "2026-03-02T09:15:00+01:00");
  EXPECT_EQ(std::get<inspection::Check>(*read[1].record).inspector, "Bo");
}

// It is read by its place, of the devices that other records name.
TEST(FailuresInText, StandThoughTheirKeysAreHurt) {
  inspection::Round round;
  round.by = "Ada Example", round.of = "all", round.devices = {"lathe/bar", "saw/stop", "bar"};
  round.at = checkOf("", Result::Fail).at;
  const std::vector<std::string> lines =
      linesOf(logOf({round, checkOf("saw/stop", Result::Pass), checkOf("lathe/bar", Result::Fail, "stuck")}));
  const auto failedOf = [&](std::string line,
                            const std::vector<std::pair<std::string, std::string>>& changes) {
    for (const auto& [from, to] : changes) {
      EXPECT_NE(line.find(from), std::string::npos) << from;
      line.replace(line.find(from), from.size(), to);
    }
    const InspectionLog log = readInspectionLog(lines[0] + lines[1] + line);
    EXPECT_EQ(log.records.unsure_to, 3u);
    EXPECT_EQ(unreadText(log).empty(), !failedIn(log).empty());
    EXPECT_EQ(log.torn, "");
    return failedIn(log);
  };
  const std::string &passed = lines[1], &failed = lines[2];
  EXPECT_EQ(failedOf(failed, {{"device", "devise"}}), kBar);
  EXPECT_EQ(failedOf(failed, {{"\"device\"", "\"device"}}), kBar);
  EXPECT_EQ(failedOf(failed, {{"\"device\":\"", "\"device\":"}}), kBar);
  EXPECT_EQ(failedOf(failed, {{"result", "resalt"}}), kBar);
  EXPECT_EQ(failedOf(failed, {{"\"result\":", "\"result\";"}}), kBar);
  EXPECT_EQ(failedOf(failed, {{"\"result\":\"", "\"result\":"}}), kBar);
  EXPECT_EQ(failedOf(failed, {{"result", "resalt"}, {"device", "devise"}}), kBar);
  EXPECT_EQ(failedOf(failed, {{"result", "resalt"}, {"\"}\n", "\n"}}), kBar);
  EXPECT_TRUE(failedOf(failed, {{"device", "devise"}, {"lathe/bar", "lathe/bars"}}).empty()) << "of no other";
  EXPECT_TRUE(failedOf(passed, {{"device", "devise"}}).empty());
  EXPECT_EQ(failedOf(passed, {{"device", "devise"}, {"pass", "fail"}}), std::vector<std::string>{"saw/stop"});
}

// A crash leaves them with a key that is whole.
TEST(FailuresInText, AreNotWhatSomebodyTypedInOneWord) {
  for (const char* note : {"fail", "\"fail", "fail\""}) {
    const std::string text = logOf({checkOf("saw/stop", Result::Pass, note)});
    EXPECT_TRUE(failuresIn(text, {"saw/stop"}).empty()) << note;
    const std::string cut = text.substr(0, text.find(",\"layout\""));
    EXPECT_EQ(readInspectionLog(cut).torn, cut) << note;
  }
  EXPECT_TRUE(failuresIn(R"("devices":["fail", "fail"],"by":"fail")", {"fail"}).empty());
}

// Where nobody knows which it was, each that may have been.
TEST(FailuresInText, AreOfEachDeviceThatTheLineNames) {
  EXPECT_EQ(failedIn(changed("\"device\":", "\"device\":\"saw/stop\",\"device\":")),
            (std::vector<std::string>{"lathe/bar", "saw/stop"}));
}

TEST(FailuresInText, AreNotWhatSomebodyTyped) {
  const std::string typed = R"("device":"saw/stop","result":"fail")";
  const InspectionLog log = readInspectionLog(
      logOf({checkOf("saw/stop", Result::Pass, typed), checkOf("lathe/bar", Result::NotTested, typed)}));
  EXPECT_TRUE(failedIn(log).empty());
  EXPECT_TRUE(log.bad.empty());
  EXPECT_TRUE(failuresIn(logOf({checkOf("saw/stop", Result::Pass, typed)})).empty());
}

// Written so by a program that knew how.
TEST(FailuresInText, ATwofoldResultShowsThoughTheHashIsRight) {
  std::string body = recordBody(checkOf("lathe/bar", Result::Pass), 1, kNoLineBefore);
  body.replace(body.find("\"result\":"), 9, "\"result\":\"fail\",\"result\":");
  const InspectionLog log = readInspectionLog(body + ",\"sha256\":\"" + sha256(body) + "\"}\n");
  EXPECT_EQ(failedIn(log), kBar);
  ASSERT_EQ(log.bad.size(), 1u);
  EXPECT_EQ(log.bad[0].why, "it says more than one result");
}

// A crash within the writing of it, or an end that was cut.
TEST(FailuresInText, ATornEndThatSaysFailIsALine) {
  const std::string whole = logOf({checkOf("saw/stop", Result::Pass)}),
                    text = logOf({checkOf("saw/stop", Result::Pass), checkOf("lathe/bar", Result::Fail)});
  const std::size_t told = text.rfind("\"result\":\"f") + 11;
  for (std::size_t size = whole.size() + 1; size < text.size(); ++size)
    for (const std::string& zeros : {std::string(), std::string(3, '\0')}) {
      const std::string cut = text.substr(0, size) + zeros;
      const InspectionLog log = readInspectionLog(cut);
      ASSERT_EQ(log.torn.empty(), size >= told) << size;
      ASSERT_EQ(failedIn(log), size >= told ? kBar : std::vector<std::string>()) << size;
      ASSERT_EQ(endOfLog(cut).whole_bytes, size >= told ? cut.size() : whole.size());
      ASSERT_FALSE(log.ends_line);
    }
}

// As a power cut leaves it.
TEST(FailuresInText, ALastLineBreakThatBecameZerosLeavesALine) {
  for (const Result result : {Result::Fail, Result::Pass}) {
    std::string text = logOf({checkOf("saw/stop", Result::Pass), checkOf("lathe/bar", result)});
    text.back() = '\0';
    for (const std::string& more : {std::string(), std::string(50, '\0')}) {
      const InspectionLog log = readInspectionLog(text + more);
      EXPECT_EQ(log.torn, "");
      EXPECT_EQ(log.records.checks.size(), 2u);
      EXPECT_EQ(log.records.unsure_to, 2u);
      EXPECT_FALSE(endOfLog(text + more).ends_line);
    }
  }
}

}  // namespace
}  // namespace stopwalk::files
