#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/files/layout_keys.h"
#include "core/files/scalar_text.h"

namespace stopwalk::files {

// One key of a thing as the program writes it.
struct Field {
  std::string_view key;
  std::string text;      // of a value on one line; empty: there is no value, or it is nested
  bool implied = false;  // the value that is assumed without the key
  bool nested = false;   // a thing, or a list of things that is not empty
};

// Turns the values of one thing into text; the visitor of layout_keys.h.
class FieldTexts {
 public:
  using Point = layout::Point;

  FieldTexts(layout::LengthUnit unit, bool on_machine) : unit_(unit), on_machine_(on_machine) {
    fields_.reserve(16);
  }

  const std::vector<Field>& fields() const { return fields_; }

  void format(std::string_view key) { add(key, "1"); }
  void unit(std::string_view key, layout::LengthUnit unit) { add(key, std::string(layout::unitName(unit))); }
  void text(std::string_view key, const std::string& text, Need need);
  void date(std::string_view key, const std::string& date) { text(key, date, Need::Optional); }
  void id(std::string_view key, const std::string& id) { add(key, scalarText(id)); }
  void whole(std::string_view key, int number) { add(key, std::to_string(number)); }
  void point(std::string_view key, Point at) { add(key, pointText(at)); }
  void point(std::string_view key, const std::optional<Point>& at) { add(key, at ? pointText(*at) : ""); }
  void size(std::string_view key, double mm) { add(key, length(mm)); }
  void size(std::string_view key, std::optional<double> mm) { add(key, mm ? length(*mm) : ""); }
  void distance(std::string_view key, double mm) { add(key, length(mm)); }
  void angle(std::string_view key, double deg, Need need) {
    add(key, layout::numberText(deg), need == Need::Optional && deg == 0);
  }
  void seconds(std::string_view key, std::optional<double> s) { add(key, s ? layout::numberText(*s) : ""); }
  void number(std::string_view key, std::optional<double> n) { add(key, n ? layout::numberText(*n) : ""); }
  void scale(std::string_view key, double scale) { add(key, layout::numberText(scale)); }
  void share(std::string_view key, double share, double usual) {
    add(key, layout::numberText(share), share == usual);
  }
  void flag(std::string_view key, bool flag) { add(key, flag ? "true" : "false", !flag); }
  void flag(std::string_view key, std::optional<bool> flag) {
    add(key, flag ? (*flag ? "true" : "false") : "");
  }
  template <class Enum>
  void choice(std::string_view key, Enum value, Enum usual, const Choices<Enum>& choices) {
    add(key, wordOf(value, choices), value == usual);
  }
  template <class Enum>
  void choice(std::string_view key, std::optional<Enum> value, const Choices<Enum>& choices) {
    add(key, value ? wordOf(*value, choices) : "");
  }
  template <class Enum>
  void word(std::string_view key, Enum value, const Choices<Enum>& choices) {
    add(key, wordOf(value, choices));
  }
  void outline(std::string_view key, const geometry::Polygon& outline, Need) {
    add(key, outline.empty() ? "" : outlineText(outline));
  }
  void footprint(std::string_view key, const layout::Footprint& shape);
  void deviceKind(std::string_view key, const std::string& kind) { add(key, scalarText(kind)); }
  void faces(std::string_view key, double deg) {
    add(key, layout::numberText(deg), on_machine_ && deg == 270);
  }
  void barLength(std::string_view key, std::optional<double> mm, const std::string&) { size(key, mm); }
  void joins(std::string_view key, const std::string& first, const std::string& second) {
    add(key, listText({first, second}));
  }
  void stops(std::string_view key, const std::optional<layout::Stops>& stops);
  void runDown(std::string_view key, std::optional<double> all,
               const std::vector<std::pair<std::string, double>>& each);
  void heldAt(std::string_view key, const std::optional<std::vector<std::string>>& ids) {
    add(key, ids ? listText(*ids) : "");
  }
  void place(std::string_view key, const std::string& id) { add(key, scalarText(id)); }

  template <class Thing>
  void thing(std::string_view key, const Thing&) {
    fields_.push_back({key, "", false, true});
  }
  template <class Thing>
  void thing(std::string_view key, const std::optional<Thing>& thing) {
    fields_.push_back({key, "", !thing, thing.has_value()});
  }
  template <class Thing>
  void list(std::string_view key, const std::vector<Thing>& things) {
    fields_.push_back({key, things.empty() ? "[]" : "", things.empty(), !things.empty()});
  }

 private:
  void add(std::string_view key, std::string text, bool implied = false) {
    fields_.push_back({key, std::move(text), implied, false});
  }
  template <class Enum>
  static std::string wordOf(Enum value, const Choices<Enum>& choices) {
    for (const auto& choice : choices)
      if (choice.second == value) return std::string(choice.first);
    return "";
  }
  std::string length(double mm) const { return layout::lengthText(mm, unit_); }
  std::string pointText(Point p) const { return "[" + length(p.x) + ", " + length(p.y) + "]"; }
  std::string outlineText(const geometry::Polygon& outline) const;
  static std::string listText(const std::vector<std::string>& ids);

  layout::LengthUnit unit_;
  bool on_machine_;
  std::vector<Field> fields_;
};

}  // namespace stopwalk::files
