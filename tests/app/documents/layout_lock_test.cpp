#include "app/documents/layout_lock.h"

#include <gtest/gtest.h>
#include <sys/stat.h>
#include <unistd.h>

#include <QCoreApplication>
#include <QFile>
#include <QFileInfo>
#include <QSysInfo>

#include "tests/app/documents/folder.h"

namespace stopwalk::documents {
namespace {

// As another computer would write it.
const std::string kElsewhere = "4711\nstopwalk\nold-bench-pc\nno-such-machine\nno-such-boot\n";

TEST(LayoutLock, IsHeldByOneAtATime) {
  const Folder folder;
  const QString path = folder.path("shop.layout.yaml");
  LayoutLock first;
  EXPECT_EQ(first.state(), LockState::None);
  EXPECT_EQ(first.take(path), LockState::Held);
  EXPECT_EQ(first.take(path), LockState::Held);
  EXPECT_FALSE(first.trouble());
  EXPECT_TRUE(first.isStillHeld());

  LayoutLock second;
  EXPECT_EQ(second.take(path), LockState::Others);
  ASSERT_TRUE(second.holder());
  EXPECT_EQ(second.holder()->process, QCoreApplication::applicationPid());
  EXPECT_EQ(second.holder()->host, QSysInfo::machineHostName());
  EXPECT_EQ(second.holder()->user, QFileInfo(path + ".lock").owner());
  EXPECT_FALSE(second.holder()->user.isEmpty());
  EXPECT_TRUE(second.holder()->this_host);
  EXPECT_LT(std::abs(second.holder()->since.secsTo(QDateTime::currentDateTime())), 60);
  EXPECT_TRUE(second.trouble()->text().contains(QSysInfo::machineHostName()));

  first.giveBack();
  EXPECT_EQ(folder.names(), QStringList{});
  EXPECT_EQ(second.take(path), LockState::Held);
}

TEST(LayoutLock, IsTheSameThroughALink) {
  const Folder folder;
  ASSERT_TRUE(QFile::link("shop.layout.yaml", folder.path("link")));
  LayoutLock first;
  LayoutLock second;
  EXPECT_EQ(first.take(folder.path("shop.layout.yaml")), LockState::Held);
  EXPECT_EQ(second.take(folder.path("link")), LockState::Others);
}

TEST(LayoutLock, OfAnotherLayoutIsGivenBack) {
  const Folder folder;
  LayoutLock lock;
  lock.take(folder.path("a"));
  EXPECT_EQ(lock.take(folder.path("b")), LockState::Held);
  EXPECT_EQ(folder.names(), QStringList{"b.lock"});
}

TEST(LayoutLock, GoesWithItsOwner) {
  const Folder folder;
  {
    LayoutLock lock;
    lock.take(folder.path("a"));
  }
  EXPECT_EQ(folder.names(), QStringList{});
}

TEST(LayoutLock, OfAKilledProcessIsTakenOver) {
  const Folder folder;
  thenKilled([&] {
    auto* const lock = new LayoutLock;
    lock->take(folder.path("a"));
  });
  ASSERT_EQ(folder.names(), QStringList{"a.lock"});
  LayoutLock lock;
  EXPECT_EQ(lock.take(folder.path("a")), LockState::Held);
}

TEST(LayoutLock, OfAnotherComputerIsBrokenOnlyKnowingly) {
  const Folder folder;
  const QString path = folder.path("a");
  put(path + ".lock", kElsewhere);
  QFile file(path + ".lock");
  ASSERT_TRUE(file.open(QIODevice::ReadWrite));
  file.setFileTime(QDateTime::currentDateTime().addDays(-30), QFileDevice::FileModificationTime);
  file.close();

  LayoutLock lock;
  EXPECT_EQ(lock.take(path), LockState::Others);
  ASSERT_TRUE(lock.holder());
  EXPECT_EQ(lock.holder()->host, "old-bench-pc");
  EXPECT_EQ(lock.holder()->process, 4711);
  EXPECT_FALSE(lock.holder()->this_host);
  EXPECT_TRUE(lock.trouble()->text().contains("old-bench-pc"));
  EXPECT_EQ(textOf(path + ".lock"), kElsewhere);

  const Holder shown = *lock.holder();
  EXPECT_EQ(lock.breakAndTake(shown), LockState::Held);
  EXPECT_TRUE(lock.isStillHeld());
}

TEST(LayoutLock, OfAComputerOfTheSameNameIsAnothers) {
  const Folder folder;
  put(folder.path("a.lock"),
      "4711\nstopwalk\n" + QSysInfo::machineHostName().toStdString() + "\nno-such-machine\nno-such-boot\n");
  LayoutLock lock;
  EXPECT_EQ(lock.take(folder.path("a")), LockState::Others);
  EXPECT_FALSE(lock.holder()->this_host);
}

TEST(LayoutLock, IsNotBrokenForAnotherHolderThanTheOneShown) {
  const Folder folder;
  const QString path = folder.path("a");
  put(path + ".lock", kElsewhere);
  LayoutLock lock;
  lock.take(path);
  const Holder shown = *lock.holder();
  put(path + ".lock", "12\nstopwalk\nnew-bench-pc\n\n\n");
  EXPECT_EQ(lock.breakAndTake(shown), LockState::Others);
  EXPECT_EQ(lock.holder()->host, "new-bench-pc");
}

TEST(LayoutLock, ThatIsDamagedIsToldOfAndCanBeBroken) {
  const Folder folder;
  const QString path = folder.path("a");
  put(path + ".lock", "");
  LayoutLock lock;
  EXPECT_EQ(lock.take(path), LockState::Others);
  EXPECT_FALSE(lock.holder()->readable);
  EXPECT_TRUE(lock.trouble()->why.contains("damaged"));
  EXPECT_EQ(lock.breakAndTake(Holder(*lock.holder())), LockState::Held);
}

TEST(LayoutLock, ThatWasBrokenByAnotherIsNoticedAndLeftToThem) {
  const Folder folder;
  const QString path = folder.path("a");
  {
    LayoutLock lock;
    lock.take(path);
    QFile::remove(path + ".lock");
    put(path + ".lock", kElsewhere);
    EXPECT_FALSE(lock.isStillHeld());
    EXPECT_EQ(lock.state(), LockState::Others);
    EXPECT_EQ(lock.holder()->host, "old-bench-pc");
  }
  EXPECT_EQ(textOf(path + ".lock"), kElsewhere);
}

TEST(LayoutLock, WhereNothingCanBeWrittenIsReadOnly) {
  const Folder folder;
  ASSERT_EQ(::chmod(QFile::encodeName(folder.path()).constData(), 0555), 0);
  const int status = asAnybody([&] {
    LayoutLock lock;
    if (lock.take(folder.path("a")) != LockState::ReadOnly) return 1;
    return lock.trouble() && lock.trouble()->what.contains("look only") ? 0 : 2;
  });
  ::chmod(QFile::encodeName(folder.path()).constData(), 0755);
  EXPECT_EQ(status, 0);
}

TEST(LayoutLock, WithoutAFolderItFailsAndSaysSo) {
  const Folder folder;
  LayoutLock lock;
  EXPECT_EQ(lock.take(folder.path("none/a")), LockState::Failed);
  EXPECT_TRUE(lock.trouble());
}

}  // namespace
}  // namespace stopwalk::documents
