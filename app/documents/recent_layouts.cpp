#include "app/documents/recent_layouts.h"

#include <QDir>
#include <QFileInfo>

namespace stopwalk::documents {
namespace {

constexpr auto kKey = "recent_layouts";

// Links are kept as they are: they are the names that the person knows.
QString absolute(const QString& path) {
  return QDir::cleanPath(QFileInfo(path).absoluteFilePath());
}

}  // namespace

void RecentLayouts::add(const QString& path) {
  QStringList all = paths();
  all.removeAll(absolute(path));
  all.prepend(absolute(path));
  keep(all);
}

void RecentLayouts::forget(const QString& path) {
  QStringList all = paths();
  all.removeAll(absolute(path));
  keep(all);
}

void RecentLayouts::forgetAll() {
  settings_.remove(kKey);
}

std::vector<RecentLayout> RecentLayouts::list() const {
  std::vector<RecentLayout> all;
  for (const QString& path : paths()) all.push_back({path, !QFileInfo(path).isFile()});
  return all;
}

// Another window of the program may have written since, and a person may have edited the settings by hand.
QStringList RecentLayouts::paths() const {
  settings_.sync();
  QStringList all = settings_.value(kKey).toStringList();
  all.removeAll(QString());
  all.removeDuplicates();
  return all.mid(0, kMost);
}

void RecentLayouts::keep(const QStringList& paths) {
  settings_.setValue(kKey, paths.mid(0, kMost));
  settings_.sync();
}

}  // namespace stopwalk::documents
