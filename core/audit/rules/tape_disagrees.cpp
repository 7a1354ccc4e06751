#include <algorithm>
#include <optional>

#include "core/audit/context.h"
#include "core/audit/measured_line.h"
#include "core/audit/places.h"
#include "core/audit/wording.h"
#include "core/layout/which.h"

namespace stopwalk::audit {
namespace {

std::vector<Finding> find(const Context& c, const Setting& s, std::size_t tape) {
  const layout::TapeCheck& t = c.layout.tape_checks[tape];
  const std::optional<NamedPlace> from = c.placeOf(t.from), to = c.placeOf(t.to);
  if (!from || !to) return {};  // the reader refuses such a file
  const floor::Walk walk = c.walkByDay(from->place, to->place);
  const double taped_m = t.taped / 1000, computed_m = walk.length_mm / 1000;
  const double allowed_m = std::max(s.limits[0] / 100 * computed_m, s.limits[1]);
  if (walk.found() && !over(std::abs(taped_m - computed_m), allowed_m)) return {};
  Finding f = c.about(t.id, from->room);
  f.limit = walk.found() ? allowed_m : s.limits[1];
  f.unit = "m";
  f.text = "Tape check " + t.id + ", " + t.from + " to " + t.to + ": taped " + c.length(taped_m) + ", but ";
  if (walk.found()) {
    f.measured = std::abs(taped_m - computed_m);
    f.lines.push_back(walkLine(walk.path, computed_m));
    f.text += "the plan gives " + c.length(computed_m) + ", a difference of " +
              c.length(*f.measured, allowed_m) + "; the rule allows " + c.length(allowed_m, *f.measured) +
              ". One of them is wrong: the plan, or the tape.";
  } else {
    f.which = layout::whichWord("no way");
    f.text += "in the plan there is no way between them; correct the plan.";
  }
  return {std::move(f)};
}

}  // namespace

const Rule& tapeDisagrees() {
  static const Rule rule{
      .id = "tape-disagrees",
      .severity = Severity::Warn,
      .limits = {{"share", "%", 5}, {"distance", "m", 0.1}},
      .basis = {BasisKind::CommonPractice, ""},
      .finds = "a taped distance and the computed one that differ by more than both limits",
      .meaning =
          "A check of the drawing, always with the doors as in opening hours. The share is of the computed "
          "distance. A device stands "
          "for the place where its user stands.",
      .mend = "Tape the distance again; if it is right, correct what is drawn wrong on the way.",
      .find = {{Each::TapeCheck, find}}};
  return rule;
}

}  // namespace stopwalk::audit
