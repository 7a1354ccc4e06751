// What a crash left behind, offered at the next start.
#include <QApplication>
#include <QLabel>
#include <QPushButton>

#include "app/documents/layout_file.h"
#include "app/window/notice_bar.h"
#include "app/window/recovery_dialog.h"
#include "tests/app/documents/folder.h"
#include "tests/app/window/files.h"

namespace stopwalk::window {
namespace {

using documents::workshop;

constexpr const char* kGoOn = "Go on with what was kept";
constexpr const char* kThrowAway = "Throw the kept work away";
constexpr const char* kLater = "Decide later";

class Recovery : public Files {
 protected:
  // A program that keeps this and is killed.
  void leave(const layout::Layout& layout, const QString& path = {}, const std::string& base = {}) {
    documents::thenKilled([&] {
      auto* const killed = new documents::RecoveryStore(folder.filePath("state"));
      killed->store(killed->newId(), path, base, layout);
    });
  }
  std::string saveThere(const QString& path, const layout::Layout& layout) {
    return documents::saveLayout({path, layout, {}, false}).sha256;
  }
  // The next start, and what is answered there; the words of what is offered, empty where nothing is.
  QString start(const QString& answer, const QString& path = {}) {
    QString words;
    QTimer person;
    connect(person, [&] {
      auto* dialog = qobject_cast<RecoveryDialog*>(QApplication::activeModalWidget());
      if (!dialog) return;
      for (const auto* label : dialog->findChildren<QLabel*>()) words += label->text() + "\n";
      for (auto* button : dialog->findChildren<QPushButton*>())
        if (button->text() == answer) return button->click();
      words += "no such answer\n";
      dialog->reject();
    });
    window->begin(path);
    return words;
  }
  static void connect(QTimer& timer, const std::function<void()>& run) {
    timer.setInterval(5);
    QObject::connect(&timer, &QTimer::timeout, run);
    timer.start();
  }
  std::vector<documents::Found> found() { return window->files().found(); }
};

// Started with the very file that was being worked on: it is gone on with, and not opened over again.
TEST_F(Recovery, WhatIsGoneOnWithIsNotAskedAboutForItsOwnFile) {
  const QString path = pathOf("shed.layout.yaml");
  const std::string base = saveThere(path, workshop("As saved"));
  leave(workshop("As edited"), path, base);
  asker.asked.clear();
  EXPECT_NE(start(kGoOn, path), "");
  EXPECT_EQ(asker.asked, QStringList());
  EXPECT_EQ(layout(), workshop("As edited"));
  EXPECT_TRUE(window->isWindowModified());
}

TEST_F(Recovery, WhatIsDecidedLaterLetsTheFileBeOpened) {
  const QString path = pathOf("shed.layout.yaml");
  const std::string base = saveThere(path, workshop("As saved"));
  leave(workshop("As edited"), path, base);
  EXPECT_NE(start(kLater, path), "");
  EXPECT_EQ(layout(), workshop("As saved"));
}

TEST_F(Recovery, WorkOfAWindowThatDiedIsGoneOnWith) {
  const QString path = pathOf("shed.layout.yaml");
  const std::string base = saveThere(path, workshop("As saved"));
  leave(workshop("As edited"), path, base);
  EXPECT_TRUE(start(kGoOn).contains("what was kept is newer"));
  EXPECT_EQ(layout(), workshop("As edited"));
  EXPECT_EQ(window->document().path(), path);
  EXPECT_TRUE(isOurs(path));
  EXPECT_TRUE(found().empty()) << "it is the window's work now";
  expectNothingLost();
  EXPECT_TRUE(window->files().save());
  EXPECT_EQ(documents::openLayout(path).read.value, workshop("As edited"));
  EXPECT_EQ(keptCopies(), 0);
}

TEST_F(Recovery, WorkWithTheShopsOwnKindsIsGoneOnWith) {
  layout::Layout own = workshop("Own kinds");
  layout::Device pad;
  pad.id = "pad-1";
  pad.kind = "knee-pad";
  own.devices.push_back(pad);
  const QString path = pathOf("shed.layout.yaml"), kinds = pathOf("device-kinds.yaml");
  leave(own, path);
  EXPECT_TRUE(start(kGoOn).contains("whole, but cannot be opened")) << "its kinds are not there";
  put(kinds,
      "stopwalk_device_kinds: 1\ndevice_kinds:\n  knee-pad:\n    label: knee pad\n    actuated_by: hand\n"
      "    shape: point\n    counts_as_stop: true\n...\n");
  ASSERT_EQ(found().size(), 1u);
  EXPECT_FALSE(found()[0].trouble) << found()[0].trouble->text().toStdString();
  start(kGoOn);
  ASSERT_EQ(layout().devices.size(), 1u);
  EXPECT_EQ(layout().devices[0].kind, "knee-pad");
  EXPECT_TRUE(window->document().catalogue().kinds.find("knee-pad"));
}

TEST_F(Recovery, ItIsThrownAwayOnlyWhenThatIsSaidTwice) {
  const QString path = pathOf("shed.layout.yaml");
  leave(workshop("As edited"), path, saveThere(path, workshop("As saved")));
  const QByteArray file = textOf(path);
  EXPECT_FALSE(start(kLater).contains("no such answer"));
  EXPECT_EQ(asker.asked.size(), 0);
  EXPECT_EQ(found().size(), 1u);
  asker.answers = {"Keep it"};
  start(kThrowAway);
  EXPECT_EQ(asker.asked.size(), 1);
  EXPECT_EQ(found().size(), 1u);
  start(kThrowAway);  // the question is closed without an answer
  EXPECT_EQ(found().size(), 1u);
  asker.answers = {"Throw it away"};
  start(kThrowAway);
  EXPECT_TRUE(found().empty());
  EXPECT_EQ(textOf(path), file);
}

TEST_F(Recovery, ItSaysHowTheFileStands) {
  const QString path = pathOf("shed.layout.yaml");
  leave(workshop("As edited"), path, saveThere(path, workshop("As saved")));
  EXPECT_TRUE(start(kLater).contains("is as it was"));
  put(path, QByteArray::fromStdString(documents::textOf(workshop("Somebody else's"))));
  EXPECT_TRUE(start(kLater).contains("changed by somebody else"));
  QFile::remove(path);
  EXPECT_TRUE(start(kLater).contains("no longer on the disk"));
  put(path, QByteArray::fromStdString(documents::textOf(workshop("As edited"))));
  EXPECT_TRUE(start(kThrowAway).contains("holds this work already"));
  EXPECT_EQ(asker.asked.size(), 0) << "nothing would be lost";
  EXPECT_TRUE(found().empty());
}

TEST_F(Recovery, WhatCannotBeThrownAwayIsTold) {
  leave(workshop("As edited"));
  const auto all = found();
  ASSERT_EQ(all.size(), 1u);
  ASSERT_TRUE(QFile::remove(all[0].file));
  ASSERT_TRUE(QDir().mkpath(all[0].file + "/in the way"));
  asker.answers = {"Throw it away"};
  window->files().discard(all[0]);
  ASSERT_EQ(asker.asked.size(), 2);
  EXPECT_TRUE(asker.asked[1].contains("still there"));
}

TEST_F(Recovery, WorkKeptByAnotherComputerCannotBeThrownAwayHere) {
  leave(workshop("As edited"));
  const QString session =
      QFileInfo(documents::RecoveryStore(folder.filePath("state")).found().at(0).file).path();
  put(session + ".lock", "4711\nstopwalk\nold-bench-pc\nno-such-machine\nno-such-boot\n");
  const QString words = start(kThrowAway);
  EXPECT_TRUE(words.contains("old-bench-pc"));
  EXPECT_TRUE(words.contains("no such answer"));
  EXPECT_EQ(asker.asked.size(), 0);
}

}  // namespace
}  // namespace stopwalk::window
