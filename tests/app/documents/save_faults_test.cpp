// What a save leaves behind when each single call to the system fails, or the program or the computer stops
// at it.
#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <cerrno>

#include "app/documents/layout_file.h"
#include "core/files/sha256.h"
#include "tests/app/documents/faults.h"
#include "tests/app/documents/folder.h"

namespace stopwalk::documents {
namespace {

const layout::Layout kOld = workshop("Old shop");
const layout::Layout kNew = workshop("New shop, with a longer name");

const QFile::Permissions kMode =
    QFile::ReadOwner | QFile::WriteOwner | QFile::ReadUser | QFile::WriteUser | QFile::ReadGroup;

class SaveFaults : public testing::TestWithParam<FaultCase> {};

// As an exit status; 20 more: a failure without a word about it.
int statusOf(const SaveResult& result) {
  const bool told = result.outcome == SaveOutcome::Saved ||
                    (result.trouble && !result.trouble->what.isEmpty() && !result.trouble->advice.isEmpty());
  return static_cast<int>(result.outcome) + (told ? 0 : 20);
}

struct Seen {
  int calls = 0;
  int saved = 0;
  int not_saved = 0;
  int stopped = 0;
};

bool hasLeftovers(const Folder& folder, const QString& path) {
  const QStringList names = QDir(folder.path("w")).entryList(QDir::Files | QDir::Hidden);
  return !names.isEmpty() && names != QStringList{QFileInfo(path).fileName()};
}

// Saves with the fault at call `at`, and looks at what is there then. False: that many calls are not made.
bool saveAndLook(const FaultCase& c, int at, bool has_old, Seen& seen) {
  const Folder folder;
  QDir(folder.path()).mkdir("w");
  const QString path = folder.path("w/shop.layout.yaml");
  std::string base;
  if (has_old) {
    put(path, textOf(kOld));
    base = files::sha256(textOf(kOld));
    QFile::setPermissions(path, kMode);
  }

  const FaultyRun run = runWithFault(folder.path("w"), c.at(at), [&] {
    return statusOf(saveLayout({path, kNew, base, false}));
  });
  const std::string where = "call " + std::to_string(at) + " (" + run.call + "), status " +
                            std::to_string(run.status) + (has_old ? ", over an old file" : ", new");
  EXPECT_TRUE(run.status == kStopped || (run.status >= 0 && run.status < 20)) << where;

  const bool there = QFileInfo::exists(path);
  EXPECT_TRUE(there || !has_old) << where;
  const OpenResult opened = there ? openLayout(path) : OpenResult{};
  const bool is_new = opened.read.value == kNew;
  const bool is_old = there ? has_old && opened.read.value == kOld : !has_old;
  EXPECT_TRUE(is_new || is_old) << where << ": a third file";

  const auto outcome = static_cast<SaveOutcome>(run.status);
  if (run.status == kStopped) {
    ++seen.stopped;
  } else if (outcome == SaveOutcome::Saved) {
    EXPECT_TRUE(is_new) << where << ": said to be saved, and is not";
    EXPECT_TRUE(!has_old || QFile::permissions(path) == kMode) << where;
    ++seen.saved;
  } else {
    // After a power cut either may be there.
    if (c.manner < Manner::Stop) {
      EXPECT_EQ(is_new, outcome == SaveOutcome::Unsure)
          << where << ": said not to be in place, and is, or so";
    }
    ++seen.not_saved;
  }
  if (c.manner == Manner::FailOnce) {
    EXPECT_FALSE(hasLeftovers(folder, path)) << where;
  }
  seen.calls = std::max(seen.calls, run.calls);
  return run.reached;
}

TEST_P(SaveFaults, LeaveTheOldFileOrTheNewAndAreToldOf) {
  const FaultCase& c = GetParam();
  for (const bool has_old : {true, false}) {
    Seen seen;
    int at = 1;
    while (saveAndLook(c, at, has_old, seen)) ASSERT_LT(++at, 300);
    // Each of open, write, sync, link or rename, close, and the sync of the folder, at the least.
    RecordProperty(has_old ? "calls_over_an_old_file" : "calls_new", at - 1);
    EXPECT_GE(at, 8) << "too few calls are watched";
    EXPECT_GE(seen.saved, 1) << "the run without a fault";
    if (c.manner >= Manner::Stop) {
      EXPECT_EQ(seen.stopped, at - 1);
    }
    if (c.manner == Manner::FailOnce) {
      EXPECT_GE(seen.not_saved, 4);
    }
    if (c.manner == Manner::WriteShort) {
      EXPECT_EQ(seen.not_saved, 0);
    }
  }
}

INSTANTIATE_TEST_SUITE_P(Every, SaveFaults,
                         testing::Values(FaultCase{"FullDiskOnce", Manner::FailOnce, ENOSPC, false},
                                         FaultCase{"BadDiskOnce", Manner::FailOnce, EIO, false},
                                         FaultCase{"ForbiddenOnce", Manner::FailOnce, EACCES, true},
                                         FaultCase{"FullDiskEverAfter", Manner::FailEverAfter, ENOSPC, false},
                                         FaultCase{"BadDiskEverAfter", Manner::FailEverAfter, EIO, true},
                                         FaultCase{"ShortWrite", Manner::WriteShort, 0, false},
                                         FaultCase{"Stop", Manner::Stop, 0, false},
                                         FaultCase{"StopNamed", Manner::Stop, 0, true},
                                         FaultCase{"PowerCut", Manner::PowerCutKept, 0, false},
                                         FaultCase{"PowerCutNamed", Manner::PowerCutKept, 0, true},
                                         FaultCase{"PowerCutUndone", Manner::PowerCutUndone, 0, false},
                                         FaultCase{"PowerCutUndoneNamed", Manner::PowerCutUndone, 0, true}),
                         [](const auto& c) { return std::string(c.param.name); });

// The faults themselves: a plain write, without sync or rename, does not pass what is asked above.
TEST(Faults, APlainWriteIsSeenToTear) {
  for (const Manner manner : {Manner::Stop, Manner::PowerCutKept}) {
    const Folder folder;
    QDir(folder.path()).mkdir("w");
    const QString path = folder.path("w/plain");
    bool torn = false;
    for (int at = 1; at < 20; ++at) {
      put(path, "the old text");
      runWithFault(folder.path("w"), {at, manner, 0, false}, [&] {
        put(path, "the new text");
        return 0;
      });
      const std::string text = textOf(path);
      torn = torn || (text != "the old text" && text != "the new text");
    }
    EXPECT_TRUE(torn);
  }
}

TEST(Faults, AnUnsyncedFolderIsSeenToFallBack) {
  const Folder folder;
  QDir(folder.path()).mkdir("w");
  put(folder.path("w/a"), "old");
  put(folder.path("w/b"), "new");
  const FaultyRun run = runWithFault(folder.path("w"), {99, Manner::PowerCutUndone, 0, false}, [&] {
    return ::rename(folder.path("w/b").toStdString().c_str(), folder.path("w/a").toStdString().c_str());
  });
  EXPECT_EQ(run.status, 0);
  EXPECT_EQ(textOf(folder.path("w/a")), "old");
  EXPECT_EQ(textOf(folder.path("w/b")), "new");
}

}  // namespace
}  // namespace stopwalk::documents
