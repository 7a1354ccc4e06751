#include "app/poster/plan_signs.h"

#include <algorithm>

#include "app/poster/block.h"
#include "app/poster/colours.h"

namespace stopwalk::poster {
namespace {

constexpr double kDot_mm = 1.6;  // across, at the end of a leader
constexpr double kLeader_mm = 0.35;
constexpr double kOnePlace_mm = 1;  // on paper

// One sign.
struct Told {
  const Listed* first = nullptr;
  int last = 0;  // number
};

QString numbersOf(const Told& told) {
  const int first = told.first->number;
  return first == told.last ? QString::number(first)
                            : QStringLiteral("%1%2%3").arg(first).arg(QChar(0x2013)).arg(told.last);
}

QSizeF boxOf(const Listed& listed, const Sizes& sizes) {
  const double side = listed.cut_off ? sizes.cutOff() : sizes.sign;
  return {side + kNumberPart * sizes.sign, side};
}

// What stands on the plan, and the call-out of each.
struct ToPlace {
  std::vector<Told> told;
  std::vector<CallOut> call_outs;  // the phones come after what is told
};

ToPlace toPlace(const Content& content, const PlanFrame& frame, const Sizes& sizes) {
  ToPlace all;
  for (const Listed* l : listedIn(content)) {
    if (l->off_plan) continue;
    const QPointF at = frame(geometry::at(l->line, 0.5));
    if (!all.told.empty() && toldAlike(*all.told.back().first, *l) &&
        all.told.back().first->machine == l->machine &&
        QLineF(all.call_outs.back().anchor, at).length() < kOnePlace_mm) {
      all.told.back().last = l->number;
      all.call_outs.back().size.setWidth(boxOf(*l, sizes).width() + 0.5 * kNumberPart * sizes.sign);
      continue;
    }
    all.call_outs.push_back({at, boxOf(*l, sizes)});
    all.told.push_back({l, l->number});
  }
  for (const geometry::Point& phone : content.phones_here)
    all.call_outs.push_back({frame(phone), QSizeF(sizes.cutOff(), sizes.cutOff())});
  return all;
}

void addLeaders(std::vector<Mark>& marks, const std::vector<PlacedCallOut>& placed) {
  for (const PlacedCallOut& p : placed) {
    if (!p.led()) continue;
    const QPainterPath line = linePath(p.leader.p1(), p.leader.p2());
    marks.push_back(drawn(line, kPaperWhite, kLeader_mm * 3));
    marks.push_back(drawn(line, inks().ink, kLeader_mm));
  }
  for (const PlacedCallOut& p : placed)
    if (p.led()) marks.push_back(filled(discPath(p.leader.p1(), kDot_mm), inks().ink));
}

void addSign(std::vector<Mark>& marks, const Told& told, const QRectF& box, const Sizes& sizes,
             const Lettering& letters) {
  const double side = box.height();
  const QRectF tag(box.left() + side - 0.4, box.center().y() - sizes.sign * 0.36, box.width() - side + 0.4,
                   sizes.sign * 0.72);
  Shape paper = drawn(rectanglePath(tag), inks().ink, 0.25);
  paper.fill = kPaperWhite;
  marks.push_back(paper);
  const QString number = numbersOf(told);
  double cap = 0.42 * sizes.sign;
  cap = std::min(cap, cap * (tag.width() - 0.8) / letters.width(number, cap, true));
  const double width = letters.width(number, cap, true);
  const QPointF at(tag.center().x() - width / 2 + 0.2, tag.center().y() + cap / 2);
  marks.push_back(Text{number, at, cap, true, inks().ink});
  marks.push_back(Sign{told.first->symbol, told.first->ground, QRectF(box.topLeft(), QSizeF(side, side))});
}

}  // namespace

std::optional<PlanSigns> planSigns(const Content& content, const PlanFrame& frame, const Sizes& sizes,
                                   const Lettering& letters, const CallOutArea& area) {
  const ToPlace all = toPlace(content, frame, sizes);
  const auto placed = placeCallOuts(all.call_outs, area);
  if (!placed) return std::nullopt;
  PlanSigns signs{{}, *placed};
  addLeaders(signs.marks, *placed);
  for (std::size_t i = 0; i < placed->size(); ++i)
    if (i < all.told.size())
      addSign(signs.marks, all.told[i], (*placed)[i].box, sizes, letters);
    else
      signs.marks.push_back(Sign{"phone", plan::Ground::Phone, (*placed)[i].box});
  return signs;
}

}  // namespace stopwalk::poster
