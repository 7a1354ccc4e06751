#include <algorithm>

#include "core/audit/context.h"
#include "core/audit/wording.h"

namespace stopwalk::audit {
namespace {

// Devices of one machine that share a run-down are one finding.
void findFor(std::vector<Finding>& findings, const Context& c, std::size_t machine, double limit) {
  struct Slow {
    double seconds = 0;
    std::vector<std::string> names, ids;
  };
  std::vector<Slow> slow;
  for (const std::size_t d : c.candidates(machine)) {
    const auto run_down = c.relation.runDown(d, machine);
    if (!run_down || !over(*run_down, limit)) continue;
    auto same = std::ranges::find(slow, *run_down, &Slow::seconds);
    if (same == slow.end()) same = slow.insert(slow.end(), {*run_down, {}, {}});
    same->names.push_back(c.deviceName(d, machine));
    same->ids.push_back(c.devices[d].id);
  }
  for (const auto& [seconds, names, ids] : slow) {
    Finding f = c.aboutMachine(machine);
    f.which = joined(ids);
    f.measured = seconds;
    f.limit = limit;
    f.unit = "s";
    f.text = c.name(c.layout.machines[machine]) + ": runs on for " + secondsText(seconds, limit) +
             " after a stop by " + listed(names) + "; the rule allows " + limitSecondsText(limit) + ".";
    findings.push_back(std::move(f));
  }
}

std::vector<Finding> find(const Context& c, const Setting& s, std::size_t m) {
  std::vector<Finding> findings;
  findFor(findings, c, m, s.limit());
  return findings;
}

}  // namespace

const Rule& slowRunDown() {
  static const Rule rule{
      .id = "slow-run-down",
      .severity = Severity::Warn,
      .limits = {{"limit", "s", 10}},
      .basis = {BasisKind::Published,
                "Health and Safety Executive (Great Britain), Woodworking Information "
                "Sheet No 38, revision 1, on PUWER 1998 reg. 15"},
      .finds = "a machine and device whose run-down is over the limit",
      .meaning =
          "For each machine the devices that count as its stops. A run-down recorded for "
          "the device, or for the pair, wins over "
          "that of the machine; an unknown one is a matter of incomplete-record.",
      .mend = "Have a brake fitted or seen to, or make sure that nobody comes near before it rests.",
      .find = {{Each::Machine, find}},
      .several = true};
  return rule;
}

}  // namespace stopwalk::audit
