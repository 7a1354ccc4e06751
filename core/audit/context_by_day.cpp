// Which ways after hours are those of the day.
#include <algorithm>

#include "core/audit/context_parts.h"
#include "core/floor/mesh.h"
#include "core/floor/thinned.h"
#include "core/floor/walk_change.h"

namespace stopwalk::audit {
namespace {

using geometry::Box;

constexpr double kClear_mm = floor::kMeasuringClearance_mm + floor::kLengthMargin_mm;

bool isAmong(const std::vector<floor::Passage>& all, const floor::Passage& passage) {
  return std::ranges::find(all, passage) != all.end();
}

Box boxOf(const Place& place) {
  Box box;
  for (const Point p : place.points) box.add(p);
  for (const geometry::Segment& s : place.lines) box.add(geometry::boxOf(s));
  return box;
}

}  // namespace

WaysByDay::WaysByDay(const Context& day, const Context::OtherHours& after)
    : phones_(day.phones.size()), known_(day.stations.size(), false) {
  comparable_ =
      floor::originOf(day.plan) == floor::originOf(after.plan) &&
      std::ranges::all_of(after.plan.passages, [&](const auto& p) { return isAmong(day.plan.passages, p); });
  for (const floor::Passage& p : day.plan.passages)
    if (!isAmong(after.plan.passages, p)) shut_.push_back(floor::outlineOf(p));
  for (std::size_t p = 0; p < phones_.size(); ++p) look(p, day, after);
  if (phones_.size() > 1) findParts(after);  // while the floor after hours is still there whole
}

void WaysByDay::findParts(const Context::OtherHours& after) {
  for (std::size_t p = 0; p < phones_.size(); ++p)
    phones_[p].parts = after.walks->parts(after.phones[p].standing.place, floor::kMeasuringClearance_mm);
  parts_hold_ = true;
}

void WaysByDay::look(std::size_t phone, const Context& day, const Context::OtherHours& after) {
  const Place &place = day.phones[phone].standing.place, &then = after.phones[phone].standing.place;
  const auto isPlain = [&](Point at) {
    const Point path[] = {at, at};
    return day.walks.keeps(at, floor::kMeasuringClearance_mm) && keepsFromDoors(path);
  };
  const bool same = place.points == then.points && place.lines == then.lines;
  phones_[phone].same_place = same;
  phones_[phone].plain = same && place.lines.empty() && std::ranges::all_of(place.points, isPlain);
}

void WaysByDay::phonesMoved(const Context& day, const Context::OtherHours& after, std::span<const Box> moved,
                            bool all) {
  bool changed = all;
  for (std::size_t p = 0; p < phones_.size(); ++p) {
    const Box round = boxOf(day.phones[p].standing.place).grown(kClear_mm);
    if (!all && std::ranges::none_of(moved, [&](const Box& box) { return overlap(box, round); })) continue;
    const bool was_plain = phones_[p].plain;
    look(p, day, after);
    changed = changed || phones_[p].plain != was_plain;
  }
  if (!changed) return;
  std::ranges::fill(known_, false);
  parts_hold_ = false;
}

bool WaysByDay::keepsFromDoors(std::span<const Point> path) const {
  return std::ranges::all_of(shut_,
                             [&](const auto& door) { return floor::keepsFrom(path, door, kClear_mm); });
}

bool WaysByDay::isSame(std::size_t station, const Context& day, const Context::OtherHours& after) {
  const Way& way = day.phone_ways[station];
  const bool sure = !day.phones_reached.traces[station].all;
  if (known_[station] && sure) return true;
  known_[station] = false;
  if (!comparable_ || way.status != Status::Walk || way.stepped || way.path.empty() || !sure ||
      !keepsFromDoors(way.path))
    return false;
  const Phone& nearest = phones_[*way.index];
  const Point from = day.stations[station].at;
  const double reach = way.walk_m * 1000 + floor::kLengthMargin_mm;
  for (std::size_t p = 0; p < phones_.size(); ++p) {
    const Place& place = after.phones[p].standing.place;
    if (!phones_[p].same_place) return false;
    if (place.empty() || distance(boxOf(place), from) > reach) continue;
    if (!phones_[p].plain) return false;
    if (p == *way.index) continue;
    if (!parts_hold_) findParts(after);
    if (phones_[p].parts.size() != 1 || phones_[p].parts != nearest.parts) return false;
  }
  known_[station] = true;
  return true;
}

std::size_t Context::seekPhonesThen(OtherHours& other, std::span<const std::size_t> who) const {
  other.ways.of.resize(stations.size());
  other.ways.traces.resize(stations.size());
  std::vector<std::size_t> rest;
  for (const std::size_t s : who) {
    if (!other.by_day || !other.by_day->isSame(s, *this, other)) {
      rest.push_back(s);
      continue;
    }
    other.ways.of[s] = phone_ways[s];
    other.ways.traces[s] = phones_reached.traces[s];
  }
  seekPhones(*other.walks, other.phones, rest, other.ways);
  return who.size() - rest.size();
}

}  // namespace stopwalk::audit
