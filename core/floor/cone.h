#pragma once

#include "core/floor/tangent.h"
#include "core/floor/turns.h"

namespace stopwalk::floor {

// The directions in which a walk can leave a disk tangentially and reach a triangle: between `right` and
// `left`, unit vectors at most a quarter turn apart.
struct Cone {
  Mesh::Index triangle = Mesh::kNone;
  Mesh::Index entered = Mesh::kNone;  // the triangle's gate that it came in by; kNone where it starts
  Point right, left;
};

// Directions nearer than this are one: a hundred-thousandth of a millimetre over fifty metres.
inline constexpr double kAngle = 2e-10;
// How far rounding to the lattice may move a line.
inline constexpr double kDrift_mm = 4e-6;

// Points are rounded to the lattice, so the direction of a piece of length `run` is known no better than
// this.
inline double doubt(double run) {
  return kAngle + kDrift_mm / std::max(run, 100 * kDrift_mm);
}

// Twice as much as doubt ever is, and some more.
inline constexpr double kWidestDoubt = 0.03;

inline bool within(const Cone& cone, const Tangent& t) {
  const double slack = doubt(t.run);
  return cross(cone.right, t.direction) >= -slack && cross(t.direction, cone.left) >= -slack &&
         dot(t.direction, cone.right) + dot(t.direction, cone.left) > 0;
}

// The part of the cone that passes the gate, as a cone of the triangle beyond. False if nothing can.
inline bool narrow(const Cone& cone, const Disk& from, const Turns::Gate& gate, Cone& beyond) {
  beyond = {gate.beyond, gate.back, cone.right, cone.left};
  // Only what goes outwards leaves here; without this, what lies behind the disk would pass for ahead.
  const Point out = -leftOf(gate.along);
  const double right_out = dot(cone.right, out), left_out = dot(cone.left, out);
  if (right_out <= 0 && left_out <= 0) return false;
  if (left_out <= 0) beyond.left = gate.along;
  if (right_out <= 0) beyond.right = -gate.along;
  const auto sideOf = [&](Point p, Point d) { return cross(d, p - from.centre) + from.radius; };
  // An end of the gate on the wrong side cuts the cone if it lies ahead. Behind, it shuts the cone out,
  // except on the side to which the disk curves away: there the cut lies a little back along the arc.
  if (sideOf(gate.left, beyond.left) < -1e-7) {
    if (from.radius <= 0 && dot(gate.left - from.centre, beyond.left) <= 0) return false;
    if (const auto t = tangent(from, {gate.left, 0}, 2 * kRounding_mm)) beyond.left = t->direction;
  }
  if (sideOf(gate.right, beyond.right) > 1e-7) {
    if (from.radius >= 0 && dot(gate.right - from.centre, beyond.right) <= 0) return false;
    if (const auto t = tangent(from, {gate.right, 0}, 2 * kRounding_mm)) beyond.right = t->direction;
  }
  return cross(beyond.right, beyond.left) >= -kAngle && dot(beyond.right, beyond.left) > -0.5;
}

}  // namespace stopwalk::floor
