#pragma once

#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <vector>

#include "core/audit/profile.h"
#include "core/files/keep.h"
#include "core/files/layout_keys.h"
#include "core/files/references.h"
#include "core/files/value_reader.h"
#include "core/layout/device_kind.h"

// Fills the things of layout_keys.h from a source tree. Used by the readers of layouts and of machine
// templates.
namespace stopwalk::files {

template <class Thing>
inline constexpr Names kNames = Names::Other;
template <>
inline constexpr Names kNames<layout::Room> = Names::Room;
template <>
inline constexpr Names kNames<layout::Machine> = Names::Machine;
template <>
inline constexpr Names kNames<layout::Station> = Names::Station;
template <>
inline constexpr Names kNames<layout::Device> = Names::Device;
template <>
inline constexpr Names kNames<layout::Phone> = Names::Phone;

// What all things of one file share while it is read.
struct Reading {
  Reading(Problems& the_problems, const layout::DeviceKinds& the_kinds)
      : problems(the_problems), kinds(the_kinds), values(the_problems), references(the_problems) {
    for (const auto& kind : kinds.all()) kind_keys.push_back(kind.key);
  }

  Problems& problems;
  const layout::DeviceKinds& kinds;
  ValueReader values;
  References references;
  std::vector<std::string_view> kind_keys;
  layout::LengthUnit unit = layout::LengthUnit::Millimetre;
};

// Fills one thing from its map; the visitor of layout_keys.h.
class ThingReader {
 public:
  using Point = layout::Point;

  ThingReader(Reading& reading, Node node, const char* what, Names names, std::string scope)
      : reading_(reading), map_(node, reading.problems, what), names_(names), scope_(std::move(scope)) {}

  void finish() { map_.finish(); }
  bool isMap() const { return map_.isMap(); }

