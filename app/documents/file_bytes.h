#pragma once

#include <QString>
#include <string>

namespace stopwalk::documents {

// No layout is larger; what is, is not read.
inline constexpr qint64 kMostBytes = qint64{64} << 20;

enum class Presence { There, Missing, Unreadable };

// A file's bytes, or why they could not be had. Never a part of them.
struct FileBytes {
  Presence presence = Presence::Missing;
  std::string bytes;
  QString why;  // of what is not there
};

// Reads a plain file; a folder, a pipe or a device is not waited for, it is unreadable.
FileBytes readBytes(const QString& path);

// The SHA-256 of a file's bytes as they are now; empty if there are none to be had.
std::string sha256OnDisk(const QString& path);

// The file that `path` stands for: absolute, with links followed even where the last one leads nowhere yet.
QString targetOf(const QString& path);

}  // namespace stopwalk::documents
