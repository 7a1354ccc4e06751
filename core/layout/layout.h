#pragma once

#include <optional>
#include <string>
#include <utility>
#include <variant>
#include <vector>

#include "core/geometry/point.h"
#include "core/layout/kept.h"

// The value types of one layout file. Lengths in millimetres, angles in degrees counter-clockwise from +x,
// times in seconds, whatever unit the file is written in. Things are joined by id. An absent number is
// unknown, not 0.
namespace stopwalk::layout {

using geometry::Point;

enum class LengthUnit { Millimetre, Metre, Inch, Foot };

struct Site {
  std::string name;
  std::string address;
  std::string emergency_call;
  std::string meet_responders_at;
  Kept kept;
  bool operator==(const Site&) const = default;
};

struct Revision {
  int number = 0;
  std::string date;
  std::string by;
  std::string reason;
  Kept kept;
  bool operator==(const Revision&) const = default;
};

struct Underlay {
  std::string image;
  Point at;
  double mm_per_pixel = 1;
  double turn = 0;
  double opacity = 0.4;
  Kept kept;
  bool operator==(const Underlay&) const = default;
};

struct Room {
  std::string id;
  std::string name;
  geometry::Polygon outline;
  bool outdoors = false;
  Kept kept;
  bool operator==(const Room&) const = default;
};

enum class Locked { Never, AfterHours, Always };

struct Door {
  std::string id;
  std::string first;   // the room whose wall carries the door
  std::string second;  // a room, or `outside`
  Point at;
  double width = 0;
  Locked locked = Locked::Never;
  Kept kept;
  bool operator==(const Door&) const = default;
};
inline constexpr const char* kOutside = "outside";
inline constexpr const char* kAll = "all";

struct Rectangle {
  double width = 0;  // along x of the frame
  double depth = 0;  // along y
  bool operator==(const Rectangle&) const = default;
};
// In the frame of the thing; a rectangle is centred on the origin.
using Footprint = std::variant<Rectangle, geometry::Polygon>;

struct Fixture {
  std::string id;
  std::string name;
  Point at;
  double turn = 0;
  Footprint footprint;
  std::optional<double> height;
  Kept kept;
  bool operator==(const Fixture&) const = default;
};

enum class Role { Operator, Helper, Setter, Instructor };

struct Station {
  std::string id;
  Role role = Role::Operator;
  Point at;  // machine frame
  Kept kept;
  bool operator==(const Station&) const = default;
};

// What a device stops: everything, or machines and rooms (every machine whose origin is in that room).
struct Stops {
  bool all = false;
  std::vector<std::string> ids;
  bool operator==(const Stops&) const = default;
};

enum class ThrowDirection { Left, Right, Up, Down };
enum class Pin { Fitted, Missing };

// A stop device, an actuator or a guarded start, on a machine (`at`, `faces` in the machine frame) or on a
// wall (world).
struct Device {
  std::string id;
  std::string kind;
  Point at;
  double faces = 270;            // the direction from the device towards the person who uses it
  std::optional<double> length;  // bars and cords: at right angles to `faces`, centred on `at`
  std::optional<double> height;
  std::optional<Stops> stops;      // absent: the machine it is on; on a wall: nothing
  std::optional<double> run_down;  // for every machine stopped
  std::vector<std::pair<std::string, double>> run_down_each;  // per machine id; wins over `run_down`
  std::string instruction;                                    // empty: the kind's
  std::optional<bool> emergency;                              // overrides the kind
  std::optional<ThrowDirection> direction;
  std::optional<std::vector<std::string>> held_at;  // station ids of this machine
  std::optional<Pin> pin;
  Kept kept;
  bool operator==(const Device&) const = default;
};

struct Machine {
  std::string id;
  std::string name;
  std::string kind;  // template key; may be empty
  Point at;
  double turn = 0;
  Footprint footprint;
  std::optional<double> height;
  std::optional<double> run_down;
  bool hand_held = false;
  std::string after_stop;
  geometry::Polygon hazard;  // machine frame; empty: none drawn
  std::vector<Station> stations;
  std::vector<Device> devices;
  Kept kept;
  bool operator==(const Machine&) const = default;
};

struct Phone {
  std::string id;
  std::string name;
  Point at;
  double faces = 0;
  std::optional<double> height;
  Kept kept;
  bool operator==(const Phone&) const = default;
};

struct Note {
  std::string id;
  Point at;
  std::optional<Point> points_to;
  std::string text;
  Kept kept;
  bool operator==(const Note&) const = default;
};

struct TapeCheck {
  std::string id;
  std::string from;
  std::string to;
  double taped = 0;
  std::string date;
  std::string by;
  Kept kept;
  bool operator==(const TapeCheck&) const = default;
};

enum class Severity { Fail, Warn, Note };

// Where a workshop keeps a rule otherwise than its profile has it: a limit, how severe it is, or not at all.
struct HouseRule {
  std::string rule;             // id, such as `stop-too-far`
  std::string of;               // which of its limits; empty where it has one
  std::optional<double> limit;  // in the rule's unit
  std::optional<Severity> severity;
  std::optional<bool> on;
  std::string reason;
  Kept kept;
  bool operator==(const HouseRule&) const = default;
};

// A finding that somebody has looked at and lets stand, for a time. It stays a finding and stays visible.
struct AcceptedFinding {
  std::string rule;     // id
  std::string subject;  // id of what the finding is about, such as `saw-2/operator`
  std::string which;    // of what the rule may find of the subject (which.h); empty where that is one thing
  std::string reason;
  std::string by;
  std::string until;  // the last day it is let stand, such as 2026-12-31
  Kept kept;
  std::optional<double> measured = {};  // what was accepted, in the rule's unit; none: whatever is measured
  bool operator==(const AcceptedFinding&) const = default;
};

struct Layout {
  LengthUnit unit = LengthUnit::Millimetre;
  std::string profile;                 // empty: the default profile
  std::vector<HouseRule> house_rules;  // go before the profile's
  std::vector<AcceptedFinding> accepted_findings;
  Site site;
  std::optional<Revision> revision;
  std::optional<Underlay> underlay;
  std::vector<Room> rooms;
  std::vector<Door> doors;
  std::vector<Fixture> fixtures;
  std::vector<Machine> machines;
  std::vector<Device> devices;  // on walls and posts
  std::vector<Phone> phones;
  std::vector<Note> notes;
  std::vector<TapeCheck> tape_checks;
  Kept kept;
  bool operator==(const Layout&) const = default;
};

// From the frame of a machine or fixture at `at`, turned by `turn`, to the plan.
Point toPlan(Point at, double turn, Point in_frame);
// The footprint's corners in the plan, in the order given (a rectangle: counter-clockwise from its front
// left).
geometry::Polygon outlineInPlan(const Footprint& footprint, Point at, double turn);

}  // namespace stopwalk::layout
