#pragma once

#include <QPainter>

#include "app/plan/theme.h"

namespace stopwalk::plan {

// What the last check of a device came to, by its records.
enum class CheckSign { None, Passed, Short, Failed, NotReached, NotTested, Never };
// How much of the time until its next check has gone.
enum class CheckAge { None, Fresh, HalfGone, Due, Overdue };
struct CheckMark {
  CheckSign sign = CheckSign::None;
  CheckAge age = CheckAge::None;
  bool operator==(const CheckMark&) const = default;
};

// A sign on a disc, told by its shape before its colour, and the ring round it: the more of the time has
// gone, the more ink. `radius`: of the sign.
void paintCheckMark(QPainter& painter, const Theme& theme, const CheckMark& mark, QPointF middle,
                    double radius);
// Of the sign at a symbol of such a square, and all that the mark covers, up and to the right of it.
double checkSignRadius(const QRectF& symbol);
QRectF checkMarkBox(const QRectF& symbol);
// So much wider than the sign the mark is to each side.
inline constexpr double kRoundCheckSign_px = 6;

}  // namespace stopwalk::plan
