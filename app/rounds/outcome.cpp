#include "app/rounds/outcome.h"

#include <QCoreApplication>
#include <QFileInfo>

namespace stopwalk::rounds {
namespace {

class Words {
  Q_DECLARE_TR_FUNCTIONS(rounds)
};

}  // namespace

QString whyNotRecorded(const records::Appended& appended, const QString& records_file) {
  const QString why = QString::fromStdString(appended.why), file = QFileInfo(records_file).fileName();
  switch (appended.written) {
    case records::Written::Yes:
      return {};
    case records::Written::Busy:
      return Words::tr("Not recorded: %1 is being written by %2. What was entered is kept here; try again.")
          .arg(file, why);
    case records::Written::No:
      return Words::tr("Not recorded: %1 cannot be written (%2). What was entered is kept here.")
          .arg(file, why);
    case records::Written::Unsure:
      return Words::tr(
                 "It is not sure that this was recorded in %1 (%2). Look at the device's checks before you "
                 "record it again; what was entered is kept here.")
          .arg(file, why);
  }
  return {};
}

QString setAside(const records::Appended& appended) {
  if (appended.set_aside.empty()) return {};
  return Words::tr("A record that was never finished is kept in %1.")
      .arg(QFileInfo(QString::fromStdString(appended.set_aside)).fileName());
}

}  // namespace stopwalk::rounds
