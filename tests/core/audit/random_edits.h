#pragma once

#include <string>

#include "core/layout/layout.h"
#include "tests/support/random.h"

// What somebody does to a layout, one step after the other.
namespace stopwalk::audit {

using layout::Layout;
using layout::Point;
using support::Random;

template <class Things>
auto* oneOf(Things& things, Random& random) {
  return things.empty() ? nullptr
                        : &things[static_cast<std::size_t>(random.below(static_cast<int>(things.size())))];
}

// A nudge, a step on the drawing's grid, or anywhere near.
inline Point somewhat(Random& random) {
  const double size = random.chance(0.5) ? 60 : random.chance(0.5) ? 400 : 2500;
  if (random.chance(0.5)) return {50.0 * random.below(9) - 200, 50.0 * random.below(9) - 200};
  return {random.between(-size, size), random.between(-size, size)};
}

template <class Thing>
void putElsewhere(Thing& thing, Random& random) {
  if (random.chance(0.8)) thing.at = thing.at + somewhat(random);
  if (random.chance(0.25)) thing.turn += random.chance(0.5) ? 90 : random.between(-40, 40);
}

inline void addCrate(Layout& layout, Random& random) {
  const layout::Machine* beside = oneOf(layout.machines, random);
  if (!beside) return;
  layout::Fixture crate;
  crate.id = "crate-" + std::to_string(random.below(1 << 30));
  crate.name = "Crate";
  crate.at = beside->at + Point{random.between(-2500, 2500), random.between(-2500, 2500)};
  crate.footprint = layout::Rectangle{random.between(100, 900), random.between(100, 900)};
  layout.fixtures.push_back(std::move(crate));
}

inline void edited(Layout& layout, Random& random) {
  switch (random.below(16)) {
    case 0:
      return addCrate(layout, random);
    case 1:
      if (!layout.fixtures.empty())
        layout.fixtures.erase(layout.fixtures.begin() +
                              random.below(static_cast<int>(layout.fixtures.size())));
      return;
    case 2:
      if (auto* f = oneOf(layout.fixtures, random)) putElsewhere(*f, random);
      return;
    case 3:
      if (layout.machines.size() > 2)
        layout.machines.erase(layout.machines.begin() +
                              random.below(static_cast<int>(layout.machines.size())));
      return;
    case 4:
      if (const auto* m = oneOf(layout.machines, random)) {
        layout::Machine copy = *m;
        copy.id = "copy-" + std::to_string(random.below(1 << 30));
        copy.at = copy.at + somewhat(random);
        layout.machines.push_back(std::move(copy));
      }
      return;
    case 5:
      if (auto* d = oneOf(layout.doors, random)) d->locked = static_cast<layout::Locked>(random.below(3));
      return;
    case 6:
      if (auto* p = oneOf(layout.phones, random)) p->at = p->at + somewhat(random);
      return;
    case 7:
      if (auto* r = oneOf(layout.rooms, random)) {
        Point& corner = *oneOf(r->outline, random);
        corner = corner + Point{random.between(-80, 80), random.between(-80, 80)};
      }
      return;
    case 8:
      if (auto* d = oneOf(layout.devices, random)) d->at = d->at + somewhat(random);
      return;
    case 9:
      if (auto* m = oneOf(layout.machines, random))
        if (auto* d = oneOf(m->devices, random)) d->at = d->at + Point{random.between(-100, 100), 0};
      return;
    case 10:
      if (auto* m = oneOf(layout.machines, random))
        if (auto* s = oneOf(m->stations, random)) s->at = s->at + somewhat(random);
      return;
    default:
      if (auto* m = oneOf(layout.machines, random)) putElsewhere(*m, random);
  }
}

// One thing after the other is taken up, dragged a few steps and put down, as with the pointer.
class Drag {
 public:
  void operator()(Layout& layout, Random& random) {
    if (steps_ == 0) {
      machine_ = layout.fixtures.empty() || random.chance(0.8);
      const std::size_t count = machine_ ? layout.machines.size() : layout.fixtures.size();
      index_ = static_cast<std::size_t>(random.below(static_cast<int>(count)));
      steps_ = 3 + random.below(8);
      const double size = random.chance(0.7) ? 60 : 400;
      by_ = random.chance(0.3) ? Point{50.0 * random.below(5) - 100, 0}
                               : Point{random.between(-size, size), random.between(-size, size)};
    }
    --steps_;
    machine_ ? put(layout.machines[index_], random) : put(layout.fixtures[index_], random);
  }

 private:
  template <class Thing>
  void put(Thing& thing, Random& random) const {
    if (random.chance(0.9)) thing.at = thing.at + by_;
    if (random.chance(0.1)) thing.turn += random.chance(0.5) ? 90 : random.between(-40, 40);
  }

  bool machine_ = true;
  std::size_t index_ = 0;
  int steps_ = 0;
  Point by_;
};

}  // namespace stopwalk::audit
