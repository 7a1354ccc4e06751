#include "app/plan/tools/handles.h"

#include "app/plan/guides.h"
#include "core/geometry/polygon.h"
#include "core/geometry/segment.h"

namespace stopwalk::plan {
namespace {

constexpr double kStalk_px = 28;  // between a thing and its turn handle
constexpr std::size_t kMostCorners = 200;

// What of a thing turns: its place, angle and outline.
struct Turning {
  geometry::Point at;
  double turn = 0;
  const layout::Footprint* footprint = nullptr;
};

std::optional<Turning> turningOf(const layout::Layout& layout, const edits::Thing& thing) {
  if (thing.kind == edits::ThingKind::Machine) {
    const auto& m = layout.machines[thing.index];
    return Turning{m.at, m.turn, &m.footprint};
  }
  if (thing.kind == edits::ThingKind::Fixture) {
    const auto& f = layout.fixtures[thing.index];
    return Turning{f.at, f.turn, &f.footprint};
  }
  return std::nullopt;
}

}  // namespace

std::vector<Handle> handlesOf(const ToolHost& host, const std::string& id) {
  const auto& layout = host.layout();
  const auto thing = edits::findThing(layout, id);
  if (!thing) return {};
  std::vector<Handle> handles;
  if (const auto turning = turningOf(layout, *thing)) {
    const geometry::Box box = geometry::boxOf(outlineInPlan(*turning->footprint, {0, 0}, 0));
    const geometry::Point back = layout::toPlan(turning->at, turning->turn, {0, box.high.y});
    const geometry::Point away = geometry::direction(turning->turn + 90);
    handles.push_back(
        {Handle::Kind::Turn, host.view().toPixels(back) + kStalk_px * QPointF(away.x, -away.y), id, 0});
  }
  if (thing->kind == edits::ThingKind::Note)
    if (const auto& to = layout.notes[thing->index].points_to)
      handles.push_back({Handle::Kind::Pointer, host.view().toPixels(*to), id, 0});
  if (thing->kind != edits::ThingKind::Room) return handles;
  const geometry::Polygon& outline = layout.rooms[thing->index].outline;
  if (outline.size() > kMostCorners) return handles;
  for (std::size_t i = 0; i < outline.size(); ++i)
    handles.push_back({Handle::Kind::Corner, host.view().toPixels(outline[i]), id, i});
  for (std::size_t i = 0; i < outline.size(); ++i) {
    const geometry::Segment side = geometry::edgeOf(outline, i);
    if (geometry::distance(side.a, side.b) * host.view().pixelsPerMm() < 4 * kHandle_px) continue;
    handles.push_back({Handle::Kind::Side, host.view().toPixels(geometry::at(side, 0.5)), id, i});
  }
  return handles;
}

std::optional<Handle> handleAt(const std::vector<Handle>& handles, QPointF pixel) {
  for (const Handle& handle : handles) {
    const QPointF off = pixel - handle.at;
    if (std::max(std::abs(off.x()), std::abs(off.y())) <= kHandleReach_px) return handle;
  }
  return std::nullopt;
}

void paintHandles(QPainter& painter, const ToolHost& host, const std::vector<Handle>& handles) {
  for (const Handle& handle : handles)
    paintHandle(painter, host.theme(), handle.at, handle.kind != Handle::Kind::Corner);
}

}  // namespace stopwalk::plan
