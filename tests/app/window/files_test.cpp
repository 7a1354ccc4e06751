// Opening, saving and leaving: nothing is lost without an answer.
#include <QCloseEvent>
#include <QFile>

#include "app/documents/layout_file.h"
#include "app/window/notice_bar.h"
#include "tests/app/window/person.h"

namespace stopwalk::window {
namespace {

class Files : public AtTheWindow {
 protected:
  void drawARoom() {
    choose({plan::Choice::What::Room});
    typeNumbers({"0", "0", "8 m", "6 m"});
    ASSERT_EQ(layout().rooms.size(), 1u);
  }
  QString saved(const QString& name) {
    drawARoom();
    asker.file = pathOf(name);
    EXPECT_TRUE(window->files().save());
    return pathOf(name);
  }
};

TEST_F(Files, ClosingWithUnsavedWorkAsksAndStays) {
  drawARoom();
  EXPECT_FALSE(window->close());
  EXPECT_EQ(asker.asked.size(), 1);
  asker.answers = {"Keep working"};
  EXPECT_FALSE(window->close());
  asker.answers = {"Do not save"};
  EXPECT_TRUE(window->close());
}

TEST_F(Files, ClosingAfterSavingAsksNothing) {
  saved("shed.layout.yaml");
  EXPECT_FALSE(window->isWindowModified());
  EXPECT_TRUE(window->close());
  EXPECT_EQ(asker.asked, QStringList());
}

TEST_F(Files, UndoingToWhatWasSavedIsSaved) {
  saved("shed.layout.yaml");
  choose({plan::Choice::What::Phone});
  typeNumbers({"0", "1000"});
  EXPECT_TRUE(window->isWindowModified());
  history().undo();
  EXPECT_FALSE(window->isWindowModified());
}

TEST_F(Files, ASecondWindowIsToldWhoHasTheLayout) {
  const QString path = saved("shed.layout.yaml");
  documents::RecoveryStore other_store(folder.filePath("other-state"));
  ToldAsker other_asker;
  other_asker.answers = {"Open for looking only"};
  MainWindow other(other_store, settings, &other_asker);
  other.openPath(path);
  ASSERT_EQ(other_asker.asked.size(), 1);
  EXPECT_TRUE(other_asker.asked[0].contains("open elsewhere"));
  EXPECT_TRUE(other.document().isReadOnly());
  EXPECT_EQ(other.document().edited().layout().rooms.size(), 1u);
}

TEST_F(Files, ChangesOfAnotherProgramAreNoticedAndNotWrittenOver) {
  const QString path = saved("shed.layout.yaml");
  QFile file(path);
  ASSERT_TRUE(file.open(QIODevice::ReadWrite));
  QByteArray text = file.readAll();
  text.replace("Room 1", "Their room");
  file.resize(0);
  file.seek(0);
  file.write(text);
  file.close();
  EXPECT_TRUE(QTest::qWaitFor([&] { return window->notices().text().contains("another program"); }, 15000));

  choose({plan::Choice::What::Phone});
  typeNumbers({"0", "1000"});
  EXPECT_FALSE(window->files().save());
  const auto there = documents::openLayout(path);
  ASSERT_TRUE(there.read.value);
  EXPECT_EQ(there.read.value->rooms[0].name, "Their room");
}

TEST_F(Files, ABrokenFileIsToldWithItsLineAndTheWindowKeepsWhatItHas) {
  drawARoom();
  QFile file(pathOf("broken.layout.yaml"));
  ASSERT_TRUE(file.open(QIODevice::WriteOnly));
  file.write("stopwalk_layout: 1\nunits: ells\n");
  file.close();
  asker.answers = {"Do not save"};
  window->openPath(file.fileName());
  ASSERT_EQ(asker.asked.size(), 2);
  EXPECT_TRUE(asker.asked[1].contains("could not be opened"));
  EXPECT_EQ(layout().rooms.size(), 1u);
}

TEST_F(Files, WorkOfAWindowThatDiedIsFound) {
  drawARoom();
  EXPECT_EQ(window->document().keepNow(), std::nullopt);
  const auto before = layout();
  // Another process would find it; in this one the living store hides it, so a copy of its folder is looked
  // at.
  QDir state(folder.filePath("state"));
  int kept = 0;
  for (const QString& session : state.entryList(QDir::Dirs | QDir::NoDotAndDotDot))
    kept += static_cast<int>(QDir(state.filePath(session)).entryList({"*.recovery"}).size());
  EXPECT_EQ(kept, 1);
  asker.answers = {"Do not save"};
  EXPECT_TRUE(window->close());
}

TEST_F(Files, SamplesOpenWithoutAFileOfTheirOwn) {
  ASSERT_FALSE(FileFlow::samples().isEmpty());
  for (const QString& sample : FileFlow::samples()) {
    window->files().openSample(sample);
    EXPECT_FALSE(layout().machines.empty()) << sample.toStdString();
    EXPECT_TRUE(window->document().path().isEmpty());
    EXPECT_TRUE(window->document().isSaved());
  }
}

}  // namespace
}  // namespace stopwalk::window
