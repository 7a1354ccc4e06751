// Adding records: killed at any moment, by two at once, and while another holds the log.
#include "app/records/append_record.h"

#include <fcntl.h>
#include <gtest/gtest.h>
#include <sys/file.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <csignal>
#include <filesystem>
#include <fstream>
#include <random>
#include <set>
#include <thread>

#include "app/records/record_lock.h"
#include "tests/app/records/written_records.h"

namespace stopwalk::records {
namespace {

namespace fs = std::filesystem;

// Where syncing costs nothing, so that thousands of records are written; to a killed process it is all one.
fs::path fastFolder() {
  const fs::path memory = "/dev/shm";
  return ::access(memory.c_str(), W_OK) == 0 ? memory : fs::path(testing::TempDir());
}

class AppendRecord : public testing::Test {
 protected:
  AppendRecord() {
    folder_ = fastFolder() / ("stopwalk-records-" + std::to_string(::getpid()) + "-" +
                              std::string(testing::UnitTest::GetInstance()->current_test_info()->name()));
    fs::remove_all(folder_);
    fs::create_directories(folder_);
  }
  ~AppendRecord() override { fs::remove_all(folder_); }

  std::string layout() const { return (folder_ / "shop.layout.yaml").string(); }
  std::string log() const { return recordsFileOf(layout()); }

  // A process that records on and on, and tells by the pipe which records were confirmed.
  pid_t startWriter(const std::string& name, int pipe, int count) const {
    const pid_t child = ::fork();
    if (child != 0) return child;
    for (int i = 0; i < count; ++i) {
      const std::string note = name + std::to_string(i);
      if (appendRecord(log(), checkNoted(note)).written != Written::Yes) ::_exit(1);
      const std::string line = note + "\n";
      if (::write(pipe, line.data(), line.size()) != static_cast<ssize_t>(line.size())) ::_exit(2);
    }
    ::_exit(0);
  }

