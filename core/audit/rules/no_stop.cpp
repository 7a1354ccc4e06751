#include "core/audit/context.h"
#include "core/audit/counted.h"
#include "core/audit/wording.h"

namespace stopwalk::audit {
namespace {

std::vector<Finding> find(const Context& c, const Setting& s, std::size_t m) {
  std::vector<Finding> findings;
  const std::size_t stops = c.candidates(m).size();
  if (!under(static_cast<double>(stops), s.limit())) return findings;
  Finding f = c.aboutMachine(m);
  f.measured = static_cast<double>(stops);
  f.limit = s.limit();
  const bool held = c.layout.machines[m].hand_held;
  f.text = c.name(c.layout.machines[m]) + ": " +
           (stops == 0
                ? "nothing stops this machine"
                : "only " + counted(stops, "device") + (stops == 1 ? " stops" : " stop") + " this machine") +
           (held ? " (a hand-held machine is stopped by its trigger only)" : "") + "; the rule asks for " +
           (s.limit() <= 1 ? "at least one device that does" : "at least " + decimal(s.limit())) + ".";
  findings.push_back(std::move(f));
  return findings;
}

}  // namespace

const Rule& noStop() {
  static const Rule rule{
      .id = "no-stop",
      .severity = Severity::Fail,
      .limits = {{"limit", "", 1}},
      .basis = {BasisKind::Published,
                "WAC 296-806-20008 (Washington State); Directive 2006/42/EC, Annex I, 1.2.4"},
      .finds = "a machine that no device counting as a stop stops",
      .meaning =
          "Counted are the devices of a kind that counts as a stop and that stop this machine: those on it, "
          "those that "
          "name it, its room or everything. A guarded start never counts. On a hand-held machine only "
          "triggers do.",
      .mend = "Do not use the machine until it has a stop; have one fitted, or record what stops it.",
      .find = {{Each::Machine, find}}};
  return rule;
}

}  // namespace stopwalk::audit
