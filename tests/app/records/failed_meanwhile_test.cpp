// What was tried before another found that the device fails closes no failure.
#include <gtest/gtest.h>

#include <filesystem>

#include "app/records/append_record.h"
#include "tests/app/records/written_records.h"

namespace stopwalk::records {
namespace {

namespace fs = std::filesystem;

class FailedMeanwhile : public testing::Test {
 protected:
  FailedMeanwhile() {
    folder_ = fs::path(testing::TempDir()) / testing::UnitTest::GetInstance()->current_test_info()->name();
    fs::remove_all(folder_);
    fs::create_directories(folder_);
    append("saw/stop", inspection::Result::Pass, 0);
  }
  ~FailedMeanwhile() override { fs::remove_all(folder_); }

  Appended append(const std::string& device, inspection::Result result, const ReadTo& read) {
    inspection::Check check = checkNoted("");
    check.device = device;
    check.result = result;
    return appendRecord(recordsFileOf((folder_ / "shop.layout.yaml").string()), check, kPatience, read);
  }

 private:
  fs::path folder_;
};

TEST_F(FailedMeanwhile, APassOfTheDeviceIsNotRecorded) {
  ASSERT_EQ(append("saw/stop", inspection::Result::Fail, 1).written, Written::Yes);
  const Appended refused = append("saw/stop", inspection::Result::Pass, 1);
  EXPECT_EQ(refused.written, Written::No);
  EXPECT_NE(refused.why.find("by check 2"), std::string::npos) << refused.why;
  EXPECT_EQ(append("saw/stop", inspection::Result::Pass, 2).written, Written::Yes) << "it is known of";
}

// A card is read again just before it is recorded, and was begun before that.
TEST_F(FailedMeanwhile, APassThatWasBegunBeforeIsNotRecordedThoughTheFailureWasRead) {
  ASSERT_EQ(append("saw/stop", inspection::Result::Fail, 1).written, Written::Yes);
  ASSERT_EQ(append("saw/stop", inspection::Result::Fail, 2).written, Written::Yes);
  const Appended refused = append("saw/stop", inspection::Result::Pass, {3, {}, 1});
  EXPECT_EQ(refused.written, Written::No);
  EXPECT_EQ(refused.failed_by, 3u) << "the last";
  EXPECT_EQ(append("saw/stop", inspection::Result::Pass, {3, {}, 2}).failed_by, 3u);
  EXPECT_EQ(append("lathe/bar", inspection::Result::Pass, {3, {}, 1}).written, Written::Yes);
  EXPECT_EQ(append("saw/stop", inspection::Result::Fail, {4, {}, 1}).written, Written::Yes);
  EXPECT_EQ(append("saw/stop", inspection::Result::Pass, {5, {}, 5}).written, Written::Yes) << "it is known";
}

TEST_F(FailedMeanwhile, AllElseIsRecorded) {
  ASSERT_EQ(append("saw/stop", inspection::Result::Fail, 1).written, Written::Yes);
  EXPECT_EQ(append("lathe/bar", inspection::Result::Pass, 1).written, Written::Yes);
  EXPECT_EQ(append("saw/stop", inspection::Result::Fail, 1).written, Written::Yes);
  EXPECT_EQ(append("saw/stop", inspection::Result::NotTested, 1).written, Written::Yes);
}

}  // namespace
}  // namespace stopwalk::records
