// Which log stands beside a layout, by whatever name that is opened.
#include "app/records/records_file.h"

#include <gtest/gtest.h>
#include <sys/stat.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>

#include "app/records/append_record.h"
#include "app/records/record_lock.h"
#include "tests/app/records/written_records.h"

namespace stopwalk::records {
namespace {

namespace fs = std::filesystem;

class RecordsFile : public testing::Test {
 protected:
  RecordsFile() {
    fs::remove_all(folder_);
    fs::create_directories(folder_ / "far");
  }
  ~RecordsFile() override { fs::remove_all(folder_); }

  std::string path(const std::string& name) const { return (folder_ / name).string(); }
  std::string write(const std::string& name) const {
    std::ofstream(path(name)) << "stopwalk_layout: 1\n";
    return path(name);
  }
  std::string link(const std::string& name, const std::string& to) const {
    fs::create_symlink(to, path(name));
    return path(name);
  }
  void record(const std::string& log) const {
    ASSERT_EQ(appendRecord(path(log), checkNoted("a")).written, Written::Yes);
  }

 private:
  fs::path folder_ =
      fs::path(testing::TempDir()) / ("stopwalk-records-file-" + std::to_string(::getpid()) + "-" +
                                      testing::UnitTest::GetInstance()->current_test_info()->name());
};

TEST_F(RecordsFile, OfALinkStandsBesideTheLayout) {
  write("far/shop.layout.yaml");
  link("between.layout.yaml", "far/shop.layout.yaml");
  const std::string layout = link("now.layout.yaml", path("between.layout.yaml"));
  EXPECT_EQ(recordsFileOf(layout), path("far/shop.inspections.jsonl"));
  EXPECT_FALSE(readRecords(layout).there);
  record("far/shop.inspections.jsonl");
  EXPECT_EQ(readRecords(layout).log.lines, 1u);
  EXPECT_EQ(readRecords(layout).unreadable, "");
}

TEST_F(RecordsFile, ThatWasBegunBesideALinkIsStillRead) {
  write("far/shop.layout.yaml");
  const std::string layout = link("now.layout.yaml", "far/shop.layout.yaml");
  record("now.inspections.jsonl");
  EXPECT_EQ(readRecords(layout).file, path("now.inspections.jsonl"));
  EXPECT_EQ(readRecords(layout).log.lines, 1u);
  record("far/shop.inspections.jsonl");
  EXPECT_NE(readRecords(layout).unreadable.find("stands beside that"), std::string::npos)
      << "which of the two counts nobody knows";
}

TEST_F(RecordsFile, ALinkToWhatIsNotThereCannotBeRead) {
  const std::string layout = write("shop.layout.yaml");
  link("shop.inspections.jsonl", "far/away.jsonl");
  const ReadRecords read = readRecords(layout);
  EXPECT_TRUE(read.there);
  EXPECT_EQ(read.unreadable, kLeadsNowhere);
  const Appended refused = appendRecord(read.file, checkNoted("a"));
  EXPECT_EQ(refused.written, Written::No);
  EXPECT_EQ(refused.why, kLeadsNowhere);
  EXPECT_FALSE(fs::exists(path("far/away.jsonl")));
  record("far/away.jsonl");
  EXPECT_EQ(readRecords(layout).log.lines, 1u);
}

TEST_F(RecordsFile, ReachedByTwoLinksIsWrittenByOneAtATime) {
  record("far/shared.jsonl");
  const std::string one = link("one.jsonl", "far/shared.jsonl"), two = link("two.jsonl", "far/shared.jsonl");
  const RecordLock held(one, std::chrono::milliseconds(0));
  ASSERT_TRUE(held.isHeld());
  EXPECT_EQ(appendRecord(two, checkNoted("b"), std::chrono::milliseconds(20)).written, Written::Busy);
}

// Nothing would ever come out of a pipe.
TEST_F(RecordsFile, WhatIsNoFileIsNeitherReadNorWritten) {
  const std::string layout = write("shop.layout.yaml"), log = path("shop.inspections.jsonl");
  const auto isRefused = [&] {
    EXPECT_EQ(readRecords(layout).unreadable, kIsNoFile);
    EXPECT_EQ(appendRecord(log, checkNoted("a")).written, Written::No);
  };
  ASSERT_EQ(::mkfifo(log.c_str(), 0666), 0);
  isRefused();
  EXPECT_EQ(appendRecord(log, checkNoted("a")).why, kIsNoFile);
  fs::remove(log);
  fs::create_directory(log);
  isRefused();
  fs::remove(log);
  link("shop.inspections.jsonl", "/dev/null");
  isRefused();
}

TEST_F(RecordsFile, BesideTheMiddleOfThreeLinksIsFoundAndToldOf) {
  write("far/shop.layout.yaml");
  link("mid.layout.yaml", "far/shop.layout.yaml");
  const std::string layout = link("now.layout.yaml", "mid.layout.yaml");
  record("mid.inspections.jsonl");
  EXPECT_EQ(readRecords(layout).file, path("mid.inspections.jsonl"));
  EXPECT_EQ(readRecords(layout).log.lines, 1u);
  record("far/shop.inspections.jsonl");
  EXPECT_NE(readRecords(layout).unreadable.find("mid.inspections.jsonl stands beside that"),
            std::string::npos);
}

// Such as one that another user's program left behind.
class LockOfAnother : public RecordsFile {
 protected:
  LockOfAnother() {
    fs::permissions(path("."), fs::perms::all);
    std::ofstream(RecordLock::fileOf(log)) << "Bo\n";
  }
  ~LockOfAnother() override { EXPECT_TRUE(!is_root_ || ::seteuid(0) == 0); }
  void allow(fs::perms perms) {
    fs::permissions(RecordLock::fileOf(log), perms);
    become();
  }
  void become() { ASSERT_TRUE(!is_root_ || ::seteuid(kNobody) == 0); }
  const std::string log = path("shop.inspections.jsonl");

