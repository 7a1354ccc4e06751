#include "app/edits/layout_difference.h"

#include <algorithm>
#include <utility>

namespace stopwalk::edits {
namespace {

using layout::Layout;

auto listsOf(Layout& l) {
  return std::tie(l.rooms, l.doors, l.fixtures, l.machines, l.devices, l.phones, l.notes, l.tape_checks);
}
auto listsOf(const Layout& l) {
  return std::tie(l.rooms, l.doors, l.fixtures, l.machines, l.devices, l.phones, l.notes, l.tape_checks);
}

Layout withoutLists(const Layout& l) {
  Layout head;
  head.unit = l.unit;
  head.profile = l.profile;
  head.house_rules = l.house_rules;
  head.accepted_findings = l.accepted_findings;
  head.site = l.site;
  head.revision = l.revision;
  head.underlay = l.underlay;
  head.kept = l.kept;
  return head;
}

void takeHead(Layout& layout, const Layout& head) {
  layout.unit = head.unit;
  layout.profile = head.profile;
  layout.house_rules = head.house_rules;
  layout.accepted_findings = head.accepted_findings;
  layout.site = head.site;
  layout.revision = head.revision;
  layout.underlay = head.underlay;
  layout.kept = head.kept;
}

// What is left of both without the equal things at the beginning and at the end.
template <class T>
ListDifference<T> differenceOf(const std::vector<T>& before, const std::vector<T>& after) {
  const auto [b, a] = std::ranges::mismatch(before, after);
  auto b_end = before.end();
  auto a_end = after.end();
  while (b_end != b && a_end != a && *(b_end - 1) == *(a_end - 1)) --b_end, --a_end;
  return {static_cast<std::size_t>(b - before.begin()), {b, b_end}, {a, a_end}};
}

template <class T>
void replace(std::vector<T>& list, std::size_t at, const std::vector<T>& old, const std::vector<T>& fresh) {
  const auto from = list.begin() + static_cast<std::ptrdiff_t>(at);
  const std::size_t common = std::min(old.size(), fresh.size());
  const auto kept = static_cast<std::ptrdiff_t>(common);
  std::copy_n(fresh.begin(), common, from);
  if (old.size() > common) list.erase(from + kept, from + static_cast<std::ptrdiff_t>(old.size()));
  if (fresh.size() > common) list.insert(from + kept, fresh.begin() + kept, fresh.end());
}

// Calls `f` with each list and its difference.
template <class Lists, class Differences, class F>
void eachList(Lists lists, Differences& differences, F f) {
  [&]<std::size_t... I>(std::index_sequence<I...>) {
    (f(std::get<I>(lists), std::get<I>(differences)), ...);
  }
  (std::make_index_sequence<std::tuple_size_v<Differences>>());
}

}  // namespace

LayoutDifference::LayoutDifference(const Layout& before, const Layout& after) {
  const Layout head_before = withoutLists(before), head_after = withoutLists(after);
  if (!(head_before == head_after)) head_ = Head{head_before, head_after};
  const auto old_lists = listsOf(before), new_lists = listsOf(after);
  [&]<std::size_t... I>(std::index_sequence<I...>) {
    ((std::get<I>(lists_) = differenceOf(std::get<I>(old_lists), std::get<I>(new_lists))), ...);
    empty_ = !head_ && ((std::get<I>(lists_).before.empty() && std::get<I>(lists_).after.empty()) && ...);
  }
  (std::make_index_sequence<std::tuple_size_v<decltype(lists_)>>());
}

void LayoutDifference::redo(Layout& layout) const {
  if (head_) takeHead(layout, head_->after);
  eachList(listsOf(layout), lists_,
           [](auto& list, const auto& d) { replace(list, d.at, d.before, d.after); });
}

void LayoutDifference::undo(Layout& layout) const {
  if (head_) takeHead(layout, head_->before);
  eachList(listsOf(layout), lists_,
           [](auto& list, const auto& d) { replace(list, d.at, d.after, d.before); });
}

}  // namespace stopwalk::edits
