#pragma once

#include <QString>
#include <string>
#include <vector>

#include "core/audit/report.h"
#include "core/floor/plan.h"

namespace stopwalk::panels {

// Something that is wrong with a thing, as a sentence.
struct Problem {
  std::string id;  // of the thing
  audit::Severity severity = audit::Severity::Fail;
  QString text;
  bool operator==(const Problem&) const = default;
};

// What cannot be built of a drawing.
std::vector<Problem> problemsOf(const std::vector<floor::Fault>& faults);
// What an audit found, with who accepts it; it holds the drawing's faults as well.
std::vector<Problem> problemsOf(const audit::Report& report);

// `Fails`, `Warns`, `Note`.
QString severityWord(audit::Severity severity);
// With its severity in front: "Fails: ...".
QString sentenceOf(const Problem& problem);

}  // namespace stopwalk::panels
