#include "app/poster/phone_route.h"

#include <cmath>

#include "app/poster/block.h"
#include "app/poster/colours.h"

namespace stopwalk::poster {
namespace {

constexpr double kBeyond_mm = 4;  // of the way outside the room
constexpr double kRoute_mm = 0.9;
constexpr double kWordsAway_mm = 1.2;

// How far along the step the outline is crossed outwards; nothing: it is not.
std::optional<double> leavesAt(const QLineF& step, const QPolygonF& room) {
  std::optional<double> first;
  for (qsizetype i = 1; i < room.size(); ++i) {
    QPointF at;
    if (step.intersects(QLineF(room[i - 1], room[i]), &at) != QLineF::BoundedIntersection) continue;
    const double along = QLineF(step.p1(), at).length();
    if (!first || along < *first) first = along;
  }
  return first;
}

Shape arrowAt(const QLineF& last) {
  const QPointF d = (last.p2() - last.p1()) / last.length(), n(-d.y(), d.x());
  QPainterPath head(last.p2() + 1.6 * d);
  head.lineTo(last.p2() - 1.8 * d + 1.5 * n);
  head.lineTo(last.p2() - 1.8 * d - 1.5 * n);
  return filled(head, inks().selection);
}

}  // namespace

PhoneRoute::PhoneRoute(const std::vector<geometry::Point>& path, const PlanFrame& frame,
                       const QPolygonF& room) {
  for (std::size_t i = 1; i < path.size(); ++i) {
    QLineF step(frame(path[i - 1]), frame(path[i]));
    const auto leaves = leavesAt(step, room);
    if (leaves) {
      step.setLength(*leaves + kBeyond_mm);
      outside_ = QLineF(step.pointAt(*leaves / step.length()), step.p2());
    }
    pieces_.push_back(step);
    if (leaves) break;
  }
}

std::vector<Mark> PhoneRoute::marks() const {
  if (empty()) return {};
  QPainterPath path(pieces_.front().p1());
  for (const QLineF& piece : pieces_) path.lineTo(piece.p2());
  Shape line = drawn(path, inks().selection, kRoute_mm);
  line.dash = {3, 1.6};
  std::vector<Mark> marks{line};
  if (pieces_.back().length() >= 1e-6) marks.push_back(arrowAt(pieces_.back()));
  return marks;
}

std::optional<NameBlock> PhoneRoute::beside(NameBlock words,
                                            const std::function<bool(const QRectF&)>& may_stand) const {
  const QSizeF half = words.box.size() / 2;
  for (const double part : {0.5, 0.35, 0.65, 0.2, 0.8, 0.1, 0.9})
    for (const int side : {1, -1}) {
      const auto [at, along] = spotAt(part);
      const double away =
          kWordsAway_mm + std::abs(along.y()) * half.width() + std::abs(along.x()) * half.height();
      moveCentre(words, at + side * away * QPointF(-along.y(), along.x()));
      if (may_stand(words.box)) return words;
    }
  return std::nullopt;
}

PhoneRoute::Spot PhoneRoute::spotAt(double part) const {
  double left = 0;
  for (const QLineF& piece : pieces_) left += part * piece.length();
  for (const QLineF& piece : pieces_) {
    if (left <= piece.length() && piece.length() > 0)
      return {piece.pointAt(left / piece.length()), (piece.p2() - piece.p1()) / piece.length()};
    left -= piece.length();
  }
  return {};
}

}  // namespace stopwalk::poster
