#include "tests/outside/oracle_walks.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace stopwalk::outside {

using floor::kBodyHalfWidth_mm;
using floor::WalkStatus;

OracleWalks::OracleWalks(const floor::Plan& plan, double clearance_mm, Chords chords)
    : plan_(plan), clearance_(clearance_mm), chords_(chords) {}

OracleWalks::Level& OracleWalks::levelAt(double clearance) {
  const auto found = levels_.find(clearance);
  if (found != levels_.end()) return found->second;
  return levels_.emplace(clearance, Level{OracleRegion(plan_, clearance, chords_), {}}).first->second;
}

std::vector<OracleWalks::Entry> OracleWalks::entries(Point place, double clearance) {
  const auto [kept, is_new] = entries_.try_emplace({clearance, {place.x, place.y}});
  std::vector<Entry>& all = kept->second;
  if (!is_new) return all;
  const OracleRegion& region = levelAt(clearance).region;
  if (const auto part = region.partAt(place)) return all = {{*part, place, 0, false}};
  const OracleRegion& body = levelAt(kBodyHalfWidth_mm).region;
  const auto of_body = body.partAt(place);
  for (std::size_t part = 0; part < region.shapes().size(); ++part) {
    // Of more clearance than the body's, each part lies wholly in one part of the body's region.
    if (of_body && clearance >= kBodyHalfWidth_mm &&
        body.partAt(somePointOf(region.shapes()[part])) != of_body)
      continue;
    for (const Step& step : stepsTo(plan_, place, region.shapes()[part], clearance))
      all.push_back({part, step.to, step.length, step.doubtful});
  }
  return all;
}

std::vector<OracleWalk> OracleWalks::at(double clearance, Point from, const std::vector<Point>& to) {
  std::vector<OracleWalk> best(to.size());
  Level& level = levelAt(clearance);
  for (const Entry& a : entries(from, clearance)) {
    std::vector<std::pair<std::size_t, Entry>> ends;
    std::vector<Point> targets;
    for (std::size_t i = 0; i < to.size(); ++i)
      for (const Entry& b : entries(to[i], clearance)) {
        best[i].doubtful = best[i].doubtful || a.doubtful || b.doubtful;
        if (a.part == b.part) ends.push_back({i, b}), targets.push_back(b.at);
      }
    if (ends.empty()) continue;
    const auto ways = level.ways.try_emplace(a.part, std::vector<Piece>{level.region.parts()[a.part]}).first;
    const std::vector<double> lengths = ways->second.lengths({a.at}, targets);
    for (std::size_t k = 0; k < ends.size(); ++k) {
      OracleWalk& walk = best[ends[k].first];
      const double length = a.step + lengths[k] + ends[k].second.step;
      if (walk.status == WalkStatus::Unreachable || length < walk.length_mm)
        walk = {WalkStatus::Walk, length, clearance, walk.doubtful};
    }
  }
  return best;
}

OracleWalk OracleWalks::narrow(Point from, Point to) {
  const double first = std::min(304.0, std::ceil(clearance_) - 1);
  for (double clearance = first; clearance >= kBodyHalfWidth_mm; --clearance) {
    OracleWalk walk = at(clearance, from, {to})[0];
    if (walk.status != WalkStatus::Walk) continue;
    walk.status = WalkStatus::Narrow;
    return walk;
  }
  return {};
}

std::vector<OracleWalk> OracleWalks::fromOne(Point from, const std::vector<Point>& to) {
  std::vector<OracleWalk> walks(to.size(), {WalkStatus::Unmeasured, 0, 0, false});
  if (!onFloor(plan_, from)) return walks;
  std::vector<Point> there;
  for (const Point p : to)
    if (onFloor(plan_, p)) there.push_back(p);
  const std::vector<OracleWalk> found = at(clearance_, from, there);
  for (std::size_t i = 0, k = 0; i < to.size(); ++i) {
    if (!onFloor(plan_, to[i])) continue;
    walks[i] = found[k++];
    if (walks[i].status == WalkStatus::Unreachable) walks[i] = narrow(from, to[i]);
  }
  return walks;
}

}  // namespace stopwalk::outside
