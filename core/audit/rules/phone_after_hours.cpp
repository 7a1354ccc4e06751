#include <algorithm>

#include "core/audit/context.h"
#include "core/audit/measured_line.h"
#include "core/audit/wording.h"
#include "core/layout/which.h"

namespace stopwalk::audit {
namespace {

Finding lost(const Context& c, std::size_t station, const Way& by_day, const Way& after, double limit) {
  Finding f = c.aboutStation(station);
  f.limit = limit;
  f.unit = "m";
  f.text = c.stationName(station) + ": ";
  if (after.found()) {
    f.measured = after.walk_m;
    f.lines.push_back(walkLine(after.path, after.walk_m));
    f.text += "after hours the nearest phone is " + c.phoneName(*after.index) + ", " +
              c.length(after.walk_m, limit) + " to walk, by day " + c.length(by_day.walk_m);
  } else {
    f.which = layout::whichWord("no way");
    f.lines.push_back(placeLine(c.phones[*by_day.index].placed.at));
    f.text += after.status == Status::Unmeasured
                  ? "it stands in a doorway that is shut after hours, and has no way to a phone then"
                  : "after hours no phone can be walked to, for doors are shut";
  }
  f.text += "; the rule allows " + c.limit(limit, f.measured) + ".";
  return f;
}

bool someDoorShutsAfterHours(const Context& c) {
  return std::ranges::any_of(c.layout.doors,
                             [](const layout::Door& d) { return d.locked == layout::Locked::AfterHours; });
}

std::vector<Finding> find(const Context& c, const Setting& s, std::size_t i) {
  std::vector<Finding> findings;
  if (!someDoorShutsAfterHours(c)) return findings;
  const Way &by_day = c.phoneWaysAt(floor::Hours::Open)[i], &after = c.phoneWaysAt(floor::Hours::After)[i];
  const bool had = by_day.found() && !over(by_day.walk_m, s.limit());
  const bool far = after.found() && over(after.walk_m, s.limit());
  const bool gone = by_day.found() && !after.found();
  if (gone || (had && far)) findings.push_back(lost(c, i, by_day, after, s.limit()));
  return findings;
}

}  // namespace

const Rule& phoneAfterHours() {
  static const Rule rule{
      .id = "phone-after-hours",
      .severity = Severity::Fail,
      .limits = {{"limit", "m", 30}},
      .basis = {BasisKind::HouseRule, "no published distance"},
      .finds =
          "a station that loses its phone, or whose phone gets too far, when the after-hours doors are shut",
      .meaning =
          "Whatever hours are audited, both are compared. A phone that is too far by day already is a matter "
          "of phone-too-far. A station in a doorway that is shut then has lost its phone.",
      .mend = "Hang a phone on this side of the doors that are shut after hours, or leave a way to one open.",
      .find = {{Each::Station, find}}};
  return rule;
}

}  // namespace stopwalk::audit
