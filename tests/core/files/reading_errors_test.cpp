#include <gtest/gtest.h>

#include "core/files/device_kinds_reader.h"
#include "core/files/layout_reader.h"
#include "tests/core/files/texts.h"

// Every item of layout-format.md, "Reading errors", and what a person is told.
namespace stopwalk::files {
namespace {

const std::string kHead = "stopwalk_layout: 1\nunits: mm\nsite: {name: S}\n";
const std::string kRoom = kHead + "rooms:\n  - {id: r, outline: [[0, 0], [9, 0], [9, 9]]}\n";
const std::string kMachine = kRoom +
                             "machines:\n  - {id: m, at: [1, 1], footprint: {width: 1, depth: 1}, stations: "
                             "[{id: op, at: [0, -1]}], devices: [";
const std::string kEnd = "\n...\n";

std::string told(const std::string& text) {
  const auto read = readLayout(text, "f", bundledDeviceKinds());
  const std::string all_told = all(read.diagnostics);
  EXPECT_EQ(read.value.has_value(), all_told.find(": error: ") == std::string::npos) << all_told;
  return all_told;
}

// The one thing told, without the excerpt.
std::string line(const std::string& text) {
  const std::string all_told = told(text);
  const auto read = readLayout(text, "f", bundledDeviceKinds());
  EXPECT_EQ(read.diagnostics.size(), 1U) << all_told;
  return all_told.substr(0, all_told.find('\n'));
}

#define EXPECT_TOLD(text, what) EXPECT_EQ(line(text), what)

TEST(ReadingErrors, ShowTheLineAndACaret) {
  EXPECT_EQ(told(kHead + "rooms:\n\t" + kEnd).substr(0, 30).find("f:"), 0U);
  EXPECT_EQ(told(kHead + "phones:\n  - {id: Ä1, at: [0, 0], faces: O}\n...\n"),
            "f:5:10: error: the id `Ä1` may hold lower-case letters, digits and hyphens only\n"
            "  - {id: Ä1, at: [0, 0], faces: O}\n"
            "         ^\n"
            "f:5:33: error: a number is expected here, not `O`\n"
            "  - {id: Ä1, at: [0, 0], faces: O}\n"
            "                                ^\n");
}

TEST(ReadingErrors, LongLinesAreCutRoundTheCaret) {
  const std::string text = kHead + "notes: [{id: a, at: [0, 0], text: " + std::string(500, 'x') +
                           "}, {id: A, at: [0, 0], text: " + std::string(500, 'y') + "}]\n...\n";
  const auto read = readLayout(text, "f", bundledDeviceKinds());
  ASSERT_EQ(read.diagnostics.size(), 1U);
  EXPECT_LT(read.diagnostics[0].excerpt.size(), 120U);
  EXPECT_EQ(format(read.diagnostics[0]).substr(0, 7), "f:4:543");
  const std::string shown = format(read.diagnostics[0]);
  const std::string caret_line = shown.substr(shown.rfind('\n', shown.size() - 2) + 1);
  EXPECT_EQ(caret_line, std::string(71, ' ') + "^\n");
  EXPECT_EQ(read.diagnostics[0].excerpt.substr(std::string("…").size() + 70, 1), "A");
}

TEST(ReadingErrors, LinesOfAHundredCharactersAreShownWhole) {
  const std::string note = "notes: [{id: A, at: [0, 0], text: " + std::string(64, 'x') + "}]";
  ASSERT_EQ(note.size(), 100U);
  EXPECT_NE(told(kHead + note + "\n...\n").find("\n" + note + "\n"), std::string::npos);
}

TEST(ReadingErrors, TabsBeforeTheCaretStayTabs) {
  const std::string text = told(kHead + "profile:\t[]\n...\n");
  EXPECT_NE(text.find("profile:\t[]\n        \t^\n"), std::string::npos) << text;
}

TEST(ReadingErrors, ControlCharactersDoNotReachTheTerminal) {
  const std::string text = told(kHead + "\"\\e[31m\\x9b\": 1\n" + kEnd);
  EXPECT_EQ(text.find('\x1b'), std::string::npos);
  EXPECT_EQ(text.find("\xC2\x9B"), std::string::npos);
  EXPECT_EQ(told(kHead + "x: \x1b[31m\n").find('\x1b'), std::string::npos);
}

TEST(ReadingErrors, NotYaml) {
  EXPECT_EQ(told(kHead + "rooms: [").substr(0, 18), "f:4:9: error: not ");
  EXPECT_EQ(told(kHead + "a: b: c\n").find("f:4:5: error: not YAML: "), 0U);
  EXPECT_EQ(told(",").find("f:1:1: error: not YAML: "), 0U);
  EXPECT_EQ(told("").find("f:1:1: error: the file is empty"), 0U);
  EXPECT_EQ(told("# nothing\n").find("f:1:1: error: the file is empty"), 0U);
  EXPECT_EQ(told("...\n").find("f:1:1: error: "), 0U);
  EXPECT_EQ(
      told("[1, 2]\n...\n").find("f:1:1: error: a layout is expected here: keys and values, not a list"), 0U);
  EXPECT_EQ(
      told("lathe\n...\n").find("f:1:1: error: a layout is expected here: keys and values, not `lathe`"), 0U);
}

TEST(ReadingErrors, MoreThanOneDocument) {
  EXPECT_TOLD(kHead + "---\na: 1\n...\n", "f:4:1: error: more than one document; a file holds one");
  EXPECT_TOLD(kHead + "...\n---\n", "f:5:1: error: more than one document; a file holds one");
  EXPECT_EQ(told("---\n" + kHead + "...\n"), "");
}

TEST(ReadingErrors, AnchorsAliasesTags) {
  EXPECT_TOLD(kHead + "rooms: &r []\n...\n",
              "f:4:8: error: an anchor (`&`) is not part of a layout's YAML; write the value out");
  EXPECT_TOLD("&x {a: *x}\n",
              "f:1:1: error: an anchor (`&`) is not part of a layout's YAML; write the value out");
  EXPECT_TOLD(kHead + "rooms: *r\n...\n",
              "f:4:8: error: an alias (`*`) is not part of a layout's YAML; write the value out");
  EXPECT_TOLD(kHead + "profile: !!str a\n...\n",
              "f:4:10: error: a tag (`!`) is not part of a layout's YAML; leave it out");
  EXPECT_TOLD(kHead + "profile: ! a\n...\n",
              "f:4:10: error: a tag (`!`) is not part of a layout's YAML; leave it out");
  EXPECT_EQ(told("%TAG ! tag:x,2026:\n---\n" + kHead + "...\n").find("f:1:1: error: a tag directive"), 0U);
}

TEST(ReadingErrors, AKeyTwiceInOneMap) {
  EXPECT_TOLD(kHead + "units: m\n...\n",
              "f:4:1: error: the key `units` is given twice in one map; the first is on line 2");
  EXPECT_TOLD(kHead + "\"units\": m\n...\n",
              "f:4:1: error: the key `units` is given twice in one map; the first is on line 2");
  EXPECT_TOLD(kHead + "notes: [{id: n, at: [0, 0], text: t}, {id: m, at: [0, 0], text: t, text: u}]\n...\n",
              "f:4:68: error: the key `text` is given twice in one map; the first is on line 4");
}

TEST(ReadingErrors, FormatNumber) {
  EXPECT_TOLD("units: mm\nsite: {name: S}\n...\n", "f:1:1: error: a layout needs the key `stopwalk_layout`");
  EXPECT_TOLD("stopwalk_layout: 2\nunits: mm\nsite: {name: S}\n...\n",
              "f:1:18: error: this program reads layouts of format 1, not `2`");
  EXPECT_TOLD("stopwalk_layout: '1'\nunits: mm\nsite: {name: S}\n...\n",
              "f:1:18: error: a number is expected here, not a text; write it without quotes");
}

TEST(ReadingErrors, MissingKeysAreReportedAtTheirParent) {
  EXPECT_EQ(told("stopwalk_layout: 1\n...\n").find("f:1:1: error: a layout needs the key `units`"), 0U);
  EXPECT_TOLD("stopwalk_layout: 1\nunits: mm\nsite: {address: x}\n...\n",
              "f:3:7: error: a site needs the key `name`");
  EXPECT_TOLD(kHead + "rooms:\n  - name: x\n    outline: [[0, 0], [9, 0], [9, 9]]\n...\n",
              "f:5:5: error: a room needs the key `id`");
  EXPECT_TOLD(kHead + "phones:\n  - {id: p, at: [0, 0]}\n...\n",
              "f:5:5: error: a phone needs the key `faces`");
  EXPECT_TOLD(kHead + "devices:\n  - {id: p, kind: paddle, at: [0, 0]}\n...\n",
              "f:5:5: error: a device needs the key `faces`");
}

TEST(ReadingErrors, WrongTypes) {
  EXPECT_TOLD(kHead + "profile: [a]\n...\n", "f:4:10: error: a text is expected here, not a list");
  EXPECT_TOLD(kHead + "profile:\n...\n", "f:4:9: error: a text is expected here, not nothing");
  EXPECT_TOLD(kHead + "rooms: {}\n...\n",
              "f:4:8: error: the rooms are a list: each begins with `- `; write [] where there are none");
  EXPECT_TOLD(kHead + "rooms: [r]\n...\n", "f:4:9: error: a room is expected here: keys and values, not `r`");
  EXPECT_TOLD(kHead + "rooms:\n  - {id: r, outline: [[0, 0], [9, 0], [9, 9]], outdoors: yes}\n...\n",
              "f:5:58: error: true or false is expected here, not `yes`");
  EXPECT_TOLD(kHead + "phones:\n  - {id: p, at: [0, 0, 0], faces: 0}\n...\n",
              "f:5:17: error: a place is expected here: [x, y]");
  EXPECT_TOLD(kHead + "phones:\n  - {id: p, at: [0, 0], faces: \"90\"}\n...\n",
              "f:5:32: error: a number is expected here, not a text; write it without quotes");
  EXPECT_TOLD(kHead + "phones:\n  - {id: p, at: [0, 12'], faces: 0}\n...\n",
              "f:5:21: error: feet and inches can be read in a file in ft or in only; this one is in mm");
  EXPECT_TOLD(kMachine + "{id: d, kind: paddle, at: [0, 0], stops: m}]}" + kEnd,
              "f:7:144: error: all, or a list of machines and rooms, is expected here; write [m]");
}

TEST(ReadingErrors, UnknownValuesNameTheNearest) {
  EXPECT_TOLD("stopwalk_layout: 1\nunits: cm\nsite: {name: S}\n...\n",
              "f:2:8: error: `cm` is not known here; mm, m, in or ft would be");
  EXPECT_EQ(line(kMachine + "{id: d, kind: mushrom-button, at: [0, 0]}]}" + kEnd)
                    .find("did you mean `mushroom-button`?") != std::string::npos,
            true);
  EXPECT_TOLD(kMachine + "{id: d, kind: paddle, at: [0, 0], pin: lost}]}" + kEnd,
              "f:7:142: error: `lost` is not known here; fitted or missing would be");
}

TEST(ReadingErrors, Numbers) {
  const auto at = [](const std::string& number) {
    return line(kHead + "notes:\n  - {id: n, at: [0, " + number + "], text: t}\n...\n").substr(15);
  };
  EXPECT_EQ(at("010"), "`010` has a leading zero; write it without");
  EXPECT_EQ(at(".nan"), "a number is expected here, not `.nan`");
  EXPECT_EQ(at("-.inf"), "a number is expected here, not `-.inf`");
  EXPECT_EQ(at("1e999"), "`1e999` is not a finite number");
  EXPECT_EQ(at("12mm"), "`12mm` has text after the number; write the number alone");
  EXPECT_EQ(at("0x10"), "`0x10` has text after the number; write the number alone");
  EXPECT_EQ(at("10000001"), "`10000001` is beyond 10 km");
  EXPECT_EQ(at("\"12\""), "a number is expected here, not the text `12`");
  EXPECT_EQ(told(kHead + "notes:\n  - {id: n, at: [0, -10000000], text: t}\n...\n"), "");
}

TEST(ReadingErrors, SizesArePositive) {
  for (const char* wrong :
       {"{id: p, at: [0, 0], faces: 0, height: 0}", "{id: p, at: [0, 0], faces: 0, height: -1}"})
    EXPECT_NE(line(kHead + "phones: [" + wrong + "]\n...\n").find("is not positive"), std::string::npos);
  for (const char* wrong : {"{width: 0, depth: 1}", "{width: 1, depth: -1}"})
    EXPECT_NE(line(kHead + "fixtures: [{id: f, at: [0, 0], footprint: " + wrong + "}]\n...\n")
                  .find("is not positive"),
              std::string::npos);
  EXPECT_NE(
      line(kMachine + "{id: d, kind: foot-bar, at: [0, 0], length: 0}]}" + kEnd).find("is not positive"),
      std::string::npos);
  EXPECT_NE(line(kRoom + "doors: [{id: d, joins: [r, outside], at: [0, 0], width: 0}]\n...\n")
                .find("is not positive"),
            std::string::npos);
}

TEST(ReadingErrors, OutlineOfFewerThanThreeCorners) {
  EXPECT_TOLD(kHead + "rooms:\n  - {id: r, outline: [[0, 0], [9, 0]]}\n...\n",
              "f:5:22: error: an outline needs three corners or more; this has 2");
  EXPECT_TOLD(kHead + "fixtures: [{id: f, at: [0, 0], footprint: {outline: []}}]\n...\n",
              "f:4:53: error: an outline needs three corners or more; this has 0");
}

TEST(ReadingErrors, TwoThingsWithOneId) {
  EXPECT_TOLD(kRoom + "phones: [{id: r, at: [0, 0], faces: 0}]\n...\n",
              "f:6:15: error: the id `r` is given twice; the first is on line 5");
  EXPECT_NE(line(kMachine + "{id: op, kind: paddle, at: [0, 0]}]}" + kEnd)
                .find("`m/op` is given twice; the first is on line 7"),
            std::string::npos);
  // On two machines things may have one name.
  EXPECT_EQ(
      told(kMachine +
           "]}\n  - {id: n, at: [1, 1], footprint: {width: 1, depth: 1}, stations: [{id: op, at: [0, -1]}]}" +
           kEnd),
      "");
}

TEST(ReadingErrors, ReservedIds) {
  EXPECT_NE(line(kHead + "notes: [{id: all, at: [0, 0], text: t}]\n...\n").find("`all` is reserved"),
            std::string::npos);
  EXPECT_NE(line(kHead + "rooms:\n  - {id: outside, outline: [[0, 0], [9, 0], [9, 9]]}\n...\n")
                .find("`outside` is reserved"),
            std::string::npos);
}

TEST(ReadingErrors, IdsThatDoNotExist) {
  EXPECT_TOLD(kRoom + "doors: [{id: d, joins: [r, hal], at: [0, 0], width: 1}]\n...\n",
              "f:6:28: error: there is no room with the id `hal`");
  EXPECT_TOLD(
      kRoom + "doors: [{id: d, joins: [outside, r], at: [0, 0], width: 1}]\n...\n",
      "f:6:25: error: the first room carries the door, so it cannot be outside; write [room, outside]");
  EXPECT_NE(line(kMachine + "{id: d, kind: paddle, at: [0, 0], stops: [hal]}]}" + kEnd)
                .find("no machine or room with the id `hal`"),
            std::string::npos);
  EXPECT_NE(line(kMachine + "{id: d, kind: paddle, at: [0, 0], stops: [all]}]}" + kEnd).find("stands alone"),
            std::string::npos);
  EXPECT_NE(line(kMachine + "{id: d, kind: paddle, at: [0, 0], run_down: {r: 2}}]}" + kEnd)
                .find("`r` is no machine"),
            std::string::npos);
  EXPECT_NE(line(kMachine + "{id: d, kind: trigger, at: [0, 0], held_at: [ops]}]}" + kEnd)
                .find("no station on this machine with the id `ops`; did you mean `op`?"),
            std::string::npos);
  EXPECT_NE(line(kMachine + "]}\ntape_checks: [{id: t, from: m/op, to: phone, taped: 3}]\n...\n")
                .find("no station, device or phone with the id `phone`"),
            std::string::npos);
  EXPECT_NE(line(kMachine + "]}\ntape_checks: [{id: t, from: m/op, to: m/opp, taped: 3}]\n...\n")
                .find("did you mean `m/op`?"),
            std::string::npos);
}

TEST(ReadingErrors, AnIdOfDigitsIsAText) {
  EXPECT_EQ(told(kHead + "rooms:\n  - {id: 007, outline: [[0, 0], [9, 0], [9, 9]]}\ndoors: [{id: 12, joins: "
                         "[007, outside], at: [0, 0], width: 1}]\n...\n"),
            "");
  EXPECT_NE(told(kHead + "notes: [{id: a_b, at: [0, 0], text: t}, {id: '', at: [0, 0], text: t}, {id: m/x, "
                         "at: [0, 0], text: t}]\n...\n")
                .find("`m/x`"),
            std::string::npos);
}

TEST(ReadingErrors, NegativeRunDown) {
  EXPECT_NE(
      line(kMachine + "{id: d, kind: paddle, at: [0, 0], run_down: -1}]}" + kEnd).find("cannot be negative"),
      std::string::npos);
  EXPECT_NE(line(kMachine + "{id: d, kind: paddle, at: [0, 0], run_down: {m: -1}}]}" + kEnd)
                .find("cannot be negative"),
            std::string::npos);
}

TEST(ReadingErrors, ABarWithoutLength) {
  EXPECT_NE(line(kMachine + "{id: d, kind: foot-bar, at: [0, 0]}]}" + kEnd).find("needs the key `length`"),
            std::string::npos);
  EXPECT_NE(line(kMachine + "{id: d, kind: pull-cord, at: [0, 0]}]}" + kEnd).find("needs the key `length`"),
            std::string::npos);
}

TEST(ReadingErrors, NotUtf8OrNul) {
  EXPECT_TOLD(kHead + "profile: \"\xE4\"\n...\n",
              "f:4:11: error: not UTF-8; save the file with the encoding UTF-8");
  for (const char* bad : {"\xC0\xAF", "\xED\xA0\x80", "\xF4\x90\x80\x80", "\xFF", "\xE2\x82", "\x80"})
    EXPECT_NE(line(kHead + "profile: \"" + bad + "\"\n...\n").find("not UTF-8"), std::string::npos);
  EXPECT_NE(line(kHead + std::string("profile: a\0b\n", 13) + "...\n").find("NUL"), std::string::npos);
  EXPECT_NE(line(kHead + "profile: \"a\\0b\"\n...\n").find("NUL"), std::string::npos);
}

TEST(ReadingErrors, NestingOverTwentyLevels) {
  const auto nested = [](int levels) {
    return kHead + "x: " + std::string(static_cast<std::size_t>(levels - 1), '[') +
           std::string(static_cast<std::size_t>(levels - 1), ']') + "\n...\n";
  };
  EXPECT_EQ(told(nested(20)).find("error"), std::string::npos);
  EXPECT_TOLD(nested(21), "f:4:23: error: nested over 20 levels deep");
}

TEST(ReadingErrors, UnknownKeysAreWarnings) {
  EXPECT_TOLD(kHead + "room: []\n...\n",
              "f:4:1: warning: the key `room` is not known in a layout and not used; did you mean `rooms`?");
  EXPECT_TOLD(kHead + "colour: red\n...\n",
              "f:4:1: warning: the key `colour` is not known in a layout and not used");
  EXPECT_TOLD(
      kHead + "fixtures: [{id: f, at: [0, 0], footprint: {width: 1, dept: 1, depth: 1}}]\n...\n",
      "f:4:54: warning: the key `dept` is not known in a footprint and not used; did you mean `depth`?");
}

TEST(ReadingErrors, AFileWithoutItsEndMarkerIsReadWithAWarning) {
  EXPECT_TOLD(kHead,
              "f:4:1: warning: the file does not end with the end marker `...`: it may have been cut short");
}

TEST(ReadingErrors, EveryProblemIsToldInTheOrderOfTheText) {
  const std::string text = told(
      "stopwalk_layout: 1\nunits: mm\ntape_checks: [{id: t, from: a, to: b, taped: -1}]\nrooms: [{outline: "
      "[]}]\nsite: {nam: S}\n");
  std::vector<int> lines;
  for (std::size_t at = text.find("f:"); at != std::string::npos; at = text.find("\nf:", at + 1))
    lines.push_back(std::stoi(text.substr(text.find(':', at) + 1)));
  EXPECT_EQ(lines, (std::vector{3, 3, 3, 4, 4, 5, 5, 6})) << text;
}

TEST(LayoutReader, TakesAnyLineEndsAndAByteOrderMark) {
  std::string text = textOf(STOPWALK_SOURCE_DIR "/sample-layouts/scene-shop.layout.yaml");
  const auto expected = readLayout(text, "f", bundledDeviceKinds());
  std::string crlf = "\xEF\xBB\xBF";
  for (const char c : text) crlf += c == '\n' ? "\r\n" : std::string(1, c);
  const auto read = readLayout(crlf, "f", bundledDeviceKinds());
  ASSERT_TRUE(read.value) << all(read.diagnostics);
  EXPECT_EQ(all(read.diagnostics), "");
  EXPECT_TRUE(*read.value == *expected.value);
  const auto wrong =
      readLayout("\xEF\xBB\xBFunits: mm\r\nstopwalk_layout: 1\r\nsite: {name: S}\r\nx: 1\r\n...\r\n", "f",
                 bundledDeviceKinds());
  EXPECT_EQ(all(wrong.diagnostics),
            "f:4:1: warning: the key `x` is not known in a layout and not used\nx: 1\n^\n");
}

}  // namespace
}  // namespace stopwalk::files
