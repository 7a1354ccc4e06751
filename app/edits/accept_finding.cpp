#include "app/edits/accept_finding.h"

#include "app/edits/step_names.h"
#include "app/edits/words.h"
#include "core/audit/accepted.h"

namespace stopwalk::edits {
namespace {

// Clearly the one, or unclear and of no use to another.
layout::Layout without(layout::Layout layout, const audit::Finding& finding,
                       const audit::SharedList<audit::Finding>& all) {
  std::erase_if(layout.accepted_findings, [&](const layout::AcceptedFinding& a) {
    return audit::mayMean(a, finding) &&
           (a.which == finding.which || !audit::mayMeanAnother(a, finding, all));
  });
  return layout;
}

// Of a finding, or of what accepts one.
QString named(const QString& step, const auto& finding) {
  return step.arg(QString::fromStdString(finding.rule), QString::fromStdString(finding.subject));
}

}  // namespace

Edit acceptFinding(const layout::Layout& layout, const audit::Finding& finding,
                   const audit::SharedList<audit::Finding>& all, const audit::Acceptance& acceptance) {
  layout::Layout after = without(layout, finding, all);
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

Edit takeAcceptanceBack(const layout::Layout& layout, const audit::Finding& finding,
                        const audit::SharedList<audit::Finding>& all) {
  static const audit::SharedList<audit::Finding> none;
  return step(layout, named(Words::tr("No longer accept %1 about %2"), finding),
              without(layout, finding, finding.accepted ? all : none));
}

Edit removeAcceptance(const layout::Layout& layout, const layout::AcceptedFinding& idle) {
  layout::Layout after = layout;
  std::erase(after.accepted_findings, idle);
  return step(layout, named(Words::tr("Remove what accepted %1 about %2"), idle), std::move(after));
}

}  // namespace stopwalk::edits
