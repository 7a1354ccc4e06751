#include "core/floor/near_places.h"

#include <algorithm>
#include <limits>
#include <numeric>

namespace stopwalk::floor {

namespace {

std::vector<geometry::Box> boxesOf(std::span<const Place> places) {
  std::vector<geometry::Box> boxes(places.size());
  for (std::size_t i = 0; i < places.size(); ++i) {
    for (Point p : places[i].points) boxes[i].add(p);
    for (const Segment& s : places[i].lines) boxes[i].add(geometry::boxOf(s));
  }
  return boxes;
}

}  // namespace

double straightLineTo(Point p, const Place& place) {
  double least = std::numeric_limits<double>::infinity();
  for (Point q : place.points) least = std::min(least, distance(p, q));
  for (const Segment& s : place.lines) least = std::min(least, distance(s, p));
  return least;
}

NearPlaces::NearPlaces(std::span<const Place> places) : places_(places), tree_(boxesOf(places)) {}

std::vector<std::size_t> NearPlaces::within(Point p, double radius) const {
  std::vector<std::size_t> found;
  if (radius == std::numeric_limits<double>::infinity()) {
    found.resize(places_.size());
    std::iota(found.begin(), found.end(), std::size_t{0});
    return found;
  }
  tree_.any(geometry::boxOf(p).grown(radius), [&](std::size_t i) {
    if (straightLineTo(p, places_[i]) <= radius) found.push_back(i);
    return false;
  });
  std::ranges::sort(found);
  return found;
}

}  // namespace stopwalk::floor
