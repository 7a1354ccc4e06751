#include "core/floor/walks.h"

#include <algorithm>
#include <cmath>

#include "core/floor/walk_finder.h"
#include "core/floor/walks_memory.h"

namespace stopwalk::floor {

namespace {

constexpr double kInfinite = std::numeric_limits<double>::infinity();

// The points of a question that have no answer yet.
struct Unanswered {
  std::span<const Point> from;
  std::vector<Nearest>& answers;
  std::vector<std::size_t> which;

  // Those that are wanted are asked, together; what is given is their answer.
  template <class Wanted, class Ask>
  void ask(Wanted wanted, Ask asked) {
    std::vector<Point> points;
    std::vector<std::size_t> whose;
    for (const std::size_t i : which)
      if (wanted(i)) points.push_back(from[i]), whose.push_back(i);
    if (points.empty()) return;
    std::vector<char> told(from.size(), false);
    asked(points, [&](std::size_t i, Nearest nearest) {
      answers[whose[i]] = std::move(nearest);
      told[whose[i]] = true;
    });
    std::erase_if(which, [&](std::size_t i) { return told[i]; });
  }
};

}  // namespace

Walks::Walks(const Plan& plan, double clearance_mm, Paths paths)
    : memory_(std::make_unique<Memory>(plan, std::max(clearance_mm, 0.0), paths)) {}
Walks::~Walks() = default;
Walks::Walks(Walks&&) noexcept = default;
Walks& Walks::operator=(Walks&&) noexcept = default;

WalkFinder& Walks::finder() const {
  Memory& m = *memory_;
  if (!m.finder) m.finder = std::make_unique<WalkFinder>(m.plan, originOf(m.plan), m.clearance, m.paths);
  return *m.finder;
}

Walks::Count Walks::count() const {
  const Memory& m = *memory_;
  Count count{m.known.countKept(), m.found};
  if (m.lifted) count.kept += m.lifted->count.kept, count.found += m.lifted->count.found;
  return count;
}

bool Walks::onFloor(Point p) const {
  Memory& m = *memory_;
  std::optional<bool> on = m.known.keptOnFloor(p);
  if (!on && m.lifted && !m.lifted->back->isAt(p)) on = m.lifted->floor.onFloor(p);
  if (!on)
    if (FloorPieces* pieces = m.usePieces(1)) on = pieces->onFloor(p);
  if (!on) on = finder().onFloor(finder().local(p));
  if (m.remembers) m.known.noteOnFloor(p, *on);
  return *on;
}

bool Walks::joined(Point a, Point b, double clearance_mm) const {
  const Point p = finder().local(a), q = finder().local(b);
  if (!finder().onFloor(p) || !finder().onFloor(q)) return false;
  return finder().joined(finder().layer(clearance_mm), {{p, p}}, {{q, q}});
}

Nearest Walks::nearest(Point from, std::span<const Place> to, double at_most_mm) const {
  Memory& m = *memory_;
  KnownWalks::Group* group = m.remembers ? &m.known.about(to, Asked::Singly) : nullptr;
  if (group)
    if (auto known = m.known.kept(*group, from, at_most_mm)) return *std::move(known);
  if (group && m.lifted)
    if (auto found = m.lifted->nearest(from, to, at_most_mm)) return *std::move(found);
  if (FloorPieces* pieces = m.usePieces(1))
    if (auto found = pieces->nearest(from, to, at_most_mm, m.likely(*group, from, Asked::Singly).length)) {
      m.note(*group, from, *found, at_most_mm);
      return *std::move(found);
    }
  std::vector<std::size_t> which;
  for (std::size_t i = 0; i < to.size(); ++i)
    if (straightLineTo(from, to[i]) <= at_most_mm) which.push_back(i);
  Nearest nearest = finder().nearest(from, to, which, at_most_mm);
  if (group) m.note(*group, from, nearest, at_most_mm);
  return nearest;
}

Walk Walks::between(Point from, Point to) const {
  return between(Place{{from}, {}}, Place{{to}, {}});
}

Walk Walks::between(const Place& from, const Place& to) const {
  if (!from.lines.empty() && to.lines.empty()) {
    Walk back = between(to, from);
    std::reverse(back.path.begin(), back.path.end());
    return back;
  }
  const auto offFloor = [&](const Place& place) {
    return place.lines.empty() && !place.points.empty() &&
           std::none_of(place.points.begin(), place.points.end(), [&](Point p) { return onFloor(p); });
  };
  Walk best;
  if (offFloor(from) || offFloor(to)) best.status = WalkStatus::Unmeasured;
  const auto tryFrom = [&](Point p) {
    const Walk walk = nearest(p, {&to, 1}).walk;
    if (walk.found() && walk.length_mm < best.length_mm) best = walk;
    return walk.length_mm;
  };
  for (Point p : from.points) tryFrom(p);
  for (const Segment& s : from.lines) {
    // Between two lines the length has few valleys: sampled, then the lowest is followed down.
    constexpr int kSamples = 64;
    int lowest = 0;
    double least = kInfinite;
    for (int i = 0; i <= kSamples; ++i) {
      const double at = tryFrom(s.a + (double(i) / kSamples) * (s.b - s.a));
      if (at < least) {
        least = at;
        lowest = i;
      }
    }
    double low = std::max(0.0, (lowest - 1.0) / kSamples), high = std::min(1.0, (lowest + 1.0) / kSamples);
    for (int i = 0; i < 40; ++i) {
      const double x = low + (high - low) / 3, y = high - (high - low) / 3;
      if (tryFrom(s.a + x * (s.b - s.a)) <= tryFrom(s.a + y * (s.b - s.a))) {
        high = y;
      } else {
        low = x;
      }
    }
  }
  return best;
}

std::vector<Reach> Walks::reachForAll(std::span<const Point> from, std::span<const Place> to) const {
  return finder().reach(from, to);
}

std::vector<Nearest> Walks::nearestForAll(std::span<const Point> from, std::span<const Place> to,
                                          std::span<const char> moving) const {
  Memory& m = *memory_;
  std::vector<Nearest> answers(from.size());
  if (!m.remembers) {
    finder().forAll(from, to, [&](std::size_t i, Nearest nearest) { answers[i] = std::move(nearest); });
    return answers;
  }
  KnownWalks::Group& group = m.known.about(to, Asked::Together);
  Unanswered open{from, answers, {}};
  for (std::size_t i = 0; i < from.size(); ++i) {
    if (auto known = m.known.kept(group, from[i], kInfinite))
      answers[i] = *std::move(known);
    else
      open.which.push_back(i);
  }
  const auto moves = [&](std::size_t i) { return !moving.empty() && moving[i]; };
  const auto stays = [&](std::size_t i) { return !moves(i); };
  const auto all = [](std::size_t) { return true; };
  const auto askLifted = [&](std::span<const Point> points, const FloorPieces::Give& give) {
    m.lifted->nearestForAll(points, to, give);
  };
  const auto noting = [&](std::span<const Point> points, const FloorPieces::Give& give) {
    return [&, points](std::size_t i, Nearest nearest) {
      m.note(group, points[i], nearest, kInfinite);
      give(i, std::move(nearest));
    };
  };
  if (m.lifted) open.ask(stays, askLifted);
  if (FloorPieces* pieces = open.which.empty() ? nullptr : m.usePieces(open.which.size()))
    open.ask(all, [&](std::span<const Point> points, const FloorPieces::Give& give) {
      std::vector<Guess> likely;
      for (const Point p : points) likely.push_back(m.likely(group, p, Asked::Together));
      pieces->forAll(points, to, likely, noting(points, give));
    });
  if (m.lifted) open.ask(moves, askLifted);
  open.ask(all, [&](std::span<const Point> points, const FloorPieces::Give& give) {
    const bool few = points.size() <= kFewWalks && m.known.follows();
    finder().forAll(points, to, noting(points, give), few ? Pass::OneEach : Pass::OneForAll);
  });
  return answers;
}

}  // namespace stopwalk::floor
