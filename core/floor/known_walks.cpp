#include "core/floor/known_walks.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/floor/corridor.h"
#include "core/floor/near_places.h"

namespace stopwalk::floor {

namespace {

constexpr double kInfinite = std::numeric_limits<double>::infinity();

// The numbers that tell one question's places from another's.
std::vector<double> numbersOf(std::span<const Place> places, Asked asked) {
  std::vector<double> numbers{static_cast<double>(asked)};
  for (const Place& place : places) {
    numbers.push_back(static_cast<double>(place.points.size()));
    for (Point p : place.points) numbers.insert(numbers.end(), {p.x, p.y});
    numbers.push_back(static_cast<double>(place.lines.size()));
    for (const Segment& s : place.lines) numbers.insert(numbers.end(), {s.a.x, s.a.y, s.b.x, s.b.y});
  }
  return numbers;
}

}  // namespace

double Known::reach() const {
  if (nearest.walk.status == WalkStatus::Unmeasured) return 0;
  return nearest.index ? nearest.walk.length_mm : at_most;
}

std::optional<Nearest> Known::answer(double other) const {
  // Of two equal ways it hangs on the triangles which is given.
  if (nearest.walk.tied) return std::nullopt;
  if (other == at_most || nearest.walk.status == WalkStatus::Unmeasured) return nearest;
  if (!nearest.index) return other <= at_most ? std::optional(nearest) : std::nullopt;
  const Nearest none{std::nullopt, {}, nearest.sought_narrow};
  if (nearest.walk.length_mm + kLengthMargin_mm <= std::min(at_most, other)) return nearest;
  for (const auto& [bound, was_found] : close_calls)
    if (bound == other) return was_found ? nearest : none;
  // There is none so near.
  return nearest.walk.length_mm - kLengthMargin_mm > other ? std::optional(none) : std::nullopt;
}

void KnownWalks::follow(KnownWalks&& former, WalkFinder* finder, const Plan& before, const Plan& now) {
  PlanChange change = changeBetween(before, now);
  if (!change.comparable || former.clearance_ != clearance_) return;
  position_ = former.position_;
  former_groups_ = std::move(former.groups_);
  for (auto& [numbers, group] : former_groups_) group.former = nullptr;
  on_floor_ = std::move(former.on_floor_);
  changes_ = std::move(former.changes_);
  first_ = former.first_;
  doors_ = std::move(former.doors_);
  ends_ = std::move(former.ends_);
  this->change(std::move(change), finder, before, now);
}

bool KnownWalks::change(PlanChange change, WalkFinder* finder, const Plan& before, const Plan& now) {
  constexpr std::size_t kMostChanges = 128;
  if (!doors_) doors_ = std::make_shared<const DoorBounds>(now);
  if (finder) ends_.add(finder->takeEnds());
  auto last = std::make_unique<WalkChange>(std::move(change), before, now, clearance_, doors_);
  const bool stays = last->partsStay();
  follows_ = stays && !(groups_.empty() && former_groups_.empty());
  if (!stays) {
    forget();
    return false;
  }
  ends_.forgetNear(*last, originOf(now));
  changed_at_ = position_;
  changes_.push_back(std::move(last));
  if (changes_.size() > kMostChanges) changes_.pop_front(), ++first_;
  return true;
}

bool KnownWalks::nextPosition() {
  constexpr std::size_t kLately = 128;
  if (++position_ % kLately != 0) return false;
  const auto isPassed = [&](const Asking& asking) {
    return asking.first > changed_at_ && asking.last + kLately < position_;
  };
  std::erase_if(groups_, [&](const auto& group) { return isPassed(group.second.asking); });
  for (auto& [numbers, group] : groups_)
    std::erase_if(group.of, [&](const auto& answer) { return isPassed(answer.second.asking); });
  return true;
}

void KnownWalks::forget() {
  groups_.clear();
  former_groups_.clear();
  on_floor_.clear();
  first_ = now();
  changes_.clear();
  ends_ = {};
}

KnownWalks::Group& KnownWalks::about(std::span<const Place> places, Asked asked) {
  std::vector<double> numbers = numbersOf(places, asked);
  const auto found = groups_.find(numbers);
  if (found != groups_.end()) {
    found->second.asking.last = position_;
    return found->second;
  }
  const auto former = former_groups_.find(numbers);
  Group& group = groups_[std::move(numbers)];
  group.places.assign(places.begin(), places.end());
  group.asking = {position_, position_};
  if (former != former_groups_.end()) group.former = &former->second;
  return group;
}

bool KnownWalks::holds(Group& group, Point from, Remembered& remembered) {
  if (remembered.as_of == now()) return true;
  if (remembered.as_of < first_) return false;
  if (group.ends.empty()) group.ends = endsOf(group.places, *doors_);
  const Known& known = remembered.known;
  for (std::size_t n = remembered.as_of; n < now(); ++n) {
    const WalkChange& change = *changes_[n - first_];
    if (!change.leaves(known.nearest.walk, known.reach(), from, group.ends)) return false;
    if (known.nearest.sought_narrow && !change.narrowPartsStay()) return false;
  }
  remembered.as_of = now();
  return true;
}

std::optional<Nearest> KnownWalks::kept(Group& group, Point from, double at_most) {
  auto found = group.of.find(from);
  if (found == group.of.end() && group.former)
    if (auto moved = group.former->of.extract(from); !moved.empty())
      found = group.of.insert(std::move(moved)).position;
  if (found == group.of.end()) return std::nullopt;
  found->second.asking.last = position_;
  std::optional<Nearest> answer = found->second.known.answer(at_most);
  if (!answer) return std::nullopt;
  const bool taken_over = found->second.as_of != now();
  if (!holds(group, from, found->second)) return std::nullopt;
  kept_ += taken_over;
  return answer;
}

void KnownWalks::note(Group& group, Point from, Known known) {
  const auto [it, fresh] = group.of.try_emplace(from, Remembered{known, now(), {position_, position_}});
  if (fresh) return;
  Remembered& old = it->second;
  if (old.as_of != now()) {
    old = {std::move(known), now(), old.asking};
  } else if (old.known.nearest.index && old.known.at_most > known.at_most) {
    old.known.close_calls.emplace_back(known.at_most, known.nearest.index.has_value());
  } else if (known.nearest.index || old.known.at_most < known.at_most) {
    old.known = std::move(known);
  }
}

const Walk* KnownWalks::nearBy(const Group& group, Point from) {
  constexpr double kNear_mm = 1500;
  if (const auto found = group.of.find(from); found != group.of.end() && found->second.known.nearest.index)
    return &found->second.known.nearest.walk;
  const Walk* best = nullptr;
  double least = kNear_mm;
  for (const auto& [point, remembered] : group.of)
    if (const double apart = distance(point, from); apart < least && remembered.known.nearest.index)
      least = apart, best = &remembered.known.nearest.walk;
  return best;
}

const Walk* KnownWalks::nearBy(std::span<const Place> places, Asked asked, Point from) const {
  const auto found = groups_.find(numbersOf(places, asked));
  return found == groups_.end() ? nullptr : nearBy(found->second, from);
}

// As it was before a change, or as it is from a place near by; else by the straight line.
Guess KnownWalks::likely(const Group& group, Point from) const {
  if (const Walk* known = nearBy(group, from)) return guessBy(*known, from);
  double least = kInfinite;
  for (const Place& place : group.places) least = std::min(least, straightLineTo(from, place));
  return {1.2 * least + 1500, {}};
}

std::optional<bool> KnownWalks::keptOnFloor(Point p) const {
  const auto found = on_floor_.find(p);
  if (found == on_floor_.end() || found->second.as_of < first_) return std::nullopt;
  for (std::size_t n = found->second.as_of; n < now(); ++n)
    if (changes_[n - first_]->isAt(p)) return std::nullopt;
  return found->second.on;
}

}  // namespace stopwalk::floor
