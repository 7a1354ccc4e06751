#include "app/rounds/open_failure.h"

#include <QCoreApplication>

#include "app/rounds/reasons.h"
#include "app/rounds/words.h"

namespace stopwalk::rounds {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(stopwalk::rounds::OpenFailure)
};

}  // namespace

QString openFailureText(const inspection::FailedDevice& failed, const inspection::Schedule& schedule) {
  const QString text = schedule.retest_by_another
                           ? Words::tr(
                                 "Failed on %1 (check %2): it stays failed until it passes a check of its "
                                 "own, made by another person than %3.")
                           : Words::tr(
                                 "Failed on %1 (check %2): it stays failed until it passes a check of its "
                                 "own.");
  const QString told = text.arg(dayText(failed.on)).arg(failed.check);
  const QString all = schedule.retest_by_another ? told.arg(QString::fromStdString(failed.found_by)) : told;
  return failed.since == failed.on ? all : Words::tr("Failed since %1. %2").arg(dayText(failed.since), all);
}

QString whyStillFailed(const inspection::Check& passed, const inspection::Records& records,
                       const inspection::Schedule& schedule, const inspection::AsOf& as_of) {
  const auto passes = inspection::passesShort(records, schedule, as_of);
  const auto pass = passes.find(passed.number);
  if (pass == passes.end() || !pass->second.left_open) return {};
  QStringList machines;
  for (const std::string& id : pass->second.not_named) machines << QString::fromStdString(id);
  return Words::tr("It is still failed: %1.").arg(reasonText(pass->second, machines));
}

QString whyStillAsked(const inspection::FailedDevice& failed) {
  return Words::
      tr("It still counts as failed: by the times given, or as the records are not as they were written, it "
         "is not sure that it was taken away after check %1.")
          .arg(failed.check);
}

}  // namespace stopwalk::rounds
