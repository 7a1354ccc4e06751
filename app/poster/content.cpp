#include "app/poster/content.h"

#include <algorithm>

#include "core/geometry/polygon.h"
#include "core/geometry/segment.h"

namespace stopwalk::poster {
namespace {

using audit::Context;

constexpr double kInTheWall_mm = 400;  // common practice: no device is deeper in a wall

class Gather {
 public:
  Gather(const Context& context, std::size_t room) : context_(context), room_(room) {}

  std::vector<std::size_t> machinesHere() const { return context_.relation.machinesIn(room_); }

  // Those on machines of the room, or hanging in it.
  bool isHere(std::size_t device) const {
    const auto& machine = context_.devices[device].machine;
    return (machine ? context_.machine_rooms[*machine] : context_.placed[device].standing.room) == room_;
  }

  bool isStop(std::size_t device) const {
    return context_.devices[device].kind->counts_as_stop && !context_.relation.stopsNothing(device) &&
           !context_.relation.isOutOfOrder(device);
  }

  Span spanOf(std::size_t device) const {
    const auto own = context_.devices[device].machine;
    std::size_t here = 0, all = 0;
    std::vector<std::string> elsewhere;
    Span span;
    for (std::size_t m = 0; m < context_.layout.machines.size(); ++m) {
      if (!context_.relation.stops(device, m)) continue;
      ++all;
      const std::string name = context_.name(context_.layout.machines[m]);
      if (context_.machine_rooms[m] == room_)
        ++here;
      else
        elsewhere.push_back(name);
      if (own == m)
        span.own = true;
      else
        span.others.push_back(name);
    }
    const std::size_t most = machinesHere().size();
    if (all == 0)
      span.of = Span::Of::Nothing;
    else if (span.own && span.others.empty())
      span.of = Span::Of::ItsMachine;
    else if (all == context_.layout.machines.size() && all > most)
      span.of = Span::Of::EveryMachine;
    else if (here == most && here > 0 && !own)
      span = {Span::Of::EveryMachineHere, false, elsewhere};
    else
      span.of = Span::Of::Named;
    return span;
  }

  bool isOffPlan(geometry::Point at) const {
    if (context_.surroundings.roomAt(at) == room_) return false;
    const geometry::Polygon& outline = context_.layout.rooms[room_].outline;
    for (std::size_t i = 0; i < outline.size(); ++i)
      if (geometry::distance(geometry::edgeOf(outline, i), at) <= kInTheWall_mm) return false;
    return true;
  }

  Listed listed(std::size_t device) const {
    const audit::DeviceEntry& d = context_.devices[device];
    Listed l;
    l.id = d.id;
    if (d.machine) l.machine = context_.name(context_.layout.machines[*d.machine]);
    l.symbol = d.kind->symbol;
    if (context_.relation.isOutOfOrder(device)) l.failed_on = context_.failures[device]->on;
    // A stop that is wired to nothing, or out of order, must not look like one.
    l.ground = isStop(device) || !d.kind->counts_as_stop ? plan::groundOf(*d.kind) : plan::Ground::Plain;
    l.label = d.kind->label;
    l.instruction = d.device->instruction.empty() ? d.kind->instruction : d.device->instruction;
    l.held = d.kind->held;
    l.cut_off = context_.relation.isCutOff(device);
    l.line = context_.placed[device].placed.line();
    l.span = spanOf(device);
    l.off_plan = isOffPlan(geometry::at(l.line, 0.5));
    return l;
  }

