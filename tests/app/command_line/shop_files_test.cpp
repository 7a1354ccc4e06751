// A shop's own device kinds and machine templates, beside the layout and by --kinds.
#include <filesystem>
#include <utility>

#include "tests/app/command_line/program.h"

namespace stopwalk::app {
namespace {

constexpr int kDone = 0, kWrong = 2, kNoFile = 3;

std::string layoutWithDevice(const std::string& kind) {
  return R"(stopwalk_layout: 1
units: mm
site: {name: Invented shed}
rooms:
  - {id: shed, name: Shed, outline: [[0, 0], [6000, 0], [6000, 4000], [0, 4000]]}
machines:
  - id: saw
    name: Band saw
    at: [3000, 2500]
    footprint: {width: 800, depth: 700}
    height: 1900
    stations: [{id: operator, role: operator, at: [0, -800]}]
    devices: [{id: stop, kind: )" +
         kind + R"(, at: [0, -350], height: 1100}]
...
)";
}

std::string kinds(const std::string& kind, bool stops) {
  return "stopwalk_device_kinds: 1\ndevice_kinds:\n  " + kind +
         ":\n    label: knee pad\n    actuated_by: hand\n    shape: point\n    counts_as_stop: " +
         (stops ? "true" : "false") + "\n...\n";
}

class OwnKinds : public InFolder {
 protected:
  static bool saysNoStop(const Ran& ran) { return ran.out.find("(no-stop;") != std::string::npos; }
};

TEST_F(OwnKinds, BesideTheLayoutAreReadOverTheBundledOnes) {
  const std::string layout = write("shed.layout.yaml", layoutWithDevice("knee-pad"));
  const std::string by_itself = runProgram({"audit", layout}).err;
  EXPECT_NE(by_itself.find(layout + ":13:"), std::string::npos) << by_itself;
  EXPECT_NE(by_itself.find("error: "), std::string::npos);

  const std::string own = write("device-kinds.yaml", kinds("knee-pad", true));
  const Ran audited = runProgram({"-v", "audit", layout});
  EXPECT_NE(audited.out.find("its own knee pad"), std::string::npos) << audited.out << audited.err;
  EXPECT_FALSE(saysNoStop(audited));
  EXPECT_NE(audited.err.find("stopwalk: merged " + own), std::string::npos) << audited.err;
  EXPECT_EQ(runProgram({"audit", layout}).err, "");
  EXPECT_EQ(runProgram({"check", layout}).exit, kDone);
  EXPECT_EQ(runProgram({"measure", layout, "--from", "saw/operator", "--to", "saw/stop"}).exit, kDone);
}

TEST_F(OwnKinds, LinkThatLeadsNowhereCannotBeRead) {
  const std::string layout = write("shed.layout.yaml", layoutWithDevice("paddle"));
  const std::string link = write("device-kinds.yaml", "");
  std::filesystem::remove(link);
  std::filesystem::create_symlink("nowhere.yaml", link);
  const Ran ran = runProgram({"audit", layout});
  EXPECT_EQ(ran.exit, kNoFile);
  EXPECT_NE(ran.err.find("cannot read " + link), std::string::npos) << ran.err;
}

TEST_F(OwnKinds, AndTheProfileAreNeverReplacedByAReport) {
  const std::string layout = write("shed.layout.yaml", layoutWithDevice("paddle"));
  const std::string own = write("own.yaml", kinds("paddle", true));
  const std::string profile = write("ours.yaml", "stopwalk_profile: 1\nid: ours\nextends: teaching-shop\n");
  for (const auto& [option, file] : {std::pair{"--kinds", own}, {"--profile", profile}}) {
    const auto size = std::filesystem::file_size(file);
    const Ran ran = runProgram({"audit", layout, option, file, "--out", file});
    EXPECT_EQ(ran.exit, kWrong) << option;
    EXPECT_NE(ran.err.find("name another file"), std::string::npos) << ran.err;
    EXPECT_EQ(std::filesystem::file_size(file), size);
  }
}

TEST_F(OwnKinds, BesideTheLayoutAreNeverReplacedByAReport) {
  const std::string layout = write("shed.layout.yaml", layoutWithDevice("paddle"));
  const std::string own = write("device-kinds.yaml", kinds("paddle", true));
  const auto size = std::filesystem::file_size(own);
  const Ran ran = runProgram({"audit", layout, "--out", own});
  EXPECT_EQ(ran.exit, kWrong);
  EXPECT_NE(ran.err.find("name another file"), std::string::npos) << ran.err;
  EXPECT_EQ(std::filesystem::file_size(own), size);
}

TEST_F(OwnKinds, ReplaceABundledKindOfTheSameName) {
  const std::string layout = write("shed.layout.yaml", layoutWithDevice("paddle"));
  EXPECT_FALSE(saysNoStop(runProgram({"audit", layout})));
  write("device-kinds.yaml", kinds("paddle", false));
  EXPECT_TRUE(saysNoStop(runProgram({"audit", layout})));
}

TEST_F(OwnKinds, NamedOnTheLineGoBeforeThoseBesideTheLayout) {
  const std::string layout = write("shed.layout.yaml", layoutWithDevice("paddle"));
  write("device-kinds.yaml", kinds("paddle", true));
  const std::string other = write("other.yaml", kinds("paddle", false));
  EXPECT_TRUE(saysNoStop(runProgram({"audit", layout, "--kinds", other})));
  write("device-kinds.yaml", "broken");
  EXPECT_EQ(runProgram({"check", layout, "--kinds", other}).exit, kDone);
}

TEST_F(OwnKinds, OfStandardInputAreThoseNamedOnTheLine) {
  const std::string own = write("device-kinds.yaml", kinds("knee-pad", true));
  const std::string layout = layoutWithDevice("knee-pad");
  EXPECT_EQ(runProgram({"check", "-"}, layout).exit, kWrong);
  EXPECT_EQ(runProgram({"check", "-", "--kinds", own}, layout).exit, kDone);
  EXPECT_EQ(
      runProgram({"measure", "-", "--kinds", own, "--from", "1000,1000", "--to", "saw/stop"}, layout).exit,
      kDone);
}

TEST_F(OwnKinds, WithAnErrorAreWrongInputToldOnce) {
  const std::string one = write("one.layout.yaml", layoutWithDevice("paddle")),
                    two = write("two.layout.yaml", layoutWithDevice("paddle"));
  const std::string own =
      write("device-kinds.yaml", "stopwalk_device_kinds: 1\ndevice_kinds:\n  pad: {shape: pnt}\n...\n");
  for (const char* command : {"audit", "check"}) {
    const Ran ran = runProgram({command, one, two});
    EXPECT_EQ(ran.exit, kWrong);
    EXPECT_EQ(ran.out, "");
    const std::string told = own + ":3:16: error: ";
    const std::size_t first = ran.err.find(told);
    EXPECT_NE(first, std::string::npos) << ran.err;
    EXPECT_EQ(ran.err.find(told, first + 1), std::string::npos) << ran.err;
  }
}

TEST_F(OwnKinds, ThatCannotBeReadAreAFileThatCannotBeRead) {
  const std::string layout = write("shed.layout.yaml", layoutWithDevice("paddle"));
  EXPECT_EQ(runProgram({"audit", layout, "--kinds", path("none.yaml")}).exit, kNoFile);
  EXPECT_EQ(runProgram({"audit", layout, "--kinds", ""}).exit, kWrong);
  std::filesystem::create_directory(path("device-kinds.yaml"));
  const Ran ran = runProgram({"check", layout});
  EXPECT_EQ(ran.exit, kNoFile);
  EXPECT_NE(ran.err.find("device-kinds.yaml: it is a folder"), std::string::npos) << ran.err;
}

TEST_F(OwnKinds, MachineTemplatesBesideTheLayoutKnowThem) {
  const std::string layout = write("shed.layout.yaml", layoutWithDevice("paddle"));
  const std::string own = write("machine-templates.yaml", R"(stopwalk_machine_templates: 1
units: mm
machine_templates:
  shaper:
    label: Shaper
    footprint: {width: 900, depth: 600}
    devices: [{id: stop, kind: knee-pad, at: [0, -300]}]
...
)");
  const Ran without = runProgram({"check", layout});
  EXPECT_EQ(without.exit, kWrong);
  EXPECT_NE(without.err.find(own + ":7:32: error: "), std::string::npos) << without.err;
  write("device-kinds.yaml", kinds("knee-pad", true));
  const Ran with = runProgram({"-v", "check", layout});
  EXPECT_EQ(with.exit, kDone);
  EXPECT_NE(with.err.find("stopwalk: merged " + own), std::string::npos) << with.err;
}

}  // namespace
}  // namespace stopwalk::app
