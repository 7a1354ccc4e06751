#include "app/window/come_to.h"

#include <algorithm>
#include <utility>

#include "core/inspection/round_progress.h"
#include "core/planning/round_plan.h"

namespace stopwalk::window {
namespace {

bool areCalledTheSame(const layout::Layout* a, const layout::Layout* b) {
  if (!a || !b || a == b) return a == b;
  return std::ranges::equal(a->machines, b->machines, [](const layout::Machine& x, const layout::Machine& y) {
    return x.id == y.id && x.name == y.name;
  });
}

const layout::Layout& layoutOf(const HeldAgainst& by) {
  static const layout::Layout kNone;
  return by.layout ? *by.layout : kNone;
}

std::vector<UnfinishedRound> unfinishedOf(const inspection::Records& records) {
  std::vector<UnfinishedRound> all;
  for (const inspection::Round* round : inspection::unfinishedRounds(records))
    all.push_back({round, inspection::stillToCheck(*round, records).size()});
  return all;
}

}  // namespace

bool HeldAgainst::operator==(const HeldAgainst& other) const {
  return schedule == other.schedule && devices == other.devices && now.day == other.now.day &&
         areCalledTheSame(layout.get(), other.layout.get());
}

ComeTo::ComeTo(std::shared_ptr<const inspection::Records> all, HeldAgainst held)
    : by(std::move(held)),
      records(std::move(all)),
      on_record(*records, by.schedule, {by.now, by.devices}),
      states(on_record.states()),
      failed(on_record.failed()),
      counting(on_record, layoutOf(by)),
      open_actions(planning::withoutRemoved(on_record.openActions(), on_record.removed(), layoutOf(by))),
      unfinished(unfinishedOf(*records)) {}

}  // namespace stopwalk::window
