// The program as it is built, in its two files: the plain commands are answered without Qt, and all as by the
// whole.
#include <gtest/gtest.h>
#include <sys/wait.h>

#include <cstdlib>

#include "app/command_line/commands.h"
#include "app/command_line/log.h"
#include "tests/app/command_line/program.h"

namespace stopwalk::app {
namespace {

namespace fs = std::filesystem;

class PlainProgram : public InFolder {
 protected:
  // By a shell, without a display.
  Ran ranBy(const std::string& program, const std::string& line) const {
    const std::string out = path("out"), err = path("err");
    const std::string command = "env -u DISPLAY -u WAYLAND_DISPLAY -u QT_QPA_PLATFORM '" + program + "' " +
                                line + " >'" + out + "' 2>'" + err + "' </dev/null";
    const int status = std::system(command.c_str());
    return {WIFEXITED(status) ? WEXITSTATUS(status) : -1, textOf(out), textOf(err)};
  }
};

TEST_F(PlainProgram, CommandsAreCalledByTheNamesThatTheyHave) {
  std::istringstream in;
  std::ostringstream out;
  const Console console{in, out, out};
  const auto log = logTo(out, spdlog::level::warn);
  Session session{console, *log, out, {}};
  for (const auto commands : {plainCommands(), allCommands()})
    for (const Command& command : commands) {
      CLI::App program;
      command.add(program, session);
      EXPECT_EQ(program.get_subcommands([](const CLI::App*) { return true; }).at(0)->get_name(),
                command.name);
    }
}

TEST_F(PlainProgram, LoadsNoQt) {
  for (const auto& [program, with_qt] : {std::pair{STOPWALK_PROGRAM, false}, {STOPWALK_PAINTER, true}}) {
    const Ran ran = ranBy("/usr/bin/ldd", program);
    ASSERT_EQ(ran.exit, 0) << ran.err;
    EXPECT_EQ(ran.out.find("libQt") != std::string::npos, with_qt) << ran.out;
  }
}

TEST_F(PlainProgram, AnswersAsTheWholeDoes) {
  const std::string layout = "'" + write("shop.layout.yaml", shop()) + "'";
  const std::vector<std::string> lines{"audit " + layout,
                                       "-v audit --format json " + layout,
                                       "--verbose audit " + layout + " --limit stop-too-far=1",
                                       "walk " + layout,
                                       "measure " + layout,
                                       "profile list",
                                       "profile show teaching-shop",
                                       "check " + layout,
                                       "round due " + layout,
                                       "audit",
                                       "audit --nothing",
                                       "audit --help",
                                       "walk --help",
                                       "audit nowhere.layout.yaml",
                                       "audit nowhere round",
                                       "--help",
                                       "--help audit",
                                       "--version",
                                       "--version audit",
                                       "nothing",
                                       "-",
                                       ""};
  for (const std::string& line : lines) {
    const Ran plain = ranBy(STOPWALK_PROGRAM, line), whole = ranBy(STOPWALK_PAINTER, line);
    EXPECT_EQ(plain.exit, whole.exit) << line;
    EXPECT_EQ(plain.out, whole.out) << line;
    EXPECT_EQ(plain.err, whole.err) << line;
    EXPECT_FALSE(plain.out.empty() && plain.err.empty()) << line;
  }
}

TEST_F(PlainProgram, AloneItSaysWhatIsMissing) {
  const std::string layout = write("shop.layout.yaml", shop());
  fs::copy_file(STOPWALK_PROGRAM, path("stopwalk"));
  EXPECT_EQ(ranBy(path("stopwalk"), "audit '" + layout + "'").out,
            ranBy(STOPWALK_PROGRAM, "audit '" + layout + "'").out);
  const Ran ran = ranBy(path("stopwalk"), "poster '" + layout + "' --out '" + path("a.pdf") + "'");
  EXPECT_EQ(ran.exit, static_cast<int>(Exit::NoFile));
  EXPECT_NE(ran.err.find("cannot run " + path("stopwalk-painter") + ": No such file"), std::string::npos)
      << ran.err;
  EXPECT_FALSE(fs::exists(path("a.pdf")));
}

// Such as by whoever installs it carelessly.
TEST_F(PlainProgram, ThatIsCalledPainterDoesNotStartItselfForEver) {
  fs::copy_file(STOPWALK_PROGRAM, path("stopwalk"));
  fs::copy_file(STOPWALK_PROGRAM, path("stopwalk-painter"));
  const Ran ran = ranBy(path("stopwalk"), "--version");
  EXPECT_EQ(ran.exit, static_cast<int>(Exit::NoFile));
  EXPECT_NE(ran.err.find("it is another program"), std::string::npos) << ran.err;
}

// As where it is called from a folder of programs.
TEST_F(PlainProgram, FindsThePainterThroughALink) {
  fs::create_symlink(STOPWALK_PROGRAM, path("link"));
  const Ran ran = ranBy(path("link"), "--version");
  EXPECT_EQ(ran.exit, 0) << ran.err;
  EXPECT_EQ(ran.out.substr(0, 9), "stopwalk ");
}

}  // namespace
}  // namespace stopwalk::app
