#include "app/poster/call_outs.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <numeric>
#include <random>

#include "app/poster/call_out_rules.h"

namespace stopwalk::poster {
namespace {

constexpr int kDirections = 16;
constexpr double kLeaders_mm[] = {2.5, 5, 8, 12, 17, 24, 32};
constexpr int kAttempts = 24;
constexpr double kLed = 6;  // what a leader costs besides its length

struct Candidate {
  PlacedCallOut placed;
  double cost = 0;
};

double coverCost(const QRectF& box, const CallOutArea& area) {
  double cost = 0;
  for (const CallOutArea::Dear& dear : area.dear) {
    const QRectF shared = box.intersected(dear.box);
    if (!shared.isEmpty())
      cost +=
          dear.cost * shared.width() * shared.height() / std::max(dear.box.width() * dear.box.height(), 1e-9);
  }
  return cost;
}

// A box whose nearest point to the anchor is `away` from it in that direction.
PlacedCallOut beside(const CallOut& c, double radians, double away) {
  const QPointF d(std::cos(radians), std::sin(radians));
  const QPointF reach(d.x() * (away + c.size.width() / 2), d.y() * (away + c.size.height() / 2));
  QRectF box(QPointF(), c.size);
  box.moveCenter(c.anchor + reach);
  return {box, QLineF(c.anchor, nearestOf(box, c.anchor))};
}

// From the cheapest on; only those that can stand at all.
std::vector<Candidate> candidatesOf(std::size_t i, const std::vector<CallOut>& all, const CallOutArea& area) {
  std::vector<Candidate> good;
  const auto add = [&](const PlacedCallOut& placed, double cost) {
    if (standsAlone(i, placed, all, area)) good.push_back({placed, cost + coverCost(placed.box, area)});
  };
  QRectF over(QPointF(), all[i].size);
  over.moveCenter(all[i].anchor);
  add({over, QLineF()}, 0);
  for (const double away : kLeaders_mm)
    for (int k = 0; k < kDirections; ++k)
      add(beside(all[i], 2 * std::numbers::pi * k / kDirections, away), kLed + away);
  std::ranges::stable_sort(good, {}, &Candidate::cost);
  return good;
}

struct Attempt {
  std::vector<PlacedCallOut> placed;
  double cost = 0;
};

std::optional<Attempt> attempt(const std::vector<std::vector<Candidate>>& candidates,
                               const std::vector<std::size_t>& order) {
  Attempt result{std::vector<PlacedCallOut>(candidates.size()), 0};
  std::vector<std::size_t> done;
  for (const std::size_t i : order) {
    const auto fits = [&](const Candidate& c) {
      return std::ranges::all_of(done,
                                 [&](std::size_t k) { return standTogether(c.placed, result.placed[k]); });
    };
    const auto found = std::ranges::find_if(candidates[i], fits);
    if (found == candidates[i].end()) return std::nullopt;
    result.placed[i] = found->placed;
    result.cost += found->cost;
    done.push_back(i);
  }
  return result;
}

}  // namespace

std::optional<std::vector<PlacedCallOut>> placeCallOuts(const std::vector<CallOut>& call_outs,
                                                        const CallOutArea& area) {
  std::vector<std::vector<Candidate>> candidates;
  for (std::size_t i = 0; i < call_outs.size(); ++i) candidates.push_back(candidatesOf(i, call_outs, area));

  // First those with the least choice, then in other orders; the cheapest of all is taken.
  std::vector<std::size_t> order(call_outs.size());
  std::iota(order.begin(), order.end(), 0);
  std::ranges::stable_sort(order, {}, [&](std::size_t i) { return candidates[i].size(); });
  std::mt19937 random(1);
  std::optional<Attempt> best;
  for (int n = 0; n < kAttempts; ++n) {
    if (const auto found = attempt(candidates, order); found && (!best || found->cost < best->cost))
      best = found;
    // Fisher and Yates by hand: std::shuffle differs between libraries.
    for (std::size_t k = order.size(); k > 1; --k) std::swap(order[k - 1], order[random() % k]);
  }
  if (best) return best->placed;
  return placeInRing(call_outs, area);
}

}  // namespace stopwalk::poster
