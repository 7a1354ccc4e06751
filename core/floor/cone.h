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

inline bool within(const Cone& cone, const Tangent& t) {
  const double slack = doubt(t.run);
  return cross(cone.right, t.direction) >= -slack && cross(t.direction, cone.left) >= -slack &&
         dot(t.direction, cone.right) + dot(t.direction, cone.left) > 0;
}

// The part of the cone that passes the gate, as a cone of the triangle beyond. False if nothing can.
bool narrow(const Cone& cone, const Disk& from, const Turns::Gate& gate, Cone& beyond);

}  // namespace stopwalk::floor
