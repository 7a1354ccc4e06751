// What other programs make of a log: failures in it count, and it is said what became of the file.
#include "core/files/rewritten.h"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "core/files/inspection_log.h"
#include "tests/core/files/inspection_texts.h"

namespace stopwalk::files {
namespace {

using inspection::Result;

// With letters of which half a unit of UTF-16 looks like a quote or a brace.
const std::string kName = "Grün 検査 ≥ Том 小山";

inspection::Check checkOf(const std::string& device, Result result) {
  inspection::Check c;
  c.device = device, c.machines = {"saw"}, c.inspector = kName, c.round = 1, c.note = "a \"}{\" in it";
  c.at = *inspection::parseMoment("2026-03-02T09:15:00+01:00");
  c.result = result;
  return c;
}

const std::vector<inspection::Record> kWritten = {
    checkOf("saw/stop", Result::Pass), checkOf("lathe/bar", Result::Fail), checkOf("saw/stop", Result::Pass)};

std::string replaced(std::string text, const std::string& from, const std::string& to) {
  for (std::size_t at = 0; (at = text.find(from, at)) != std::string::npos; at += to.size())
    text.replace(at, from.size(), to);
  return text;
}

std::string laidOut(int indent, bool as_list) {
  nlohmann::ordered_json list = nlohmann::ordered_json::array();
  std::string text;
  for (const std::string& line : linesOf(logOf(kWritten))) {
    list.push_back(nlohmann::ordered_json::parse(line));
    text += list.back().dump(indent) + "\n";
  }
  return as_list ? list.dump(indent) + "\n" : text;
}

// Of letters within the first plane.
std::string asUtf16(const std::string& utf8, bool is_big_endian) {
  std::string text;
  for (std::size_t i = 0; i < utf8.size();) {
    const auto byte = [&](std::size_t at) {
      return static_cast<unsigned>(static_cast<unsigned char>(utf8[at]));
    };
    const std::size_t size = byte(i) < 0x80 ? 1 : byte(i) < 0xE0 ? 2 : 3;
    unsigned unit = byte(i) & (size == 1 ? 0x7Fu : size == 2 ? 0x1Fu : 0xFu);
    for (std::size_t k = 1; k < size; ++k) unit = unit << 6 | (byte(i + k) & 0x3Fu);
    const char high = static_cast<char>(unit >> 8), low = static_cast<char>(unit & 0xFF);
    text += is_big_endian ? high : low;
    text += is_big_endian ? low : high;
    i += size;
  }
  return text;
}

std::vector<std::string> failedIn(const InspectionLog& log) {
  std::vector<std::string> devices;
  for (const inspection::Check& c : log.records.checks)
    if (c.result == Result::Fail) devices.push_back(c.device);
  return devices;
}

void expectRewritten(const std::string& text, Wrong what, const std::string& why) {
  const InspectionLog log = readInspectionLog(text);
  EXPECT_EQ(log.lines, 3u) << text;
  EXPECT_EQ(failedIn(log), std::vector<std::string>{"lathe/bar"}) << text;
  EXPECT_EQ(unreadText(log), "");
  EXPECT_EQ(log.records.unsure_to, 3u) << "no pass counts";
  ASSERT_FALSE(log.bad.empty());
  EXPECT_EQ(log.bad.front().line, 1u);
  EXPECT_EQ(log.bad.front().what, what) << log.bad.front().why;
  EXPECT_EQ(faultText(log), "Line 1 of the inspection records is not as it was written: " + why +
                                "; take the file back from a copy. No pass counts up to line 3.");
  // Whatever is recorded all the same stands as it is written.
  const LogEnd end = endOfLog(text);
  ASSERT_EQ(end.lines, 3u);
  const std::string more = text.substr(0, end.whole_bytes) + (end.ends_line ? "" : "\n") +
                           recordLine(checkOf("saw/stop", Result::Fail), 4, end.head);
  const InspectionLog longer = readInspectionLog(more);
  EXPECT_EQ(failedIn(longer), (std::vector<std::string>{"lathe/bar", "saw/stop"}));
  EXPECT_EQ(longer.records.unsure_to, 3u);
}

TEST(Rewritten, ByAFormatterOverSeveralLinesIsTold) {
  const std::string why = "the file was rewritten by a formatter: one record a line is expected, as UTF-8";
  for (const bool as_list : {false, true})
    for (const int indent : {0, 2, 4})
      for (const char* end : {"\n", "\r\n"}) {
        const std::string text = replaced(laidOut(indent, as_list), "\n", end);
        expectRewritten(text, Wrong::Reformatted, why);
        expectRewritten(text.substr(0, text.size() - std::string(end).size()), Wrong::Reformatted, why);
      }
}

// `[ {`, `}, {` and `} ]`; the first key on the line of its brace, of a record alone or of a list.
TEST(Rewritten, ByAFormatterThatPutsBracesElsewhereIsTold) {
  const std::string why = "the file was rewritten by a formatter: one record a line is expected, as UTF-8";
  const std::string list = replaced(laidOut(2, true), "\n    ", "\n  ");
  const std::string joined =
      replaced(replaced(replaced(list, "[\n  {", "[ {"), "},\n  {", "}, {"), "}\n]", "} ]");
  ASSERT_NE(joined.find("\n  }, {\n"), std::string::npos);
  expectRewritten(joined, Wrong::Reformatted, why);
  expectRewritten(replaced(joined, "[ {", "[{"), Wrong::Reformatted, why);
  expectRewritten(replaced(laidOut(2, false), "{\n  \"stop", "{ \"stop"), Wrong::Reformatted, why);
  expectRewritten(replaced(laidOut(0, false), "{\n\"stop", "{ \"stop"), Wrong::Reformatted, why);
}

TEST(Rewritten, ByAFormatterWithBlanksIsTold) {
  expectRewritten(replaced(logOf(kWritten), "\":", "\": "), Wrong::Reformatted,
                  "the file was rewritten by a formatter: one record a line is expected, as UTF-8");
}

TEST(Rewritten, AsUtf16IsTold) {
  const std::string why = "the file was saved as UTF-16: one record a line is expected, as UTF-8";
  for (const bool is_big_endian : {false, true})
    for (const bool is_marked : {true, false})
      for (const char* end : {"\n", "\r\n", ""}) {
        std::string text = logOf(kWritten);
        text.pop_back();
        text = replaced(text, "\n", *end ? end : "\n") + end;
        const std::string mark = is_big_endian ? "\xFE\xFF" : "\xFF\xFE";
        const std::string saved = (is_marked ? mark : "") + asUtf16(text, is_big_endian);
        expectRewritten(saved, Wrong::Utf16, why);
        for (const inspection::Check& c : readInspectionLog(saved).records.checks)
          EXPECT_EQ(c.inspector, kName) << "in each line";
      }
}

TEST(Rewritten, AsUtf16SaysWhatItSaid) {
  EXPECT_EQ(fromUtf16("\xFF\xFE" + asUtf16("Grün 検査", false), false), "Grün 検査");
  EXPECT_EQ(fromUtf16("\xFE\xFF" + asUtf16("Grün 検査", true), true), "Grün 検査");
  EXPECT_EQ(fromUtf16(std::string("\xFF\xFE\x3D\xD8\x00\xDE\x3D\xD8", 8), false), "\U0001F600\uFFFD");
}

// Of a line that lost its beginning the record before it is none the less a line of its own.
TEST(Rewritten, WithBreaksOfTwoCharactersARecordEndsAllTheSame) {
  std::string text = replaced(logOf(kWritten), "\n", "\r\n");
  const std::size_t second = text.find('\n') + 1;
  text.erase(second, 1);
  const InspectionLog log = readInspectionLog(text);
  EXPECT_EQ(log.lines, 3u);
  ASSERT_EQ(log.records.checks.size(), 3u);
  EXPECT_EQ(log.records.checks[0].device, "saw/stop");
  EXPECT_EQ(log.records.checks[1].result, Result::Fail);
}

// A record that is broken over lines, and one that never ends.
TEST(Rewritten, WhatOpensALineGoesToItsEndOrToTheNextRecord) {
  const std::vector<std::string> lines = linesOf(logOf(kWritten));
  const InspectionLog log =
      readInspectionLog(lines[0] + "{\n\"device\":\"lathe/bar\",\n" + lines[1] + lines[2]);
  EXPECT_EQ(log.lines, 4u);
  EXPECT_EQ(log.bad.front().line, 2u);
  EXPECT_EQ(failedIn(log), (std::vector<std::string>{"lathe/bar", "lathe/bar"})) << "one by its result";
  EXPECT_EQ(laidOverLines("{"), 0u) << "a record that was just begun";
  EXPECT_EQ(laidOverLines(lines[0]), 0u);
  EXPECT_EQ(laidOverLines("{\n}\n]\n{\n"), 6u);
}

}  // namespace
}  // namespace stopwalk::files
