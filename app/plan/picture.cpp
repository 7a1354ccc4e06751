#include "app/plan/picture.h"

#include <algorithm>
#include <limits>
#include <ranges>

#include "app/plan/check_signs.h"
#include "app/plan/labels.h"

namespace stopwalk::plan {
namespace {

constexpr double kSymbol_px = 48;  // nothing with a size in pixels reaches further from its place

// Of marks as small as stations and devices the nearer is meant, whichever is painted later.
int rankOf(ItemLayer layer) {
  return static_cast<int>(layer == ItemLayer::Station ? ItemLayer::Device : layer);
}

// What is shown of devices whose checks are known.
class Checked {
 public:
  void add(const Item& item, const PaintContext& context, const std::map<std::string, CheckMark>& checks) {
    const auto check = checks.find(item.id);
    if (check == checks.end()) return;
    if (const auto symbol = item.checked(context)) {
      devices_.emplace_back(*symbol, check->second);
      items_.push_back(&item);
    }
  }
  // Over all symbols; no label goes there, but that of the device itself. The ids of those with their own.
  std::vector<std::string> paintSigns(QPainter& painter, const Theme& theme,
                                      std::vector<Covered>& covered) const {
    const std::vector<LaidSign> signs = layCheckSigns(devices_);
    paintCheckSigns(painter, theme, signs);
    std::vector<std::string> with_own;
    for (const LaidSign& sign : signs) {
      const Item* own = sign.count() == 1 ? items_[sign.device] : nullptr;
      if (own) with_own.push_back(own->id);
      covered.push_back({sign.box, ItemLayer::Device, own});
    }
    return with_own;
  }

 private:
  std::vector<std::pair<QRectF, CheckMark>> devices_;
  std::vector<const Item*> items_;
};

}  // namespace

Picture::Picture(const layout::Layout& layout, const layout::DeviceKinds& kinds, const Pictures& pictures,
                 std::optional<EarlierItems> earlier)
    : items_(itemsOf(layout, kinds, pictures, earlier)) {
  std::vector<geometry::Box> boxes;
  boxes.reserve(items_.size());
  for (const auto& item : items_) {
    boxes.push_back(item->bounds());
    bounds_.add(boxes.back());
  }
  tree_ = geometry::BoxTree(boxes);
}

const Item* Picture::find(const std::string& id) const {
  const auto found = std::ranges::find_if(items_, [&](const auto& item) { return item->id == id; });
  return found == items_.end() ? nullptr : found->get();
}

const Item* Picture::itemAt(geometry::Point at, double mm_per_pixel, double tolerance_px) const {
  const double tolerance = tolerance_px * mm_per_pixel;
  const Item* best = nullptr;
  double least = std::numeric_limits<double>::infinity();
  tree_.any(geometry::boxOf(at).grown(kSymbol_px * mm_per_pixel), [&](std::size_t i) {
    const Item& item = *items_[i];
    const auto distance = item.distanceTo(at, mm_per_pixel);
    if (!distance || *distance > tolerance) return false;
    const int rank = rankOf(item.layer), best_rank = best ? rankOf(best->layer) : -1;
    if (rank > best_rank || (rank == best_rank && *distance < least)) {
      best = &item;
      least = *distance;
    }
    return false;
  });
  return best;
}

std::vector<const Item*> Picture::itemsWithin(const geometry::Box& box) const {
  std::vector<const Item*> within;
  for (const auto& item : items_) {
    const geometry::Box b = item->bounds();
    if (!item->id.empty() && !b.empty() && box.low.x <= b.low.x && b.high.x <= box.high.x &&
        box.low.y <= b.low.y && b.high.y <= box.high.y)
      within.push_back(item.get());
  }
  return within;
}

std::vector<std::string> Picture::paint(QPainter& painter, const ViewTransform& view, const Theme& theme,
                                        const QRectF& visible, const Marks& marks) const {
  std::vector<std::size_t> shown;
  const QRectF area = visible.adjusted(-kSymbol_px, -kSymbol_px, kSymbol_px, kSymbol_px);
  tree_.any(view.toPlan(area), [&](std::size_t i) {
    shown.push_back(i);
    return false;
  });
  std::ranges::sort(shown);
  const auto stateOf = [&](std::size_t i) {
    if (!marks.states || items_[i]->layer != ItemLayer::Station) return StationState::NotAudited;
    const auto state = marks.states->find(items_[i]->id);
    return state == marks.states->end() ? StationState::NotAudited : state->second;
  };
  Checked checked;
  PaintContext context{view, theme};
  context.grid = marks.grid;
  context.by_records = marks.checks != nullptr;
  std::vector<Label> labels = marks.labels;
  std::vector<Covered> covered;
  for (const QRectF& box : marks.taken) covered.push_back({box, ItemLayer::Note, nullptr});
  std::vector<QRectF> boxes;
  bool floors_done = false;
  const auto paintOnFloors = [&] {
    if (floors_done) return;
    for (const std::size_t i : shown) items_[i]->paintGround(painter, context);
    if (marks.on_floors) marks.on_floors(painter);
    floors_done = true;
  };
  for (const std::size_t i : shown) {
    const Item& item = *items_[i];
    if (item.layer > ItemLayer::Floor) paintOnFloors();
    context.selected = marks.selected && marks.selected(item.id);
    context.hovered = !marks.hovered.empty() && item.id == marks.hovered;
    context.state = stateOf(i);
    if (marks.checks) checked.add(item, context, *marks.checks);
    painter.save();
    item.paint(painter, context);
    painter.restore();
    if (auto label = item.label(context)) {
      label->of = &item;
      if (marks.on_floors && item.layer <= ItemLayer::Floor) label->plain = {};
      labels.push_back(std::move(*label));
    }
    boxes.clear();
    item.addCovered(context, boxes);
    for (const QRectF& box : boxes) covered.push_back({box, item.layer, &item});
  }
  paintOnFloors();
  for (const std::size_t i : shown) {
    context.state = stateOf(i);
    items_[i]->paintSign(painter, context);
  }
  std::vector<std::string> with_own_sign = checked.paintSigns(painter, theme, covered);
  paintLabels(painter, theme, visible, std::move(labels), covered);
  return with_own_sign;
}

}  // namespace stopwalk::plan
