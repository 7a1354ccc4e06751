#include "core/audit/context.h"
#include "core/audit/wording.h"

namespace stopwalk::audit {
namespace {

// The quickest known run-down by a stop on the machine itself.
std::optional<double> ownRunDown(const Context& c, std::size_t machine,
                                 const std::vector<std::size_t>& stops) {
  std::optional<double> least;
  for (const std::size_t d : stops) {
    if (c.devices[d].machine != machine || c.relation.stopsRooms(d)) continue;
    if (const auto s = c.relation.runDown(d, machine); s && (!least || *s < *least)) least = s;
  }
  return least;
}

std::vector<Finding> find(const Context& c, const Setting&, std::size_t m) {
  std::vector<Finding> findings;
  const std::vector<std::size_t>& stops = c.candidates(m);
  const auto own = ownRunDown(c, m, stops);
  for (const std::size_t d : stops) {
    const auto by_cut_off = c.relation.runDown(d, m);
    if (!c.relation.isCutOff(d) || !own || !by_cut_off || !over(*by_cut_off, *own)) continue;
    Finding f = c.aboutDevice(d);
    f.which = c.layout.machines[m].id;
    f.measured = by_cut_off;
    f.limit = own;
    f.unit = "s";
    f.text = withCapital(c.deviceName(d)) + ": " + c.name(c.layout.machines[m]) + " runs on for " +
             secondsText(*by_cut_off, *own) + " after it, but only " + secondsText(*own, *by_cut_off) +
             " after its own stop; the power cut may take the brake away. Use the machine's own stop first.";
    findings.push_back(std::move(f));
  }
  return findings;
}

}  // namespace

const Rule& cutOffLengthens() {
  static const Rule rule{
      .id = "cut-off-lengthens",
      .severity = Severity::Warn,
      .limits = {},
      .basis =
          {BasisKind::Published,
           "Health and Safety Executive (Great Britain), web page on machine braking (title not recorded)"},
      .finds = "a room cut-off recorded with a longer run-down than the machine's own stop",
      .meaning =
          "A cut-off that also takes the power of a brake lengthens the run-down. Compared are the cut-off's "
          "run-down for a "
          "machine (its own, else the machine's, which is for any device) and the shortest of the stops on "
          "that machine.",
      .mend =
          "Have the cut-off leave the brake its power, or tell people to use the machine's own stop first.",
      .find = {{Each::Machine, find}},
      .several = true};
  return rule;
}

}  // namespace stopwalk::audit
