#include "app/rounds/open_failure.h"

#include <QCoreApplication>

#include "app/rounds/reasons.h"
#include "app/rounds/words.h"

namespace stopwalk::rounds {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(stopwalk::rounds::OpenFailure)
};

// With the day and the check put in, and who found it if that is asked for.
QString untilPassed(const inspection::FailedDevice& failed, const inspection::Schedule& schedule) {
  const auto of = [&](const QString& text) { return text.arg(dayText(failed.on)).arg(failed.check); };
  if (!schedule.retest_by_another)
    return of(Words::tr("Failed on %1 (check %2): it stays failed until it passes a check of its own."));
  if (!inspection::isFinderKnown(failed))
    return of(
        Words::tr("Failed on %1 (check %2), found by somebody whose name cannot be read: it stays failed "
                  "until it passes two checks of its own, made by two different people."));
  return of(Words::tr("Failed on %1 (check %2): it stays failed until it passes a check of its own, made by "
                      "another person than %3."))
      .arg(QString::fromStdString(failed.found_by));
}

}  // namespace

QString openFailureText(const inspection::FailedDevice& failed, const inspection::Schedule& schedule) {
  const QString all = untilPassed(failed, schedule);
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
