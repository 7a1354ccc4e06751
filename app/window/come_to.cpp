#include "app/window/come_to.h"

#include <algorithm>
#include <utility>

namespace stopwalk::window {
namespace {

bool areCalledTheSame(const layout::Layout* a, const layout::Layout* b) {
  if (!a || !b || a == b) return a == b;
  return std::ranges::equal(a->machines, b->machines, [](const layout::Machine& x, const layout::Machine& y) {
    return x.id == y.id && x.name == y.name;
  });
}

}  // namespace

bool HeldAgainst::operator==(const HeldAgainst& other) const {
  return schedule == other.schedule && devices == other.devices && now.day == other.now.day &&
         areCalledTheSame(layout.get(), other.layout.get());
}

ComeTo::ComeTo(const inspection::Records& records, HeldAgainst held) : by(std::move(held)) {
  const inspection::AsOf as_of{by.now, by.devices};
  states = inspection::statesOf(records, by.schedule, as_of);
  failed = inspection::failedDevices(records, by.schedule, as_of);
  counting = rounds::Counting(records, by.schedule, by.layout ? *by.layout : layout::Layout(), as_of);
}

}  // namespace stopwalk::window
