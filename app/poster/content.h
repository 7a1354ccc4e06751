#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "app/plan/symbols.h"
#include "app/poster/viewer.h"
#include "core/audit/context.h"
#include "core/layout/layout.h"

// What the poster of one room has to tell, before words, languages and places on paper are chosen. Everything
// of it comes from the audit's own context: what stops what, and every distance.
namespace stopwalk::poster {

// What a device stops, seen from where it is.
struct Span {
  enum class Of {
    ItsMachine,        // that and no other
    EveryMachineHere,  // and those of `others`, in other rooms
    EveryMachine,      // of the whole layout
    Named,             // those of `others`, and its own machine if `own`
    Nothing
  };
  Of of = Of::Nothing;
  bool own = false;                      // its own machine is among them
  std::vector<std::string> others = {};  // names of machines
  bool operator==(const Span&) const = default;
};

struct Listed {
  int number = 0;  // on the plan and in the table, from 1
  std::string id;
  std::string machine;  // its name; empty: on a wall or post
  std::string symbol;
  plan::Ground ground = plan::Ground::Stop;
  std::string label;        // of its kind: "Mushroom button"
  std::string instruction;  // of its kind, or the shop's own words
  bool held = false;        // stops for the one holding it only
  bool cut_off = false;
  geometry::Segment line;  // in the plan; one point unless it is a bar or a cord
  bool off_plan = false;   // drawn outside the room and its walls: in the table, without a sign
  std::optional<inspection::Date> failed_on = std::nullopt;  // and not passed since: it is out of order
  Span span;
};

// Told in the same words under the same sign, whatever their numbers and machines.
bool toldAlike(const Listed& a, const Listed& b);

// A machine of the room, or what hangs on its walls.
struct Group {
  std::string machine;  // empty: walls and posts
  std::vector<Listed> stops;
  std::string after_stop;
  std::vector<int> use_instead;  // numbers that stop the machine where it has no stop of its own
  std::string id = {};           // of the machine: names need not differ
};

struct PhoneWay {
  audit::Status status = audit::Status::None;
  double length_mm = 0;  // from where the reader stands
  std::vector<geometry::Point> path;
  std::vector<std::string> through;  // rooms walked into, in order
  bool operator==(const PhoneWay&) const = default;
};

struct Content {
  std::size_t room = 0;
  std::string room_name;
  Viewer viewer;
  std::vector<Group> groups;
  std::vector<Listed> out_of_order;          // stops that failed, and so count as none
  std::vector<Listed> not_stops;             // guarded starts, and what is wired to stop nothing
  bool cut_off_shut_late = false;            // after hours there is no way to any of these
  std::vector<std::string> cut_off_rooms;    // where a cut-off for this room hangs that has none itself
  std::vector<geometry::Point> phones_here;  // in the plan
  PhoneWay phone;
  std::optional<PhoneWay> phone_after_hours;  // only where it is another
  enum class Reader { BeforeWall, AtViewer, NotShown };
  Reader reader = Reader::BeforeWall;
  std::string marked;  // id of a machine drawn heavier than the others
};

// All that is numbered, in the order of the numbers.
std::vector<const Listed*> listedIn(const Content& content);

// Whether a poster of the room has anything to tell: a machine, or a device. Walks nowhere.
bool hasContent(const audit::Context& context, std::size_t room);

Content contentOf(const audit::Context& open, const audit::Context& after, std::size_t room,
                  const Viewer& viewer);

// The way from where the reader stands, at the context's hours.
PhoneWay phoneWayFrom(const Viewer& viewer, const audit::Context& context);
// From a station, as the audit has it.
PhoneWay phoneWayOf(std::size_t station, const audit::Context& context);

// The doors that a path goes through, in its order, by the names of the rooms that it comes into; the open
// air is empty.
std::vector<std::string> roomsWalkedInto(const audit::Context& context,
                                         const std::vector<geometry::Point>& path, std::size_t from_room);

}  // namespace stopwalk::poster
