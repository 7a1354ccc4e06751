#include "core/audit/context.h"
#include "core/audit/measured_line.h"
#include "core/audit/wording.h"
#include "core/layout/which.h"

namespace stopwalk::audit {
namespace {

std::vector<Finding> find(const Context& c, const Setting& s, std::size_t i) {
  std::vector<Finding> findings;
  const Way& way = c.phone_ways[i];
  if (way.status != Status::None && !(way.found() && over(way.walk_m, s.limit()))) return findings;
  Finding f = c.aboutStation(i);
  f.limit = s.limit();
  f.unit = "m";
  f.text = c.stationName(i) + ": ";
  if (way.found()) {
    f.measured = way.walk_m;
    f.lines.push_back(walkLine(way.path, way.walk_m));
    f.text +=
        "nearest phone is " + c.phoneName(*way.index) + ", " + c.length(way.walk_m, s.limit()) + " to walk";
  } else {
    f.which = layout::whichWord("none");
    f.text += "the layout has no phone";
  }
  f.text += "; the rule allows " + c.limit(s.limit(), f.measured) + ".";
  findings.push_back(std::move(f));
  return findings;
}

}  // namespace

const Rule& phoneTooFar() {
  static const Rule rule{.id = "phone-too-far",
                         .severity = Severity::Fail,
                         .limits = {{"limit", "m", 30}},
                         .basis = {BasisKind::HouseRule,
                                   "no published distance; a phone in the room, or a posted way to the "
                                   "nearest: Cornell EHS Laboratory Safety Manual 4.8"},
                         .finds = "a station farther to walk than the limit from every phone",
                         .meaning =
                             "The walk to the nearest phone that can be walked to, at the hours audited. A "
                             "layout without any phone is "
                             "reported for every station.",
                         .mend = "Add a phone nearer to this station, or clear a shorter way to one.",
                         .find = {{Each::Station, find}}};
  return rule;
}

}  // namespace stopwalk::audit
