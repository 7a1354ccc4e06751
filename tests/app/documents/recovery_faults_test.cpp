// What the recovery store leaves behind when each single call to the system fails, or the program or the
// computer stops at it: while work is kept, and while it is taken over.
#include <gtest/gtest.h>
#include <sys/mman.h>

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <cerrno>

#include "app/documents/recovery_store.h"
#include "tests/app/documents/faults.h"
#include "tests/app/documents/folder.h"

namespace stopwalk::documents {
namespace {

class RecoveryFaults : public testing::TestWithParam<FaultCase> {};

// What a process that may stop at any moment has got to.
struct Progress {
  int tried = 0;     // the number of the newest state that was given to be kept
  int kept = 0;      // and of the newest of which it was said that it is kept
  bool told = true;  // each failure came with its reason and advice
};

class SharedProgress {
 public:
  SharedProgress()
      : progress_(new (::mmap(nullptr, sizeof(Progress), PROT_READ | PROT_WRITE, MAP_SHARED | MAP_ANONYMOUS,
                              -1, 0)) Progress) {}
  ~SharedProgress() { ::munmap(progress_, sizeof(Progress)); }
  SharedProgress(const SharedProgress&) = delete;
  SharedProgress& operator=(const SharedProgress&) = delete;
  Progress* operator->() const { return progress_; }

 private:
  Progress* progress_;
};

layout::Layout state(int number) {
  return workshop("state " + std::to_string(number));
}

void keep(RecoveryStore& store, const QString& id, int number, const SharedProgress& progress) {
  progress->tried = number;
  const auto trouble = store.store(id, {}, {}, state(number));
  if (!trouble)
    progress->kept = number;
  else if (trouble->what.isEmpty() || trouble->advice.isEmpty())
    progress->told = false;
}

// The computer is started again some time later.
void timePasses(const QString& root) {
  for (const QString& name : QDir(root).entryList({"*lock"}, QDir::Files)) {
    QFile file(root + "/" + name);
    if (file.open(QIODevice::ReadWrite))
      file.setFileTime(QDateTime::currentDateTime().addSecs(-3600), QFileDevice::FileModificationTime);
  }
}

// The newest state that the next start finds whole; 0: none. Whatever else lies there is told of.
int newestFound(const QString& root, const std::string& where) {
  timePasses(root);
  int newest = 0;
  for (const Found& found : RecoveryStore(root).found()) {
    EXPECT_NE(found.layout.has_value(), found.trouble.has_value()) << where;
    if (!found.layout) continue;
    int number = 0;
    for (int i = 1; i <= 3; ++i)
      if (*found.layout == state(i)) number = i;
    EXPECT_GT(number, 0) << where << ": a state that never was";
    newest = std::max(newest, number);
  }
  return newest;
}

std::string describe(int at, const FaultyRun& run, const SharedProgress& progress) {
  return "call " + std::to_string(at) + " (" + run.call + "), status " + std::to_string(run.status) +
         ", tried " + std::to_string(progress->tried) + ", kept " + std::to_string(progress->kept);
}

bool keepAndLook(const FaultCase& c, int at) {
  const Folder folder;
  QDir(folder.path()).mkdir("w");
  const QString root = folder.path("w/recovery");
  const SharedProgress progress;
  const FaultyRun run = runWithFault(folder.path("w"), c.at(at), [&] {
    RecoveryStore store(root);
    const QString id = store.newId();
    for (int number = 1; number <= 3; ++number) keep(store, id, number, progress);
    return 0;
  });
  const std::string where = describe(at, run, progress);
  EXPECT_TRUE(run.status == 0 || run.status == kStopped) << where;
  EXPECT_TRUE(progress->told) << where;
  const int newest = newestFound(root, where);
  EXPECT_GE(newest, progress->kept) << where << ": said to be kept, and is not";
  EXPECT_LE(newest, progress->tried) << where;
  if (!run.reached) {
    EXPECT_EQ(progress->kept, 3) << where;
  }
  return run.reached;
}

bool takeOverAndLook(const FaultCase& c, int at) {
  const Folder folder;
  QDir(folder.path()).mkdir("w");
  const QString root = folder.path("w/recovery");
  const SharedProgress progress;
  runWithFault(folder.path("w"), {}, [&] {
    auto* const store = new RecoveryStore(root);  // and no orderly end
    keep(*store, store->newId(), 1, progress);
    return 0;
  });
  EXPECT_EQ(progress->kept, 1);
  const FaultyRun run = runWithFault(folder.path("w"), c.at(at), [&] {
    RecoveryStore store(root);
    for (const Found& found : store.found())
      if (found.layout && !store.store(store.newId(), {}, {}, *found.layout)) store.discard(found);
    return 0;
  });
  const std::string where = describe(at, run, progress);
  EXPECT_TRUE(run.status == 0 || run.status == kStopped) << where;
  EXPECT_EQ(newestFound(root, where), 1) << where << ": the work is lost";
  return run.reached;
}

TEST_P(RecoveryFaults, WhatWasSaidToBeKeptIsFound) {
  int at = 1;
  while (keepAndLook(GetParam(), at)) ASSERT_LT(++at, 500);
  RecordProperty("calls", at - 1);
  EXPECT_GE(at, 30) << "too few calls are watched";
}

TEST_P(RecoveryFaults, TakingWorkOverLosesNone) {
  int at = 1;
  while (takeOverAndLook(GetParam(), at)) ASSERT_LT(++at, 500);
  RecordProperty("calls", at - 1);
  EXPECT_GE(at, 20) << "too few calls are watched";
}

INSTANTIATE_TEST_SUITE_P(Every, RecoveryFaults,
                         testing::Values(FaultCase{"FullDiskOnce", Manner::FailOnce, ENOSPC, false},
                                         FaultCase{"BadDiskOnce", Manner::FailOnce, EIO, true},
                                         FaultCase{"FullDiskEverAfter", Manner::FailEverAfter, ENOSPC, false},
                                         FaultCase{"ShortWrite", Manner::WriteShort, 0, false},
                                         FaultCase{"Stop", Manner::Stop, 0, false},
                                         FaultCase{"PowerCut", Manner::PowerCutKept, 0, true},
                                         FaultCase{"PowerCutUndone", Manner::PowerCutUndone, 0, false}),
                         [](const auto& c) { return std::string(c.param.name); });

}  // namespace
}  // namespace stopwalk::documents
