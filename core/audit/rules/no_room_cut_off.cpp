#include "core/audit/context.h"
#include "core/audit/counted.h"
#include "core/audit/wording.h"

namespace stopwalk::audit {
namespace {

std::vector<Finding> find(const Context& c, const Setting& s, std::size_t r) {
  std::vector<Finding> findings;
  const auto machines = c.relation.machinesIn(r).size();
  const std::size_t cut_offs = c.cutOffs(r).size();
  if (machines == 0 || !under(static_cast<double>(cut_offs), s.limit())) return findings;
  Finding f = c.aboutRoom(r);
  f.measured = static_cast<double>(cut_offs);
  f.limit = s.limit();
  f.text = c.roomName(r) + ": " + (cut_offs == 0 ? "no device" : "only " + counted(cut_offs, "device")) +
           (cut_offs > 1 ? " stop" : " stops") + " every machine in the room (" + std::to_string(machines) +
           "); the rule asks for " + (s.limit() <= 1 ? "one" : decimal(s.limit())) + ".";
  findings.push_back(std::move(f));
  return findings;
}

}  // namespace

const Rule& noRoomCutOff() {
  static const Rule rule{.id = "no-room-cut-off",
                         .severity = Severity::Warn,
                         .limits = {{"limit", "", 1}},
                         .basis = {BasisKind::Published,
                                   "34 Pa. Code 29.132(b); BS 4163:2007, as quoted in a public discussion"},
                         .finds = "a room with machines and no device that stops them all",
                         .meaning =
                             "A machine is in the room that holds its origin. The device may hang anywhere, "
                             "and may name the room, everything, or "
                             "each machine; a trigger does not count.",
                         .mend =
                             "Have a cut-off fitted that takes the power of every machine in the room, or "
                             "record which machines the one there is stops.",
                         .find = {{Each::Room, find}}};
  return rule;
}

}  // namespace stopwalk::audit
