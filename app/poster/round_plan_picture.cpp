#include "app/poster/round_plan_picture.h"

#include <QLineF>
#include <algorithm>
#include <cmath>

#include "app/poster/colours.h"
#include "app/poster/plan_frame.h"
#include "app/poster/round_texts.h"
#include "app/poster/sizes.h"
#include "app/poster/wall_lines.h"
#include "core/geometry/box.h"

namespace stopwalk::poster {
namespace {

constexpr double kCaption_mm = 2.2, kDisc_mm = 4.6, kDigits_mm = 2.1;
constexpr double kRoute_mm = 0.5, kWall_mm = 0.7;

QPainterPath pathOf(const QPolygonF& polygon) {
  QPainterPath path;
  path.addPolygon(polygon);
  return path;
}

geometry::Polygon boxAround(const layout::Layout& layout) {
  geometry::Box box;
  for (const layout::Room& room : layout.rooms)
    for (const geometry::Point& p : room.outline) box.add(geometry::boxOf(p));
  if (box.empty()) return {};
  return {box.low, {box.high.x, box.low.y}, box.high, {box.low.x, box.high.y}};
}

// A round number that is as large as it fits.
int scaleOf(QSizeF plan_mm, QSizeF paper_mm) {
  if (const int usual = scaleFor(plan_mm, paper_mm)) return usual;
  const double least = std::max(plan_mm.width() / paper_mm.width(), plan_mm.height() / paper_mm.height());
  return static_cast<int>(std::ceil(least / 50)) * 50;
}

class RoundPicture {
 public:
  RoundPicture(const layout::Layout& layout, const PlanFrame& frame, const Lettering& letters, Block& block)
      : layout_(layout), frame_(frame), letters_(letters), block_(block) {}

  void ground() {
    for (const layout::Machine& m : layout_.machines) {
      Shape body = drawn(pathOf(frame_(layout::outlineInPlan(m.footprint, m.at, m.turn))), inks().ink, 0.2);
      body.fill = inks().machine;
      add(body);
    }
    for (const layout::Room& room : layout_.rooms)
      add(drawn(pathOf(frame_(room.outline)), inks().ink, kWall_mm));
    for (std::size_t r = 0; r < layout_.rooms.size(); ++r)
      for (const DoorWay& door : doorWays(layout_, r, frame_))
        add(drawn(linePath(door.opening.p1(), door.opening.p2()), kPaperWhite, kWall_mm * 1.6));
  }

  void walk(const std::vector<NumberedStop>& stops, const std::vector<planning::InspectionLeg>& legs) {
    for (const planning::InspectionLeg& leg : legs) line(leg.walk);
    for (const NumberedStop& stop : stops)
      if (const auto at = planning::waypointAt(stop.device->place)) number(stop.number, frame_(*at));
  }

 private:
  void add(Mark mark) { block_.marks.push_back(std::move(mark)); }

  void line(const floor::Walk& walk) {
    if (!walk.found() || walk.path.size() < 2) return;
    QPainterPath path(frame_(walk.path.front()));
    for (const geometry::Point& p : walk.path) path.lineTo(frame_(p));
    Shape dashes = drawn(path, inks().ink, kRoute_mm);
    dashes.dash = {1.6, 0.9};
    add(dashes);
  }

  // On the spot, or where the next free place is round it, at the end of a line.
  void number(int number, QPointF spot) {
    const QPointF at = freeNear(spot);
    if (at != spot) add(drawn(linePath(spot, at), inks().ink, 0.25));
    const QString digits = QString::number(number);
    const double wide = std::max(kDisc_mm, letters_.width(digits, kDigits_mm, true) + 1.4);
    Shape disc = drawn({}, inks().ink, 0.3);
    disc.path.addRoundedRect(QRectF(at.x() - wide / 2, at.y() - kDisc_mm / 2, wide, kDisc_mm), kDisc_mm / 2,
                             kDisc_mm / 2);
    disc.fill = kPaperWhite;
    add(disc);
    add(Text{digits,
             {at.x() - letters_.width(digits, kDigits_mm, true) / 2, at.y() + kDigits_mm / 2},
             kDigits_mm,
             true,
             inks().ink});
    taken_.push_back(at);
  }

  QPointF freeNear(QPointF spot) const {
    const auto isFree = [&](QPointF at) {
      return std::ranges::all_of(taken_, [&](QPointF t) { return QLineF(t, at).length() >= kDisc_mm + 0.5; });
    };
    if (isFree(spot)) return spot;
    for (double away = kDisc_mm + 0.7; away < 8 * kDisc_mm; away += kDisc_mm / 2)
      for (int turn = 0; turn < 360; turn += 30)
        if (const QPointF at = spot + QLineF::fromPolar(away, turn).p2(); isFree(at)) return at;
    return spot;
  }

  const layout::Layout& layout_;
  const PlanFrame& frame_;
  const Lettering& letters_;
  Block& block_;
  std::vector<QPointF> taken_;
};

}  // namespace

Block roundPlan(const layout::Layout& layout, const std::vector<NumberedStop>& stops,
                const std::vector<planning::InspectionLeg>& legs, const Language& language,
                const Lettering& letters, double width, double height) {
  Block block;
  const geometry::Polygon around = boxAround(layout);
  const double caption = Lettering::lineOf(kCaption_mm) + 1;
  if (around.empty()) return block;
  const QSizeF inside(width - 2 * kDisc_mm, height - caption - 2 * kDisc_mm), plan = turnedSize(around, 90);
  if (inside.height() < 2 * kDisc_mm) return block;
  const int scale = scaleOf(plan, inside);
  const double high = plan.height() / scale + 2 * kDisc_mm;
  const PlanFrame frame(around, 90, scale, {0, 0, width, high});
  RoundPicture picture(layout, frame, letters, block);
  picture.ground();
  picture.walk(stops, legs);
  block.height = high;
  Writer(block, letters).paragraph(language.say(texts::kRouteOnPlan).arg(scale), 0, width, kCaption_mm);
  block.height += 1;
  return block;
}

}  // namespace stopwalk::poster
