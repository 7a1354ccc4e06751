#include "tests/outside/geos_shapes.h"

#include <cstdarg>
#include <cstdio>
#include <stdexcept>

namespace stopwalk::outside {
namespace {

void complain(const char* message, void*) {
  std::fprintf(stderr, "GEOS: %s\n", message);
}

GEOSContextHandle_t context() {
  static const GEOSContextHandle_t handle = [] {
    GEOSContextHandle_t made = GEOS_init_r();
    GEOSContext_setErrorMessageHandler_r(made, complain, nullptr);
    return made;
  }();
  return handle;
}

Shape owned(GEOSGeometry* shape) {
  if (!shape) throw std::runtime_error("GEOS gave no result");
  return Shape(shape);
}

GEOSGeometry* ringShape(const Polygon& ring) {
  const auto size = static_cast<unsigned>(ring.size());
  GEOSCoordSequence* points = GEOSCoordSeq_create_r(context(), size + 1, 2);
  for (unsigned i = 0; i <= size; ++i)
    GEOSCoordSeq_setXY_r(context(), points, i, ring[i % size].x, ring[i % size].y);
  return GEOSGeom_createLinearRing_r(context(), points);
}

Shape pointShape(Point p) {
  return owned(GEOSGeom_createPointFromXY_r(context(), p.x, p.y));
}

Polygon ringPoints(const GEOSGeometry* ring) {
  const GEOSCoordSequence* points = GEOSGeom_getCoordSeq_r(context(), ring);
  unsigned size = 0;
  GEOSCoordSeq_getSize_r(context(), points, &size);
  Polygon out;
  for (unsigned i = 0; i + 1 < size; ++i) {  // the last repeats the first
    Point p;
    GEOSCoordSeq_getXY_r(context(), points, i, &p.x, &p.y);
    if (out.empty() || !(out.back() == p)) out.push_back(p);
  }
  return out;
}

}  // namespace

void GeosDelete::operator()(GEOSGeometry* shape) const {
  GEOSGeom_destroy_r(context(), shape);
}

Shape polygonShape(const Polygon& ring) {
  return owned(GEOSGeom_createPolygon_r(context(), ringShape(ring), nullptr, 0));
}

Shape pieceShape(const Piece& piece) {
  std::vector<GEOSGeometry*> holes;
  for (const Polygon& hole : piece.holes) holes.push_back(ringShape(hole));
  return owned(GEOSGeom_createPolygon_r(context(), ringShape(piece.outer), holes.data(),
                                        static_cast<unsigned>(holes.size())));
}

Shape diskShape(Point centre, double radius, int chords_a_quarter) {
  return owned(GEOSBuffer_r(context(), pointShape(centre).get(), radius, chords_a_quarter));
}

Shape capsuleShape(const Segment& segment, double radius, int chords_a_quarter) {
  // Segment by segment: along a longer line GEOS first smooths its shallow hollows away.
  if (segment.a == segment.b) return diskShape(segment.a, radius, chords_a_quarter);
  GEOSCoordSequence* points = GEOSCoordSeq_create_r(context(), 2, 2);
  GEOSCoordSeq_setXY_r(context(), points, 0, segment.a.x, segment.a.y);
  GEOSCoordSeq_setXY_r(context(), points, 1, segment.b.x, segment.b.y);
  const Shape line = owned(GEOSGeom_createLineString_r(context(), points));
  return owned(GEOSBuffer_r(context(), line.get(), radius, chords_a_quarter));
}

Shape unionOf(std::vector<Shape> shapes) {
  std::vector<GEOSGeometry*> parts;
  for (Shape& shape : shapes) parts.push_back(shape.release());
  const Shape all = owned(GEOSGeom_createCollection_r(context(), GEOS_GEOMETRYCOLLECTION, parts.data(),
                                                      static_cast<unsigned>(parts.size())));
  return owned(GEOSUnaryUnion_r(context(), all.get()));
}

Shape difference(const Shape& a, const Shape& b) {
  return owned(GEOSDifference_r(context(), a.get(), b.get()));
}
Shape intersection(const Shape& a, const Shape& b) {
  return owned(GEOSIntersection_r(context(), a.get(), b.get()));
}

double area(const Shape& shape) {
  double value = 0;
  GEOSArea_r(context(), shape.get(), &value);
  return value;
}

bool covers(const Shape& shape, Point p) {
  return GEOSCovers_r(context(), shape.get(), pointShape(p).get()) == 1;
}

double distanceTo(const Shape& shape, Point p) {
  double value = 0;
  GEOSDistance_r(context(), shape.get(), pointShape(p).get(), &value);
  return value;
}

Point nearestPointOf(const Shape& shape, Point p) {
  GEOSCoordSequence* pair = GEOSNearestPoints_r(context(), shape.get(), pointShape(p).get());
  if (!pair) throw std::runtime_error("GEOS found no nearest point");
  Point nearest;
  GEOSCoordSeq_getXY_r(context(), pair, 0, &nearest.x, &nearest.y);
  GEOSCoordSeq_destroy_r(context(), pair);
  return nearest;
}

std::pair<Point, Point> bounds(const Shape& shape) {
  std::pair<Point, Point> box;
  if (GEOSisEmpty_r(context(), shape.get()) == 1) return box;
  GEOSGeom_getXMin_r(context(), shape.get(), &box.first.x);
  GEOSGeom_getYMin_r(context(), shape.get(), &box.first.y);
  GEOSGeom_getXMax_r(context(), shape.get(), &box.second.x);
  GEOSGeom_getYMax_r(context(), shape.get(), &box.second.y);
  return box;
}

Point somePointOf(const Shape& shape) {
  const Shape point = owned(GEOSPointOnSurface_r(context(), shape.get()));
  Point p;
  GEOSGeomGetX_r(context(), point.get(), &p.x);
  GEOSGeomGetY_r(context(), point.get(), &p.y);
  return p;
}

std::vector<Piece> piecesOf(const Shape& shape) {
  std::vector<Piece> pieces;
  const int count = GEOSGetNumGeometries_r(context(), shape.get());
  for (int i = 0; i < count; ++i) {
    const GEOSGeometry* part = GEOSGetGeometryN_r(context(), shape.get(), i);
    if (GEOSGeomTypeId_r(context(), part) != GEOS_POLYGON || GEOSisEmpty_r(context(), part) == 1) continue;
    Piece piece;
    piece.outer = ringPoints(GEOSGetExteriorRing_r(context(), part));
    for (int h = 0; h < GEOSGetNumInteriorRings_r(context(), part); ++h)
      piece.holes.push_back(ringPoints(GEOSGetInteriorRingN_r(context(), part, h)));
    pieces.push_back(std::move(piece));
  }
  return pieces;
}

}  // namespace stopwalk::outside
