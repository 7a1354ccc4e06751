#include "tests/app/documents/folder.h"

#include <grp.h>
#include <gtest/gtest.h>
#include <signal.h>
#include <sys/wait.h>
#include <unistd.h>

#include <QCoreApplication>
#include <QDir>
#include <QElapsedTimer>
#include <QEventLoop>
#include <QFile>

#include "core/files/layout_writer.h"

namespace stopwalk::documents {

Folder::Folder() {
  if (!dir_.isValid()) ADD_FAILURE() << "no temporary folder: " << dir_.errorString().toStdString();
}

QStringList Folder::names() const {
  return QDir(path()).entryList(QDir::AllEntries | QDir::Hidden | QDir::System | QDir::NoDotAndDotDot,
                                QDir::Name);
}

std::string textOf(const QString& path) {
  QFile file(path);
  if (!file.open(QIODevice::ReadOnly)) ADD_FAILURE() << "cannot read " << path.toStdString();
  return file.readAll().toStdString();
}

void put(const QString& path, const std::string& text) {
  QFile file(path);
  if (!file.open(QIODevice::WriteOnly) || file.write(text.data(), static_cast<qint64>(text.size())) < 0)
    ADD_FAILURE() << "cannot write " << path.toStdString();
}

layout::Layout workshop(const std::string& name) {
  layout::Layout layout;
  layout.site.name = name;
  layout.rooms.push_back({"room-1", "Bench room", {{0, 0}, {6000, 0}, {6000, 4000}, {0, 4000}}, false, {}});
  return layout;
}

std::string textOf(const layout::Layout& layout) {
  return files::writeLayout(layout);
}

bool waitUntil(const std::function<bool()>& done) {
  QElapsedTimer clock;
  clock.start();
  while (!done()) {
    if (clock.hasExpired(10'000)) return false;
    QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
    ::usleep(1000);
  }
  return true;
}

void waitFor(int ms) {
  QElapsedTimer clock;
  clock.start();
  waitUntil([&] { return clock.hasExpired(ms); });
}

void thenKilled(const std::function<void()>& run) {
  const pid_t child = ::fork();
  if (child == 0) {
    run();
    ::kill(::getpid(), SIGKILL);
  }
  ::waitpid(child, nullptr, 0);
}

int asAnybody(const std::function<int()>& run) {
  const pid_t child = ::fork();
  if (child == 0) {
    constexpr uid_t kNobody = 65534;
    if (::geteuid() == 0 &&
        (::setgroups(0, nullptr) != 0 || ::setgid(kNobody) != 0 || ::setuid(kNobody) != 0))
      ::_exit(99);
    ::_exit(run());
  }
  int status = 0;
  ::waitpid(child, &status, 0);
  return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
}

}  // namespace stopwalk::documents
