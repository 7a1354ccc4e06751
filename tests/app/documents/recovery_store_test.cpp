#include "app/documents/recovery_store.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QFileInfo>

#include "app/documents/layout_file.h"
#include "core/files/device_kinds_reader.h"
#include "core/files/sha256.h"
#include "tests/app/documents/folder.h"

namespace stopwalk::documents {
namespace {

const layout::Layout kSaved = workshop("As saved");
const layout::Layout kEdited = workshop("As edited");

class RecoveryStoreTest : public testing::Test {
 protected:
  // A process that keeps this and is killed.
  void leave(const layout::Layout& layout, const QString& path = {}, const std::string& base = {}) const {
    thenKilled([&] {
      auto* const store = new RecoveryStore(root_);
      store->store(store->newId(), path, base, layout);
    });
  }

  Folder folder_;
  QString root_ = folder_.path("state/recovery");
};

TEST_F(RecoveryStoreTest, NothingIsThereAtFirst) {
  RecoveryStore store(root_);
  EXPECT_TRUE(store.found().empty());
  EXPECT_FALSE(QFileInfo::exists(root_));
}

TEST_F(RecoveryStoreTest, WhatAKilledProcessLeftIsFound) {
  const QString path = folder_.path("shop.layout.yaml");
  const std::string base = saveLayout({path, kSaved, {}, false}).sha256;
  leave(kEdited, path, base);
  leave(workshop("Never saved"));

  RecoveryStore store(root_);
  const std::vector<Found> found = store.found();
  ASSERT_EQ(found.size(), 2u);
  EXPECT_EQ(found[0].layout, kEdited);
  EXPECT_EQ(found[0].layout_path, path);
  EXPECT_EQ(found[0].base_sha256, base);
  EXPECT_EQ(found[0].saved, SavedFile::AsBefore);
  EXPECT_FALSE(found[0].trouble);
  EXPECT_LT(std::abs(found[0].stored.secsTo(QDateTime::currentDateTimeUtc())), 60);
  EXPECT_EQ(found[1].layout, workshop("Never saved"));
  EXPECT_EQ(found[1].layout_path, "");
  EXPECT_EQ(found[1].saved, SavedFile::NeverSaved);
}

TEST_F(RecoveryStoreTest, ItStaysUntilItIsDiscarded) {
  leave(kEdited);
  for (int start = 0; start < 3; ++start) EXPECT_EQ(RecoveryStore(root_).found().size(), 1u);
  {
    RecoveryStore store(root_);
    const auto found = store.found();
    EXPECT_EQ(store.found().size(), 1u) << "asked twice";
    EXPECT_FALSE(store.discard(found.front()));
    EXPECT_TRUE(store.found().empty());
  }
  EXPECT_TRUE(RecoveryStore(root_).found().empty());
  EXPECT_TRUE(QDir(root_).isEmpty()) << "nothing lies about";
}

TEST_F(RecoveryStoreTest, OfALivingProcessNothingIsOffered) {
  RecoveryStore living(root_);
  EXPECT_FALSE(living.store(living.newId(), {}, {}, kEdited));
  RecoveryStore other(root_);
  EXPECT_TRUE(other.found().empty());
  EXPECT_TRUE(living.found().empty());
}

TEST_F(RecoveryStoreTest, TwoWindowsDoNotOfferTheSame) {
  leave(kEdited);
  RecoveryStore first(root_);
  RecoveryStore second(root_);
  EXPECT_EQ(first.found().size(), 1u);
  EXPECT_TRUE(second.found().empty());
}

TEST_F(RecoveryStoreTest, TheNewestIsKept) {
  thenKilled([&] {
    auto* const store = new RecoveryStore(root_);
    const QString id = store->newId();
    store->store(id, {}, {}, workshop("first"));
    store->store(id, {}, {}, workshop("second"));
    const QString other = store->newId();
    store->store(other, {}, {}, workshop("discarded"));
    store->discard(other);
    store->discard("document-99");
  });
  const std::vector<Found> found = RecoveryStore(root_).found();
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].layout, workshop("second"));
}

TEST_F(RecoveryStoreTest, ItSaysHowTheSavedFileStands) {
  const QString path = folder_.path("shop.layout.yaml");
  const auto standing = [&] { return RecoveryStore(root_).found().at(0).saved; };
  const std::string base = saveLayout({path, kSaved, {}, false}).sha256;
  leave(kEdited, path, base);
  EXPECT_EQ(standing(), SavedFile::AsBefore);
  put(path, textOf(workshop("Somebody else's")));
  EXPECT_EQ(standing(), SavedFile::WasChanged);
  put(path, textOf(kEdited));
  EXPECT_EQ(standing(), SavedFile::HoldsThis);
  QFile::remove(path);
  EXPECT_EQ(standing(), SavedFile::IsMissing);
}