 private:
  static constexpr uid_t kNobody = 65534;
  const bool is_root_ = ::geteuid() == 0;
};

TEST_F(LockOfAnother, IsTakenThoughItCannotBeWritten) {
  allow(fs::perms::owner_read | fs::perms::group_read | fs::perms::others_read);
  const Appended done = appendRecord(log, checkNoted("a"), std::chrono::milliseconds(0));
  EXPECT_EQ(done.written, Written::Yes) << done.why;
}

TEST_F(LockOfAnother, IsNamedWhereItCannotBeOpened) {
  allow(fs::perms::none);
  const Appended refused = appendRecord(log, checkNoted("a"), std::chrono::milliseconds(0));
  EXPECT_EQ(refused.written, Written::No);
  EXPECT_EQ(refused.why,
            "its lock " + RecordLock::fileOf(log) +
                " cannot be opened (Permission denied): remove that file if nobody is recording");
}

// There is no file that could be removed.
TEST_F(LockOfAnother, IsNotToBeRemovedWhereItCannotBeMade) {
  fs::remove(RecordLock::fileOf(log));
  const Appended refused = [&] {
    fs::permissions(path("."), fs::perms::owner_read | fs::perms::owner_exec | fs::perms::group_read |
                                   fs::perms::group_exec | fs::perms::others_read | fs::perms::others_exec);
    become();
    return appendRecord(log, checkNoted("a"), std::chrono::milliseconds(0));
  }();
  EXPECT_EQ(refused.written, Written::No);
  EXPECT_EQ(refused.why,
            "its lock " + RecordLock::fileOf(log) +
                " cannot be made (Permission denied): nothing is recorded in a folder that cannot "
                "be written to");
}

TEST_F(RecordsFile, OfTwoLayoutsIsToldOf) {
  const std::string layout = write("shop.layout.yaml");
  record("shop.inspections.jsonl");
  EXPECT_EQ(readRecords(layout).also_of, "");
  const std::string alias = link("shop.yaml", "shop.layout.yaml");
  EXPECT_EQ(readRecords(layout).also_of, "") << "it is the same one";
  fs::remove(alias);
  const std::string other = write("shop.yaml");
  EXPECT_EQ(readRecords(layout).also_of, other);
  EXPECT_EQ(readRecords(other).also_of, layout);
}

}  // namespace
}  // namespace stopwalk::records
