#include "core/floor/known_ends.h"

#include <map>

namespace stopwalk::floor {

namespace {

template <class See>
void eachPart(Ends& ends, See see) {
  for (Exit& e : ends.exits) see(e.part);
  for (PartLanding& l : ends.landings) see(l.part);
}

}  // namespace

const Ends* KnownEnds::find(const Segment& local) const {
  const auto found = ends_.find(local);
  return found == ends_.end() ? nullptr : &found->second;
}

void KnownEnds::add(EndsTable fresh) {
  std::map<Mesh::Index, Mesh::Index> old_of{{Region::kNone, Region::kNone}};
  for (const auto& [local, ends] : fresh) {
    const Ends* known = find(local);
    if (!known || known->exits.size() != 1 || ends.exits.size() != 1) continue;
    if (known->exits.front().at == ends.exits.front().at)
      old_of.emplace(ends.exits.front().part, known->exits.front().part);
  }
  for (auto& [local, ends] : fresh) {
    eachPart(ends, [&](Mesh::Index& part) {
      const auto [it, is_new] = old_of.emplace(part, next_part_);
      next_part_ += is_new;
      part = it->second;
    });
    ends_.insert_or_assign(local, std::move(ends));
  }
}

void KnownEnds::forgetNear(const WalkChange& change, Point origin) {
  std::erase_if(ends_, [&](const auto& known) {
    const Segment& s = known.first;
    return !change.leavesSteps({s.a + origin, s.b + origin});
  });
}

const Ends* EndsAfter::find(const Segment& local) const {
  const Ends* ends = known->find(local);
  return ends && (!change || change->leavesSteps({local.a + origin, local.b + origin})) ? ends : nullptr;
}

}  // namespace stopwalk::floor