 private:
  const Context& context_;
  std::size_t room_;
};

Group onWalls(const Context& context, const Gather& gather, int& number) {
  Group group;
  for (std::size_t d = 0; d < context.devices.size(); ++d)
    if (!context.devices[d].machine && gather.isHere(d) && gather.isStop(d))
      group.stops.push_back(gather.listed(d));
  std::ranges::stable_partition(group.stops, &Listed::cut_off);
  for (Listed& l : group.stops) l.number = ++number;
  return group;
}

Group onMachine(const Context& context, const Gather& gather, std::size_t machine, int& number) {
  Group group{context.name(context.layout.machines[machine]),
              {},
              context.layout.machines[machine].after_stop,
              {},
              context.layout.machines[machine].id};
  for (std::size_t d = 0; d < context.devices.size(); ++d)
    if (context.devices[d].machine == machine && gather.isStop(d)) {
      group.stops.push_back(gather.listed(d));
      group.stops.back().number = ++number;
    }
  return group;
}

// What else in the room stops a machine that no device of its own does.
void addInstead(const Context& context, std::vector<Group>& groups,
                const std::vector<std::size_t>& machines) {
  std::vector<std::pair<std::string, int>> number_of;
  for (const Group& g : groups)
    for (const Listed& l : g.stops) number_of.emplace_back(l.id, l.number);
  for (const std::size_t m : machines) {
    const auto group = std::ranges::find(groups, context.layout.machines[m].id, &Group::id);
    if (group == groups.end() ||
        std::ranges::any_of(group->stops, [](const Listed& l) { return l.span.own; }))
      continue;
    for (const std::size_t d : context.relation.candidates(m))
      for (const auto& [id, number] : number_of)
        if (id == context.devices[d].id && !context.devices[d].kind->held)
          group->use_instead.push_back(number);
  }
}

std::vector<std::string> roomsOfCutOffs(const Context& context, std::size_t room) {
  std::vector<std::string> rooms;
  for (const std::size_t d : context.relation.cutOffs(room)) {
    const auto in = context.placed[d].standing.room;
    if (in == room) return {};
    if (in && std::ranges::find(rooms, context.roomName(*in)) == rooms.end())
      rooms.push_back(context.roomName(*in));
  }
  return rooms;
}

bool reachesACutOff(const Context& context, std::size_t room, const Viewer& viewer) {
  const floor::Place from{{viewer.stands()}, {}};
  return std::ranges::any_of(context.relation.cutOffs(room), [&](std::size_t d) {
    const floor::Place& to = context.placed[d].standing.place;
    return !to.empty() && context.walks.between(from, to).found();
  });
}

}  // namespace

bool toldAlike(const Listed& a, const Listed& b) {
  return a.symbol == b.symbol && a.ground == b.ground && a.instruction == b.instruction && a.held == b.held &&
         a.cut_off == b.cut_off && a.failed_on == b.failed_on && a.span == b.span;
}

std::vector<const Listed*> listedIn(const Content& content) {
  std::vector<const Listed*> all;
  const auto add = [&](const std::vector<Listed>& some) {
    for (const Listed& l : some) all.push_back(&l);
  };
  for (const Group& group : content.groups) add(group.stops);
  add(content.out_of_order);
  add(content.not_stops);
  return all;
}

bool hasContent(const Context& context, std::size_t room) {
  const Gather gather(context, room);
  if (!gather.machinesHere().empty()) return true;
  for (std::size_t d = 0; d < context.devices.size(); ++d)
    if (gather.isHere(d)) return true;
  return false;
}

Content contentOf(const Context& open, const Context& after, std::size_t room, const Viewer& viewer) {
  const Gather gather(open, room);
  Content content;
  content.room = room;
  content.room_name = open.roomName(room);
  content.viewer = viewer;

  int number = 0;
  if (Group walls = onWalls(open, gather, number); !walls.stops.empty()) content.groups.push_back(walls);
  for (const std::size_t m : gather.machinesHere())
    content.groups.push_back(onMachine(open, gather, m, number));
  addInstead(open, content.groups, gather.machinesHere());
  for (const bool out_of_order : {true, false})
    for (std::size_t d = 0; d < open.devices.size(); ++d) {
      if (!gather.isHere(d) || gather.isStop(d) || open.relation.isOutOfOrder(d) != out_of_order) continue;
      std::vector<Listed>& list = out_of_order ? content.out_of_order : content.not_stops;
      list.push_back(gather.listed(d));
      list.back().number = ++number;
    }
  content.cut_off_rooms = roomsOfCutOffs(open, room);
  content.cut_off_shut_late = !content.cut_off_rooms.empty() && !reachesACutOff(after, room, viewer);

  for (const audit::PlacedEntry& phone : open.phones)
    if (phone.standing.room == room) content.phones_here.push_back(phone.placed.at);
  content.phone = phoneWayFrom(viewer, open);
  if (const PhoneWay late = phoneWayFrom(viewer, after); late != content.phone)
    content.phone_after_hours = late;
  return content;
}

}  // namespace stopwalk::poster
