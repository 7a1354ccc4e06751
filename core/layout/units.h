#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/layout/layout.h"

// Numbers and lengths as text. Nothing here depends on the locale.
namespace stopwalk::layout {

enum class NumberFault { None, NotANumber, LeadingZero, TrailingText, OutOfRange };

struct Number {
  double value = 0;
  NumberFault fault = NumberFault::None;
  bool ok() const { return fault == NumberFault::None; }
};

// A decimal number that is the whole of `text`: no `010`, no `.inf`, no `0x10`, no `+1`, no space round it.
Number parseNumber(std::string_view text);
// The shortest text that `parseNumber` reads as `value` again. Never with an exponent below a million
// million.
std::string numberText(double value);

inline constexpr double kLongest = 1e7;  // mm: no coordinate or length of a file may be beyond 10 km

inline constexpr double kMostAngle = 1e9;  // degrees: beyond, little of the direction is left

// `text`, a number of `unit`, in millimetres: the double nearest to the exact product.
Number millimetres(std::string_view text, LengthUnit unit);
// Feet and inches such as `12'`, `12' 6"`, `12' 6 1/2"`, `-3/4"`, `12'-6"`, in millimetres.
std::optional<double> feetAndInches(std::string_view text);

// Whether there are marks that look like those of feet and inches and are not: ′ ″ ‘ ’ “ ”.
bool hasCurlyMarks(std::string_view text);

// A text that a file in `unit` may hold and that is read as exactly `mm` again: a number, or in feet, where
// it comes out in sixty-fourths of an inch, feet and inches.
std::string lengthText(double mm, LengthUnit unit);

// What a person types for a length: `1.2 m`, `90 cm`, `4' 6"`, `3 ft`, `900` (of `unit`), in millimetres.
std::optional<double> parseLength(std::string_view text, LengthUnit unit);
// A length for a person to read, with its unit, rounded to a millimetre or a sixteenth of an inch: `1.2 m`,
// `4' 6"`.
std::string formatLength(double mm, LengthUnit unit);

// `mm`, `m`, `in` or `ft`.
std::string_view unitName(LengthUnit unit);

}  // namespace stopwalk::layout
