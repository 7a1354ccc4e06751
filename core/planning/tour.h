#pragma once

#include <cstddef>
#include <optional>
#include <vector>

namespace stopwalk::planning {

// How far it is between every two of n places, in mm; the same both ways.
class Legs {
 public:
  explicit Legs(std::size_t places) : places_(places), mm_(places * places) {}
  std::size_t places() const { return places_; }
  double operator()(std::size_t a, std::size_t b) const { return mm_[a * places_ + b]; }
  void set(std::size_t a, std::size_t b, double mm) { mm_[a * places_ + b] = mm_[b * places_ + a] = mm; }

 private:
  std::size_t places_;
  std::vector<double> mm_;
};

struct Tour {
  std::vector<std::size_t> order;  // every place once; begins with the start, if one was asked for
  double length_mm = 0;            // with the way back, where it is closed
  double bound_mm = 0;             // proven: none is shorter
  bool shortest = false;           // proven: it is the shortest
};

// Up to here the shortest is found for certain.
inline constexpr std::size_t kExactPlaces = 13;

// The shortest way past all places: from `start`, or from wherever is best; back to where it began if
// `closed`. Up to kExactPlaces by dynamic programming over subsets (Held and Karp 1962, from memory), beyond
// by search: the length is then one that can be walked, and the shortest is not below `bound_mm`. The legs
// are finite and not negative. The same legs give the same tour.
Tour shortestTour(const Legs& legs, std::optional<std::size_t> start, bool closed);

}  // namespace stopwalk::planning
