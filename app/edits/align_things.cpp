#include "app/edits/align_things.h"

#include <QCoreApplication>
#include <algorithm>

#include "app/edits/move_things.h"
#include "app/edits/step_names.h"
#include "app/edits/visit_thing.h"

namespace stopwalk::edits {
namespace {

using geometry::Box;
using geometry::Point;
using layout::Layout;

struct Bounded {
  Thing thing;
  Box box;
};

std::vector<Bounded> boundedThings(const Layout& layout, const std::vector<std::string>& ids) {
  std::vector<Bounded> all;
  for (const Thing& thing : chosenThings(layout, ids))
    if (const Box box = boundsOf(layout, thing); !box.empty()) all.push_back({thing, box});
  return all;
}

std::vector<Thing> thingsOf(const std::vector<Bounded>& all) {
  std::vector<Thing> things;
  for (const Bounded& b : all) things.push_back(b.thing);
  return things;
}

Point wayTo(const Box& from, const Box& to, Align how) {
  switch (how) {
    case Align::Left:
      return {to.low.x - from.low.x, 0};
    case Align::Right:
      return {to.high.x - from.high.x, 0};
    case Align::Top:
      return {0, to.high.y - from.high.y};
    case Align::Bottom:
      return {0, to.low.y - from.low.y};
    case Align::MiddleAcross:
      return {(to.low.x + to.high.x - from.low.x - from.high.x) / 2, 0};
    case Align::MiddleUp:
      return {0, (to.low.y + to.high.y - from.low.y - from.high.y) / 2};
  }
  return {};
}

// Along the one direction.
double low(const Box& box, Along along) {
  return along == Along::Across ? box.low.x : box.low.y;
}
double size(const Box& box, Along along) {
  return along == Along::Across ? box.high.x - box.low.x : box.high.y - box.low.y;
}

}  // namespace

Box boundsOf(const Layout& layout, const Thing& thing) {
  Box box;
  visitThing(layout, thing, [&](const auto& value) {
    if constexpr (requires { value.footprint; })
      box = geometry::boxOf(layout::outlineInPlan(value.footprint, value.at, value.turn));
    else if constexpr (requires { value.outline; })
      box = geometry::boxOf(value.outline);
  });
  if (const auto at = placeOf(layout, thing); at && box.empty()) box.add(*at);
  return box;
}

Edit alignThings(const Layout& layout, const std::vector<std::string>& ids, Align how) {
  const auto all = boundedThings(layout, ids);
  if (all.size() < 2) return noStep(layout);
  Layout after = layout;
  for (const Bounded& b : all)
    if (const Point by = wayTo(b.box, all.back().box, how); by != Point{}) moveThing(after, b.thing, by);
  return step(layout, QCoreApplication::translate("edits", "Align %1").arg(called(layout, thingsOf(all))),
              std::move(after));
}

Edit distributeThings(const Layout& layout, const std::vector<std::string>& ids, Along along) {
  auto all = boundedThings(layout, ids);
  if (all.size() < 3) return noStep(layout);
  const auto middle = [&](const Bounded& b) { return low(b.box, along) + size(b.box, along) / 2; };
  std::ranges::stable_sort(all, {}, middle);
  double free = low(all.back().box, along) - low(all.front().box, along) - size(all.front().box, along);
  for (std::size_t i = 1; i + 1 < all.size(); ++i) free -= size(all[i].box, along);
  const double gap = free / static_cast<double>(all.size() - 1);
  Layout after = layout;
  double next = low(all.front().box, along) + size(all.front().box, along) + gap;
  for (std::size_t i = 1; i + 1 < all.size(); ++i) {
    const double by = next - low(all[i].box, along);
    next += size(all[i].box, along) + gap;
    if (by != 0) moveThing(after, all[i].thing, along == Along::Across ? Point{by, 0} : Point{0, by});
  }
  return step(layout,
              QCoreApplication::translate("edits", "Distribute %1").arg(called(layout, thingsOf(all))),
              std::move(after));
}

}  // namespace stopwalk::edits
