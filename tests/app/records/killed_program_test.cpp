// The program itself, killed at any moment while it records a check: nothing that it confirmed is lost.
#include <fcntl.h>
#include <gtest/gtest.h>
#include <poll.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <chrono>
#include <csignal>
#include <filesystem>
#include <fstream>
#include <functional>
#include <random>
#include <set>

#include "app/records/append_record.h"
#include "tests/app/records/written_records.h"

extern char** environ;

namespace stopwalk::records {
namespace {

namespace fs = std::filesystem;
using Clock = std::chrono::steady_clock;
using std::chrono::milliseconds;

constexpr const char* kShop =
    "stopwalk_layout: 1\nunits: mm\nsite: {name: Shop}\n"
    "rooms:\n  - {id: shop, name: Shop, outline: [[0, 0], [9000, 0], [9000, 6000], [0, 6000]]}\n"
    "machines:\n  - {id: saw, name: Saw, at: [2000, 4000], footprint: {width: 1000, depth: 800}, "
    "stations: [{id: operator, role: operator, at: [0, -710]}], "
    "devices: [{id: stop, kind: mushroom-button, at: [0, -400], height: 1000}]}\n";

// What a program said before its end, however that came.
struct Ended {
  std::string out;
  bool by_itself = false;
  int status = -1;
};

class KilledProgram : public testing::Test {
 protected:
  KilledProgram() {
    folder_ = fs::path(testing::TempDir()) / ("stopwalk-killed-" + std::to_string(::getpid()));
    fs::remove_all(folder_);
    fs::create_directories(folder_);
    std::ofstream(layout()) << kShop;
  }
  ~KilledProgram() override { fs::remove_all(folder_); }

  std::string layout() const { return (folder_ / "shop.layout.yaml").string(); }

  // Kills it after that time, unless it has ended.
  Ended run(std::vector<std::string> args, milliseconds patience) const {
    args.insert(args.begin(), STOPWALK_PROGRAM);
    std::vector<char*> argv;
    for (std::string& arg : args) argv.push_back(arg.data());
    argv.push_back(nullptr);
    int ends[2];
    EXPECT_EQ(::pipe2(ends, O_CLOEXEC), 0);
    posix_spawn_file_actions_t actions;
    ::posix_spawn_file_actions_init(&actions);
    ::posix_spawn_file_actions_adddup2(&actions, ends[1], STDOUT_FILENO);
    ::posix_spawn_file_actions_addopen(&actions, STDERR_FILENO, "/dev/null", O_WRONLY, 0);
    pid_t child = 0;
    EXPECT_EQ(::posix_spawn(&child, STOPWALK_PROGRAM, &actions, nullptr, argv.data(), environ), 0);
    ::posix_spawn_file_actions_destroy(&actions);
    ::close(ends[1]);
    const Clock::time_point until = Clock::now() + patience;
    Ended ended;
    pollfd wait{ends[0], POLLIN, 0};
    char buffer[4096];
    for (;;) {  // until it ends, which closes its output, or the time is over
      const auto left = std::chrono::duration_cast<milliseconds>(until - Clock::now()).count();
      if (left <= 0 || ::poll(&wait, 1, static_cast<int>(left)) == 0) break;
      const ssize_t n = ::read(ends[0], buffer, sizeof buffer);
      if (n <= 0) break;
      ended.out.append(buffer, static_cast<std::size_t>(n));
    }
    ::kill(child, SIGKILL);  // of one that has ended: nothing
    int status = 0;
    ::waitpid(child, &status, 0);
    for (ssize_t n; (n = ::read(ends[0], buffer, sizeof buffer)) > 0;)
      ended.out.append(buffer, static_cast<std::size_t>(n));
    ::close(ends[0]);
    ended.by_itself = WIFEXITED(status);
    ended.status = ended.by_itself ? WEXITSTATUS(status) : -1;
    return ended;
  }
  Ended record(const std::string& note, milliseconds patience) const {
    return run({"round", "record", layout(), "--round", "1", "--device", "saw/stop", "--result", "pass",
                "--note", note},
               patience);
  }

 private:
  fs::path folder_;
};

constexpr milliseconds kLong(10000);

// From its start to the end of one that was left alone: the shortest of three.
milliseconds usual(const std::function<Ended(const std::string&)>& record,
                   std::vector<std::string>& confirmed) {
  milliseconds least = kLong;
  for (const char* note : {"a", "b", "c"}) {
    const auto begun = Clock::now();
    const Ended ended = record(note);
    EXPECT_EQ(ended.status, 0) << ended.out;
    confirmed.emplace_back(note);
    least = std::min(least, std::chrono::duration_cast<milliseconds>(Clock::now() - begun));
  }
  return least;
}

// It is asked each time before anything more is written, which would put a torn line aside.
TEST_F(KilledProgram, HasOnDiskAllThatItConfirmedAndWhatItLeavesIsWholeOrNamed) {
  constexpr int kKills = 100;
  constexpr auto kBudget = std::chrono::seconds(15);
  ASSERT_EQ(run({"round", "new", layout(), "--by", "Ada Example"}, kLong).status, 0);
  std::vector<std::string> confirmed;
  const milliseconds whole = usual([&](const std::string& note) { return record(note, kLong); }, confirmed);
  std::mt19937 random(11);
  const auto begun = Clock::now();
  int kills = 0, killed = 0, unconfirmed = 0, torn = 0;
  for (; kills < kKills && Clock::now() - begun < kBudget; ++kills) {
    // Every other time late, where it is written.
    const double part = std::uniform_real_distribution(kills % 2 == 0 ? 0.0 : 0.6, 1.5)(random);
    const std::string note = "k" + std::to_string(kills);
    const Ended ended =
        record(note, milliseconds(static_cast<int>(part * static_cast<double>(whole.count()))));
    killed += !ended.by_itself;
    if (ended.out.find('\n') != std::string::npos) confirmed.push_back(note);

    const files::InspectionLog left = readRecords(layout()).log;
    const files::LogVerdict verdict = files::verifyLog(left);
    ASSERT_TRUE(left.bad.empty()) << kills << ": line " << left.bad.front().line << ": "
                                  << left.bad.front().why;
    EXPECT_EQ(verdict.line, left.torn.empty() ? 0 : left.lines + 1) << kills << ": " << verdict.why;
    torn += !left.torn.empty();
    const std::vector<std::string> notes = notesIn(left);
    const std::set<std::string> there(notes.begin(), notes.end());
    EXPECT_EQ(there.size(), notes.size()) << kills << ": something is there twice";
    for (const std::string& c : confirmed) ASSERT_TRUE(there.contains(c)) << kills << ": " << c << " is lost";
    unconfirmed = static_cast<int>(there.size() - confirmed.size());
    ASSERT_LE(unconfirmed, killed) << "only one that was killed may be there and not confirmed";
  }
  RecordProperty("kills", kills);
  RecordProperty("killed_before_the_end", killed);
  RecordProperty("there_and_not_confirmed", unconfirmed);
  RecordProperty("torn", torn);
  EXPECT_GE(kills, 30);
  EXPECT_GT(killed, kills / 4);
  EXPECT_EQ(record("last", kLong).status, 0) << "no lock of a killed one is in the way";
  EXPECT_EQ(run({"round", "verify", layout()}, kLong).status, 0);
}

}  // namespace
}  // namespace stopwalk::records
