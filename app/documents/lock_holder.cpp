#include "app/documents/lock_holder.h"

#include <QFileInfo>
#include <QLockFile>
#include <QSysInfo>

#include "app/documents/file_bytes.h"
#include "app/documents/words.h"

namespace stopwalk::documents {
namespace {

// Two computers may have one name. The fourth line of a QLockFile is the machine's id, where it has one.
bool isThisMachine(const std::string& lock) {
  const QList<QByteArray> lines = QByteArray::fromStdString(lock).split('\n');
  return lines.size() < 4 || lines[3].isEmpty() || lines[3] == QSysInfo::machineUniqueId();
}

}  // namespace

QString Holder::text() const {
  const QString who = user.isEmpty() ? Words::tr("somebody") : user;
  const QString where = host.isEmpty() ? Words::tr("an unknown computer") : host;
  return Words::tr("%1 on %2, since %3").arg(who, where, since.toString("yyyy-MM-dd HH:mm"));
}

std::optional<Holder> holderOf(const QString& lock_file) {
  const QFileInfo info(lock_file);
  if (!info.exists()) return std::nullopt;
  Holder holder;
  const FileBytes there = readBytes(lock_file);
  // Cut off within a line, its host or machine would pass for another.
  holder.readable = there.bytes.ends_with('\n') &&
                    QLockFile(lock_file).getLockInfo(&holder.process, &holder.host, &holder.program);
  holder.user = info.owner();
  holder.since = info.lastModified();
  holder.this_host =
      holder.readable && holder.host == QSysInfo::machineHostName() && isThisMachine(there.bytes);
  return holder;
}

}  // namespace stopwalk::documents