  void format(std::string_view key) {
    const auto node = map_.required(key);
    if (!node) return;
    const auto number = readNumber(*node, reading_.problems);
    if (number && *number != 1)
      reading_.problems.error(node->begin(),
                              "this program reads layouts of format 1, not " + quoted(node->text()));
  }
  void unit(std::string_view key, layout::LengthUnit& unit) {
    const auto node = map_.required(key);
    const auto read = node ? readChoice(*node, kUnits, reading_.problems) : std::nullopt;
    reading_.values.setUnit(read);
    if (read) reading_.unit = unit = *read;
  }
  void text(std::string_view key, std::string& text, Need need) {
    const auto node = find(key, need);
    set(text, node, [&](Node n) { return readText(n, reading_.problems); });
    if (need == Need::Required && node && node->isScalar() && text.empty())
      reading_.problems.warn(node->begin(), "the key `" + std::string(key) + "` says nothing");
  }
  void date(std::string_view key, std::string& date);
  void id(std::string_view key, std::string& id) {
    const auto node = map_.required(key);
    set(id, node, [&](Node n) { return readId(n, reading_.problems); });
    name(id, node.value_or(map_.node()));
  }
  // Makes the id known that stands at `node`.
  void name(const std::string& id, Node node) {
    const bool known = !id.empty() && reading_.references.define(scope_ + id, names_, node.begin());
    // What stands on a machine without a usable id is not mistaken for another's.
    inner_ = (known ? id : "?" + std::to_string(map_.node().begin())) + "/";
  }
  void whole(std::string_view key, int& number) {
    set(number, map_.required(key),
        [&](Node n) { return readWhole(n, 0, 1'000'000'000, reading_.problems); });
  }
  void point(std::string_view key, Point& at) {
    set(at, map_.required(key), [&](Node n) { return reading_.values.point(n); });
  }
  void point(std::string_view key, std::optional<Point>& at) {
    set(at, map_.optional(key), [&](Node n) { return reading_.values.point(n); });
  }
  void size(std::string_view key, double& mm) {
    set(mm, map_.required(key), [&](Node n) { return reading_.values.size(n); });
  }
  void size(std::string_view key, std::optional<double>& mm) {
    set(mm, map_.optional(key), [&](Node n) { return reading_.values.size(n); });
  }
  void distance(std::string_view key, double& mm) {
    set(mm, map_.required(key), [&](Node n) { return reading_.values.distance(n); });
  }
  void angle(std::string_view key, double& deg, Need need) {
    set(deg, find(key, need), [&](Node n) { return reading_.values.angle(n); });
  }
  void seconds(std::string_view key, std::optional<double>& s) {
    set(s, map_.optional(key), [&](Node n) { return reading_.values.seconds(n); });
  }
  void number(std::string_view key, std::optional<double>& number) {
    set(number, map_.optional(key), [&](Node n) { return readNumber(n, reading_.problems); });
  }
  void scale(std::string_view key, double& scale) {
    set(scale, map_.required(key), [&](Node n) { return numberWithin(n, 1e-6, 1e6, "a positive scale"); });
  }
  void share(std::string_view key, double& share, double) {
    set(share, map_.optional(key), [&](Node n) { return numberWithin(n, 0, 1, "a number from 0 to 1"); });
  }
  void flag(std::string_view key, bool& flag) {
    set(flag, map_.optional(key), [&](Node n) { return readFlag(n, reading_.problems); });
  }
  void flag(std::string_view key, std::optional<bool>& flag) {
    set(flag, map_.optional(key), [&](Node n) { return readFlag(n, reading_.problems); });
  }
  template <class Enum>
  void choice(std::string_view key, Enum& value, Enum, const Choices<Enum>& choices) {
    word(key, value, choices);
  }
  template <class Enum>
  void choice(std::string_view key, std::optional<Enum>& value, const Choices<Enum>& choices) {
    set(value, map_.optional(key), [&](Node n) { return readChoice(n, choices, reading_.problems); });
  }
  template <class Enum>
  void word(std::string_view key, Enum& value, const Choices<Enum>& choices) {
    set(value, map_.optional(key), [&](Node n) { return readChoice(n, choices, reading_.problems); });
  }
  void outline(std::string_view key, geometry::Polygon& outline, Need need) {
    set(outline, find(key, need), [&](Node n) { return reading_.values.outline(n); });
  }
  void footprint(std::string_view key, layout::Footprint& shape) {
    set(shape, map_.required(key), [&](Node n) { return reading_.values.footprint(n); });
  }

  void deviceKind(std::string_view key, std::string& kind) {
    const auto node = map_.required(key);
    if (!node) return;
    if (const auto index = readWord(*node, reading_.kind_keys, reading_.problems))
      kind = reading_.kind_keys[*index];
  }
  void faces(std::string_view key, double& deg) {
    angle(key, deg, onMachine() ? Need::Optional : Need::Required);
  }
  void barLength(std::string_view key, std::optional<double>& mm, const std::string& kind) {
    const layout::DeviceKind* found = reading_.kinds.find(kind);
    const auto node = map_.optional(key);
    if (!node && found != nullptr && found->shape == layout::Shape::Line)
      reading_.problems.error(map_.node().begin(),
                              "a device of the kind " + quoted(kind) + " needs the key `length`");
    set(mm, node, [&](Node n) { return reading_.values.size(n); });
  }
  void joins(std::string_view key, std::string& first, std::string& second);
  void stops(std::string_view key, std::optional<layout::Stops>& stops);
  void runDown(std::string_view key, std::optional<double>& all,
               std::vector<std::pair<std::string, double>>& each);
  void heldAt(std::string_view key, std::optional<std::vector<std::string>>& stations);
  void place(std::string_view key, std::string& id);

  template <class Thing>
  void thing(std::string_view key, Thing& thing);
  template <class Thing>
  void thing(std::string_view key, std::optional<Thing>& thing);
  template <class Thing>
  void list(std::string_view key, std::vector<Thing>& things);

 private:
  std::optional<Node> find(std::string_view key, Need need) {
    return need == Need::Required ? map_.required(key) : map_.optional(key);
  }
  template <class Value, class Read>
  void set(Value& value, const std::optional<Node>& node, Read read) {
    if (!node) return;
    if (auto got = read(*node)) value = std::move(*got);
  }
  std::optional<double> numberWithin(Node node, double least, double most, const char* wanted) {
    const auto number = readNumber(node, reading_.problems);
    if (!number || (*number >= least && *number <= most)) return number;
    reading_.problems.error(node.begin(),
                            std::string(wanted) + " is expected here, not " + quoted(node.text()));
    return std::nullopt;
  }
  // Within braces there are no lines of its own to look for; looking for them again and again would be slow.
  Standing standing(std::string_view key) const {
    return {.above = map_.node().isFlow() ? 0 : lineBelow(map_.node().whole(), map_.keyEnd(key))};
  }
  bool onMachine() const { return !scope_.empty(); }

  Reading& reading_;
  MapReader map_;
  Names names_;
  std::string scope_;  // `machine/` for what is on one
  std::string inner_;  // the scope of what is on this
};

template <class Thing>
void readThing(Reading& reading, Node node, Thing& thing, const std::string& scope,
               const Standing& standing) {
  ThingReader reader(reading, node, Manner<Thing>::kName, kNames<Thing>, scope);
  if (!reader.isMap()) return;
  describe(reader, thing);
  reader.finish();
  if constexpr (std::is_same_v<Thing, layout::HouseRule>)
    if (std::string wrong = audit::troubleOf(thing); !thing.rule.empty() && !wrong.empty())
      reading.problems.error(node.begin(), std::move(wrong));
  if constexpr (std::is_same_v<Thing, layout::AcceptedFinding>)
    if (std::string wrong = audit::troubleOf(thing); !thing.rule.empty() && !wrong.empty())
      reading.problems.error(node.begin(), std::move(wrong));
  if (reading.problems.hasErrors()) return;  // there will be no layout
  FieldTexts texts(reading.unit, !scope.empty());
  describe(texts, std::as_const(thing));
  thing.kept = keep(node, texts.fields(), Manner<Thing>::kBlock, reading.unit, standing);
}

template <class Thing>
void ThingReader::thing(std::string_view key, Thing& thing) {
  if (const auto node = map_.required(key)) readThing(reading_, *node, thing, "", standing(key));
}

template <class Thing>
void ThingReader::thing(std::string_view key, std::optional<Thing>& thing) {
  if (const auto node = map_.optional(key)) readThing(reading_, *node, thing.emplace(), "", standing(key));
}

template <class Thing>
void ThingReader::list(std::string_view key, std::vector<Thing>& things) {
  const auto node = map_.optional(key);
  if (!node) return;
  if (!node->isList()) {
    reading_.problems.error(
        node->begin(),
        "the " + std::string(key) + " are a list: each begins with `- `; write [] where there are none");
    return;
  }
  things.reserve(node->size());
  Standing place = standing(key);
  place.is_item = !node->isFlow();
  for (const Node item : node->items()) {
    readThing(reading_, item, things.emplace_back(), inner_, place);
    if (!node->isFlow()) place.above = lineBelow(item);
  }
}

}  // namespace stopwalk::files
