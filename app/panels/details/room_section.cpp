#include <algorithm>

#include "app/edits/room_corners.h"
#include "app/panels/details/sections.h"
#include "app/panels/details/thing_section.h"

namespace stopwalk::panels {

namespace {

class RoomSection : public ThingSection<layout::Room> {
  Q_DECLARE_TR_FUNCTIONS(RoomSection)

 public:
  RoomSection(const Desk& desk, Ids ids, QWidget* parent) : ThingSection(desk, std::move(ids), parent) {
    addName(tr("As people call the room; it stands on the plan and on the poster."));
    addId();
    bind(
        new CheckField({tr("Outdoors"), tr("A porch, yard or outside corridor that people walk on.")}),
        [](auto& r) -> auto& { return r.outdoors; });
    auto* outline = bind(
        new OutlineField({tr("Corners"), tr("The inside faces of the walls, corner by corner.")},
                         Known::Always),
        [](auto& r) -> auto& { return r.outline; }, {}, {}, Width::Whole);
    const auto change_all = outline->entered;
    outline->entered = [this, change_all](const geometry::Polygon& corners) {
      isSingle() ? apply(reshaped(corners)) : change_all(corners);
    };
  }

 private:
  // One corner moved, added or taken away: the doors stay on their walls.
  edits::Edit reshaped(const geometry::Polygon& corners) const {
    const geometry::Polygon& before = first()->outline;
    const std::string& id = ids().front();
    const auto at = static_cast<std::size_t>(std::ranges::mismatch(before, corners).in1 - before.begin());
    if (corners.size() > before.size()) return edits::addCorner(layout(), id, at - 1, corners[at]);
    if (corners.size() < before.size()) return edits::removeCorner(layout(), id, at);
    return edits::moveCorner(layout(), id, at, corners[at]);
  }
};

}  // namespace

Section* makeRoomSection(const Desk& desk, Ids ids, QWidget* parent) {
  return new RoomSection(desk, std::move(ids), parent);
}

}  // namespace stopwalk::panels
