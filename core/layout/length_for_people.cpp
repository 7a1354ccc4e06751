#include "core/layout/length_for_people.h"

#include <array>
#include <charconv>
#include <cmath>

namespace stopwalk::layout {
namespace {

constexpr double kInch_m = 0.0254;

std::string feetAndInches(double length_m, int per_inch) {
  const auto parts = static_cast<long long>(std::llround(std::abs(length_m) / kInch_m * per_inch));
  const long long whole = parts / per_inch;
  const long long feet = whole / 12, inches = whole % 12, rest = parts % per_inch;
  std::string text = length_m < 0 && parts > 0 ? "-" : "";
  if (feet > 0) text += std::to_string(feet) + "'";
  if (feet > 0 && inches == 0 && rest == 0) return text;
  if (feet > 0) text += " ";
  if (inches > 0 || rest == 0) text += std::to_string(inches);
  if (rest > 0) {
    long long over = rest, under = per_inch;
    while (over % 2 == 0) over /= 2, under /= 2;
    text += (inches > 0 ? " " : "") + std::to_string(over) + "/" + std::to_string(under);
  }
  return text + "\"";
}

// `fineness` 0 is what people read at a glance; each further step is finer.
std::string lengthAt(double length_m, LengthUnit unit, int fineness) {
  if (unit == LengthUnit::Inch || unit == LengthUnit::Foot)
    return feetAndInches(length_m, 4 << (3 * fineness));
  return decimal(length_m, 2 + fineness) + " m";
}

}  // namespace

std::string decimal(double value, int decimals) {
  std::array<char, 400> buffer{};
  const auto end =
      std::to_chars(buffer.data(), buffer.data() + buffer.size(), value, std::chars_format::fixed, decimals)
          .ptr;
  std::string text(buffer.data(), end);
  if (text.find('.') != std::string::npos) {
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.') text.pop_back();
  }
  return text == "-0" ? "0" : text;
}

std::string lengthForPeople(double length_m, LengthUnit unit) {
  return lengthAt(length_m, unit, 0);
}

std::string lengthForPeople(double length_m, double limit_m, LengthUnit unit) {
  int fineness = 0;
  while (fineness < 4 && lengthAt(length_m, unit, fineness) == lengthAt(limit_m, unit, fineness)) ++fineness;
  return lengthAt(length_m, unit, fineness);
}

}  // namespace stopwalk::layout
