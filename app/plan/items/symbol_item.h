#pragma once

#include "app/plan/items/item.h"
#include "app/plan/symbols.h"

namespace stopwalk::plan {

// What is shown by a symbol at its place and a small mark for its facing. A dot where there is no room.
class SymbolItem : public Item {
 public:
  struct Look {
    geometry::Point at;
    double faces = 0;  // degrees in the plan
    std::string key;
    Ground ground = Ground::Plain;
    double room_mm = 1000;  // how large the symbol may be
  };

  SymbolItem(edits::Thing item_thing, std::string item_id, Look look);
  geometry::Box bounds() const override { return geometry::boxOf(look_.at); }
  std::optional<double> distanceTo(geometry::Point at, double mm_per_pixel) const override;
  void paint(QPainter& painter, const PaintContext& context) const override;
  void addCovered(const PaintContext& context, std::vector<QRectF>& boxes) const override;

 protected:
  const Look& look() const { return look_; }
  bool isDot(const PaintContext& context) const;
  QRectF square(const PaintContext& context) const;

 private:
  void paintFacing(QPainter& painter, const PaintContext& context, const QRectF& box) const;
  void paintMark(QPainter& painter, const PaintContext& context, const QRectF& box) const;

  Look look_;
};

}  // namespace stopwalk::plan
