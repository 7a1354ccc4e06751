// How the round commands tell of what is due and recorded, and how they take numbers.
#include <nlohmann/json.hpp>

#include "tests/app/command_line/rounds.h"

namespace stopwalk::app {
namespace {

class RoundTold : public RoundCommand {
 protected:
  Ran shown(std::size_t columns) const {
    std::istringstream in;
    std::ostringstream out, err;
    Console console{in, out, err, false, false, columns};
    console.now = [this] { return *inspection::parseMoment(now); };
    const int exit = run({"round", "show", layout}, console);
    return {exit, out.str(), err.str()};
  }
  static std::size_t widestLine(const std::string& text) {
    std::size_t widest = 0;
    std::istringstream lines(text);
    for (std::string line; std::getline(lines, line);) widest = std::max(widest, line.size());
    return widest;
  }
};

TEST_F(RoundTold, WhatFailedIsDueFirst) {
  open();
  EXPECT_TRUE(round({"due"}).out.starts_with("saw/stop: pressed, never passed")) << round({"due"}).out;
  record("cut-off", "fail");
  const std::string due = round({"due"}).out;
  EXPECT_TRUE(due.starts_with("cut-off: failed on 2026-03-02")) << due;
  EXPECT_LT(due.rfind("cut-off:"), due.find("saw/stop:")) << due;
  const auto json = nlohmann::json::parse(round({"due", "--format", "json"}).out);
  EXPECT_EQ(json["due"][0]["device"], "cut-off") << json.dump(1);
}

TEST_F(RoundTold, TheExampleOfADayIsOneThatIsTaken) {
  for (const char* day : {"2026-03-02T09:15:00+01:00", "2031-12-31T09:15:00+01:00"}) {
    now = day;
    std::istringstream in;
    std::ostringstream out, err;
    Console console{in, out, err};
    console.now = [this] { return *inspection::parseMoment(now); };
    run({"round", "due", "--help"}, console);
    const std::string help = out.str(), before = "due shop.layout.yaml --on ";
    const std::size_t at = help.find(before);
    ASSERT_NE(at, std::string::npos) << help;
    EXPECT_NE(round({"due", "--on", help.substr(at + before.size(), 10)}).exit, kWrong) << help;
  }
}

TEST_F(RoundTold, EveryCheckIsShownWithItsTime) {
  open();
  now = "2026-03-03T10:20:00+01:00";
  record("saw/stop", "pass", {"--at", "2026-03-02T16:45:00+01:00"});
  for (const std::size_t columns : {60u, 80u, 120u}) {
    const std::string text = shown(columns).out;
    EXPECT_NE(text.find("pass    2026-03-02 16:45  saw/stop  Ada Example\n"), std::string::npos) << text;
    EXPECT_NE(text.find("\n     entered on 2026-03-03 10:20\n"), std::string::npos) << text;
  }
}

TEST_F(RoundTold, WhatWasFoundIsAsWideAsTheTerminal) {
  open();
  std::string note = "it";
  while (note.size() < 400) note += " ran on and on";
  record("saw/stop", "fail", {"--note", note});
  for (const std::size_t columns : {60u, 80u, 100u}) {
    const std::string text = shown(columns).out;
    EXPECT_LE(widestLine(text), columns) << text;
    EXPECT_GT(widestLine(text), columns - 10) << text;
    std::size_t lines = 0;
    for (std::size_t at = 0; (at = text.find("\n     ", at)) != std::string::npos; ++at) ++lines;
    EXPECT_LE(lines, 1 + note.size() / (columns - 10)) << text;
  }
}

TEST_F(RoundTold, ADecimalCommaIsNoSecondRun) {
  open();
  const std::string before = log();
  const auto refused = [&](const std::string& run_down, const std::string& why) {
    const Ran ran = record("saw/stop", "pass", {"--run-down", run_down});
    EXPECT_EQ(ran.exit, kWrong) << run_down;
    EXPECT_NE(ran.err.find(why), std::string::npos) << ran.err;
  };
  refused("1,4", "say 1.4 for one, 1.0,4.0 for two");
  refused("2.5,1,4", "say 1.4 for one");
  refused("1,4;1,6", "as 1.4, with commas between runs");
  EXPECT_EQ(log(), before);
  const auto runs = [&](const std::string& run_down) {
    EXPECT_EQ(record("saw/stop", "pass", {"--run-down", run_down}).exit, kDone);
    return nlohmann::json::parse(lastLine(log()))["run_down_s"].dump();
  };
  EXPECT_EQ(runs("2.4,3,2.6"), "[2.4,3.0,2.6]");
  EXPECT_EQ(runs("1.0,4.0"), "[1.0,4.0]");
  EXPECT_EQ(runs("3"), "[3.0]");
}

}  // namespace
}  // namespace stopwalk::app
