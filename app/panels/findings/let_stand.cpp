#include "app/panels/findings/let_stand.h"

#include <QCoreApplication>

namespace stopwalk::panels {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(LetStand)
};

}  // namespace

bool isOver(const audit::Acceptance& acceptance, const QDate& today) {
  const QDate last = QDate::fromString(QString::fromStdString(acceptance.until), Qt::ISODate);
  return !last.isValid() || last < today;
}

QString textOf(const audit::Finding& finding, const QDate& today) {
  const QString text = QString::fromStdString(finding.text);
  if (finding.unclear)
    return Words::tr("%1 Not accepted: what is accepted does not say which of several it means.").arg(text);
  if (!finding.accepted) return text;
  const QString by = QString::fromStdString(finding.accepted->by);
  const QString until = QString::fromStdString(finding.accepted->until);
  return isOver(*finding.accepted, today)
             ? Words::tr("%1 No longer accepted: the last day, %2, has passed.").arg(text, until)
             : Words::tr("%1 Accepted by %2 until %3.").arg(text, by, until);
}

}  // namespace stopwalk::panels
