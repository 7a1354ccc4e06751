#include "core/audit/context.h"
#include "core/audit/wording.h"

namespace stopwalk::audit {
namespace {

std::vector<Finding> find(const Context& c, const Setting& s, std::size_t m) {
  std::vector<Finding> findings;
  const std::vector<std::size_t>& stops = c.candidates(m);
  double emergency = 0;
  bool all_held = true;
  for (const std::size_t d : stops) {
    if (c.relation.countsAsEmergencyStop(d)) ++emergency;
    all_held = all_held && c.devices[d].kind->held;
  }
  if (stops.empty() || all_held || c.layout.machines[m].hand_held || !under(emergency, s.limit()))
    return findings;
  Finding f = c.aboutMachine(m);
  f.measured = emergency;
  f.limit = s.limit();
  f.text = c.name(c.layout.machines[m]) + ": of the devices that stop it, " +
           (emergency == 0 ? "none" : "only " + decimal(emergency)) +
           (emergency > 1 ? " count as emergency stops" : " counts as an emergency stop") +
           "; the rule asks for " + (s.limit() <= 1 ? "one" : decimal(s.limit())) + ".";
  findings.push_back(std::move(f));
  return findings;
}

}  // namespace

const Rule& noEmergencyStop() {
  static const Rule rule{
      .id = "no-emergency-stop",
      .severity = Severity::Warn,
      .limits = {{"limit", "", 1}},
      .basis = {BasisKind::Published,
                "EN ISO 13850:2015, 4.3.2, as quoted; exemption: Directive 2006/42/EC, Annex I, 1.2.4.3"},
      .finds = "a machine with stops, but none that counts as an emergency stop",
      .meaning =
          "Whether a device counts is said by its kind, or by `emergency` on the device itself. Hand-held "
          "machines, and "
          "those stopped by triggers only, are exempt. A machine without any stop is a matter of no-stop.",
      .mend = "Have an emergency stop fitted by somebody licensed to do it, or record the one there is.",
      .find = {{Each::Machine, find}}};
  return rule;
}

}  // namespace stopwalk::audit
