#pragma once

#include <QDateTime>
#include <QString>
#include <optional>

namespace stopwalk::documents {

// Who holds a lock, as the lock file tells.
struct Holder {
  QString host;
  QString user;  // the owner of the lock file; empty: unknown
  qint64 process = 0;
  QString program;
  QDateTime since;
  bool this_host = false;
  bool readable = true;  // false: the lock file is damaged, and only its time and owner are known

  QString text() const;  // a sentence's part: `anna on bench-pc, since 2026-03-02 09:15`
  bool operator==(const Holder&) const = default;
};

// Empty: there is no lock file.
std::optional<Holder> holderOf(const QString& lock_file);

}  // namespace stopwalk::documents
