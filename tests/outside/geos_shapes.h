#pragma once

#include <geos_c.h>

#include <memory>
#include <utility>
#include <vector>

#include "core/geometry/point.h"

// A thin, owning face of GEOS for the checks of this folder.
namespace stopwalk::outside {

using geometry::Point;
using geometry::Polygon;
using geometry::Segment;

struct GeosDelete {
  void operator()(GEOSGeometry* shape) const;
};
using Shape = std::unique_ptr<GEOSGeometry, GeosDelete>;

// A piece of the plane: an outer ring and the rings of its holes.
struct Piece {
  Polygon outer;
  std::vector<Polygon> holes;
};

Shape polygonShape(const Polygon& ring);
Shape pieceShape(const Piece& piece);
Shape diskShape(Point centre, double radius, int chords_a_quarter);
// All points within `radius` of the segment; ends rounded by chords that lie inside the true arc.
Shape capsuleShape(const Segment& segment, double radius, int chords_a_quarter);

Shape unionOf(std::vector<Shape> shapes);
Shape difference(const Shape& a, const Shape& b);
Shape intersection(const Shape& a, const Shape& b);

double area(const Shape& shape);
bool covers(const Shape& shape, Point p);
double distanceTo(const Shape& shape, Point p);
Point nearestPointOf(const Shape& shape, Point p);
// Lower left and upper right corner of what it covers; empty shapes give two equal points.
std::pair<Point, Point> bounds(const Shape& shape);
Point somePointOf(const Shape& shape);
std::vector<Piece> piecesOf(const Shape& shape);

}  // namespace stopwalk::outside
