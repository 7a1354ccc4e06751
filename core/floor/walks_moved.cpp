// How walks follow what is moved.
#include <algorithm>

#include "core/floor/walks_memory.h"

namespace stopwalk::floor {

namespace {

constexpr double kInfinite = std::numeric_limits<double>::infinity();

Plan without(Plan plan, std::vector<std::size_t> solids) {
  std::ranges::sort(solids, std::greater<>());
  for (const std::size_t s : solids) plan.solids.erase(plan.solids.begin() + static_cast<std::ptrdiff_t>(s));
  return plan;
}

std::vector<Polygon> outlinesOf(const Plan& plan, const std::vector<std::size_t>& solids) {
  std::vector<Polygon> outlines;
  for (const std::size_t s : solids) outlines.push_back(plan.solids[s].outline);
  return outlines;
}

bool holds(const std::vector<std::size_t>& solids, std::span<const Walks::SolidMoved> moved) {
  return std::ranges::all_of(
      moved, [&](const auto& m) { return std::ranges::find(solids, m.solid) != solids.end(); });
}

std::vector<DoorBounds::End> linesOf(std::span<const Place> places) {
  std::vector<DoorBounds::End> ends;
  const auto add = [&](const Segment& s) { ends.push_back({geometry::boxOf(s), false, 0, {}, s}); };
  for (const Place& place : places) {
    for (const Point p : place.points) add({p, p});
    std::ranges::for_each(place.lines, add);
  }
  return ends;
}

bool leaves(const WalkChange& change, const Nearest& nearest, double at_most, Point from,
            std::span<const DoorBounds::End> ends) {
  if (nearest.walk.tied || (nearest.sought_narrow && !change.narrowPartsStay())) return false;
  return change.leaves(nearest.walk, Known{nearest, at_most}.reach(), from, ends);
}

}  // namespace

std::optional<Nearest> Lifted::nearest(Point from, std::span<const Place> to, double at_most) {
  if (!back->partsStay() || !back->leavesSteps({from, from})) return std::nullopt;
  const std::size_t before = floor.count().found;
  Nearest nearest = floor.nearest(from, to, at_most);
  if (!leaves(*back, nearest, at_most, from, linesOf(to))) return std::nullopt;
  ++(floor.count().found == before ? count.kept : count.found);
  return nearest;
}

void Lifted::nearestForAll(std::span<const Point> from, std::span<const Place> to,
                           const FloorPieces::Give& give) {
  if (!back->partsStay()) return;
  std::vector<Point> whose;
  std::vector<std::size_t> who;
  for (std::size_t i = 0; i < from.size(); ++i)
    if (back->leavesSteps({from[i], from[i]})) whose.push_back(from[i]), who.push_back(i);
  const std::size_t before = floor.count().found;
  std::vector<Nearest> nearest = floor.nearestForAll(whose, to);
  const std::size_t found = floor.count().found - before;
  const std::vector<DoorBounds::End> ends = linesOf(to);
  std::size_t told = 0;
  for (std::size_t i = 0; i < who.size(); ++i)
    if (leaves(*back, nearest[i], kInfinite, whose[i], ends)) ++told, give(who[i], std::move(nearest[i]));
  count.kept += told - std::min(told, found);
  count.found += std::min(told, found);
}

FloorPieces* Walks::Memory::usePieces(std::size_t walks) {
  constexpr std::size_t kMost = 200;
  const KnownWalks& whole = lifted ? lifted->floor.memory_->known : known;
  if (finder || !whole.follows() || (sought += walks) > kMost) return nullptr;
  if (!pieces)
    pieces = std::make_unique<FloorPieces>(
        plan, clearance, paths, whole.doors(),
        EndsAfter{&whole.ends(), lifted ? lifted->back.get() : nullptr, originOf(plan)});
  return pieces.get();
}

Guess Walks::Memory::likely(const KnownWalks::Group& group, Point from, Asked asked) {
  if (lifted)
    for (const KnownWalks* other : {&before, &lifted->floor.memory_->known})
      if (const Walk* walk = other->nearBy(group.places, asked, from)) return guessBy(*walk, from);
  return known.likely(group, from);
}

// The floor lifted before, or this one, becomes that without these.
bool Walks::Memory::lift(std::vector<std::size_t> solids) {
  Plan plan_without = without(plan, solids);
  Memory& old = lifted ? *lifted->floor.memory_ : *this;
  std::vector<std::size_t> down = lifted ? lifted->solids : std::vector<std::size_t>{}, up = solids;
  const auto isIn = [](const auto& list) {
    return [&](std::size_t s) { return std::ranges::find(list, s) != list.end(); };
  };
  std::erase_if(up, isIn(down));
  std::erase_if(down, isIn(solids));
  // What is lifted may be what the middle of all there is hung on.
  const bool same_origin = originOf(plan_without) == originOf(old.plan);
  PlanChange change{same_origin, outlinesOf(plan, up), outlinesOf(plan, down)};
  Walks floor(plan_without, clearance, paths);
  Memory& m = *floor.memory_;
  m.remembers = true;
  m.known = std::move(old.known);
  const bool stay = m.known.change(std::move(change), old.finder.get(), old.plan, m.plan);
  if (stay) touched = m.known.lastChange().touched();
  lifted = std::make_unique<Lifted>(Lifted{std::move(solids), std::move(floor)});
  return stay;
}

// What was lifted stands where the plan has it.
void Walks::Memory::putBack() {
  Memory& m = *lifted->floor.memory_;
  lifted->back = std::make_unique<const WalkChange>(PlanChange{true, {}, outlinesOf(plan, lifted->solids)},
                                                    m.plan, plan, clearance, m.known.sharedDoors());
  lifted->count = {};
  m.sought = 0;
  touched.insert(touched.end(), lifted->back->touched().begin(), lifted->back->touched().end());
}

bool Walks::moveSolids(std::span<const SolidMoved> moved) {
  Memory& m = *memory_;
  bool stay = true;
  m.put_back_before = m.lifted ? std::move(m.lifted->back) : nullptr;
  m.lifted_just_now = !m.lifted || !holds(m.lifted->solids, moved);
  if (!m.lifted_just_now) {
    stay = m.put_back_before->partsStay();
    m.touched = m.put_back_before->touched();
    Memory& floor = *m.lifted->floor.memory_;
    if (floor.known.nextPosition()) floor.pieces.reset();  // of places passed, too
  } else {
    std::vector<std::size_t> solids;
    for (const SolidMoved& s : moved) solids.push_back(s.solid);
    stay = m.lift(std::move(solids));
  }
  const Point origin = originOf(m.lifted->floor.memory_->plan);
  const bool same_origin = originOf(m.plan) == origin;
  for (const SolidMoved& s : moved) m.plan.solids[s.solid].outline = s.outline;
  m.putBack();
  m.before = std::move(m.known);
  m.known = KnownWalks(m.clearance);
  m.pieces.reset();
  m.finder.reset();
  m.found = m.sought = 0;
  return stay && m.lifted->back->partsStay() && same_origin && originOf(m.plan) == origin;
}

const std::vector<Segment>& Walks::linesTouched() const {
  return memory_->touched;
}

Walks Walks::following(Walks* former, const Plan& plan) {
  Walks walks(plan);
  Memory& now = *walks.memory_;
  now.remembers = true;
  if (!former) return walks;
  Memory& before = former->memory_->lifted ? *former->memory_->lifted->floor.memory_ : *former->memory_;
  if (before.paths == now.paths)
    now.known.follow(std::move(before.known), before.finder.get(), before.plan, plan);
  former->memory_->lifted.reset();
  former->memory_->pieces.reset();
  former->memory_->finder.reset();
  return walks;
}

}  // namespace stopwalk::floor
