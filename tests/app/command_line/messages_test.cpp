// What is told of a line or a file that is not quite right.
#include <algorithm>

#include "tests/app/command_line/program.h"

namespace stopwalk::app {
namespace {

constexpr int kDone = 0, kWrong = 2, kNoFile = 3;

class Messages : public InFolder {
 protected:
  // The sample with another profile; named `NAME.layout.yaml`.
  std::string layoutBy(const std::string& profile, const std::string& name = "a") const {
    std::string text = textOf(STOPWALK_SOURCE_DIR "/sample-layouts/scene-shop.layout.yaml");
    const std::string key = "\nprofile: ";
    const std::size_t at = text.find(key);
    if (at != std::string::npos) text.erase(at, text.find('\n', at + 1) - at);
    return write(name + ".layout.yaml", text.insert(text.find("\nunits:"), key + profile));
  }
};

std::size_t timesIn(const std::string& text, const std::string& part) {
  std::size_t n = 0;
  for (std::size_t at = text.find(part); at != std::string::npos; at = text.find(part, at + 1)) ++n;
  return n;
}

TEST_F(Messages, ProfileThatTheLayoutNamesAndThatIsNotThereIsToldAtItsPlace) {
  for (const char* command : {"audit", "check"}) {
    for (const std::string name :
         {"strickt", "12", "/etc/passwd", "../../../../../../etc/passwd", "sub/none.yaml"}) {
      const std::string file = layoutBy(name);
      const Ran ran = runProgram({command, file});
      EXPECT_EQ(ran.exit, kWrong) << name;
      EXPECT_EQ(ran.out, "");
      EXPECT_NE(ran.err.find(file + ":"), std::string::npos) << ran.err;
      EXPECT_NE(ran.err.find(":10: error: there is no profile `" + name + "`"), std::string::npos) << ran.err;
      EXPECT_EQ(ran.err.find("root:"), std::string::npos) << "a file elsewhere is not shown";
    }
    EXPECT_EQ(runProgram({command, layoutBy("strict")}).err, "");
  }
}

TEST_F(Messages, RulesThatAreOffAreToldBesideTheProfile) {
  const std::string all = layoutBy("strict");
  EXPECT_EQ(runProgram({"audit", all}).out.find(" off"), std::string::npos);
  std::string text = textOf(all);
  text.insert(text.find("\nunits:"), "\nhouse_rules: [{rule: hidden-stop, on: false}]");
  const std::string fewer = write("b.layout.yaml", text);
  const Ran ran = runProgram({"audit", fewer});
  std::string head = ran.out.substr(0, 600);
  std::ranges::replace(head, '\n', ' ');  // wrapped, as its folder has a long name
  EXPECT_NE(head.find("1 rule is off"), std::string::npos) << head << ran.err;
}

// Else two reports by one profile differ without a cause to be seen.
TEST_F(Messages, LimitsOfTheLineAreToldBesideTheProfile) {
  const std::string file = layoutBy("strict");
  const std::vector<std::string> limits = {"--limit",         "stop-too-far=99", "--limit",
                                           "phone-too-far=7", "--limit",         "stop-too-far=400"};
  const auto by = [&](const std::string& format, bool limited) {
    std::vector<std::string> line = {"audit", file, "--format", format};
    if (limited) line.insert(line.end(), limits.begin(), limits.end());
    return runProgram(line).out;
  };
  const std::string told = "Limits set for this audit: phone-too-far=7, stop-too-far=400";
  for (const char* format : {"table", "summary"}) {
    std::string text = by(format, true);
    std::ranges::replace(text, '\n', ' ');  // wrapped
    EXPECT_EQ(timesIn(text, told), 1u) << text;
    EXPECT_EQ(by(format, false).find("Limits set"), std::string::npos);
  }
  EXPECT_EQ(timesIn(by("json", true), R"("limits":["phone-too-far=7","stop-too-far=400"])"), 1u);
  EXPECT_EQ(by("json", false).find("\"limits\""), std::string::npos);
}

TEST_F(Messages, ProfileFileWithABundledProfilesIdIsNamed) {
  write("ours.yaml", "stopwalk_profile: 1\nid: strict\nrules: {hidden-stop: {on: false}}\n...\n");
  const std::string file = layoutBy("ours.yaml");
  std::string table = runProgram({"audit", file}).out;
  std::ranges::replace(table, '\n', ' ');  // wrapped
  EXPECT_NE(table.find("profile strict (ours.yaml);"), std::string::npos) << table.substr(0, 400);
  EXPECT_NE(runProgram({"audit", file, "--format", "json"}).out.find("\"id\":\"strict (ours.yaml)\""),
            std::string::npos);
}

TEST_F(Messages, ProfileIsReadAndToldOnce) {
  const std::string ours = write("ours.yaml", "stopwalk_profile: 1\nid: ours\ncolour: red\nrules: {}\n...\n");
  const std::string one = layoutBy("ours.yaml", "one"), two = layoutBy("ours.yaml", "two");
  EXPECT_EQ(timesIn(runProgram({"audit", one, two, "--profile", ours}).err, "warning"), 1u);
  EXPECT_EQ(timesIn(runProgram({"audit", one, two}).err, "warning"), 1u);
  EXPECT_EQ(timesIn(runProgram({"check", one, two}).err, "warning"), 1u);
}

TEST_F(Messages, StandardInputIsReadOnce) {
  for (const char* command : {"audit", "check"}) {
    const Ran ran = runProgram({command, "-", "-"}, shop());
    EXPECT_EQ(ran.exit, kWrong);
    EXPECT_EQ(ran.err, "stopwalk: standard input can be read once: give `-` once\n");
  }
}

TEST_F(Messages, EmptyValuesAreRefused) {
  const std::string file = write("shop.layout.yaml", shop());
  const auto measured = [&](const std::string& from, const std::string& more = "--format=table") {
    return runProgram({"measure", file, from, "--to", "1000,1000", more});
  };
  EXPECT_EQ(measured("--from=").err, "stopwalk: --from= has no value after the equals sign\n");
  EXPECT_EQ(measured("--from=").exit, kWrong);
  EXPECT_EQ(measured("--from=2000,1000", "--clearance=").exit, kWrong);
  EXPECT_EQ(runProgram({"measure", file, "--from", "", "--to", "1,1"}).exit, kWrong);
  EXPECT_EQ(runProgram({"measure", file, "--from", "1,1", "--to", "2,2", "--clearance", ""}).exit, kWrong);
  EXPECT_EQ(runProgram({"audit", file, "--profile", ""}).exit, kWrong);
}

TEST_F(Messages, ClearanceHasBoundsThatAreTold) {
  const std::string file = write("shop.layout.yaml", shop());
  for (const char* wrong : {"1e9", "-5", "wide", "nan"})
    EXPECT_NE(runProgram({"measure", file, "--from", "1,1", "--to", "2,2", "--clearance", wrong})
                  .err.find("a length in mm from 0 to 100000 is expected"),
              std::string::npos)
        << wrong;
}

TEST_F(Messages, BlankRoundAComma) {
  const std::string file = write("shop.layout.yaml", shop());
  EXPECT_EQ(runProgram({"measure", file, "--from", "1000, 1000", "--to", " 1000 ,1200"}).exit, kDone);
}

TEST_F(Messages, CurlyMarksAreToldHowToBeTyped) {
  const std::string file = write("shop.layout.yaml", shop());
  const Ran ran = runProgram({"measure", file, "--from", "12′ 6″,3", "--to", "1,1"});
  EXPECT_EQ(ran.exit, kWrong);
  EXPECT_NE(ran.err.find("type the plain marks ' and \""), std::string::npos) << ran.err;
}

TEST_F(Messages, LimitsThatAreCountsAreWhole) {
  const std::string file = write("shop.layout.yaml", shop());
  for (const char* limit : {"no-stop=0.5", "no-stop=0", "no-emergency-stop=1.5"}) {
    const Ran ran = runProgram({"audit", file, "--limit", limit});
    EXPECT_EQ(ran.exit, kWrong) << limit;
    EXPECT_NE(ran.err.find("is a count: a whole number, 1 or more"), std::string::npos) << ran.err;
  }
  EXPECT_NE(runProgram({"audit", file, "--limit", "no-stop=2"}).exit, kWrong);
}

TEST_F(Messages, LayoutWithoutPlacesSaysSo) {
  const std::string bare =
      "stopwalk_layout: 1\nunits: mm\nsite: {name: x}\n"
      "rooms: [{id: a, outline: [[0, 0], [9000, 0], [9000, 9000], [0, 9000]]}]\n...\n";
  EXPECT_EQ(
      runProgram({"measure", "-", "--from", "saw", "--to", "2000,2000"}, bare).err,
      "stopwalk: there is no place `saw`: the layout has no stations, devices or phones; give a point x,y\n");
}

TEST_F(Messages, NothingThatATerminalObeysIsPrinted) {
  const std::string hostile = "\u202E\x1b[31m\x07";
  std::string text = shop();
  text.replace(text.find("Caged mill"), 10, "\"\\e[31m\\u202E mill\"");
  const std::string file = write("a" + hostile + ".layout.yaml", text);
  for (const std::vector<std::string>& args :
       std::vector<std::vector<std::string>>{{"check", file},
                                             {"audit", file},
                                             {"audit", file, "--format", "json"},
                                             {"audit", file, "--format", "csv"},
                                             {"-v", "check", file},
                                             {"audit", file, "--profile", hostile},
                                             {"audit", file, "--limit", hostile + "=1"},
                                             {"audit", file, "--" + hostile},
                                             {"check", file + "x"},
                                             {"measure", file, "--from", hostile, "--to", "1,1"},
                                             {"measure", file, "--from", "1,1", "--to", hostile + ",1"}}) {
    const Ran ran = runProgram(args);
    for (const char* bad : {"\u202E", "\x1b", "\x07"}) {
      EXPECT_EQ(ran.out.find(bad), std::string::npos) << args[0] << " " << args.back();
      EXPECT_EQ(ran.err.find(bad), std::string::npos) << args[0] << " " << args.back();
    }
    EXPECT_NE(ran.out + ran.err, "");
  }
}

TEST_F(Messages, HelpThatCannotBeWrittenIsTold) {
  for (const char* asked : {"--help", "--version"}) {
    std::istringstream in;
    std::ostringstream out, err;
    out.setstate(std::ios::badbit);
    EXPECT_EQ(run({asked}, Console{in, out, err}), kNoFile);
    EXPECT_EQ(err.str(), "stopwalk: cannot write to standard output\n");
  }
}

}  // namespace
}  // namespace stopwalk::app
