#pragma once

#include <string>
#include <utility>

#include "core/layout/layout.h"

// Short ways to draw a layout in a test. Millimetres.
namespace stopwalk::draw {

using geometry::Point;
using geometry::Polygon;

inline Polygon box(double left, double bottom, double right, double top) {
  return {{left, bottom}, {right, bottom}, {right, top}, {left, top}};
}

inline layout::Room room(std::string id, Polygon outline) {
  layout::Room r;
  r.id = std::move(id);
  r.outline = std::move(outline);
  return r;
}

inline layout::Door door(std::string id, std::string first, std::string second, Point at, double width,
                         layout::Locked locked = layout::Locked::Never) {
  return {std::move(id), std::move(first), std::move(second), at, width, locked, {}};
}

inline layout::Fixture bench(std::string id, Point at, double width, double depth, std::optional<double> height = {}) {
  layout::Fixture f;
  f.id = std::move(id);
  f.at = at;
  f.footprint = layout::Rectangle{width, depth};
  f.height = height;
  return f;
}

inline layout::Machine machine(std::string id, Point at, double width, double depth, std::optional<double> height = {}) {
  layout::Machine m;
  m.id = std::move(id);
  m.at = at;
  m.footprint = layout::Rectangle{width, depth};
  m.height = height;
  return m;
}

inline layout::Station station(std::string id, Point at) {
  layout::Station s;
  s.id = std::move(id);
  s.at = at;
  return s;
}

inline layout::Device device(std::string id, std::string kind, Point at, double faces = 270, std::optional<double> height = {}) {
  layout::Device d;
  d.id = std::move(id);
  d.kind = std::move(kind);
  d.at = at;
  d.faces = faces;
  d.height = height;
  return d;
}

inline layout::Phone phone(std::string id, Point at, double faces) {
  layout::Phone p;
  p.id = std::move(id);
  p.at = at;
  p.faces = faces;
  return p;
}

// The layout turned about the origin, then moved: every answer must be the same.
inline layout::Layout carried(layout::Layout l, double turn, Point by) {
  const auto carry = [&](Point& p) { p = geometry::turned(p, turn) + by; };
  for (layout::Room& r : l.rooms)
    for (Point& p : r.outline) carry(p);
  for (layout::Door& d : l.doors) carry(d.at);
  for (layout::Fixture& f : l.fixtures) carry(f.at), f.turn += turn;
  for (layout::Machine& m : l.machines) carry(m.at), m.turn += turn;
  for (layout::Device& d : l.devices) carry(d.at), d.faces += turn;
  for (layout::Phone& p : l.phones) carry(p.at), p.faces += turn;
  return l;
}

}  // namespace stopwalk::draw
