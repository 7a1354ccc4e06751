#pragma once

#include <concepts>
#include <type_traits>
#include <vector>

#include "core/files/map_reader.h"
#include "core/layout/layout.h"

// The keys of a layout file, once, in the order in which they are written. Reading and writing both go
// through these: a visitor has a function for each kind of value. To add a key, add a line here and its value
// in core/layout.
namespace stopwalk::files {

enum class Need { Required, Optional };

// `T` or `const T`: a reader fills the thing, a writer looks at it.
template <class T, class Thing>
concept Is = std::same_as<std::remove_const_t<T>, Thing>;

inline const Choices<layout::Locked> kLocked = {{"never", layout::Locked::Never},
                                                {"after-hours", layout::Locked::AfterHours},
                                                {"always", layout::Locked::Always}};
inline const Choices<layout::Role> kRoles = {{"operator", layout::Role::Operator},
                                             {"helper", layout::Role::Helper},
                                             {"setter", layout::Role::Setter},
                                             {"instructor", layout::Role::Instructor}};
inline const Choices<layout::ThrowDirection> kDirections = {{"left", layout::ThrowDirection::Left},
                                                            {"right", layout::ThrowDirection::Right},
                                                            {"up", layout::ThrowDirection::Up},
                                                            {"down", layout::ThrowDirection::Down}};
inline const Choices<layout::Pin> kPins = {{"fitted", layout::Pin::Fitted},
                                           {"missing", layout::Pin::Missing}};
inline const Choices<layout::Severity> kSeverities = {
    {"fail", layout::Severity::Fail}, {"warn", layout::Severity::Warn}, {"note", layout::Severity::Note}};
inline const Choices<layout::LengthUnit> kUnits = {{"mm", layout::LengthUnit::Millimetre},
                                                   {"m", layout::LengthUnit::Metre},
                                                   {"in", layout::LengthUnit::Inch},
                                                   {"ft", layout::LengthUnit::Foot}};

// How a thing is named in messages, and whether it is written over several lines unless the file had it
// otherwise.
template <class Thing>
struct Manner;
template <>
struct Manner<layout::Site> {
  static constexpr const char* kName = "a site";
  static constexpr bool kBlock = true;
};
template <>
struct Manner<layout::Revision> {
  static constexpr const char* kName = "a revision";
  static constexpr bool kBlock = false;
};
template <>
struct Manner<layout::Underlay> {
  static constexpr const char* kName = "an underlay";
  static constexpr bool kBlock = false;
};
template <>
struct Manner<layout::Room> {
  static constexpr const char* kName = "a room";
  static constexpr bool kBlock = true;
};
template <>
struct Manner<layout::Door> {
  static constexpr const char* kName = "a door";
  static constexpr bool kBlock = true;
};
template <>
struct Manner<layout::Fixture> {
  static constexpr const char* kName = "a fixture";
  static constexpr bool kBlock = false;
};
template <>
struct Manner<layout::Machine> {
  static constexpr const char* kName = "a machine";
  static constexpr bool kBlock = true;
};
template <>
struct Manner<layout::Station> {
  static constexpr const char* kName = "a station";
  static constexpr bool kBlock = false;
};
template <>
struct Manner<layout::Device> {
  static constexpr const char* kName = "a device";
  static constexpr bool kBlock = false;
};
template <>
struct Manner<layout::Phone> {
  static constexpr const char* kName = "a phone";
  static constexpr bool kBlock = false;
};
template <>
struct Manner<layout::Note> {
  static constexpr const char* kName = "a note";
  static constexpr bool kBlock = false;
};
template <>
struct Manner<layout::TapeCheck> {
  static constexpr const char* kName = "a tape check";
  static constexpr bool kBlock = false;
};
template <>
struct Manner<layout::HouseRule> {
  static constexpr const char* kName = "a house rule";
  static constexpr bool kBlock = false;
};
template <>
struct Manner<layout::AcceptedFinding> {
  static constexpr const char* kName = "an accepted finding";
  static constexpr bool kBlock = false;
};
template <>
struct Manner<layout::Layout> {
  static constexpr const char* kName = "a layout";
  static constexpr bool kBlock = true;
};

template <class V, Is<layout::Site> T>
void describe(V& v, T& site) {
  v.text("name", site.name, Need::Required);
  v.text("address", site.address, Need::Optional);
  v.text("emergency_call", site.emergency_call, Need::Optional);
  v.text("meet_responders_at", site.meet_responders_at, Need::Optional);
}

template <class V, Is<layout::Revision> T>
void describe(V& v, T& revision) {
  v.whole("number", revision.number);
  v.date("date", revision.date);
  v.text("by", revision.by, Need::Optional);
  v.text("reason", revision.reason, Need::Optional);
}

template <class V, Is<layout::Underlay> T>
void describe(V& v, T& underlay) {
  v.text("image", underlay.image, Need::Required);
  v.point("at", underlay.at);
  v.scale("mm_per_pixel", underlay.mm_per_pixel);
  v.angle("turn", underlay.turn, Need::Optional);
  v.share("opacity", underlay.opacity, 0.4);
}

template <class V, Is<layout::Room> T>
void describe(V& v, T& room) {
  v.id("id", room.id);
  v.text("name", room.name, Need::Optional);
  v.outline("outline", room.outline, Need::Required);
  v.flag("outdoors", room.outdoors);
}

template <class V, Is<layout::Door> T>
void describe(V& v, T& door) {
  v.id("id", door.id);
  v.joins("joins", door.first, door.second);
  v.point("at", door.at);
  v.size("width", door.width);
  v.choice("locked", door.locked, layout::Locked::Never, kLocked);
}

template <class V, Is<layout::Fixture> T>
void describe(V& v, T& fixture) {
  v.id("id", fixture.id);
  v.text("name", fixture.name, Need::Optional);
  v.point("at", fixture.at);
  v.angle("turn", fixture.turn, Need::Optional);
  v.footprint("footprint", fixture.footprint);
  v.size("height", fixture.height);
}

template <class V, Is<layout::Station> T>
void describe(V& v, T& station) {
  v.id("id", station.id);
  v.word("role", station.role, kRoles);
  v.point("at", station.at);
}

template <class V, Is<layout::Device> T>
void describe(V& v, T& device) {
  v.id("id", device.id);
  v.deviceKind("kind", device.kind);
  v.point("at", device.at);
  v.faces("faces", device.faces);
  v.barLength("length", device.length, device.kind);
  v.size("height", device.height);
  v.stops("stops", device.stops);
  v.runDown("run_down", device.run_down, device.run_down_each);
  v.text("instruction", device.instruction, Need::Optional);
  v.flag("emergency", device.emergency);
  v.choice("direction", device.direction, kDirections);
  v.heldAt("held_at", device.held_at);
  v.choice("pin", device.pin, kPins);
}

template <class V, Is<layout::Machine> T>
void describe(V& v, T& machine) {
  v.id("id", machine.id);
  v.text("name", machine.name, Need::Optional);
  v.text("kind", machine.kind, Need::Optional);
  v.point("at", machine.at);
  v.angle("turn", machine.turn, Need::Optional);
  v.footprint("footprint", machine.footprint);
  v.size("height", machine.height);
  v.seconds("run_down", machine.run_down);
  v.flag("hand_held", machine.hand_held);
  v.text("after_stop", machine.after_stop, Need::Optional);
  v.outline("hazard", machine.hazard, Need::Optional);
  v.list("stations", machine.stations);
  v.list("devices", machine.devices);
}

template <class V, Is<layout::Phone> T>
void describe(V& v, T& phone) {
  v.id("id", phone.id);
  v.text("name", phone.name, Need::Optional);
  v.point("at", phone.at);
  v.angle("faces", phone.faces, Need::Required);
  v.size("height", phone.height);
}

template <class V, Is<layout::Note> T>
void describe(V& v, T& note) {
  v.id("id", note.id);
  v.point("at", note.at);
  v.point("points_to", note.points_to);
  v.text("text", note.text, Need::Required);
}

template <class V, Is<layout::TapeCheck> T>
void describe(V& v, T& check) {
  v.id("id", check.id);
  v.place("from", check.from);
  v.place("to", check.to);
  v.distance("taped", check.taped);
  v.date("date", check.date);
  v.text("by", check.by, Need::Optional);
}

template <class V, Is<layout::HouseRule> T>
void describe(V& v, T& house) {
  v.text("rule", house.rule, Need::Required);
  v.text("of", house.of, Need::Optional);
  v.number("limit", house.limit);
  v.choice("severity", house.severity, kSeverities);
  v.flag("on", house.on);
  v.text("reason", house.reason, Need::Optional);
}

template <class V, Is<layout::AcceptedFinding> T>
void describe(V& v, T& accepted) {
  v.text("rule", accepted.rule, Need::Required);
  v.text("subject", accepted.subject, Need::Required);
  v.text("which", accepted.which, Need::Optional);
  v.number("measured", accepted.measured);
  v.text("reason", accepted.reason, Need::Required);
  v.text("by", accepted.by, Need::Required);
  v.date("until", accepted.until);
}

template <class V, Is<layout::Layout> T>
void describe(V& v, T& plan) {
  v.format("stopwalk_layout");
  v.unit("units", plan.unit);
  v.text("profile", plan.profile, Need::Optional);
  v.list("house_rules", plan.house_rules);
  v.list("accepted_findings", plan.accepted_findings);
  v.thing("site", plan.site);
  v.thing("revision", plan.revision);
  v.thing("underlay", plan.underlay);
  v.list("rooms", plan.rooms);
  v.list("doors", plan.doors);
  v.list("fixtures", plan.fixtures);
  v.list("machines", plan.machines);
  v.list("devices", plan.devices);
  v.list("phones", plan.phones);
  v.list("notes", plan.notes);
  v.list("tape_checks", plan.tape_checks);
}

}  // namespace stopwalk::files
