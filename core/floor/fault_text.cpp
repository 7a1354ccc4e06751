#include "core/floor/fault_text.h"

#include <charconv>

#include "core/layout/length_for_people.h"

namespace stopwalk::floor {

namespace {

bool isInFeet(layout::LengthUnit unit) {
  return unit == layout::LengthUnit::Foot || unit == layout::LengthUnit::Inch;
}

std::string inMetres(double mm) {
  char text[64];
  const auto end = std::to_chars(text, text + sizeof text, mm / 1000, std::chars_format::fixed, 3).ptr;
  std::string number(text, end);
  return number == "-0.000" ? "0.000" : number;
}

}  // namespace

std::string lengthOf(double mm, layout::LengthUnit unit, double limit_mm) {
  if (isInFeet(unit)) return layout::lengthForPeople(mm / 1000, limit_mm / 1000, unit);
  return inMetres(mm) + " m";
}

std::string place(geometry::Point in_mm, layout::LengthUnit unit) {
  if (isInFeet(unit))
    return "(" + layout::lengthForPeople(in_mm.x / 1000, unit) + ", " +
           layout::lengthForPeople(in_mm.y / 1000, unit) + ")";
  return "(" + inMetres(in_mm.x) + ", " + inMetres(in_mm.y) + ") m";
}

}  // namespace stopwalk::floor
