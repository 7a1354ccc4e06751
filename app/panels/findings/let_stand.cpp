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

QString unclearWords() {
  return Words::tr("Not accepted: what is accepted does not say which of several it means.");
}

// Empty where its last day is still to come.
QString overWords(AcceptedState state, const std::string& until) {
  if (state == AcceptedState::Over)
    return Words::tr("the last day, %1, has passed").arg(QString::fromStdString(until));
  if (state == AcceptedState::NoDay)
    return Words::tr("its last day, %1, cannot be read: a day such as 2026-12-31 is expected")
        .arg(QString::fromStdString(until));
  return {};
}

}  // namespace

QString whyNoLonger(const audit::Finding& finding, const QDate& today, layout::LengthUnit unit) {
  const AcceptedState state = audit::acceptedState(finding, plan::dateOf(today));
  if (state == AcceptedState::Worse) return worseWords(finding, unit);
  return finding.accepted ? overWords(state, finding.accepted->until) : QString();
}

QString textOf(const audit::Finding& finding, const QDate& today, layout::LengthUnit unit) {
  const QString text = QString::fromStdString(finding.text);
  if (finding.unclear) return QStringLiteral("%1 %2").arg(text, unclearWords());
  if (!finding.accepted) return text;
  if (const QString why = whyNoLonger(finding, today, unit); !why.isEmpty())
    return Words::tr("%1 No longer accepted: %2.").arg(text, why);
  return Words::tr("%1 Accepted by %2 until %3.")
      .arg(text, QString::fromStdString(finding.accepted->by),
           QString::fromStdString(finding.accepted->until));
}

QString letStandText(const audit::Finding& finding, const QDate& today, layout::LengthUnit unit) {
  if (finding.unclear) return unclearWords();
  if (!finding.accepted) return {};
  const QString by = QString::fromStdString(finding.accepted->by);
  const QString until = QString::fromStdString(finding.accepted->until);
  const QString reason = QString::fromStdString(finding.accepted->reason);
  if (const QString why = whyNoLonger(finding, today, unit); !why.isEmpty())
    return Words::tr("No longer accepted, %1; it was by %2 until %3: %4").arg(why, by, until, reason);
  return Words::tr("Accepted by %1 until %2: %3").arg(by, until, reason);
}

QString idleText(const layout::AcceptedFinding& idle, const QDate& today) {
  const QString rule = QString::fromStdString(idle.rule), which = QString::fromStdString(idle.which);
  const QString subject = QString::fromStdString(idle.subject);
  const QString about = which.isEmpty() ? subject : QStringLiteral("%1, %2").arg(subject, which);
  const QString by = QString::fromStdString(idle.by), until = QString::fromStdString(idle.until);
  const QString reason = QString::fromStdString(idle.reason);
  const QString over = overWords(audit::idleState(idle, plan::dateOf(today)), idle.until);
  if (!over.isEmpty())
    return Words::tr("%1 about %2, no longer accepted, %3; it was by %4 until %5: %6")
        .arg(rule, about, over, by, until, reason);
  return Words::tr("%1 about %2, accepted by %3 until %4: %5").arg(rule, about, by, until, reason);
}

QString comeBackText(const layout::AcceptedFinding& idle, const QDate& today, layout::LengthUnit unit) {
  const AcceptedState state = audit::idleState(idle, plan::dateOf(today));
  if (const QString over = overWords(state, idle.until); !over.isEmpty())
    return Words::tr(
               "This is not found now. Should it come back, it is not accepted: %1. What accepted it is "
               "of no use any more: take it back.")
        .arg(over);
  if (state == AcceptedState::Unclear)
    return Words::tr(
        "This is not found now. Should it come back, it is not accepted: it is not said which of "
        "several is meant. Take it back where it is mended.");
  if (!idle.measured)
    return Words::tr(
        "This is not found now, yet it is kept with the layout that it is accepted: should it "
        "come back, it is accepted again. Take it back where it is mended.");
  const QString figure = QString::fromStdString(audit::acceptedFigureText(idle, unit));
  return Words::tr(
             "This is not found now, yet it is kept with the layout that it is accepted: should it come "
             "back, it is accepted again as long as it is no worse than %1. Take it back where it is "
             "mended.")
      .arg(figure.isEmpty() ? Words::tr("it was then") : figure);
}

}  // namespace stopwalk::panels
