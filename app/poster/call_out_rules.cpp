#include "app/poster/call_out_rules.h"

#include <QString>
#include <algorithm>
#include <array>
#include <cmath>

namespace stopwalk::poster {
namespace {

constexpr double kSamePlace_mm = 0.05;

double side(QPointF a, QPointF b, QPointF p) {
  return (b.x() - a.x()) * (p.y() - a.y()) - (b.y() - a.y()) * (p.x() - a.x());
}

}  // namespace

double clearOf(QPointF mine, QPointF others) {
  const double apart = QLineF(mine, others).length();
  return apart < kSamePlace_mm ? 0 : std::min(kPastAnchor_mm, 0.4 * apart);
}

bool overlap(const QRectF& a, const QRectF& b, double gap) {
  return a.left() < b.right() + gap && b.left() < a.right() + gap && a.top() < b.bottom() + gap &&
         b.top() < a.bottom() + gap;
}

QPointF nearestOf(const QRectF& box, QPointF p) {
  return {std::clamp(p.x(), box.left(), box.right()), std::clamp(p.y(), box.top(), box.bottom())};
}

double distanceTo(const QRectF& box, QPointF p) {
  return QLineF(p, nearestOf(box, p)).length();
}

double distanceTo(const QLineF& line, QPointF p) {
  const QPointF d = line.p2() - line.p1();
  const double squared = QPointF::dotProduct(d, d);
  const double t = squared > 0 ? std::clamp(QPointF::dotProduct(p - line.p1(), d) / squared, 0.0, 1.0) : 0;
  return QLineF(p, line.p1() + t * d).length();
}

bool meet(const QLineF& a, const QLineF& b) {
  const double a1 = side(b.p1(), b.p2(), a.p1()), a2 = side(b.p1(), b.p2(), a.p2());
  const double b1 = side(a.p1(), a.p2(), b.p1()), b2 = side(a.p1(), a.p2(), b.p2());
  return ((a1 >= 0) != (a2 >= 0)) && ((b1 >= 0) != (b2 >= 0));
}

bool meets(const QLineF& line, const QRectF& box) {
  if (box.contains(line.p1()) || box.contains(line.p2())) return true;
  const std::array<QLineF, 4> sides{
      QLineF(box.topLeft(), box.topRight()), QLineF(box.topRight(), box.bottomRight()),
      QLineF(box.bottomRight(), box.bottomLeft()), QLineF(box.bottomLeft(), box.topLeft())};
  return std::ranges::any_of(sides, [&](const QLineF& s) { return meet(line, s); });
}

bool standsAlone(std::size_t i, const PlacedCallOut& placed, const std::vector<CallOut>& all,
                 const CallOutArea& area) {
  if (!area.all.contains(placed.box)) return false;
  for (const QRectF& kept : area.kept) {
    if (overlap(placed.box, kept, kBetweenBoxes_mm)) return false;
    // From within it there is no way out but across.
    if (placed.led() && meets(placed.leader, kept) && !kept.contains(all[i].anchor)) return false;
  }
  for (std::size_t k = 0; k < all.size(); ++k) {
    if (k == i) continue;
    const double clear = clearOf(all[i].anchor, all[k].anchor);
    if (distanceTo(placed.box, all[k].anchor) < std::max(clear, 1e-9)) return false;
    if (placed.led() && clear > 0 && distanceTo(placed.leader, all[k].anchor) < clear) return false;
  }
  return true;
}

bool standTogether(const PlacedCallOut& a, const PlacedCallOut& b) {
  if (overlap(a.box, b.box, kBetweenBoxes_mm)) return false;
  if (a.led() && meets(a.leader, b.box)) return false;
  if (b.led() && meets(b.leader, a.box)) return false;
  if (!a.led() || !b.led()) return true;
  // Those of one place part at it and may touch there.
  if (QLineF(a.leader.p1(), b.leader.p1()).length() < kSamePlace_mm) return true;
  return !meet(a.leader, b.leader);
}

QString troubleOf(const std::vector<CallOut>& call_outs, const CallOutArea& area,
                  const std::vector<PlacedCallOut>& placed) {
  for (std::size_t i = 0; i < placed.size(); ++i) {
    if (!standsAlone(i, placed[i], call_outs, area)) return QStringLiteral("call-out %1 by itself").arg(i);
    for (std::size_t k = 0; k < i; ++k)
      if (!standTogether(placed[i], placed[k])) return QStringLiteral("call-outs %1 and %2").arg(k).arg(i);
  }
  return {};
}

}  // namespace stopwalk::poster
