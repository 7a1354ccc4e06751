#pragma once

#include <functional>
#include <map>
#include <memory>
#include <string>
#include <vector>

#include "app/plan/items/item.h"
#include "core/geometry/box_tree.h"

namespace stopwalk::plan {

// What marks single items while the picture is painted.
struct Marks {
  std::function<bool(const std::string& id)> selected;
  std::string hovered;
  const std::map<std::string, StationState>* states = nullptr;  // of stations, by id
  const std::map<std::string, CheckMark>* checks = nullptr;     // of devices, by id; none: not shown
  std::optional<layout::LengthUnit> grid = {};                  // of the floors, if it is shown
  std::function<void(QPainter&)> on_floors = {};  // paints on the floors, under all that stands on them
  std::vector<Label> labels = {};                 // besides those of the items
  std::vector<QRectF> taken = {};                 // where no label goes
};

// A layout as items, and where they are.
class Picture {
 public:
  Picture() = default;
  Picture(const layout::Layout& layout, const layout::DeviceKinds& kinds, const Pictures& pictures = {},
          std::optional<EarlierItems> earlier = {});

  const Items& items() const { return items_; }
  const geometry::Box& bounds() const { return bounds_; }
  const Item* find(const std::string& id) const;

  // The item that is meant at a place: of those within `tolerance_px` the uppermost, of one layer the
  // nearest.
  const Item* itemAt(geometry::Point at, double mm_per_pixel, double tolerance_px) const;
  // The items that lie wholly in the box, in the order of painting.
  std::vector<const Item*> itemsWithin(const geometry::Box& box) const;

  // Paints what meets `visible` (pixels), then the labels. The ids of the devices that bear the sign of their
  // check alone: of several that share one with its numbers no device says what it came to.
  std::vector<std::string> paint(QPainter& painter, const ViewTransform& view, const Theme& theme,
                                 const QRectF& visible, const Marks& marks) const;

 private:
  Items items_;
  geometry::BoxTree tree_;
  geometry::Box bounds_;
};

}  // namespace stopwalk::plan
