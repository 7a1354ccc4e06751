#include "app/documents/autosave.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QElapsedTimer>
#include <QFile>
#include <QFileInfo>
#include <QSemaphore>

#include "app/documents/file_bytes.h"
#include "app/documents/recovery_file.h"
#include "app/documents/recovery_store.h"
#include "tests/app/documents/folder.h"

namespace stopwalk::documents {
namespace {

class AutosaveTest : public testing::Test {
 protected:
  AutosaveTest() {
    autosave_.setPatience(50, 400);
    QObject::connect(&autosave_, &Autosave::kept, [this] { ++kept_; });
    QObject::connect(&autosave_, &Autosave::failed, [this] { ++failed_; });
  }

  void edit() {
    ++edit_;
    autosave_.edited();
  }
  // The number of the edit that is on the disk, 0 for none.
  int editOnDisk() const {
    for (const QString& session : QDir(root_).entryList(QDir::Dirs | QDir::NoDotAndDotDot)) {
      const QString file = root_ + "/" + session + "/" + id_ + ".recovery";
      if (!QFileInfo::exists(file)) continue;
      const auto kept = parseRecovery(readBytes(file).bytes);
      EXPECT_TRUE(kept);
      const std::string key = "name: edit ";
      return kept ? std::atoi(kept->text.c_str() + kept->text.find(key) + key.size()) : -1;
    }
    return 0;
  }

  Folder folder_;
  QString root_ = folder_.path("recovery");
  RecoveryStore store_{root_};
  QThreadPool worker_;
  int edit_ = 0;
  int drafts_ = 0;
  int kept_ = 0;
  int failed_ = 0;
  QString id_ = store_.newId();
  Autosave autosave_{store_, worker_, id_, [this] {
                       ++drafts_;
                       return Draft{{}, {}, workshop("edit " + std::to_string(edit_))};
                     }};
};

TEST_F(AutosaveTest, AnEditIsKeptShortlyAfter) {
  EXPECT_TRUE(autosave_.isKept());
  edit();
  EXPECT_FALSE(autosave_.isKept());
  EXPECT_EQ(drafts_, 0);
  EXPECT_TRUE(waitUntil([&] { return kept_ == 1; }));
  EXPECT_TRUE(autosave_.isKept());
  EXPECT_EQ(editOnDisk(), 1);
}

TEST_F(AutosaveTest, WithoutAnEditNothingIsWritten) {
  waitFor(500);
  EXPECT_EQ(drafts_, 0);
  EXPECT_FALSE(autosave_.flush());
  EXPECT_EQ(drafts_, 0);
}

TEST_F(AutosaveTest, EditsCloseTogetherAreKeptOnce) {
  for (int i = 0; i < 5; ++i) edit();
  EXPECT_TRUE(waitUntil([&] { return kept_ == 1; }));
  waitFor(150);
  EXPECT_EQ(drafts_, 1);
  EXPECT_EQ(editOnDisk(), 5);
}

TEST_F(AutosaveTest, EditsWithoutAPauseAreKeptAtTheLatestTime) {
  autosave_.setPatience(60'000, 400);
  QElapsedTimer clock;
  clock.start();
  edit();
  while (kept_ == 0 && !clock.hasExpired(5000)) {
    edit();
    waitFor(20);
  }
  EXPECT_GE(kept_, 1);
  EXPECT_LT(drafts_, edit_);
  EXPECT_GT(editOnDisk(), 1);
}

TEST_F(AutosaveTest, WhileTheWriterIsBusyTheNewestWins) {
  QSemaphore go;
  worker_.start([&] { go.acquire(); });
  edit();
  waitFor(150);  // the first write waits for the writer
  for (int i = 0; i < 5; ++i) {
    edit();
    waitFor(80);
  }
  EXPECT_EQ(drafts_, 1);
  EXPECT_EQ(editOnDisk(), 0);
  go.release();
  EXPECT_TRUE(waitUntil([&] { return autosave_.isKept(); }));
  EXPECT_EQ(drafts_, 2);
  EXPECT_EQ(editOnDisk(), 6);
}

TEST_F(AutosaveTest, FlushKeepsAtOnce) {
  autosave_.setPatience(60'000, 60'000);
  edit();
  EXPECT_FALSE(autosave_.flush());
  EXPECT_EQ(editOnDisk(), 1);
  EXPECT_TRUE(autosave_.isKept());
}

TEST_F(AutosaveTest, DiscardLeavesNothingBehind) {
  edit();
  autosave_.flush();
  edit();
  QSemaphore go;
  waitFor(60);  // a write may be on its way
  EXPECT_FALSE(autosave_.discard());
  waitFor(600);
  EXPECT_EQ(editOnDisk(), 0);
  EXPECT_TRUE(autosave_.isKept());
  edit();
  EXPECT_TRUE(waitUntil([&] { return editOnDisk() == 3; }));
}

TEST_F(AutosaveTest, AFailureIsToldAndTriedAgain) {
  put(root_, "a file in the way");
  edit();
  EXPECT_TRUE(waitUntil([&] { return failed_ >= 2; }));
  EXPECT_FALSE(autosave_.isKept());
  EXPECT_TRUE(autosave_.flush());
  QFile::remove(root_);
  EXPECT_TRUE(waitUntil([&] { return kept_ == 1; }));
  EXPECT_EQ(editOnDisk(), 1);
}

}  // namespace
}  // namespace stopwalk::documents
