#include "app/documents/disk_watch.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <cstdio>
#include <vector>

#include "app/documents/layout_file.h"
#include "core/files/sha256.h"
#include "tests/app/documents/folder.h"

namespace stopwalk::documents {
namespace {

class DiskWatchTest : public testing::Test {
 protected:
  DiskWatchTest() {
    put(path_, "old");
    watch_.setPatience(20, 200);
    QObject::connect(&watch_, &DiskWatch::stateChanged, [this](DiskState s) { told_.push_back(s); });
    watch_.watch(path_, files::sha256("old"));
    waitFor(100);
  }

  void rename(const QString& from, const QString& to) {
    ASSERT_EQ(std::rename(QFile::encodeName(from).constData(), QFile::encodeName(to).constData()), 0);
  }
  void expectTold(const std::vector<DiskState>& states) {
    waitUntil([&] { return told_.size() >= states.size(); });
    waitFor(300);  // and no more than these
    EXPECT_EQ(told_, states);
  }

  Folder folder_;
  QString path_ = folder_.path("shop.layout.yaml");
  DiskWatch watch_;
  std::vector<DiskState> told_;
};

TEST_F(DiskWatchTest, WhatIsAsItWasIsNoNews) {
  expectTold({});
  EXPECT_EQ(watch_.state(), DiskState::Same);
}

TEST_F(DiskWatchTest, WritingInPlaceIsNoticed) {
  put(path_, "new");
  expectTold({DiskState::Changed});
  EXPECT_EQ(watch_.sha256OnDisk(), files::sha256("new"));
}

TEST_F(DiskWatchTest, EachReplacementIsNoticed) {
  for (const char* text : {"one", "two", "three"}) {
    put(folder_.path("beside"), text);
    told_.clear();
    rename(folder_.path("beside"), path_);
    expectTold({DiskState::Changed});
    EXPECT_EQ(watch_.sha256OnDisk(), files::sha256(text));
  }
}

TEST_F(DiskWatchTest, ComingBackIsNoticed) {
  rename(path_, folder_.path("away"));
  expectTold({DiskState::Vanished});
  rename(folder_.path("away"), path_);
  expectTold({DiskState::Vanished, DiskState::Same});
  put(path_, "new");
  expectTold({DiskState::Vanished, DiskState::Same, DiskState::Changed});
}

TEST_F(DiskWatchTest, ComingBackAsAnotherIsNoticed) {
  QFile::remove(path_);
  expectTold({DiskState::Vanished});
  put(path_, "new");
  expectTold({DiskState::Vanished, DiskState::Changed});
}

TEST_F(DiskWatchTest, TheSameBytesAgainAreNoNews) {
  put(path_, "old");
  put(folder_.path("beside"), "old");
  rename(folder_.path("beside"), path_);
  put(folder_.path("neighbour"), "something else");
  expectTold({});
}

TEST_F(DiskWatchTest, AFolderInItsPlaceIsUnreadable) {
  QFile::remove(path_);
  ASSERT_TRUE(QDir(folder_.path()).mkdir("shop.layout.yaml"));
  waitUntil([&] { return watch_.state() == DiskState::Unreadable; });
  EXPECT_EQ(watch_.state(), DiskState::Unreadable);
}

TEST_F(DiskWatchTest, OurOwnSaveIsNoNews) {
  const QString shop = folder_.path("own.layout.yaml");
  std::string hash = saveLayout({shop, workshop("0"), {}, false}).sha256;
  watch_.watch(shop, hash);
  for (int i = 1; i < 5; ++i) {
    watch_.beginOwnSave();
    hash = saveLayout({shop, workshop(std::to_string(i)), hash, false}).sha256;
    waitFor(60);  // the system tells of it before the save is over
    watch_.endOwnSave(hash);
  }
  expectTold({});
  put(shop, "another's");
  expectTold({DiskState::Changed});
}

TEST_F(DiskWatchTest, AFailedSaveHidesNoChangeOfOthers) {
  watch_.beginOwnSave();
  put(path_, "new");
  waitFor(60);
  EXPECT_TRUE(told_.empty());
  watch_.endOwnSave({});
  expectTold({DiskState::Changed});
}

TEST_F(DiskWatchTest, TheFileBehindALinkIsWatched) {
  QDir(folder_.path()).mkdir("far");
  const QString far = folder_.path("far/shop.layout.yaml");
  put(far, "old");
  ASSERT_TRUE(QFile::link(far, folder_.path("link")));
  watch_.watch(folder_.path("link"), files::sha256("old"));
  waitFor(50);
  put(folder_.path("far/beside"), "new");
  rename(folder_.path("far/beside"), far);
  expectTold({DiskState::Changed});
}

TEST_F(DiskWatchTest, TheWholeFolderMayGoAndComeBack) {
  QDir(folder_.path()).mkdir("deep");
  const QString deep = folder_.path("deep/shop.layout.yaml");
  put(deep, "old");
  watch_.watch(deep, files::sha256("old"));
  waitFor(50);
  rename(folder_.path("deep"), folder_.path("gone"));
  expectTold({DiskState::Vanished});
  rename(folder_.path("gone"), folder_.path("deep"));
  expectTold({DiskState::Vanished, DiskState::Same});
}

TEST_F(DiskWatchTest, AnEndedWatchIsSilent) {
  watch_.watch({}, {});
  put(path_, "new");
  expectTold({});
}

}  // namespace
}  // namespace stopwalk::documents
