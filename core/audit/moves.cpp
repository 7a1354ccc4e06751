#include "core/audit/moves.h"

namespace stopwalk::audit {
namespace {

constexpr std::size_t kMost = 8;  // of more, little can be kept

// Adds the moves; false if anything else differs.
template <class Thing>
bool add(const std::vector<Thing>& before, const std::vector<Thing>& now, bool machines,
         std::vector<Move>& moves) {
  if (before.size() != now.size()) return false;
  for (std::size_t i = 0; i < now.size(); ++i) {
    if (before[i] == now[i]) continue;
    Thing moved = before[i];
    moved.at = now[i].at;
    moved.turn = now[i].turn;
    if (moved != now[i] || moves.size() == kMost) return false;
    moves.push_back({machines, i, now[i].at, now[i].turn});
  }
  return true;
}

bool sameButPlaces(const layout::Layout& a, const layout::Layout& b) {
  return a.unit == b.unit && a.profile == b.profile && a.house_rules == b.house_rules &&
         a.accepted_findings == b.accepted_findings && a.site == b.site && a.revision == b.revision &&
         a.underlay == b.underlay && a.rooms == b.rooms && a.doors == b.doors && a.devices == b.devices &&
         a.phones == b.phones && a.notes == b.notes && a.tape_checks == b.tape_checks &&
         a.kept.text == b.kept.text;
}

}  // namespace

std::optional<std::vector<Move>> movesBetween(const layout::Layout& before, const layout::Layout& now) {
  std::vector<Move> moves;
  if (!sameButPlaces(before, now) || !add(before.fixtures, now.fixtures, false, moves) ||
      !add(before.machines, now.machines, true, moves))
    return std::nullopt;
  return moves;
}

void put(const Move& m, layout::Layout& layout) {
  const auto putThing = [&](auto& thing) {
    thing.at = m.at;
    thing.turn = m.turn;
  };
  m.machine ? putThing(layout.machines[m.index]) : putThing(layout.fixtures[m.index]);
}

}  // namespace stopwalk::audit
