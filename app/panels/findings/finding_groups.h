#pragma once

#include <QString>
#include <cstddef>
#include <vector>

#include "core/audit/report.h"
#include "core/layout/layout.h"
#include "core/planning/suppositions.h"

namespace stopwalk::panels {

enum class GroupBy { Room, Machine, Rule, Nothing };
// `PastLimit`: what is measured by its limit, or the limit by it where less is worse; what has no number
// last.
enum class OrderBy { Gravity, PastLimit, Name };

// What findings are shown, and how they are brought together.
struct FindingFilter {
  GroupBy group_by = GroupBy::Room;
  bool fails = true, warns = true, notes = true;
  QString search;
  OrderBy order_by = OrderBy::Gravity;
};

struct FindingGroup {
  QString title;
  std::vector<std::size_t> findings;  // into report.findings, in the order asked for
  std::size_t all = 0;                // with those that are not shown
};

// The groups in the order of their first finding, so that the one of the worst comes first.
std::vector<FindingGroup> groupsOf(const audit::Report& report, const layout::Layout& layout,
                                   const FindingFilter& filter);

// Of each finding whether it is not among those of `before`. The same rule about the same thing is the same
// finding, also where it has grown worse.
std::vector<bool> newSince(const audit::Report& report, const audit::Report& before);

// How many are among those of `before` and said something else there: nearer, farther, or not at all any
// more.
std::size_t otherwiseSince(const audit::Report& report, const audit::Report& before);

// How many findings are no more by what is supposed. What was found of a device that is out of order, or by a
// tape that ends there, is not: it is only not looked at.
std::size_t goneBy(const planning::Suppositions& suppositions, const layout::Layout& layout,
                   const audit::Report& as_it_is, const audit::Report& supposed);

}  // namespace stopwalk::panels
