#pragma once

#include <QString>
#include <cstddef>
#include <vector>

#include "core/audit/report.h"
#include "core/layout/layout.h"
#include "core/planning/suppositions.h"

namespace stopwalk::panels {

enum class GroupBy { Room, Machine, Rule };

// What findings are shown, and how they are brought together.
struct FindingFilter {
  GroupBy group_by = GroupBy::Room;
  bool fails = true, warns = true, notes = true;
  QString search;
};

struct FindingGroup {
  QString title;
  std::vector<std::size_t> findings;  // into report.findings, the worst first
};

// The groups in the order of their worst finding, which is that of the report.
std::vector<FindingGroup> groupsOf(const audit::Report& report, const layout::Layout& layout,
                                   const FindingFilter& filter);

// Of each finding whether it is not among those of `before`: the same rule about the same thing, and what it
// says where nothing is measured. Of several such the first are known, as many as there were.
std::vector<bool> newSince(const audit::Report& report, const audit::Report& before);

// How many findings are no more by what is supposed. What was found of a device that is out of order, or by a
// tape that ends there, is not: it is only not looked at.
std::size_t goneBy(const planning::Suppositions& suppositions, const layout::Layout& layout,
                   const audit::Report& as_it_is, const audit::Report& supposed);

}  // namespace stopwalk::panels
