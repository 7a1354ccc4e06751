#include "app/panels/findings/let_stand.h"

#include <QCoreApplication>

#include "app/plan/day.h"
#include "core/audit/accepted.h"
#include "core/audit/wording.h"

namespace stopwalk::panels {
namespace {

using audit::AcceptedState;

struct Words {
  Q_DECLARE_TR_FUNCTIONS(LetStand)
};

// "accepted at 5.2 m, now 9.8 m"
QString worseWords(const audit::Finding& finding, layout::LengthUnit unit) {
  const double was = finding.accepted->measured.value_or(0), is = finding.measured.value_or(was);
  const auto figure = [&](double value, double other) {
    return QString::fromStdString(audit::figureText(value, other, finding.unit, unit));
  };
  return finding.measured ? Words::tr("accepted at %1, now %2").arg(figure(was, is), figure(is, was))
                          : Words::tr("accepted at %1, now without a figure").arg(figure(was, is));
}

}  // namespace

QString whyNoLonger(const audit::Finding& finding, const QDate& today, layout::LengthUnit unit) {
  switch (audit::acceptedState(finding, plan::dateOf(today))) {
    case AcceptedState::Over:
      return Words::tr("the last day, %1, has passed").arg(QString::fromStdString(finding.accepted->until));
    case AcceptedState::NoDay:
      return Words::tr("its last day, %1, cannot be read: a day such as 2026-12-31 is expected")
          .arg(QString::fromStdString(finding.accepted->until));
    case AcceptedState::Worse:
      return worseWords(finding, unit);
    case AcceptedState::No:
    case AcceptedState::Yes:
    case AcceptedState::Unclear:
      break;
  }
  return {};
}

QString textOf(const audit::Finding& finding, const QDate& today, layout::LengthUnit unit) {
  const QString text = QString::fromStdString(finding.text);
  if (finding.unclear)
    return Words::tr("%1 Not accepted: what is accepted does not say which of several it means.").arg(text);
  if (!finding.accepted) return text;
  if (const QString why = whyNoLonger(finding, today, unit); !why.isEmpty())
    return Words::tr("%1 No longer accepted: %2.").arg(text, why);
  return Words::tr("%1 Accepted by %2 until %3.")
      .arg(text, QString::fromStdString(finding.accepted->by),
           QString::fromStdString(finding.accepted->until));
}

QString letStandText(const audit::Finding& finding, const QDate& today, layout::LengthUnit unit) {
  if (!finding.accepted) return {};
  const QString by = QString::fromStdString(finding.accepted->by);
  const QString until = QString::fromStdString(finding.accepted->until);
  const QString reason = QString::fromStdString(finding.accepted->reason);
  if (const QString why = whyNoLonger(finding, today, unit); !why.isEmpty())
    return Words::tr("No longer accepted, %1; it was by %2 until %3: %4").arg(why, by, until, reason);
  return Words::tr("Accepted by %1 until %2: %3").arg(by, until, reason);
}

QString idleText(const layout::AcceptedFinding& idle) {
  const QString about = QString::fromStdString(idle.subject);
  return Words::tr("%1 about %2, accepted by %3 until %4: %5")
      .arg(QString::fromStdString(idle.rule),
           idle.which.empty() ? about
                              : QStringLiteral("%1, %2").arg(about, QString::fromStdString(idle.which)),
           QString::fromStdString(idle.by), QString::fromStdString(idle.until),
           QString::fromStdString(idle.reason));
}

}  // namespace stopwalk::panels
