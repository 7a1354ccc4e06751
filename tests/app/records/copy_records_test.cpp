#include "app/records/copy_records.h"

#include <gtest/gtest.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <sstream>

#include "app/records/record_lock.h"
#include "tests/app/records/written_records.h"

namespace stopwalk::records {
namespace {

namespace fs = std::filesystem;

class CopyRecords : public testing::Test {
 protected:
  CopyRecords() {
    fs::remove_all(folder);
    fs::create_directories(folder);
  }
  ~CopyRecords() override { fs::remove_all(folder); }

  static std::string bytesOf(const std::string& path) {
    std::ostringstream bytes;
    bytes << std::ifstream(path, std::ios::binary).rdbuf();
    return bytes.str();
  }
  std::ptrdiff_t files() const { return std::distance(fs::directory_iterator(folder), {}); }

  const fs::path folder =
      fs::path(testing::TempDir()) / ("stopwalk-copy-" + std::to_string(::getpid()) + "-" +
                                      testing::UnitTest::GetInstance()->current_test_info()->name());
  const std::string from = (folder / "old.inspections.jsonl").string();
  const std::string to = (folder / "new.inspections.jsonl").string();
};

TEST_F(CopyRecords, IsTheSameLogWhichGoesOnByItself) {
  for (const char* note : {"a", "b"}) ASSERT_EQ(appendRecord(from, checkNoted(note)).written, Written::Yes);
  const std::string bytes = bytesOf(from);
  const Copied copied = copyRecords(from, to);
  EXPECT_EQ(copied.written, Written::Yes) << copied.why;
  EXPECT_EQ(bytesOf(to), bytes);
  EXPECT_EQ(files(), 2) << "nothing else is left";
  EXPECT_EQ(appendRecord(to, checkNoted("c")).number, 3u);
  EXPECT_EQ(bytesOf(from), bytes);
}

TEST_F(CopyRecords, NeverWritesOverALog) {
  ASSERT_EQ(appendRecord(from, checkNoted("a")).written, Written::Yes);
  ASSERT_EQ(appendRecord(to, checkNoted("other")).written, Written::Yes);
  const std::string bytes = bytesOf(to);
  EXPECT_EQ(copyRecords(from, to).written, Written::No);
  EXPECT_EQ(bytesOf(to), bytes);
  EXPECT_EQ(files(), 2);
}

TEST_F(CopyRecords, WaitsForWhoeverWritesAndNamesThem) {
  ASSERT_EQ(appendRecord(from, checkNoted("a")).written, Written::Yes);
  for (const std::string& held : {from, to}) {
    const RecordLock lock(held, std::chrono::milliseconds(0));
    const Copied refused = copyRecords(from, to, std::chrono::milliseconds(20));
    EXPECT_EQ(refused.written, Written::Busy);
    EXPECT_NE(refused.why.find("process"), std::string::npos) << refused.why;
    EXPECT_FALSE(fs::exists(to));
  }
}

TEST_F(CopyRecords, OfNoLogIsNone) {
  EXPECT_EQ(copyRecords(from, to).written, Written::No);
  EXPECT_EQ(files(), 0);
}

}  // namespace
}  // namespace stopwalk::records
