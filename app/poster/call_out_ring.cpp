#include <algorithm>
#include <cmath>

#include "app/poster/call_out_rules.h"

namespace stopwalk::poster {
namespace {

constexpr int kShifts = 8;       // of the slots along the ring
constexpr double kOff_mm = 1.5;  // from the drawing

struct Slot {
  QRectF box;
  QPointF end;  // of the leader
};

// Slots along one side of the room, from `from` to `to` along it.
void addRow(std::vector<Slot>& free_slots, const CallOutArea& area, QSizeF size, bool across, bool first,
            double shift) {
  const double step = (across ? size.width() : size.height()) + 1.5 * kBetweenBoxes_mm;
  const double low = across ? area.all.left() : area.room.top();
  const double high = across ? area.all.right() : area.room.bottom();
  const double count = std::floor((high - low) / step);
  const double free = high - low - count * step;
  for (double at = low + shift * free; at + step <= high + 1e-9; at += step) {
    QRectF box(QPointF(), size);
    QPointF end;
    if (across) {
      box.moveLeft(at);
      first ? box.moveBottom(area.room.top() - kOff_mm) : box.moveTop(area.room.bottom() + kOff_mm);
      end = {box.center().x(), first ? box.bottom() : box.top()};
    } else {
      box.moveTop(at);
      first ? box.moveRight(area.room.left() - kOff_mm) : box.moveLeft(area.room.right() + kOff_mm);
      end = {first ? box.right() : box.left(), box.center().y()};
    }
    const bool free_of_kept =
        std::ranges::none_of(area.kept, [&](const QRectF& k) { return overlap(box, k, kBetweenBoxes_mm); });
    if (free_of_kept && area.all.contains(box)) free_slots.push_back({box, end});
  }
}

std::vector<Slot> slotsOf(const CallOutArea& area, QSizeF size, double shift) {
  std::vector<Slot> free_slots;
  for (const bool across : {true, false})
    for (const bool first : {true, false}) addRow(free_slots, area, size, across, first, shift);
  return free_slots;
}

// Swapping ends while that shortens the leaders in all. None cross at the end: two that cross are longer than
// the same two uncrossed.
std::vector<std::size_t> shortestPairs(const std::vector<CallOut>& call_outs,
                                       const std::vector<Slot>& free_slots) {
  const auto length = [&](std::size_t i, std::size_t s) {
    return QLineF(call_outs[i].anchor, free_slots[s].end).length();
  };
  std::vector<std::size_t> slot_of(free_slots.size());  // beyond the call-outs: the free slots
  for (std::size_t s = 0; s < free_slots.size(); ++s) slot_of[s] = s;
  for (bool better = true; better;) {
    better = false;
    for (std::size_t i = 0; i < call_outs.size(); ++i)
      for (std::size_t k = i + 1; k < free_slots.size(); ++k) {
        const bool is_free = k >= call_outs.size();
        const double now = length(i, slot_of[i]) + (is_free ? 0 : length(k, slot_of[k]));
        const double then = length(i, slot_of[k]) + (is_free ? 0 : length(k, slot_of[i]));
        if (then >= now - 1e-9) continue;
        std::swap(slot_of[i], slot_of[k]);
        better = true;
      }
  }
  slot_of.resize(call_outs.size());
  return slot_of;
}

}  // namespace

std::optional<std::vector<PlacedCallOut>> placeInRing(const std::vector<CallOut>& call_outs,
                                                      const CallOutArea& area) {
  QSizeF largest;
  for (const CallOut& c : call_outs) largest = largest.expandedTo(c.size);
  for (int n = 0; n < kShifts; ++n) {
    const std::vector<Slot> free_slots = slotsOf(area, largest, static_cast<double>(n) / (kShifts - 1));
    if (free_slots.size() < call_outs.size()) continue;
    const std::vector<std::size_t> slot_of = shortestPairs(call_outs, free_slots);
    std::vector<PlacedCallOut> placed;
    for (std::size_t i = 0; i < call_outs.size(); ++i) {
      const Slot& slot = free_slots[slot_of[i]];
      QRectF box(QPointF(), call_outs[i].size);
      box.moveCenter(slot.box.center());
      box.translate(slot.end - nearestOf(box, slot.end));
      placed.push_back({box, QLineF(call_outs[i].anchor, slot.end)});
    }
    if (troubleOf(call_outs, area, placed).isEmpty()) return placed;
  }
  return std::nullopt;
}

}  // namespace stopwalk::poster
