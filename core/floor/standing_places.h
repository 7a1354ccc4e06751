#pragma once

#include <functional>
#include <optional>
#include <vector>

#include "core/floor/floor_index.h"
#include "core/floor/obstacles.h"
#include "core/floor/surroundings.h"

namespace stopwalk::floor {

// Where one device is used from, by docs/measuring.md.
class StandingPlaces {
 public:
  // What is between a standing place and the device's point that it serves.
  using Between = std::function<std::optional<Obstacles::Obstacle>(Segment line)>;

  StandingPlaces(const PlacedDevice& device, const FloorIndex& index, const Obstacles& obstacles,
                 Between between);

  struct Found {
    Place place;                                 // empty: blocked
    std::optional<Point> on_floor;               // a place on the floor, whatever stands between
    std::optional<Obstacles::Obstacle> between;  // why blocked, if there is a place on the floor
  };
  Found find() const;

 private:
  double from() const { return device_.foot ? kFootStanding_mm : kHandStanding_mm; }
  double upTo() const { return device_.foot ? kFootStanding_mm : kHandReach_mm; }
  Found findPoint() const;
  Found findLine() const;
  // Places along the ray before the device, in mm from it, at which the floor may begin, in order.
  std::vector<double> begins() const;
  // Places along the bar's line at which the floor or the way back to the bar may begin or end, in order.
  std::vector<double> changes() const;
  // On the floor, not in a crack between two solids or at the foot of a solid that fills a corner.
  bool canStand(Point p) const;
  // How far before the device one stands at this place of its frame: at y; where a wall without thickness
  // runs through it, a touch before that, on the device's side. None: one cannot stand there.
  std::optional<double> standsAt(double x, double y) const;
  bool isOnWallAcross(geometry::Point here) const;
  template <class Visit>
  void eachEdge(const geometry::Box& area, Visit&& visit) const;

  const PlacedDevice& device_;
  const FloorIndex& index_;
  const Obstacles& obstacles_;
  Between between_;
  geometry::Frame frame_;  // x along a bar, y towards the user
};

}  // namespace stopwalk::floor