TEST_F(RecoveryStoreTest, IsReadWithTheKindsOfItsFile) {
  layout::Layout own = workshop("Own kinds");
  layout::Device pad;
  pad.id = "pad-1";
  pad.kind = "knee-pad";
  own.devices.push_back(pad);
  const QString path = folder_.path("shop.layout.yaml");
  leave(own, path);
  RecoveryStore store(root_);
  const auto without = store.found();
  ASSERT_EQ(without.size(), 1u);
  ASSERT_TRUE(without[0].trouble);
  EXPECT_FALSE(without[0].trouble->what.contains("damaged"));
  EXPECT_TRUE(without[0].trouble->why.contains("knee-pad"));

  QStringList asked;
  const auto with = store.found([&](const QString& of) {
    asked << of;
    layout::DeviceKind knee_pad = files::bundledDeviceKinds().all().front();
    knee_pad.key = "knee-pad";
    return layout::DeviceKinds({knee_pad});
  });
  ASSERT_EQ(with.size(), 1u);
  EXPECT_EQ(with[0].layout, own);
  EXPECT_EQ(asked, QStringList{path});
}

TEST_F(RecoveryStoreTest, EachDamageIsToldOf) {
  leave(kEdited);
  const QString file = RecoveryStore(root_).found().at(0).file;
  const std::string whole = textOf(file);
  std::vector<std::string> damages = {"", whole + "x", whole.substr(1)};
  for (std::size_t cut = 0; cut < whole.size(); cut += 7) damages.push_back(whole.substr(0, cut));
  for (std::size_t i = 0; i < whole.size(); i += 7) {
    damages.push_back(whole);
    damages.back()[i] = static_cast<char>(damages.back()[i] ^ 4);
  }
  for (const std::string& damage : damages) {
    put(file, damage);
    const std::vector<Found> found = RecoveryStore(root_).found();
    ASSERT_EQ(found.size(), 1u);
    EXPECT_FALSE(found[0].layout);
    ASSERT_TRUE(found[0].trouble);
    EXPECT_EQ(found[0].trouble->path, file);
    EXPECT_FALSE(found[0].trouble->advice.isEmpty());
    EXPECT_EQ(textOf(file), damage) << "it is left for the person to look at";
  }
}

TEST_F(RecoveryStoreTest, WhatAnotherComputerKeepsIsToldOf) {
  leave(kEdited);
  const QString session = QFileInfo(RecoveryStore(root_).found().at(0).file).absolutePath();
  put(session + ".lock", "4711\nstopwalk\nold-bench-pc\nno-such-machine\nno-such-boot\n");
  const std::vector<Found> found = RecoveryStore(root_).found();
  ASSERT_EQ(found.size(), 1u);
  EXPECT_FALSE(found[0].layout);
  EXPECT_TRUE(found[0].trouble->why.contains("old-bench-pc"));
}

TEST_F(RecoveryStoreTest, ADamagedLockIsToldOfAndSoonNoHindrance) {
  leave(kEdited);
  const QString session = QFileInfo(RecoveryStore(root_).found().at(0).file).absolutePath();
  int told = 0;
  for (const char* torn : {"", "4711", "4711\nstopwalk\nold-be", "4711\nstopwalk\nold-bench-pc\n3d12"}) {
    put(session + ".lock", torn);
    std::vector<Found> found = RecoveryStore(root_).found();
    ASSERT_EQ(found.size(), 1u);
    if (found[0].layout) continue;  // cut so short that it names no other computer
    ++told;
    EXPECT_TRUE(found[0].trouble->what.contains("lock is damaged"));

    QFile lock(session + ".lock");
    ASSERT_TRUE(lock.open(QIODevice::ReadWrite));
    lock.setFileTime(QDateTime::currentDateTime().addSecs(-120), QFileDevice::FileModificationTime);
    lock.close();
    found = RecoveryStore(root_).found();
    ASSERT_EQ(found.size(), 1u);
    EXPECT_EQ(found[0].layout, kEdited);
  }
  EXPECT_GE(told, 2);
}

TEST_F(RecoveryStoreTest, AFolderThatCannotBeMadeIsToldOf) {
  put(folder_.path("state"), "a file in the way");
  RecoveryStore store(root_);
  const auto trouble = store.store(store.newId(), {}, {}, kEdited);
  ASSERT_TRUE(trouble);
  EXPECT_FALSE(trouble->why.isEmpty());
  EXPECT_TRUE(store.found().empty());
}

TEST_F(RecoveryStoreTest, IsForTheOwnersEyesOnly) {
  RecoveryStore store(root_);
  store.store(store.newId(), {}, {}, kEdited);
  EXPECT_FALSE(QFile::permissions(root_) & (QFile::ReadGroup | QFile::ReadOther | QFile::ExeOther));
}

TEST_F(RecoveryStoreTest, UsualRootFollowsTheStateFolder) {
  qputenv("XDG_STATE_HOME", "/some/state");
  EXPECT_EQ(RecoveryStore::usualRoot(), "/some/state/stopwalk/recovery");
  for (const char* unusable : {"", "relative/state"}) {
    qputenv("XDG_STATE_HOME", unusable);
    EXPECT_EQ(RecoveryStore::usualRoot(), QDir::homePath() + "/.local/state/stopwalk/recovery");
  }
  qunsetenv("XDG_STATE_HOME");
}

}  // namespace
}  // namespace stopwalk::documents
