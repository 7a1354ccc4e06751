// Values that can be read and say nothing or the wrong thing.
#include <gtest/gtest.h>

#include "core/files/device_kinds_reader.h"
#include "core/files/layout_reader.h"
#include "core/files/printable.h"

namespace stopwalk::files {
namespace {

// Every message, without file, excerpt and caret.
std::string told(const std::string& unit, const std::string& rest, const std::string& name = "x") {
  const auto read =
      readLayout("stopwalk_layout: 1\nunits: " + unit + "\nsite: {name: " + name + "}\n" + rest + "\n...\n",
                 "f", bundledDeviceKinds());
  std::string all;
  for (const Diagnostic& d : read.diagnostics)
    all += std::to_string(d.line) + ":" + std::to_string(d.column) +
           (d.severity == Severity::Error ? " error: " : " warning: ") + d.text + "\n";
  EXPECT_EQ(read.value.has_value(), all.find("error") == std::string::npos);
  return all;
}

TEST(LooseValues, DateThatIsNoneIsWarnedOf) {
  for (const char* date : {"2026-03-02", "2024-02-29", "\"2026-12-31\""})
    EXPECT_EQ(told("mm", std::string("revision: {number: 1, date: ") + date + "}"), "") << date;
  EXPECT_EQ(told("mm", "revision: {number: 1, date: 2.3.26}"),
            "4:29 warning: `2.3.26` is no date; write year, month and day, such as 2026-03-02\n");
  for (const char* date :
       {"2026-02-29", "2026-13-01", "2026-00-01", "2026-3-2", "26-03-02", "2026-03-02x", "\"\""})
    EXPECT_NE(told("mm", std::string("revision: {number: 1, date: ") + date + "}").find("is no date"),
              std::string::npos)
        << date;
}

TEST(LooseValues, EmptyNameOfTheSiteIsWarnedOf) {
  EXPECT_EQ(told("mm", "", "\"\""), "3:14 warning: the key `name` says nothing\n");
}

TEST(LooseValues, AnglesBeyondSenseAreErrors) {
  const std::string start = "fixtures: [{id: a, at: [0, 0], footprint: {width: 1, depth: 1}, turn: ";
  EXPECT_EQ(told("mm", start + "-720}]"), "");
  EXPECT_EQ(told("mm", start + "1e300}]"),
            "4:71 error: `1e300` is no direction: degrees from 0 to 360 are expected here\n");
}

TEST(LooseValues, SpikeOfAnOutlineIsWarnedOf) {
  const auto outline = [](const std::string& corners) {
    return told("mm", "rooms: [{id: a, outline: [" + corners + "]}]");
  };
  EXPECT_EQ(outline("[0, 0], [9, 0], [9, 9]"), "");
  EXPECT_EQ(outline("[0, 0], [9, 0], [20, 0], [9, 0], [9, 9]"),
            "4:43 warning: the outline runs to this corner and back along its own line, a spike of no width; "
            "leave the "
            "corner out\n");
  EXPECT_NE(outline("[5, 20], [5, 5], [0, 5], [0, 0], [9, 0], [9, 5], [5, 5]").find("4:27 warning"),
            std::string::npos);
  EXPECT_EQ(outline("[0, 0], [9, 0], [20, 0.1], [9, 0.2], [9, 9]"), "") << "thin, and not a spike";
}

TEST(LooseValues, CurlyMarksAreToldHowToBeTyped) {
  const std::string room = "rooms: [{id: a, outline: [[0, 0], [12′ 6″, 0], [9, 9]]}]";
  for (const char* unit : {"ft", "mm"})
    EXPECT_EQ(told(unit, room),
              "4:36 error: feet and inches are written with the plain marks ' and \", such as 12' 6\", not "
              "`12′ 6″`\n");
  EXPECT_NE(told("in", "rooms: [{id: a, outline: [[0, 0], [\"12’ 6”\", 0], [9, 9]]}]").find("plain marks"),
            std::string::npos);
}

TEST(Printable, LeavesNothingForATerminalToObey) {
  EXPECT_EQ(printable("Äb′ 漢 \U0001F6D1\t"), "Äb′ 漢 \U0001F6D1\t");
  for (const char* hidden : {"\x1b", "\a", "\x7f", "\xC2\x9B", "\u061C", "\u200E", "\u200F", "\u202A",
                             "\u202E", "\u2066", "\u2069", "\u2028", "\xff", "\xE2\x80"})
    EXPECT_EQ(printable(std::string("a") + hidden + "b").substr(0, 4), "a\uFFFD") << hidden;
  EXPECT_EQ(printable("a\nb", ""), "a\uFFFDb");
  EXPECT_EQ(printableJson("{\"n\":\"\u202Ex\"}\n"), "{\"n\":\"\\u202ex\"}\n");
}

}  // namespace
}  // namespace stopwalk::files
