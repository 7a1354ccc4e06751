#include "app/command_line/point_text.h"

#include "core/layout/units.h"

namespace stopwalk::app {
namespace {

std::optional<double> coordinate(std::string text, layout::LengthUnit unit) {
  text.erase(0, text.find_first_not_of(' '));
  text.erase(text.find_last_not_of(' ') + 1);
  if (const layout::Number n = layout::millimetres(text, unit); n.ok()) return n.value;
  const bool feet = unit == layout::LengthUnit::Foot || unit == layout::LengthUnit::Inch;
  return feet ? layout::feetAndInches(text) : std::nullopt;
}

}  // namespace

std::optional<geometry::Point> pointOf(const std::string& text, layout::LengthUnit unit) {
  const std::size_t comma = text.find(',');
  if (comma == std::string::npos) return std::nullopt;
  const auto x = coordinate(text.substr(0, comma), unit), y = coordinate(text.substr(comma + 1), unit);
  if (!x || !y) return std::nullopt;
  return geometry::Point{*x, *y};
}

}  // namespace stopwalk::app