 private:
  fs::path folder_;
};

std::vector<std::string> linesFrom(int pipe) {
  std::string text;
  char buffer[4096];
  for (ssize_t n; (n = ::read(pipe, buffer, sizeof buffer)) > 0;)
    text.append(buffer, static_cast<std::size_t>(n));
  std::vector<std::string> lines;
  for (std::size_t at = 0, end; (end = text.find('\n', at)) != std::string::npos; at = end + 1)
    lines.push_back(text.substr(at, end - at));
  return lines;
}

TEST_F(AppendRecord, KilledAtAnyMomentKeepsAllThatWasConfirmed) {
  std::mt19937 random(7);
  std::vector<std::string> confirmed;
  constexpr int kKills = 60, kMostKills = 600;
  constexpr std::size_t kEnough = 100;  // records; on a busy computer more kills come to that
  for (int kill = 0; kill < kKills || (confirmed.size() <= kEnough && kill < kMostKills); ++kill) {
    int ends[2];
    ASSERT_EQ(::pipe(ends), 0);
    const pid_t writer = startWriter("r" + std::to_string(kill) + "-", ends[1], 100000);
    ::close(ends[1]);
    std::this_thread::sleep_for(
        std::chrono::microseconds(random() % (30000u * (1 + static_cast<unsigned>(kill / kKills)))));
    ::kill(writer, SIGKILL);
    ::waitpid(writer, nullptr, 0);
    const std::vector<std::string> told = linesFrom(ends[0]);
    ::close(ends[0]);
    confirmed.insert(confirmed.end(), told.begin(), told.end());
    const files::InspectionLog left = readRecords(layout()).log;
    ASSERT_TRUE(left.bad.empty()) << left.bad.front().line << ": " << left.bad.front().why;
    std::vector<std::string> notes = notesIn(left);
    // At most the one that was under way when it was killed was not confirmed.
    ASSERT_LE(notes.size(), confirmed.size() + static_cast<std::size_t>(kill) + 1);
    ASSERT_TRUE(std::ranges::includes(std::set<std::string>(notes.begin(), notes.end()),
                                      std::set<std::string>(confirmed.begin(), confirmed.end())));
  }
  RecordProperty("confirmed", static_cast<int>(confirmed.size()));
  EXPECT_GT(confirmed.size(), kEnough);
  ASSERT_EQ(appendRecord(log(), checkNoted("last")).written, Written::Yes);
  EXPECT_EQ(files::verifyLog(readRecords(layout()).log).line, 0u);
}

TEST_F(AppendRecord, TwoAtOnceLoseAndMixNothing) {
  constexpr int kEach = 300;
  int ends[2];
  ASSERT_EQ(::pipe(ends), 0);
  const pid_t one = startWriter("one", ends[1], kEach), two = startWriter("two", ends[1], kEach);
  ::close(ends[1]);
  EXPECT_EQ(linesFrom(ends[0]).size(), 2u * kEach);
  ::close(ends[0]);
  for (const pid_t writer : {one, two}) {
    int status = -1;
    ::waitpid(writer, &status, 0);
    EXPECT_EQ(status, 0);
  }
  const files::InspectionLog left = readRecords(layout()).log;
  EXPECT_EQ(files::verifyLog(left).line, 0u);
  std::vector<std::string> notes = notesIn(left), of_one;
  EXPECT_EQ(notes.size(), 2u * kEach);
  for (const std::string& note : notes)
    if (note.starts_with("one")) of_one.push_back(note);
  ASSERT_EQ(of_one.size(), static_cast<std::size_t>(kEach));
  for (int i = 0; i < kEach; ++i) EXPECT_EQ(of_one[static_cast<std::size_t>(i)], "one" + std::to_string(i));
  EXPECT_FALSE(fs::exists(log() + ".lock"));
}

TEST_F(AppendRecord, WhoHoldsTheLogIsNamed) {
  const RecordLock held(log(), std::chrono::milliseconds(0));
  ASSERT_TRUE(held.isHeld());
  const Appended refused = appendRecord(log(), checkNoted("x"), std::chrono::milliseconds(20));
  EXPECT_EQ(refused.written, Written::Busy);
  EXPECT_NE(refused.why.find("(process " + std::to_string(::getpid()) + "), since 2"), std::string::npos)
      << refused.why;
  EXPECT_FALSE(fs::exists(log()));
}

// By somebody who took it for one that was left behind.
TEST_F(AppendRecord, OneWhoseLockFileWasRemovedIsStillTheOnlyOneToWrite) {
  ASSERT_EQ(appendRecord(log(), checkNoted("a")).written, Written::Yes);
  auto writing = std::make_unique<FileDescriptor>(log(), O_RDWR);
  ASSERT_EQ(::flock(writing->handle(), LOCK_EX), 0);
  const Appended refused = appendRecord(log(), checkNoted("b"), std::chrono::milliseconds(20));
  EXPECT_EQ(refused.written, Written::Busy);
  EXPECT_NE(refused.why.find("whose lock file was removed"), std::string::npos) << refused.why;
  std::jthread later([&] {
    std::this_thread::sleep_for(std::chrono::milliseconds(100));
    writing.reset();
  });
  EXPECT_EQ(appendRecord(log(), checkNoted("c")).written, Written::Yes);
  EXPECT_EQ(notesIn(readRecords(layout()).log), (std::vector<std::string>{"a", "c"}));
}

TEST_F(AppendRecord, SecondWaitsUntilTheFirstIsDone) {
  auto held = std::make_unique<RecordLock>(log(), std::chrono::milliseconds(0));
  std::jthread later([&] {
    std::this_thread::sleep_for(std::chrono::milliseconds(100));
    held.reset();
  });
  EXPECT_EQ(appendRecord(log(), checkNoted("x")).written, Written::Yes);
}

TEST_F(AppendRecord, RecordAfterOneThatLostItsLineBreakIsOnALineOfItsOwn) {
  appendRecord(log(), checkNoted("a"));
  fs::resize_file(log(), fs::file_size(log()) - 1);
  EXPECT_EQ(appendRecord(log(), checkNoted("b")).number, 2u);
  EXPECT_EQ(notesIn(readRecords(layout()).log), (std::vector<std::string>{"a", "b"}));
  EXPECT_EQ(files::verifyLog(readRecords(layout()).log).line, 0u);
}

TEST_F(AppendRecord, ALogThatIsNotTheOneThatWasReadIsLeftAsItIs) {
  EXPECT_EQ(appendRecord(log(), checkNoted("x"), kPatience, 1).written, Written::No);
  EXPECT_FALSE(fs::exists(log()));
  ASSERT_EQ(appendRecord(log(), checkNoted("a")).written, Written::Yes);
  const auto bytes = fs::file_size(log());
  const Appended refused = appendRecord(log(), checkNoted("b"), kPatience, 2);
  EXPECT_EQ(refused.written, Written::No);
  EXPECT_EQ(refused.why, "it holds 1 records, and held 2");
  EXPECT_EQ(fs::file_size(log()), bytes);
  EXPECT_EQ(appendRecord(log(), checkNoted("c"), kPatience, 1).written, Written::Yes) << "it may have grown";
}

// Put in its place, with as many lines and more.
TEST_F(AppendRecord, AnotherLogThanTheOneThatWasReadIsLeftAsItIs) {
  ASSERT_EQ(appendRecord(log(), checkNoted("a")).written, Written::Yes);
  const ReadTo read(1, readRecords(layout()).log.head());
  EXPECT_EQ(appendRecord(log(), checkNoted("b"), kPatience, read).number, 2u) << "it may have grown";
  fs::remove(log());
  inspection::Check other = checkNoted("c");
  other.device = "lathe/bar";
  for (int i = 0; i < 3; ++i) ASSERT_EQ(appendRecord(log(), other).written, Written::Yes);
  const auto bytes = fs::file_size(log());
  const Appended refused = appendRecord(log(), checkNoted("d"), kPatience, read);
  EXPECT_EQ(refused.why, "it is not the log that was read: line 1 is another now");
  inspection::Check correction = checkNoted("e");
  correction.corrects = 2;
  EXPECT_EQ(appendRecord(log(), correction, kPatience, 1).why,
            "it is not the log that was read: check 2 is another now");
  EXPECT_EQ(fs::file_size(log()), bytes);
}

// By another, after it was read here.
TEST_F(AppendRecord, WhatWasCorrectedMeanwhileIsNotCorrectedAgain) {
  const auto append = [&](const inspection::Check& check) {
    return appendRecord(log(), check, kPatience, 0);
  };
  ASSERT_EQ(append(checkNoted("a")).number, 1u);
  inspection::Check correction = checkNoted("b");
  correction.corrects = 1;
  ASSERT_EQ(append(correction).number, 2u);
  const auto bytes = fs::file_size(log());
  const Appended refused = append(correction);
  EXPECT_EQ(refused.written, Written::No);
  EXPECT_EQ(refused.corrected_by, 2u);
  EXPECT_EQ(refused.why, "that check was corrected meanwhile, by 2");
  EXPECT_EQ(fs::file_size(log()), bytes);
  correction.corrects = 2;
  EXPECT_EQ(append(correction).number, 3u);
}

// What is whole is no beginning of a record, whatever became of its line break.
TEST_F(AppendRecord, ALastRecordThatWasChangedIsNotPutAside) {
  appendRecord(log(), checkNoted("a"));
  fs::resize_file(log(), fs::file_size(log()) - 1);
  std::ofstream(log(), std::ios::app) << ' ';
  const Appended after = appendRecord(log(), checkNoted("b"));
  EXPECT_EQ(after.number, 2u);
  EXPECT_EQ(after.set_aside, "");
  EXPECT_EQ(notesIn(readRecords(layout()).log), (std::vector<std::string>{"a", "b"}));
  EXPECT_EQ(files::verifyLog(readRecords(layout()).log).line, 1u);
  EXPECT_EQ(readRecords(layout()).log.bad.size(), 1u) << "what follows is as it was written";
}

// It would be told no longer.
TEST_F(AppendRecord, AFailureWhoseEndIsLostIsNotPutAside) {
  inspection::Check failed = checkNoted("a");
  failed.result = inspection::Result::Fail;
  for (const std::uintmax_t lost : {1, 60}) {
    fs::remove(log());
    appendRecord(log(), failed);
    fs::resize_file(log(), fs::file_size(log()) - lost);
    std::ofstream(log(), std::ios::app | std::ios::binary).put('\0');
    inspection::Check other = checkNoted("b");
    other.device = "lathe/bar";
    const Appended after = appendRecord(log(), other);
    EXPECT_EQ(after.number, 2u);
    EXPECT_EQ(after.set_aside, "");
    const files::InspectionLog left = readRecords(layout()).log;
    ASSERT_EQ(left.records.checks.size(), 2u);
    EXPECT_EQ(left.records.checks[0].result, inspection::Result::Fail);
    EXPECT_EQ(left.records.checks[1].device, "lathe/bar");
    EXPECT_EQ(left.bad.size(), 1u) << "what follows is as it was written";
    EXPECT_FALSE(fs::exists(tornFileOf(log())));
  }
}

TEST_F(AppendRecord, TooLongARoundIsToldToBeSplitByRooms) {
  inspection::Round round;
  round.devices.assign(5000, "machine-with-a-long-id/stop");
  const Appended refused = appendRecord(log(), round);
  EXPECT_EQ(refused.written, Written::No);
  EXPECT_NE(refused.why.find("open a round for each room in place of one over 5000 devices"),
            std::string::npos)
      << refused.why;
}

TEST_F(AppendRecord, TooLongARecordIsRefused) {
  const Appended refused = appendRecord(log(), checkNoted(std::string(70000, 'x')));
  EXPECT_EQ(refused.written, Written::No);
  EXPECT_NE(refused.why.find("longer than a record may be"), std::string::npos);
  EXPECT_TRUE(notesIn(readRecords(layout()).log).empty());
}

}  // namespace
}  // namespace stopwalk::records
