#include "app/documents/layout_file.h"

#include <gtest/gtest.h>
#include <sys/stat.h>

#include <QFile>
#include <QFileInfo>
#include <thread>

#include "app/documents/file_bytes.h"
#include "app/documents/safe_write.h"
#include "core/files/sha256.h"
#include "tests/app/documents/folder.h"

namespace stopwalk::documents {
namespace {

const layout::Layout kOld = workshop("Old shop");
const layout::Layout kNew = workshop("New shop");

SaveRequest onto(const QString& path, const layout::Layout& layout, const std::string& base = {}) {
  return {path, layout, base, false};
}

mode_t modeOf(const QString& path) {
  struct stat s {};
  EXPECT_EQ(::stat(QFile::encodeName(path).constData(), &s), 0);
  return s.st_mode & 07777;
}

// A trouble that the person at the desk can do something with.
void expectWhole(const std::optional<Trouble>& trouble, const QString& path) {
  ASSERT_TRUE(trouble);
  EXPECT_EQ(trouble->path, path);
  EXPECT_FALSE(trouble->what.isEmpty());
  EXPECT_FALSE(trouble->advice.isEmpty());
  EXPECT_TRUE(trouble->text().startsWith(path + ": ")) << trouble->text().toStdString();
}

TEST(LayoutFile, ComesBackAsItWasSaved) {
  const Folder folder;
  const QString path = folder.path("shop.layout.yaml");
  const SaveResult saved = saveLayout(onto(path, kNew));
  EXPECT_EQ(saved.outcome, SaveOutcome::Saved);
  EXPECT_FALSE(saved.trouble);
  EXPECT_EQ(folder.names(), QStringList{"shop.layout.yaml"});

  const OpenResult opened = openLayout(path);
  EXPECT_EQ(opened.read.value, kNew);
  EXPECT_TRUE(opened.read.diagnostics.empty());
  EXPECT_FALSE(opened.trouble);
  EXPECT_EQ(opened.sha256, saved.sha256);
  EXPECT_EQ(opened.sha256, files::sha256(textOf(path)));
}

TEST(LayoutFile, SavesAgainOntoWhatItSaved) {
  const Folder folder;
  const QString path = folder.path("shop.layout.yaml");
  const std::string first = saveLayout(onto(path, kOld)).sha256;
  const SaveResult second = saveLayout(onto(path, kNew, first));
  EXPECT_EQ(second.outcome, SaveOutcome::Saved);
  EXPECT_EQ(textOf(path), textOf(kNew));
}

TEST(LayoutFile, OpeningSaysWhyThereIsNone) {
  const Folder folder;
  const auto why = [](const OpenResult& r) { return r.trouble ? r.trouble->why.toStdString() : "none"; };
  const QString nowhere = folder.path("none.layout.yaml");
  expectWhole(openLayout(nowhere).trouble, nowhere);
  EXPECT_EQ(why(openLayout(nowhere)), "there is no such file");
  EXPECT_EQ(why(openLayout(folder.path())), "it is a folder");
  EXPECT_EQ(why(openLayout("/dev/null")), "it is not a plain file");

  const QString pipe = folder.path("pipe");
  ASSERT_EQ(::mkfifo(QFile::encodeName(pipe).constData(), 0600), 0);
  EXPECT_EQ(why(openLayout(pipe)), "it is not a plain file");
}

TEST(LayoutFile, TooLargeIsNotRead) {
  const Folder folder;
  const QString path = folder.path("large");
  QFile file(path);
  ASSERT_TRUE(file.open(QIODevice::WriteOnly));
  ASSERT_TRUE(file.resize(kMostBytes + 1));
  file.close();
  EXPECT_EQ(openLayout(path).trouble->why, "it is over 64 MiB; no layout is so large");
}

TEST(LayoutFile, DiagnosticsComeWithTheirLines) {
  const Folder folder;
  const QString path = folder.path("broken.layout.yaml");
  put(path, "stopwalk_layout: 1\nunits: mm\nsite: {name: X}\nrooms: 3\n");
  const OpenResult opened = openLayout(path);
  EXPECT_FALSE(opened.read.value);
  EXPECT_EQ(opened.sha256, "");
  ASSERT_FALSE(opened.read.diagnostics.empty());
  expectWhole(opened.trouble, path);
  EXPECT_TRUE(opened.trouble->why.startsWith("line 4: ")) << opened.trouble->why.toStdString();
}

TEST(LayoutFile, WithoutTheEndMarkerItOpensWithAWarning) {
  const Folder folder;
  const QString path = folder.path("cut.layout.yaml");
  std::string text = textOf(kOld);
  ASSERT_TRUE(text.ends_with("...\n"));
  put(path, text.substr(0, text.size() - 4));
  const OpenResult opened = openLayout(path);
  EXPECT_EQ(opened.read.value, kOld);
  EXPECT_EQ(opened.read.diagnostics.size(), 1u);
  EXPECT_FALSE(opened.trouble);
}

TEST(LayoutFile, AChangeByAnotherProgramIsNotOverwrittenUnlessTold) {
  const Folder folder;
  const QString path = folder.path("shop.layout.yaml");
  const std::string base = saveLayout(onto(path, kOld)).sha256;
  const std::string others = textOf(workshop("Somebody else's"));
  put(path, others);

  SaveRequest request = onto(path, kNew, base);
  const SaveResult refused = saveLayout(request);
  EXPECT_EQ(refused.outcome, SaveOutcome::ChangedOnDisk);
  EXPECT_EQ(refused.sha256, "");
  expectWhole(refused.trouble, path);
  EXPECT_EQ(textOf(path), others);
  EXPECT_EQ(folder.names().size(), 1);

  request.overwrite = true;
  EXPECT_EQ(saveLayout(request).outcome, SaveOutcome::Saved);
  EXPECT_EQ(textOf(path), textOf(kNew));
}

TEST(LayoutFile, ANewPathIsNotTakenFromAnotherLayoutUnlessTold) {
  const Folder folder;
  const QString path = folder.path("shop.layout.yaml");
  put(path, textOf(kOld));
  SaveRequest request = onto(path, kNew);
  const SaveResult refused = saveLayout(request);
  EXPECT_EQ(refused.outcome, SaveOutcome::AlreadyThere);
  expectWhole(refused.trouble, path);
  EXPECT_EQ(textOf(path), textOf(kOld));
  request.overwrite = true;
  EXPECT_EQ(saveLayout(request).outcome, SaveOutcome::Saved);
}

TEST(LayoutFile, WhatIsNoLayoutIsNeverOverwritten) {
  const Folder folder;
  const QString path = folder.path("notes.txt");
  for (const std::string text : {"", "shopping list\n", "stopwalk_layout: 1\nunits: mm\n"}) {
    put(path, text);
    SaveRequest request = onto(path, kNew, files::sha256(text));
    for (const bool overwrite : {false, true}) {
      request.overwrite = overwrite;
      const SaveResult refused = saveLayout(request);
      EXPECT_EQ(refused.outcome, SaveOutcome::NotALayout) << text;
      expectWhole(refused.trouble, path);
      EXPECT_EQ(textOf(path), text);
    }
  }
  EXPECT_EQ(saveLayout(onto(folder.path(), kNew)).outcome, SaveOutcome::NotALayout);
  EXPECT_EQ(saveLayout(onto("/dev/null", kNew)).outcome, SaveOutcome::NotALayout);
}

TEST(LayoutFile, WhatWouldNotOpenAgainIsNotWritten) {
  const Folder folder;
  const QString path = folder.path("shop.layout.yaml");
  const std::string base = saveLayout(onto(path, kOld)).sha256;
  layout::Layout twice = kNew;
  twice.rooms.push_back(twice.rooms.front());  // two rooms with one id
  const SaveResult refused = saveLayout(onto(path, twice, base));
  EXPECT_EQ(refused.outcome, SaveOutcome::Unwritable);
  expectWhole(refused.trouble, path);
  EXPECT_FALSE(refused.trouble->why.isEmpty());
  EXPECT_EQ(textOf(path), textOf(kOld));
}

TEST(LayoutFile, AWriteProtectedFileIsLeftAsItIs) {
  const Folder folder;
  const QString path = folder.path("shop.layout.yaml");
  const std::string base = saveLayout(onto(path, kOld)).sha256;
  ASSERT_EQ(::chmod(QFile::encodeName(path).constData(), 0444), 0);
  for (const bool overwrite : {false, true}) {
    SaveRequest request = onto(path, kNew, base);
    request.overwrite = overwrite;
    const SaveResult refused = saveLayout(request);
    EXPECT_EQ(refused.outcome, SaveOutcome::WriteProtected);
    expectWhole(refused.trouble, path);
  }
  EXPECT_EQ(textOf(path), textOf(kOld));
  EXPECT_EQ(modeOf(path), 0444u);
}

TEST(LayoutFile, PermissionsAreKept) {
  const Folder folder;
  const QString path = folder.path("shop.layout.yaml");
  std::string base = saveLayout(onto(path, kOld)).sha256;
  for (const mode_t mode : {0600u, 0640u, 0664u, 0755u, 02660u}) {
    ASSERT_EQ(::chmod(QFile::encodeName(path).constData(), mode), 0);
    const SaveResult saved = saveLayout(onto(path, mode == 0640 ? kOld : kNew, base));
    ASSERT_EQ(saved.outcome, SaveOutcome::Saved);
    base = saved.sha256;
    EXPECT_EQ(modeOf(path), mode);
  }
}

TEST(LayoutFile, ANewFileHasTheUsualPermissions) {
  const Folder folder;
  const mode_t before = ::umask(0027);
  EXPECT_TRUE(saveLayout(onto(folder.path("a"), kNew)).inPlace());
  ::umask(before);
  EXPECT_EQ(modeOf(folder.path("a")), 0640u);
}

TEST(LayoutFile, ALinkStaysALink) {
  const Folder folder;
  const QString path = folder.path("shop.layout.yaml");
  const std::string base = saveLayout(onto(path, kOld)).sha256;
  ASSERT_TRUE(QFile::link("shop.layout.yaml", folder.path("one")));
  ASSERT_TRUE(QFile::link(folder.path("one"), folder.path("two")));
  EXPECT_EQ(targetOf(folder.path("two")), path);
  EXPECT_EQ(saveLayout(onto(folder.path("two"), kNew, base)).outcome, SaveOutcome::Saved);
  EXPECT_TRUE(QFileInfo(folder.path("one")).isSymLink());
  EXPECT_TRUE(QFileInfo(folder.path("two")).isSymLink());
  EXPECT_FALSE(QFileInfo(path).isSymLink());
  EXPECT_EQ(textOf(path), textOf(kNew));
}

TEST(LayoutFile, ALinkThatLedNowhereLeadsToTheNewFile) {
  const Folder folder;
  ASSERT_TRUE(QFile::link("later.layout.yaml", folder.path("link")));
  EXPECT_EQ(openLayout(folder.path("link")).trouble->why, "the link leads to a file that is not there");
  EXPECT_EQ(saveLayout(onto(folder.path("link"), kNew)).outcome, SaveOutcome::Saved);
  EXPECT_TRUE(QFileInfo(folder.path("link")).isSymLink());
  EXPECT_EQ(textOf(folder.path("later.layout.yaml")), textOf(kNew));
}

TEST(LayoutFile, AFolderThatIsNotThereIsToldOf) {
  const Folder folder;
  const QString path = folder.path("none/shop.layout.yaml");
  const SaveResult failed = saveLayout(onto(path, kNew));
  EXPECT_EQ(failed.outcome, SaveOutcome::Failed);
  expectWhole(failed.trouble, path);
  EXPECT_EQ(failed.trouble->why, "No such file or directory");
}

TEST(LayoutFile, MissingPermissionsAreToldOf) {
  const Folder folder;
  const QString path = folder.path("shop.layout.yaml");
  const std::string base = saveLayout(onto(path, kOld)).sha256;
  // Anybody may write the file, and nobody its folder.
  ASSERT_EQ(::chmod(QFile::encodeName(path).constData(), 0666), 0);
  ASSERT_EQ(::chmod(QFile::encodeName(folder.path()).constData(), 0555), 0);
  const int status = asAnybody([&] {
    const OpenResult opened = openLayout(path);
    if (!opened.read.value) return 1;
    const SaveResult failed = saveLayout(onto(path, kNew, base));
    if (failed.outcome != SaveOutcome::Failed) return 2;
    return failed.trouble->why.isEmpty() ? 3 : 0;
  });
  ::chmod(QFile::encodeName(folder.path()).constData(), 0755);
  EXPECT_EQ(status, 0);
  EXPECT_EQ(textOf(path), textOf(kOld));
}

TEST(LayoutFile, SavesOnAnyThread) {
  const Folder folder;
  std::vector<SaveResult> results(4);
  std::vector<std::thread> threads;
  for (std::size_t i = 0; i < results.size(); ++i)
    threads.emplace_back([&, i] {
      results[i] = saveLayout(onto(folder.path(QString::number(i)), workshop(std::to_string(i))));
    });
  for (std::thread& thread : threads) thread.join();
  for (std::size_t i = 0; i < results.size(); ++i) {
    EXPECT_EQ(results[i].outcome, SaveOutcome::Saved);
    EXPECT_EQ(openLayout(results[i].path).read.value, workshop(std::to_string(i)));
  }
}

TEST(SafeWrite, WhatComesAtTheLastMomentCallsItOff) {
  const Folder folder;
  const QString path = folder.path("a");
  put(path, "old");
  const WriteResult result = writeWhole(path, "new", [&] {
    put(path, "another's");
    return false;
  });
  EXPECT_EQ(result.written, Written::No);
  EXPECT_EQ(textOf(path), "another's");
  EXPECT_EQ(folder.names(), QStringList{"a"});
}

}  // namespace
}  // namespace stopwalk::documents
