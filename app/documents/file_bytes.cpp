#include "app/documents/file_bytes.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

#include "app/documents/words.h"
#include "core/files/sha256.h"

namespace stopwalk::documents {
namespace {

FileBytes unreadable(const QString& why) {
  return {Presence::Unreadable, {}, why};
}

}  // namespace

FileBytes readBytes(const QString& path) {
  const QFileInfo info(path);
  if (!info.exists()) {
    if (info.isSymLink())
      return {Presence::Missing, {}, Words::tr("the link leads to a file that is not there")};
    return {Presence::Missing, {}, Words::tr("there is no such file")};
  }
  if (info.isDir()) return unreadable(Words::tr("it is a folder"));
  if (!info.isFile()) return unreadable(Words::tr("it is not a plain file"));
  if (info.size() > kMostBytes) return unreadable(Words::tr("it is over 64 MiB; no layout is so large"));

  QFile file(path);
  if (!file.open(QIODevice::ReadOnly | QIODevice::Unbuffered)) return unreadable(file.errorString());
  FileBytes read{Presence::There, {}, {}};
  read.bytes.resize(static_cast<std::size_t>(info.size()) + 1);
  std::size_t length = 0;
  // A file that grows while it is read is read to its end, up to the limit.
  while (true) {
    const qint64 got = file.read(read.bytes.data() + length, static_cast<qint64>(read.bytes.size() - length));
    if (got < 0) return unreadable(file.errorString());
    if (got == 0) break;
    length += static_cast<std::size_t>(got);
    if (length > static_cast<std::size_t>(kMostBytes))
      return unreadable(Words::tr("it is over 64 MiB; no layout is so large"));
    if (length == read.bytes.size()) read.bytes.resize(2 * length);
  }
  read.bytes.resize(length);
  return read;
}

std::string sha256OnDisk(const QString& path) {
  const FileBytes read = readBytes(path);
  return read.presence == Presence::There ? files::sha256(read.bytes) : std::string();
}

QString targetOf(const QString& path) {
  constexpr int kMostLinks = 40;  // as many as Linux follows
  QString target = QDir::cleanPath(QFileInfo(path).absoluteFilePath());
  for (int i = 0; i < kMostLinks && QFileInfo(target).isSymLink(); ++i)
    target = QDir::cleanPath(QFileInfo(target).symLinkTarget());
  return target;
}

}  // namespace stopwalk::documents
