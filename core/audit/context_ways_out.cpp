// Which stations have a way out of the building: asked by exit-width, and kept up while things are moved.
#include <algorithm>
#include <numeric>

#include "core/audit/context_parts.h"
#include "core/floor/walk_change.h"

namespace stopwalk::audit {
namespace {

using geometry::Box;

std::vector<Point> joinedUp(const std::vector<std::vector<Point>>& lists) {
  std::vector<Point> all;
  for (const std::vector<Point>& list : lists) all.insert(all.end(), list.begin(), list.end());
  return all;
}

}  // namespace

const WaysOut& Context::waysOut(double width_mm) const {
  const auto [it, fresh] = ways_out_.try_emplace(width_mm);
  WaysOut& out = it->second;
  if (!fresh) return out;
  for (const Exit& e : exits()) {
    const bool wide = layout.doors[e.door].width >= width_mm - kRounding;
    out.any_wide = out.any_wide || wide;
    out.gates.push_back(wide ? gatesBefore(*this, e, width_mm) : std::vector<Point>{});
  }
  out.leads.resize(stations.size());
  std::vector<std::size_t> all(stations.size());
  std::iota(all.begin(), all.end(), std::size_t{0});
  seekWaysOut(all, width_mm, out);
  return out;
}

// On the whole floor.
void Context::seekWaysOut(std::span<const std::size_t> who, double width_mm, WaysOut& out) const {
  std::vector<Point> from;
  for (const std::size_t s : who) from.push_back(stations[s].at);
  const std::vector<char> leads = walks.leadTo(from, joinedUp(out.gates), width_mm / 2);
  for (std::size_t i = 0; i < who.size(); ++i) out.leads[who[i]] = leads[i];
}

std::vector<std::size_t> Context::stationsNear(const std::vector<Box>& places, double distance_mm) const {
  std::vector<std::size_t> near;
  for (const Box& place : places)
    station_tree_.any(place.grown(distance_mm), [&](std::size_t s) { return near.push_back(s), false; });
  std::ranges::sort(near);
  near.erase(std::ranges::unique(near).begin(), near.end());
  return near;
}

// Whether the gates are those that they were.
bool Context::moveGates(const std::vector<Box>& places, double width_mm, WaysOut& out) const {
  bool stay = true;
  for (std::size_t e = 0; e < out.gates.size(); ++e) {
    const Exit& exit = exits()[e];
    const Box near = geometry::boxOf(exit.beyond ? exit.beyond->opening : exit.opening).grown(2 * width_mm);
    if (layout.doors[exit.door].width < width_mm - kRounding) continue;
    if (std::ranges::none_of(places, [&](const Box& place) { return overlap(place, near); })) continue;
    std::vector<Point> gates = gatesBefore(*this, exit, width_mm);
    stay = stay && gates == out.gates[e];
    out.gates[e] = std::move(gates);
  }
  return stay;
}

// While nothing is joined or parted, a station far from what moved leads where it did, and one near it where
// one leads that is far and to which it is joined. Those of which that tells nothing come back.
std::vector<std::size_t> Context::moveLeads(const std::vector<Box>& places, double width_mm,
                                            WaysOut& out) const {
  constexpr double kRoundOthers_mm = 4000;
  const std::vector<std::size_t> near = stationsNear(places, floor::kRoundEnds_mm);
  std::vector<std::size_t> who = stationsNear(places, kRoundOthers_mm);
  std::vector<Point> points;
  for (const std::size_t s : who) points.push_back(stations[s].at);
  const auto parts = walks.joinedNearby(points, width_mm / 2);
  const auto isNear = [&](std::size_t s) { return std::ranges::binary_search(near, s); };
  std::map<std::int32_t, char> leads;
  for (std::size_t i = 0; i < who.size(); ++i)
    if (parts[i] && !isNear(who[i])) leads.emplace(*parts[i], out.leads[who[i]]);
  std::vector<std::size_t> untold;
  for (std::size_t i = 0; i < who.size(); ++i) {
    if (!isNear(who[i])) continue;
    const auto told = parts[i] ? leads.find(*parts[i]) : leads.end();
    if (told != leads.end())
      out.leads[who[i]] = told->second;
    else
      untold.push_back(who[i]);
  }
  return untold;
}

void Context::moveWaysOut(Moving& moving) {
  const std::vector<Box>& places = moving.changed.places;
  for (auto& [width_mm, out] : ways_out_) {
    const std::vector<char> before = out.leads;
    if (moveGates(places, width_mm, out) && walks.partsStay(width_mm / 2)) {
      seekWaysOut(moveLeads(places, width_mm, out), width_mm, out);
    } else {
      std::vector<std::size_t> all(stations.size());
      std::iota(all.begin(), all.end(), std::size_t{0});
      seekWaysOut(all, width_mm, out);
    }
    for (std::size_t s = 0; s < stations.size(); ++s)
      if (out.leads[s] != before[s]) moving.changed.stations.push_back(s);
  }
}

}  // namespace stopwalk::audit
