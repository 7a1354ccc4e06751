#include "app/edits/move_things.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <type_traits>

#include "app/edits/step_names.h"
#include "app/edits/visit_thing.h"
#include "core/geometry/box.h"
#include "core/layout/units.h"

namespace stopwalk::edits {
namespace {

using geometry::Point;
using layout::Layout;

double rounded(double mm) {
  return std::round(mm * 1e6) / 1e6 + 0.0;  // no -0
}

// Calls `f` with each point that places the thing; of what is on a machine, in the machine's frame.
template <class T, class F>
void eachPlace(T& thing, F f) {
  if constexpr (requires { thing.outline; })
    for (Point& corner : thing.outline) f(corner);
  if constexpr (requires { thing.at; }) f(thing.at);
  if constexpr (requires { thing.points_to; })
    if (thing.points_to) f(*thing.points_to);
}

bool isInReach(Layout& layout, const Thing& thing) {
  bool in_reach = true;
  visitThing(layout, thing, [&](auto& value) {
    eachPlace(value, [&](const Point& p) {
      in_reach = in_reach && std::abs(p.x) <= layout::kLongest && std::abs(p.y) <= layout::kLongest;
    });
  });
  return in_reach;
}

Point ownPlace(const Layout& layout, const Thing& thing) {
  if (const auto at = placeOf(layout, thing)) return *at;
  if (thing.kind != ThingKind::Room) return {};
  const geometry::Box box = geometry::boxOf(layout.rooms[thing.index].outline);
  return 0.5 * (box.low + box.high);
}

void turnThing(Layout& layout, const Thing& thing, double by_deg, std::optional<Point> about) {
  const Point centre = about.value_or(ownPlace(layout, thing));
  visitThing(layout, thing, [&](auto& value) {
    if (isOnMachine(thing) && about) {
      const layout::Machine& m = layout.machines[thing.index];
      const Point in_frame = geometry::turned(*about - m.at, -m.turn);
      eachPlace(value,
                [&](Point& p) { p = edits::rounded(in_frame + geometry::turned(p - in_frame, by_deg)); });
    } else if (!isOnMachine(thing)) {
      eachPlace(value, [&](Point& p) {
        if (p != centre) p = edits::rounded(centre + geometry::turned(p - centre, by_deg));
      });
    }
    if constexpr (requires { value.turn; }) value.turn = wholeTurn(value.turn + by_deg);
    if constexpr (requires { value.faces; }) value.faces = wholeTurn(value.faces + by_deg);
  });
}

}  // namespace

Point rounded(Point p) {
  return {rounded(p.x), rounded(p.y)};
}

double wholeTurn(double deg) {
  if (!std::isfinite(deg)) return deg;
  const double turn = std::fmod(rounded(deg), 360);
  return turn < 0 ? turn + 360 : turn + 0.0;
}

void moveThing(Layout& layout, const Thing& thing, Point by) {
  if (isOnMachine(thing)) by = geometry::turned(by, -layout.machines[thing.index].turn);
  visitThing(layout, thing, [&](auto& value) { eachPlace(value, [&](Point& p) { p = rounded(p + by); }); });
}

Edit moveThings(const Layout& layout, const std::vector<std::string>& ids, Point by) {
  const auto things = chosenThings(layout, ids);
  if (things.empty() || by == Point{}) return noStep(layout);
  Layout after = layout;
  for (const Thing& thing : things) moveThing(after, thing, by);
  const QString name = QCoreApplication::translate("edits", "Move %1").arg(called(layout, things));
  const QString key = mergeKey("place", layout, things);
  // A file that could be read still can: nothing else has changed.
  if (std::ranges::all_of(things, [&](const Thing& thing) { return isInReach(after, thing); }))
    return {name, std::move(after), key};
  return step(layout, name, std::move(after), key);
}

Edit turnThings(const Layout& layout, const std::vector<std::string>& ids, double by_deg,
                std::optional<Point> about) {
  const auto things = chosenThings(layout, ids);
  if (things.empty() || by_deg == 0) return noStep(layout);
  Layout after = layout;
  for (const Thing& thing : things) turnThing(after, thing, by_deg, about);
  return step(layout, QCoreApplication::translate("edits", "Turn %1").arg(called(layout, things)),
              std::move(after), mergeKey("turn", layout, things));
}

}  // namespace stopwalk::edits
