#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

#include "core/geometry/box_tree.h"
#include "core/geometry/polygon.h"

namespace stopwalk::geometry {

enum class Side { Outside, On, Inside };

// An outline that answers questions about places in a time that hardly grows with its corners. May be empty.
class IndexedPolygon {
 public:
  IndexedPolygon() = default;
  explicit IndexedPolygon(Polygon corners);

  const Polygon& corners() const { return corners_; }
  const Box& box() const { return box_; }
  bool empty() const { return corners_.empty(); }

  // Inside or outside by the even-odd rule; within `near` of the outline: on it.
  Side sideOf(Point p, double near = kOnOutline_mm) const;
  bool holds(Point p, double near = kOnOutline_mm) const { return sideOf(p, near) != Side::Outside; }
  // From the outline, on either side of it.
  double distanceToOutline(Point p) const;
  // From the filled polygon: 0 inside. Infinite from one that is empty.
  double distanceTo(Point p) const;
  // Whether some point of the filled polygon is within `reach` of the segment.
  bool isWithin(double reach, Segment s) const;

  // Calls `found(edge index)` for the edges near `area` until it returns true. Whether it did.
  template <class Found>
  bool anyEdge(const Box& area, Found&& found) const {
    if (indexed()) return edges_.any(area, found);
    for (std::size_t i = 0; i < corners_.size(); ++i)
      if (overlap(boxOf(edgeOf(corners_, i)), area) && found(i)) return true;
    return false;
  }

  // The same for the edges within `margin` of the line.
  template <class Found>
  bool anyEdge(Segment line, double margin, Found&& found) const {
    if (indexed()) return edges_.any(line, margin, found);
    return anyEdge(boxOf(line).grown(margin), found);
  }

 private:
  bool indexed() const { return corners_.size() > 16; }

  Polygon corners_;
  Box box_;
  BoxTree edges_;  // only of many
};

// Whether some point of one lies inside the other, deeper than `depth` from its outline.
bool overlapDeeper(const IndexedPolygon& a, const IndexedPolygon& b, double depth);

// Many polygons, found by place.
class IndexedPolygons {
 public:
  IndexedPolygons() = default;
  explicit IndexedPolygons(std::vector<IndexedPolygon> polygons);

  std::size_t size() const { return polygons_.size(); }
  const IndexedPolygon& operator[](std::size_t i) const { return polygons_[i]; }
  const BoxTree& boxes() const { return boxes_; }
  // Neither the old one nor the new one may be empty.
  void replace(std::size_t i, IndexedPolygon polygon) {
    boxes_.move(i, polygon.box());
    polygons_[i] = std::move(polygon);
  }

  // The first that holds `p` (outline included).
  std::optional<std::size_t> firstHolding(Point p) const;
  // Whether `p` is strictly inside any.
  bool anyInside(Point p) const;

 private:
  std::vector<IndexedPolygon> polygons_;
  BoxTree boxes_;
};

}  // namespace stopwalk::geometry
