#include "app/documents/lock_holder.h"

#include <QCoreApplication>
#include <QFileInfo>
#include <QLockFile>
#include <QSysInfo>

namespace stopwalk::documents {
namespace {

QString tr(const char* text) {
  return QCoreApplication::translate("documents", text);
}

}  // namespace

QString Holder::text() const {
  const QString who = user.isEmpty() ? tr("somebody") : user;
  const QString where = host.isEmpty() ? tr("an unknown computer") : host;
  return tr("%1 on %2, since %3").arg(who, where, since.toString("yyyy-MM-dd HH:mm"));
}

std::optional<Holder> holderOf(const QString& lock_file) {
  const QFileInfo info(lock_file);
  if (!info.exists()) return std::nullopt;
  Holder holder;
  holder.readable = QLockFile(lock_file).getLockInfo(&holder.process, &holder.host, &holder.program);
  holder.user = info.owner();
  holder.since = info.lastModified();
  holder.this_host = holder.readable && holder.host == QSysInfo::machineHostName();
  return holder;
}

}  // namespace stopwalk::documents
