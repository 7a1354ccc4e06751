#include "core/audit/context.h"
#include "core/audit/wording.h"

namespace stopwalk::audit {
namespace {

std::vector<Finding> find(const Context& c, const Setting&, std::size_t d) {
  std::vector<Finding> findings;
  if (c.devices[d].device->pin != layout::Pin::Missing) return findings;
  Finding f = c.aboutDevice(d);
  f.text = withCapital(c.deviceName(d)) +
           ": its pin is recorded missing, so the machine can be started by accident; the rule asks for "
           "the pin to be fitted.";
  findings.push_back(std::move(f));
  return findings;
}

}  // namespace

const Rule& startGuardMissing() {
  static const Rule rule{
      .id = "start-guard-missing",
      .severity = Severity::Fail,
      .limits = {},
      .basis = {BasisKind::CommonPractice, ""},
      .finds = "a guarded start whose pin is recorded missing",
      .meaning =
          "The pin prevents a start; it stops nothing. A start whose pin is not recorded is not reported.",
      .mend = "Fit the pin again, and lock the machine off until it is there.",
      .find = {{Each::Device, find}}};
  return rule;
}

}  // namespace stopwalk::audit
