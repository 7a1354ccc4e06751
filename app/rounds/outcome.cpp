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
  if (appended.corrected_by != 0)
    return Words::tr("Not recorded: that check was corrected meanwhile, by check %1: correct that one.")
        .arg(appended.corrected_by);
  if (appended.failed_by != 0)
    return Words::tr(
               "Not recorded: the device failed meanwhile, by check %1. If you tried it after that, "
               "record this once more; else try it again, or choose what you find.")
        .arg(appended.failed_by);
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

QString whyNotCorrected(const inspection::CorrectionFault& fault, std::size_t corrects) {
  switch (fault.why) {
    case inspection::CannotCorrect::Unknown:
      return Words::tr("Check %1 is not in the records any more: nothing corrects it.").arg(corrects);
    case inspection::CannotCorrect::OtherDevice:
      return Words::tr("Check %1 is of another device, %2: it is corrected there.")
          .arg(corrects)
          .arg(QString::fromStdString(fault.device));
    case inspection::CannotCorrect::OtherRound:
      return Words::tr("Check %1 is of round %2: it is corrected there.").arg(corrects).arg(fault.round);
    case inspection::CannotCorrect::Corrected:
      return Words::tr("Check %1 was corrected already, by check %2: correct that one.")
          .arg(corrects)
          .arg(fault.by);
  }
  return {};
}

QString setAside(const records::Appended& appended) {
  if (appended.set_aside.empty()) return {};
  return Words::tr("A record that was never finished is kept in %1.")
      .arg(QFileInfo(QString::fromStdString(appended.set_aside)).fileName());
}

}  // namespace stopwalk::rounds
