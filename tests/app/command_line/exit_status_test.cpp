// The exit statuses of docs/command-line.md, for each way to go wrong.
#include <unistd.h>

#include <algorithm>
#include <atomic>
#include <new>
#include <stdexcept>

#include "tests/app/command_line/program.h"

namespace stopwalk::app {
namespace {

constexpr int kDone = 0, kFailed = 1, kWrong = 2, kNoFile = 3;

std::string replaced(std::string text, const std::string& from, const std::string& to) {
  const std::size_t at = text.find(from);
  EXPECT_NE(at, std::string::npos) << from;
  return at == std::string::npos ? text : text.replace(at, from.size(), to);
}

std::string goodShop() {
  return textOf(STOPWALK_SOURCE_DIR "/sample-layouts/scene-shop.layout.yaml");
}
std::string faultyShop() {
  return replaced(shop(), "at: [4000, 0], width", "at: [4000, 500], width");
}

class Program : public InFolder {};

TEST_F(Program, AuditSaysWhetherAFailingRuleIsBroken) {
  EXPECT_EQ(runProgram({"audit", write("good.layout.yaml", goodShop())}).exit, kDone);
  EXPECT_EQ(runProgram({"audit", write("bad.layout.yaml", shop())}).exit, kFailed);
}

TEST_F(Program, ReadsStandardInput) {
  const Ran ran = runProgram({"audit", "-", "--format", "csv"}, shop());
  EXPECT_EQ(ran.exit, kFailed);
  EXPECT_NE(ran.out.find("\r\n-,saw/operator,"), std::string::npos);
}

TEST_F(Program, UsageThatIsWrongWritesNothing) {
  const std::string good = write("good.layout.yaml", goodShop());
  const std::vector<std::vector<std::string>> wrong = {
      {},
      {"audit"},
      {"fly"},
      {"audit", good, "--format", "xml"},
      {"audit", good, "--hours", "noon"},
      {"audit", good, "--limit", "stop-too-fr=4"},
      {"audit", good, "--limit", "stop-too-far"},
      {"audit", good, "--limit"},
      {"audit", good, "--profile", "strickt"},
      {"audit", good, "--nonsense"},
      {"measure", good, "--from", "0,0"},
      {"measure", good, "--from", "0,0", "--to", "nowhere"},
      {"measure", good, "--from", "0,x", "--to", "0,0"},
      {"measure", good, "--from", "0,0", "--to", "1,1", "--clearance", "-5"},
      {"profile"},
      {"profile", "show", "strickt"}};
  for (const auto& args : wrong) {
    const Ran ran = runProgram(args);
    std::string line;
    for (const std::string& a : args) line += a + " ";
    EXPECT_EQ(ran.exit, kWrong) << line;
    EXPECT_EQ(ran.out, "") << line;
    EXPECT_NE(ran.err, "") << line;
  }
}

TEST_F(Program, InputThatIsWrongWritesNothing) {
  for (const std::string& text : {std::string(), std::string("nonsense"),
                                  replaced(shop(), "units: mm", "units: yd"), shop().substr(0, 900)}) {
    for (const char* command : {"audit", "check"}) {
      const Ran ran = runProgram({command, "-"}, text);
      EXPECT_EQ(ran.exit, kWrong);
      EXPECT_EQ(ran.out, "");
      EXPECT_EQ(ran.err.rfind("-:", 0), 0u) << ran.err;
      EXPECT_NE(ran.err.find(": error: "), std::string::npos);
    }
    EXPECT_EQ(runProgram({"measure", "-", "--from", "1,1", "--to", "2,2"}, text).exit, kWrong);
  }
}

TEST_F(Program, NeverWritesAReportOverTheLayout) {
  const std::string file = testing::TempDir() + "own.layout.yaml";
  std::ofstream(file) << shop();
  const Ran ran = runProgram({"audit", file, "--out", file});
  EXPECT_EQ(ran.exit, kWrong);
  EXPECT_NE(ran.err.find("is the layout"), std::string::npos) << ran.err;
  std::stringstream kept;
  kept << std::ifstream(file).rdbuf();
  EXPECT_EQ(kept.str(), shop());
  EXPECT_EQ(runProgram({"audit", file, "--out", ""}).exit, kWrong);
}

TEST_F(Program, FilesThatCannotBeReadOrWritten) {
  const std::string good = write("good.layout.yaml", goodShop());
  EXPECT_EQ(runProgram({"audit", path("none.layout.yaml")}).exit, kNoFile);
  EXPECT_EQ(runProgram({"check", path("none.layout.yaml")}).exit, kNoFile);
  EXPECT_EQ(runProgram({"measure", path("none.layout.yaml"), "--from", "0,0", "--to", "1,1"}).exit, kNoFile);
  EXPECT_EQ(runProgram({"audit", good, "--profile", path("none.yaml")}).exit, kNoFile);
  EXPECT_EQ(runProgram({"audit", good, "--out", path("no/such/folder.json")}).exit, kNoFile);
  EXPECT_EQ(runProgram({"audit", good, "--out", "/dev/full"}).exit, kNoFile);
  // A pipe by a name that is a link to it, such as /dev/stdout.
  int ends[2];
  ASSERT_EQ(::pipe(ends), 0);
  const Ran piped =
      runProgram({"audit", good, "--format", "summary", "--out", "/dev/fd/" + std::to_string(ends[1])});
  ::close(ends[1]);
  std::string text(10000, ' ');
  text.resize(static_cast<std::size_t>(std::max<ssize_t>(0, ::read(ends[0], text.data(), text.size()))));
  ::close(ends[0]);
  EXPECT_EQ(piped.exit, kDone) << piped.err;
  EXPECT_EQ(text, runProgram({"audit", good, "--format", "summary"}).out);
  EXPECT_EQ(names(), std::vector<std::string>{"good.layout.yaml"});
}

TEST_F(Program, ClosedOutputIsAFileThatCannotBeWritten) {
  std::istringstream in;
  std::ostringstream out, err;
  out.setstate(std::ios::badbit);
  EXPECT_EQ(run({"audit", write("good.layout.yaml", goodShop())}, Console{in, out, err}), kNoFile);
  EXPECT_EQ(run({"profile", "list"}, Console{in, out, err}), kNoFile);
  EXPECT_EQ(run({"--help"}, Console{in, out, err}), kNoFile);
}

TEST_F(Program, SeveralLayoutsAreAllAuditedAndTheWorstCounts) {
  const std::string good = write("good.layout.yaml", goodShop()), bad = write("bad.layout.yaml", shop()),
                    broken = write("broken.layout.yaml", "x: [");
  EXPECT_EQ(runProgram({"audit", good, bad}).exit, kFailed);
  const Ran ran = runProgram({"audit", bad, broken, good, "--format", "json"});
  EXPECT_EQ(ran.exit, kWrong);
  EXPECT_EQ(ran.out.front(), '[');
  EXPECT_NE(ran.out.find(bad), std::string::npos);
  EXPECT_NE(ran.out.find(good), std::string::npos);
  EXPECT_EQ(ran.out.find(broken), std::string::npos);
  EXPECT_EQ(runProgram({"audit", good, broken, "--format", "json"}).out.front(), '[');
}

TEST_F(Program, WritesAFileWholeInPlaceOfTheOld) {
  const std::string bad = write("bad.layout.yaml", shop());
  const std::string out = write("report.json", "old");
  const Ran ran = runProgram({"audit", bad, "--format", "json", "--out", out});
  EXPECT_EQ(ran.exit, kFailed);
  EXPECT_EQ(ran.out, "");
  EXPECT_EQ(textOf(out), runProgram({"audit", bad, "--format", "json"}).out);
  EXPECT_EQ(names().size(), 2u);
}

TEST_F(Program, CheckTellsFaultsByTheirPlace) {
  const std::string file = write("faulty.layout.yaml", faultyShop());
  const Ran ran = runProgram({"check", file});
  EXPECT_EQ(ran.exit, kFailed);
  EXPECT_NE(ran.err.find(file + ":10:10: fault: "), std::string::npos) << ran.err;
  EXPECT_NE(runProgram({"audit", file}).err.find(file + ":10:10: fault: "), std::string::npos);
  EXPECT_EQ(runProgram({"check", write("good.layout.yaml", goodShop())}).exit, kDone);
}

TEST_F(Program, ProfileOfTheLayoutIsFoundBesideIt) {
  write("ours.yaml", "stopwalk_profile: 1\nid: ours\nextends: strict\nrules: {}\n...\n");
  const std::string file =
      write("bad.layout.yaml", replaced(shop(), "units: mm\n", "units: mm\nprofile: ours.yaml\n"));
  EXPECT_NE(runProgram({"audit", file, "--format", "json"}).out.find(R"("profile": {"id":"ours")"),
            std::string::npos);
  EXPECT_NE(
      runProgram({"audit", file, "--format", "json", "--profile", "strict"}).out.find(R"({"id":"strict")"),
      std::string::npos);
  const std::string lost =
      write("lost.layout.yaml", replaced(shop(), "units: mm\n", "units: mm\nprofile: theirs.yaml\n"));
  EXPECT_EQ(runProgram({"audit", lost}).exit, kWrong);
}

TEST_F(Program, LogsToStandardErrorWhenAsked) {
  const std::string file = write("good.layout.yaml", goodShop());
  EXPECT_EQ(runProgram({"audit", file}).err, "");
  EXPECT_NE(runProgram({"-v", "audit", file}).err.find("stopwalk: audited"), std::string::npos);
}

TEST_F(Program, HelpEndsWithAnExampleAtEveryLevel) {
  for (const auto& args : std::vector<std::vector<std::string>>{{"--help"},
                                                                {"audit", "--help"},
                                                                {"check", "--help"},
                                                                {"measure", "--help"},
                                                                {"profile", "--help"},
                                                                {"profile", "show", "--help"},
                                                                {"profile", "list", "--help"}}) {
    const Ran ran = runProgram(args);
    EXPECT_EQ(ran.exit, kDone);
    EXPECT_NE(ran.out.find("Example:\n  stopwalk "), std::string::npos) << args[0];
  }
  EXPECT_EQ(runProgram({"--version"}).out, "stopwalk " STOPWALK_VERSION "\n");
}

// A clock that is asked once too often stands for whatever goes wrong within.
TEST_F(Program, WhatGoesWrongWithinIsToldAndLeavesNoFile) {
  const std::string first = write("a.layout.yaml", goodShop()), second = write("b.layout.yaml", goodShop());
  ASSERT_EQ(runProgram({"round", "new", second, "--by", "Ada Example"}).exit, kDone);
  const auto files = names().size();
  for (const bool out_of_memory : {true, false})
    for (const char* at_once : {"1", "2"}) {
      std::istringstream in;
      std::ostringstream out, err;
      Console console{in, out, err};
      std::atomic<int> asked = 0;
      console.now = [&]() -> inspection::Moment {
        if (++asked == 1) return *inspection::parseMoment("2026-03-02T09:15:00+01:00");
        if (out_of_memory) throw std::bad_alloc();
        throw std::runtime_error("the clock stands still");
      };
      const int exit =
          run({"audit", first, second, "--out", path("report.json"), "--at-once", at_once}, console);
      EXPECT_EQ(exit, kNoFile);
      const std::string why = out_of_memory ? "there is not enough memory" : "the clock stands still";
      EXPECT_NE(err.str().find("stopwalk: " + why + "; what was asked for is not done\n"), std::string::npos)
          << err.str();
      EXPECT_EQ(out.str(), "");
      EXPECT_EQ(names().size(), files);
    }
}

}  // namespace
}  // namespace stopwalk::app
