#pragma once

#include <QImage>
#include <QPainter>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "app/edits/things.h"
#include "app/plan/items/check_sign.h"
#include "app/plan/theme.h"
#include "app/plan/view_transform.h"
#include "core/geometry/box.h"
#include "core/layout/device_kind.h"
#include "core/layout/layout.h"

namespace stopwalk::plan {

// How a station stands in the last audit.
enum class StationState { NotAudited, BeingComputed, Meets, Warns, Fails };

// What an item is painted with. The painter's units are pixels; an item puts its places through `view`.
struct PaintContext {
  const ViewTransform& view;
  const Theme& theme;
  bool selected = false;
  bool hovered = false;
  StationState state = StationState::NotAudited;  // of a station
  std::optional<layout::LengthUnit> grid = {};    // the floors show the grid of this unit
  bool by_records = false;                        // devices show what their checks came to, and nothing else
};

// The order of painting; what is painted last is found first. Only the underlay is found last of all though
// it lies on the floors, as a tracing does.
enum class ItemLayer { Wall, Underlay, Floor, Fixture, Machine, Tape, Door, Station, Device, Note };

class Item;

// A label that an item would like on the plan: the first of its places, in pixels, where it hides nothing is
// taken.
struct Label {
  QString text;
  std::vector<QPointF> middles;  // of the text's box, the best first
  int importance = 0;            // the more important are placed first
  QRectF plain = {};             // here the text needs no ground of its own
  bool quiet = false;
  ItemLayer clear_of =
      ItemLayer::Fixture;  // of this layer and those above it nothing is covered, but its own item
  const Item* of = nullptr;
};

// One thing as it lies on the plan: knows where it is, whether a place is on it, and how it is painted. A
// value made from the layout; another layout, another item.
class Item {
 public:
  using Layer = ItemLayer;

  Item(edits::Thing item_thing, std::string item_id, Layer item_layer)
      : thing(item_thing), id(std::move(item_id)), layer(item_layer) {}
  virtual ~Item() = default;
  Item(const Item&) = delete;
  Item& operator=(const Item&) = delete;

  const edits::Thing thing;
  const std::string id;
  const Layer layer;

  // All that it covers in the plan, without what is drawn in a size of pixels.
  virtual geometry::Box bounds() const = 0;
  // How far `at` is from it in mm, 0 on it; none if it is not meant at all. `mm_per_pixel` for what has a
  // size in pixels.
  virtual std::optional<double> distanceTo(geometry::Point at, double mm_per_pixel) const = 0;
  // What of it is floor: painted over the walls, under all that stands on the floors.
  virtual void paintGround(QPainter& painter, const PaintContext& context) const {
    (void)painter, (void)context;
  }
  virtual void paint(QPainter& painter, const PaintContext& context) const = 0;
  // What no other item may hide: how it stands.
  virtual void paintSign(QPainter& painter, const PaintContext& context) const {
    (void)painter, (void)context;
  }
  // The square of the symbol of what is inspected.
  virtual std::optional<QRectF> checked(const PaintContext& context) const {
    (void)context;
    return std::nullopt;
  }
  virtual std::optional<Label> label(const PaintContext& context) const {
    (void)context;
    return std::nullopt;
  }
  // Adds the boxes, in pixels, that labels of other items should leave free.
  virtual void addCovered(const PaintContext& context, std::vector<QRectF>& boxes) const {
    (void)context, (void)boxes;
  }
};

// The picture of an underlay by the name in the layout; a null image if there is none.
using Pictures = std::function<QImage(const std::string& name)>;
// From files beside the layout, each read once.
Pictures picturesIn(const QString& folder);

// The items of a layout in the order of painting. What has an empty id (walls) is no thing: it is painted,
// never meant.
std::vector<std::unique_ptr<Item>> itemsOf(const layout::Layout& layout, const layout::DeviceKinds& kinds,
                                           const Pictures& pictures = {});

}  // namespace stopwalk::plan
