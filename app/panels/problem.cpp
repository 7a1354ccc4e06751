#include "app/panels/problem.h"

#include <QCoreApplication>

#include "app/panels/findings/let_stand.h"

namespace stopwalk::panels {

std::vector<Problem> problemsOf(const std::vector<floor::Fault>& faults) {
  std::vector<Problem> problems;
  for (const floor::Fault& f : faults)
    problems.push_back({f.subject, audit::Severity::Fail, QString::fromStdString(f.text)});
  return problems;
}

std::vector<Problem> problemsOf(const audit::Report& report) {
  std::vector<Problem> problems;
  for (const audit::Finding& f : report.findings) {
    QString text = QString::fromStdString(f.text);
    const QString let_stand = letStandText(f, QDate::currentDate(), report.unit);
    if (!let_stand.isEmpty()) text += ' ' + let_stand;
    problems.push_back({f.subject, f.severity, text});
  }
  return problems;
}

QString severityWord(audit::Severity severity) {
  switch (severity) {
    case audit::Severity::Fail:
      return QCoreApplication::translate("Problems", "Fails");
    case audit::Severity::Warn:
      return QCoreApplication::translate("Problems", "Warns");
    case audit::Severity::Note:
      return QCoreApplication::translate("Problems", "Note");
  }
  return {};
}

QString sentenceOf(const Problem& problem) {
  return QCoreApplication::translate("Problems", "%1: %2").arg(severityWord(problem.severity), problem.text);
}

}  // namespace stopwalk::panels
