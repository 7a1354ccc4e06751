#include "app/plan/turn_marks.h"

#include <algorithm>
#include <cmath>

namespace stopwalk::plan {
namespace {

constexpr double kHalf_px = 7, kAway_px = 20;     // of a triangle, and from its station
constexpr QSizeF kApart_px(48, 38);               // between marks: room for two lines of a number
constexpr double kLine_px = 18, kBetween_px = 4;  // of a mark with numbers
constexpr double kGround_px = 3;                  // around it

void paintTriangle(QPainter& painter, const Theme& theme, QPointF at, Turn turn, bool is_current) {
  const double up = turn == Turn::Better ? -1 : 1;
  const QColor colour = turn == Turn::Better ? theme.meets : theme.fails;
  painter.setPen(QPen(is_current ? theme.floor : colour, 2));
  painter.setBrush(is_current ? colour : theme.floor);
  painter.drawPolygon(QPolygonF{at + QPointF(0, up * kHalf_px), at + QPointF(kHalf_px, -up * kHalf_px),
                                at + QPointF(-kHalf_px, -up * kHalf_px)});
}

// On a ground of its own, over whatever lies there.
void paintCounted(QPainter& painter, const Theme& theme, const TurnMark& mark, bool is_current) {
  std::vector<std::pair<Turn, int>> lines;
  if (mark.worse > 0) lines.emplace_back(Turn::Worse, mark.worse);
  if (mark.better > 0) lines.emplace_back(Turn::Better, mark.better);
  const QFontMetricsF metrics(painter.font());
  double width = 0;
  for (const auto& [turn, count] : lines)
    width = std::max(width, metrics.horizontalAdvance(QString::number(count)));
  const double text = kHalf_px + kBetween_px;  // from the middle of a triangle
  const QRectF ground(mark.at - QPointF(kHalf_px + kGround_px, kLine_px / 2),
                      QSizeF(kHalf_px + text + width + 2 * kGround_px, kLine_px * double(lines.size())));
  painter.setPen(QPen(theme.quiet_ink, 1));
  painter.setBrush(theme.label_ground);
  painter.drawRoundedRect(ground, 3, 3);
  QPointF at = mark.at;
  for (const auto& [turn, count] : lines) {
    paintTriangle(painter, theme, at, turn, is_current);
    painter.setPen(is_current ? theme.ink : theme.quiet_ink);
    painter.drawText(QRectF(at + QPointF(text, -kLine_px / 2), QSizeF(width + 2, kLine_px)),
                     Qt::AlignVCenter | Qt::AlignLeft, QString::number(count));
    at.ry() += kLine_px;
  }
}

}  // namespace

std::vector<TurnMark> turnMarks(const std::vector<std::pair<QPointF, Turn>>& changes) {
  std::vector<TurnMark> marks;
  for (const auto& [beside, turn] : changes) {
    if (turn == Turn::Other) continue;
    const QPointF at = beside - QPointF(kAway_px, 0);
    auto mark = std::ranges::find_if(marks, [&](const TurnMark& m) {
      return std::abs(m.at.x() - at.x()) < kApart_px.width() &&
             std::abs(m.at.y() - at.y()) < kApart_px.height();
    });
    if (mark == marks.end()) mark = marks.insert(mark, {at});
    ++(turn == Turn::Worse ? mark->worse : mark->better);
  }
  return marks;
}

void paintTurns(QPainter& painter, const Theme& theme, const std::vector<TurnMark>& marks, bool is_current) {
  painter.save();
  for (const TurnMark& mark : marks) {
    if (mark.worse + mark.better > 1)
      paintCounted(painter, theme, mark, is_current);
    else
      paintTriangle(painter, theme, mark.at, mark.worse > 0 ? Turn::Worse : Turn::Better, is_current);
  }
  painter.restore();
}

}  // namespace stopwalk::plan
