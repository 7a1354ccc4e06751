#include "core/audit/context.h"
#include "core/audit/wording.h"

namespace stopwalk::audit {
namespace {

std::vector<Finding> find(const Context& c, const Setting&, std::size_t) {
  std::vector<Finding> findings;
  for (const floor::Fault& fault : c.plan.faults) {
    Finding f;
    f.subject = fault.subject;
    f.room = fault.room;
    f.which = fault.which;
    f.text = fault.text;
    findings.push_back(std::move(f));
  }
  return findings;
}

}  // namespace

const Rule& drawingFault() {
  static const Rule rule{.id = "drawing-fault",
                         .severity = Severity::Fail,
                         .limits = {},
                         .basis = {BasisKind::CommonPractice, ""},
                         .finds = "what can be read but not built, such as a door that is not on its wall",
                         .meaning =
                             "What is wrong is left out of the floor (a door: shut), and everything else is "
                             "measured; mend the drawing first, the "
                             "other findings may change.",
                         .mend = "Correct the drawing as the sentence says.",
                         .find = {{Each::Layout, find}},
                         .several = true};
  return rule;
}

}  // namespace stopwalk::audit
