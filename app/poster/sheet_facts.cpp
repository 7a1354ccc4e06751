#include "app/poster/sheet_facts.h"

#include <algorithm>

namespace stopwalk::poster {
namespace {

std::optional<std::size_t> stationOf(const audit::Context& context, std::size_t machine) {
  const auto [first, end] = context.stationsOf(machine);
  for (std::size_t s = first; s < end; ++s)
    if (context.stations[s].station->role == layout::Role::Operator) return s;
  return first < end ? std::optional(first) : std::nullopt;
}

// Of the devices that stop the machine and are not on it, that its operator may use.
std::vector<std::size_t> othersOf(const audit::Context& context, std::size_t machine, std::size_t station) {
  std::vector<std::size_t> others;
  for (const std::size_t d : context.candidates(machine))
    if (context.devices[d].machine != machine && context.mayUse(station, d)) others.push_back(d);
  return others;
}

void sort(SheetFacts& facts, const std::string& machine) {
  const auto on_it = [&](const Listed& l) { return l.id.starts_with(machine + "/"); };
  for (const Group& group : facts.content.groups)
    for (const Listed& l : group.stops)
      if (on_it(l)) (l.span.own ? facts.own.stops : facts.for_others).push_back(l);
  std::ranges::copy_if(facts.content.out_of_order, std::back_inserter(facts.out_of_order), on_it);
  std::ranges::copy_if(facts.content.not_stops, std::back_inserter(facts.not_stops), on_it);
}

void seekNext(SheetFacts& facts, const Shop& shop, std::size_t machine) {
  const audit::Context& open = shop.open();
  const std::vector<std::size_t> others = othersOf(open, machine, *facts.station);
  facts.next = open.nearestOf(*facts.station, others);
  facts.next_late = shop.afterHours().nearestOf(*facts.station, others);
  if (!facts.next.found()) return;
  const std::string& id = open.devices[*facts.next.index].id;
  for (const Listed* l : listedIn(facts.content))
    if (l->id == id) facts.next_here = *l;
}

// Without a station there is no place to tell ways from.
void standNowhere(Content& content, const Shop& shop) {
  content.reader = Content::Reader::NotShown;
  content.phone = {};
  if (!shop.open().phones.empty()) content.phone.status = audit::Status::Unmeasured;
  content.phone_after_hours.reset();
}

void standAt(Content& content, const Shop& shop, std::size_t station) {
  content.reader = Content::Reader::AtViewer;
  content.viewer.at = shop.open().stations[station].at;
  content.phone = phoneWayOf(station, shop.open());
  content.phone_after_hours.reset();
  if (const PhoneWay late = phoneWayOf(station, shop.afterHours()); late != content.phone)
    content.phone_after_hours = late;
}

}  // namespace

SheetFacts sheetFacts(const Shop& shop, std::size_t machine, std::size_t room) {
  SheetFacts facts;
  facts.content = shop.content(room, std::nullopt);
  facts.content.viewer.up_deg = 90;
  sort(facts, shop.layout().machines[machine].id);
  facts.station = stationOf(shop.open(), machine);
  if (!facts.station) {
    standNowhere(facts.content, shop);
    return facts;
  }
  seekNext(facts, shop, machine);
  standAt(facts.content, shop, *facts.station);
  return facts;
}

}  // namespace stopwalk::poster
