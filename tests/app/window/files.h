#pragma once

#include <QDir>
#include <QFile>

#include "app/documents/lock_holder.h"
#include "tests/app/window/person.h"

namespace stopwalk::window {

// Somebody at the window who opens and saves files, while others do as well.
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
  void addAPhone() {
    choose({plan::Choice::What::Phone});
    typeNumbers({"0", "1000"});
    ASSERT_FALSE(window->document().isSaved());
  }
  void put(const QString& path, const QByteArray& text) {
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    ASSERT_EQ(file.write(text), text.size());
  }
  static QByteArray textOf(const QString& path) {
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
    return file.readAll();
  }
  // Somebody at another computer works on it, by now.
  void isTakenElsewhere(const QString& path) {
    QFile::remove(path + ".lock");
    put(path + ".lock", "4711\nstopwalk\nold-bench-pc\nno-such-machine\nno-such-boot\n");
  }
  bool isOurs(const QString& path) {
    return documents::holderOf(path + ".lock").value_or(documents::Holder()).this_host;
  }
  // What a crash would leave behind.
  int keptCopies() {
    EXPECT_EQ(window->document().keepNow(), std::nullopt);
    const QDir state(folder.filePath("state"));
    int kept = 0;
    for (const QString& session : state.entryList(QDir::Dirs | QDir::NoDotAndDotDot))
      kept += static_cast<int>(QDir(state.filePath(session)).entryList({"*.recovery"}).size());
    return kept;
  }
  // The work is in the window, counted as not saved, and kept in case of a crash.
  void expectNothingLost() {
    EXPECT_FALSE(window->document().isSaved());
    EXPECT_TRUE(window->isWindowModified());
    EXPECT_EQ(keptCopies(), 1);
    asker.asked.clear();
    asker.answers.clear();
    EXPECT_FALSE(window->close());
    EXPECT_EQ(asker.asked.size(), 1);
  }
};

}  // namespace stopwalk::window
