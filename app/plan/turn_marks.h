#pragma once

#include <QPainter>
#include <utility>
#include <vector>

#include "app/plan/changes.h"
#include "app/plan/theme.h"

// On the plan, who is better off and who is worse.
namespace stopwalk::plan {

// One for the stations about there: apart from the others, so that it is read.
struct TurnMark {
  QPointF at;  // the middle of its first triangle
  int worse = 0, better = 0;
};
// Beside the places given, the gravest first; where marks would lie over one another, one stands for all.
std::vector<TurnMark> turnMarks(const std::vector<std::pair<QPointF, Turn>>& changes);

// A triangle downwards for worse, upwards for better, with how many where it stands for several; hollow for
// what was so a moment ago.
void paintTurns(QPainter& painter, const Theme& theme, const std::vector<TurnMark>& marks, bool is_current);

}  // namespace stopwalk::plan
