#include "app/documents/safe_write.h"

#include <QFile>
#include <QFileInfo>
#include <QSaveFile>
#include <cerrno>
#include <system_error>

#ifdef Q_OS_WIN
#include <io.h>
#else
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>
#endif

#include "app/documents/words.h"

namespace stopwalk::documents {
namespace {

QString reason(int error) {
  return QString::fromStdString(std::generic_category().message(error));
}

#ifdef Q_OS_WIN

int syncFile(int handle) {
  return _commit(handle) == 0 ? 0 : errno;
}
int keepOwnership(const QString&, int) {
  return 0;
}

#else

int syncFile(int handle) {
  int result = 0;
  do result = ::fsync(handle);
  while (result != 0 && errno == EINTR);
  return result == 0 ? 0 : errno;
}

// A group that may not be given is not an error: the file is then the writer's, with the same permissions.
int keepOwnership(const QString& target, int handle) {
  struct stat old {};
  if (::stat(QFile::encodeName(target).constData(), &old) != 0) return errno == ENOENT ? 0 : errno;
  struct stat now {};
  if (::fstat(handle, &now) != 0) return errno;
  if (now.st_gid != old.st_gid && ::fchown(handle, static_cast<uid_t>(-1), old.st_gid) != 0 && errno != EPERM)
    return errno;
  if (::fchmod(handle, old.st_mode & 07777) != 0) return errno;
  return 0;
}

#endif

}  // namespace

WriteResult writeWhole(const QString& target, std::string_view bytes,
                       const std::function<bool()>& last_look) {
  QSaveFile file(target);
  file.setDirectWriteFallback(false);
  if (!file.open(QIODevice::WriteOnly | QIODevice::Unbuffered)) return {Written::No, file.errorString()};
  const auto failed = [&](const QString& why) {
    file.cancelWriting();
    return WriteResult{Written::No, why};
  };
  const auto size = static_cast<qint64>(bytes.size());
  if (file.write(bytes.data(), size) != size || !file.flush()) return failed(file.errorString());
  if (const int error = keepOwnership(target, file.handle())) return failed(reason(error));
  // QSaveFile syncs too, but takes no notice when that fails.
  if (const int error = syncFile(file.handle())) return failed(reason(error));
  if (!last_look()) return failed({});
  if (!file.commit()) return {Written::No, file.errorString()};

  const QString why = syncFolder(QFileInfo(target).absolutePath());
  return why.isEmpty() ? WriteResult{Written::Yes, {}} : WriteResult{Written::Unsure, why};
}

namespace {

// A link onto another file is taken for both.
QStringList namesOf(const QString& target) {
  const QString behind = QFileInfo(target).canonicalFilePath();  // empty if there is none yet
  return behind.isEmpty() ? QStringList{target} : QStringList{target, behind};
}

// Over nothing that it is made from, and nothing that somebody wanted kept as it is.
WriteResult writeBeside(const QString& target, std::string_view bytes, const QStringList& read_from) {
  for (const QString& source : read_from)
    for (const QString& name : namesOf(target))
      if (namesOf(QFileInfo(source).absoluteFilePath()).contains(QFileInfo(name).absoluteFilePath()))
        return {Written::No, Words::tr("The layout is made with this file. Save under another name.")};
  if (isWriteProtected(target))
    return {Written::No, Words::tr("It is write-protected, and is left as it is. Save under another name.")};
  return writeWhole(target, bytes);
}

bool isProfile(const QString& path) {
  QFile file(path);
  if (!file.open(QFile::ReadOnly)) return false;
  while (!file.atEnd())
    if (file.readLine().startsWith("stopwalk_profile:")) return true;
  return false;
}

}  // namespace

WriteResult writeExport(const QString& target, std::string_view bytes, const QStringList& read_from) {
  static const QStringList kEndings{"csv", "html", "pdf", "png", "svg"};
  for (const QString& name : namesOf(target))
    if (!kEndings.contains(QFileInfo(name).suffix().toLower()))
      return {Written::No,
              Words::tr("Its name must end in one of .%1, so that no layout, profile or record is "
                        "written over.")
                  .arg(kEndings.join(", ."))};
  return writeBeside(target, bytes, read_from);
}

WriteResult writeProfile(const QString& target, std::string_view bytes, const QStringList& read_from) {
  for (const QString& name : namesOf(target))
    if (!name.endsWith(".yaml", Qt::CaseInsensitive) || name.endsWith(".layout.yaml", Qt::CaseInsensitive))
      return {Written::No,
              Words::tr("Its name must end in .yaml, and not in .layout.yaml as those of layouts "
                        "do.")};
  if (QFileInfo::exists(target) && !isProfile(target))
    return {Written::No,
            Words::tr("There is a file of this name that is no profile. Save under another name.")};
  return writeBeside(target, bytes, read_from);
}

bool isWriteProtected(const QString& target) {
  const QFileInfo file(target);
  constexpr auto kWrites = QFile::WriteOwner | QFile::WriteGroup | QFile::WriteOther;
  return file.exists() && (!file.isWritable() || !(file.permissions() & kWrites));
}

QString syncFolder(const QString& folder) {
#ifdef Q_OS_WIN
  Q_UNUSED(folder);
  return {};
#else
  const int handle = ::open(QFile::encodeName(folder).constData(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
  if (handle < 0) return reason(errno);
  const int error = syncFile(handle);
  ::close(handle);
  return error == 0 || error == EINVAL || error == ENOTSUP ? QString() : reason(error);
#endif
}

}  // namespace stopwalk::documents
