#include <algorithm>
#include <limits>

#include "core/planning/tour_ring.h"

namespace stopwalk::planning {
namespace {

constexpr int kSteps = 400;

// The shortest tree over all places but the last, and the last's two shortest legs.
struct OneTree {
  double length = 0;
  std::vector<int> degree;
};

struct Weighted {
  const Legs& legs;
  const std::vector<double>& weight;
  double operator()(std::size_t a, std::size_t b) const { return legs(a, b) + weight[a] + weight[b]; }
};

// Prim's: n^2.
void addTree(OneTree& tree, const Weighted& leg, std::size_t places) {
  std::vector<double> nearest(places, std::numeric_limits<double>::infinity());
  std::vector<std::size_t> from(places);
  std::vector<bool> is_in(places);
  for (std::size_t added = 0, p = 0; added < places; ++added) {
    is_in[p] = true;
    if (added > 0) {
      tree.length += nearest[p];
      ++tree.degree[p];
      ++tree.degree[from[p]];
    }
    std::size_t next = places;
    for (std::size_t q = 0; q < places; ++q) {
      if (is_in[q]) continue;
      if (leg(p, q) < nearest[q]) nearest[q] = leg(p, q), from[q] = p;
      if (next == places || nearest[q] < nearest[next]) next = q;
    }
    p = next;
  }
}

void addTwoLegs(OneTree& tree, const Weighted& leg, std::size_t last) {
  std::size_t first = 0, second = 1;
  if (leg(last, second) < leg(last, first)) std::swap(first, second);
  for (std::size_t p = 2; p < last; ++p) {
    if (leg(last, p) < leg(last, first))
      second = first, first = p;
    else if (leg(last, p) < leg(last, second))
      second = p;
  }
  tree.length += leg(last, first) + leg(last, second);
  ++tree.degree[first];
  ++tree.degree[second];
  tree.degree[last] += 2;
}

}  // namespace

double ringBound(const Legs& legs, double length_mm) {
  const std::size_t n = legs.places();
  std::vector<double> weight(n);
  std::vector<int> former(n, 2);
  double best = -std::numeric_limits<double>::infinity(), pace = 1;
  int without_gain = 0;
  for (int step = 0; step < kSteps; ++step) {
    OneTree tree{0, std::vector<int>(n)};
    const Weighted leg{legs, weight};
    addTree(tree, leg, n - 1);
    addTwoLegs(tree, leg, n - 1);
    double bound = tree.length;
    for (const double w : weight) bound -= 2 * w;
    without_gain = bound > best ? 0 : without_gain + 1;
    best = std::max(best, bound);
    if (without_gain == 10) pace /= 2, without_gain = 0;

    double off = 0;
    for (const int d : tree.degree) off += (d - 2) * (d - 2);
    if (off == 0) break;  // the tree is a ring
    const double stride = pace * std::max(length_mm - bound, 0.0) / off;
    for (std::size_t p = 0; p < n; ++p)
      weight[p] += stride * (0.7 * (tree.degree[p] - 2) + 0.3 * (former[p] - 2));
    former = tree.degree;
  }
  return best;
}

}  // namespace stopwalk::planning
