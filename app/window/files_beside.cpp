#include "app/window/files_beside.h"

#include <QDateTime>
#include <QFileInfo>

namespace stopwalk::window {
namespace {

constexpr int kLookEvery_ms = 2000;

}  // namespace

FilesBeside::FilesBeside(QObject* parent) : QObject(parent) {
  look_.setInterval(kLookEvery_ms);
  connect(&look_, &QTimer::timeout, this, &FilesBeside::lookNow);
}

FilesBeside::Stamp FilesBeside::stampOf(const QString& path) {
  const QFileInfo file(path);
  if (!file.exists()) return {};
  return {file.size(), file.lastModified().toMSecsSinceEpoch(), file.isReadable()};
}

void FilesBeside::follow(const QStringList& paths) {
  std::map<QString, Stamp> stamps;
  for (const QString& path : paths) {
    const auto known = stamps_.find(path);
    stamps.emplace(path, known != stamps_.end() ? known->second : stampOf(path));
  }
  stamps_ = std::move(stamps);
  if (stamps_.empty())
    look_.stop();
  else if (!look_.isActive())
    look_.start();
}

void FilesBeside::lookNow() {
  QStringList others;
  for (auto& [path, stamp] : stamps_) {
    const Stamp now = stampOf(path);
    if (now == stamp) continue;
    stamp = now;
    others << path;
  }
  if (!others.isEmpty()) emit changed(others);
}

}  // namespace stopwalk::window
