#include "app/rounds/open_failure.h"

#include <QCoreApplication>

#include "app/rounds/words.h"

namespace stopwalk::rounds {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(stopwalk::rounds::OpenFailure)
};

QString doubtText(const inspection::NotCounted& pass) {
  if (pass.why == inspection::Doubt::AfterToday)
    return Words::tr("It is still failed: a pass of a day that is still to come does not count.");
  return Words::tr(
      "It is still failed: the records are not as they were written, and this pass does not count.");
}

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
                       const inspection::Schedule& schedule, inspection::Date today) {
  const auto passes = inspection::passesShort(records, schedule, {today});
  const auto pass = passes.find(passed.number);
  if (pass == passes.end() || !pass->second.left_open) return {};
  const inspection::FailedDevice& failed = *pass->second.failed;
  switch (*pass->second.left_open) {
    case inspection::LeftOpen::Correction:
      return Words::tr("It is still failed: a correction undoes no failure.");
    case inspection::LeftOpen::NotPressed:
      return Words::tr("It is still failed: it was not pressed, or what it stops did not stop.");
    case inspection::LeftOpen::InDoubt:
      return doubtText(*pass->second.not_counted);
    case inspection::LeftOpen::NotSurelyAfter:
      return Words::tr("It is still failed: by the times given it is not sure that this was after check %1.")
          .arg(failed.check);
    case inspection::LeftOpen::SamePerson:
      return Words::tr("It is still failed: another person than %1, who found it, is to pass it.")
          .arg(QString::fromStdString(failed.found_by));
  }
  return {};
}

QString whyStillAsked(const inspection::FailedDevice& failed) {
  return Words::
      tr("It still counts as failed: by the times given, or as the records are not as they were written, it "
         "is not sure that it was taken away after check %1.")
          .arg(failed.check);
}

}  // namespace stopwalk::rounds
