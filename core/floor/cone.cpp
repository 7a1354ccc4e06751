#include "core/floor/cone.h"

namespace stopwalk::floor {

bool narrow(const Cone& cone, const Disk& from, const Turns::Gate& gate, Cone& beyond) {
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
