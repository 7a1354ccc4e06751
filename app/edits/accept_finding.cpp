#include "app/edits/accept_finding.h"

#include "app/edits/step_names.h"
#include "app/edits/words.h"
#include "core/audit/accepted.h"

namespace stopwalk::edits {
namespace {

layout::Layout without(layout::Layout layout, const audit::Finding& finding) {
  std::erase_if(layout.accepted_findings,
                [&](const layout::AcceptedFinding& a) { return audit::mayMean(a, finding); });
  return layout;
}

QString named(const QString& step, const audit::Finding& finding) {
  return step.arg(QString::fromStdString(finding.rule), QString::fromStdString(finding.subject));
}

}  // namespace

Edit acceptFinding(const layout::Layout& layout, const audit::Finding& finding,
                   const audit::Acceptance& acceptance) {
  layout::Layout after = without(layout, finding);
  after.accepted_findings.push_back({finding.rule,
                                     finding.subject,
                                     finding.which,
                                     acceptance.reason,
                                     acceptance.by,
                                     acceptance.until,
                                     {},
                                     audit::acceptedFigure(finding)});
  return step(layout, named(Words::tr("Accept %1 about %2"), finding), std::move(after));
}

Edit takeAcceptanceBack(const layout::Layout& layout, const audit::Finding& finding) {
  return step(layout, named(Words::tr("No longer accept %1 about %2"), finding), without(layout, finding));
}

}  // namespace stopwalk::edits
