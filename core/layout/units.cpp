#include "core/layout/units.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <cstdint>
#include <cstdlib>
#include <numeric>

#include "core/layout/decimal.h"

namespace stopwalk::layout {
namespace {

bool isDigit(char c) {
  return c >= '0' && c <= '9';
}

bool hasLeadingZero(std::string_view text) {
  if (!text.empty() && text.front() == '-') text.remove_prefix(1);
  return text.size() > 1 && text[0] == '0' && isDigit(text[1]);
}

bool startsLikeANumber(std::string_view text) {
  if (!text.empty() && text.front() == '-') text.remove_prefix(1);
  if (!text.empty() && text.front() == '.') text.remove_prefix(1);
  return !text.empty() && isDigit(text.front());
}

// A whole number of at most six digits, without leading zeros, taken from the front of `text`.
std::optional<std::int64_t> takeWhole(std::string_view& text) {
  std::size_t n = 0;
  while (n < text.size() && isDigit(text[n])) ++n;
  if (n == 0 || n > 6 || (n > 1 && text[0] == '0')) return std::nullopt;
  std::int64_t value = 0;
  std::from_chars(text.data(), text.data() + n, value);
  text.remove_prefix(n);
  return value;
}

bool take(std::string_view& text, std::string_view what) {
  if (!text.starts_with(what)) return false;
  text.remove_prefix(what.size());
  return true;
}

// The inches of `6 1/2"`, `6"`, `1/2"` or `6.25"` as a fraction of whole numbers.
struct Fraction {
  std::int64_t top = 0;
  std::int64_t bottom = 1;
};

std::optional<Fraction> decimals(std::string_view& text, std::int64_t whole) {
  Fraction f{whole, 1};
  int count = 0;
  for (; !text.empty() && isDigit(text.front()) && count < 6; ++count, text.remove_prefix(1))
    f = {f.top * 10 + (text.front() - '0'), f.bottom * 10};
  if (count == 0) return std::nullopt;
  return f;
}

std::optional<Fraction> inches(std::string_view text) {
  const auto first = takeWhole(text);
  if (!first) return std::nullopt;
  Fraction result{*first, 1};
  std::optional<std::int64_t> top;
  if (take(text, ".")) {
    const auto f = decimals(text, *first);
    if (!f) return std::nullopt;
    result = *f;
  } else if (!text.empty() && text.front() == '/') {
    top = first;
    result.top = 0;
  } else if (text.starts_with(' ') || text.starts_with('-')) {
    text.remove_prefix(1);
    top = takeWhole(text);
    if (!top) return std::nullopt;
  }
  if (top) {
    if (!take(text, "/")) return std::nullopt;
    const auto bottom = takeWhole(text);
    if (!bottom || *top == 0 || *top >= *bottom) return std::nullopt;
    result = {result.top * *bottom + *top, *bottom};
  }
  if (text != "\"") return std::nullopt;
  return result;
}

// 25.4 mm an inch, rounded once.
double inMillimetres(Fraction in) {
  return static_cast<double>(in.top * 254) / static_cast<double>(in.bottom * 10);
}

struct Factor {
  int times;  // millimetres are times * 10^shift of a unit
  int shift;
};
Factor factorOf(LengthUnit unit) {
  switch (unit) {
    case LengthUnit::Millimetre:
      return {1, 0};
    case LengthUnit::Metre:
      return {1, 3};
    case LengthUnit::Inch:
      return {254, -1};
    case LengthUnit::Foot:
      return {3048, -1};
  }
  std::abort();
}

std::string feetAndInchesText(std::int64_t parts, std::int64_t a_foot) {
  std::string text = parts < 0 ? "-" : "";
  parts = std::abs(parts);
  const std::int64_t feet = parts / a_foot, rest = parts % a_foot, an_inch = a_foot / 12;
  if (feet != 0 || rest == 0) text += std::to_string(feet) + "'";
  if (rest == 0) return text;
  if (feet != 0) text += " ";
  const std::int64_t whole = rest / an_inch, part = rest % an_inch;
  if (whole != 0) text += std::to_string(whole);
  if (part != 0) {
    const std::int64_t common = std::gcd(part, an_inch);
    if (whole != 0) text += " ";
    text += std::to_string(part / common) + "/" + std::to_string(an_inch / common);
  }
  return text + "\"";
}

std::string trimmedFixed(double value, int decimals) {
  std::array<char, 400> buffer;
  const auto end =
      std::to_chars(buffer.data(), buffer.data() + buffer.size(), value, std::chars_format::fixed, decimals)
          .ptr;
  std::string text(buffer.data(), end);
  if (decimals > 0) {
    while (text.back() == '0') text.pop_back();
    if (text.back() == '.') text.pop_back();
  }
  return text == "-0" ? "0" : text;
}

struct Suffix {
  std::string_view text;
  LengthUnit unit;
  int shift;  // powers of ten
};
// Longest first where one ends with another.
constexpr Suffix kSuffixes[] = {{"mm", LengthUnit::Millimetre, 0},
                                {"cm", LengthUnit::Millimetre, 1},
                                {"m", LengthUnit::Metre, 0},
                                {"in", LengthUnit::Inch, 0},
                                {"ft", LengthUnit::Foot, 0}};

std::string_view trimmed(std::string_view text) {
  while (!text.empty() && text.front() == ' ') text.remove_prefix(1);
  while (!text.empty() && text.back() == ' ') text.remove_suffix(1);
  return text;
}

}  // namespace

Number parseNumber(std::string_view text) {
  if (!startsLikeANumber(text)) return {0, NumberFault::NotANumber};
  if (hasLeadingZero(text)) return {0, NumberFault::LeadingZero};
  double value = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (end != text.data() + text.size()) return {0, NumberFault::TrailingText};
  if (error != std::errc() || !std::isfinite(value)) return {0, NumberFault::OutOfRange};
  return {value + 0.0, NumberFault::None};
}

std::string numberText(double value) {
  std::array<char, 400> buffer;
  const bool plain = value == 0 || (std::abs(value) >= 1e-6 && std::abs(value) < 1e12);
  const auto end = plain ? std::to_chars(buffer.data(), buffer.data() + buffer.size(), value + 0.0,
                                         std::chars_format::fixed)
                               .ptr
                         : std::to_chars(buffer.data(), buffer.data() + buffer.size(), value).ptr;
  return {buffer.data(), end};
}

Number millimetres(std::string_view text, LengthUnit unit) {
  Number number = parseNumber(text);
  if (!number.ok() || unit == LengthUnit::Millimetre) return number;
  const auto [times, shift] = factorOf(unit);
  Decimal exact = Decimal::of(text);
  exact.multiply(times);
  exact.shift(shift);
  return parseNumber(exact.text());
}

std::optional<double> feetAndInches(std::string_view text) {
  const bool negative = take(text, "-");
  const std::size_t mark = text.find('\'');
  std::int64_t feet = 0;
  Fraction in;
  if (mark != std::string_view::npos) {
    const auto whole = takeWhole(text);
    if (!whole || !take(text, "'")) return std::nullopt;
    feet = *whole;
    if (!text.empty()) {
      if (text.starts_with(' ') || text.starts_with('-')) text.remove_prefix(1);
      const auto rest = inches(text);
      if (!rest || rest->top >= 12 * rest->bottom) return std::nullopt;
      in = *rest;
    }
  } else {
    const auto rest = inches(text);
    if (!rest) return std::nullopt;
    in = *rest;
  }
  const double mm = inMillimetres({feet * 12 * in.bottom + in.top, in.bottom});
  return negative ? 0.0 - mm : mm;
}

bool hasCurlyMarks(std::string_view text) {
  for (const std::string_view mark : {"\u2032", "\u2033", "\u2018", "\u2019", "\u201C", "\u201D"})
    if (text.find(mark) != std::string_view::npos) return true;
  return false;
}

std::string lengthText(double mm, LengthUnit unit) {
  if (unit == LengthUnit::Millimetre || mm == 0) return numberText(mm);
  if (unit == LengthUnit::Foot) {
    const double parts = std::round(mm / 25.4 * 64);
    if (std::abs(parts) < 1e7) {
      std::string text = feetAndInchesText(static_cast<std::int64_t>(parts), 12 * 64);
      if (feetAndInches(text) == mm) return text;
    }
  }
  const auto [times, shift] = factorOf(unit);
  std::string text;
  for (int digits = 1; digits <= 25; ++digits) {
    Decimal quotient = Decimal::of(numberText(mm));
    quotient.divide(times, digits);
    quotient.shift(-shift);
    text = quotient.plainText();
    if (const Number back = millimetres(text, unit); back.ok() && back.value == mm) break;
  }
  return text;
}

std::optional<double> parseLength(std::string_view text, LengthUnit unit) {
  text = trimmed(text);
  if (const auto mm = feetAndInches(text)) return mm;
  int shift = 0;
  for (const Suffix& s : kSuffixes) {
    if (!text.ends_with(s.text)) continue;
    text = trimmed(text.substr(0, text.size() - s.text.size()));
    unit = s.unit;
    shift = s.shift;
    break;
  }
  Number number = millimetres(text, unit);
  if (!number.ok()) return std::nullopt;
  if (shift != 0) {
    Decimal exact = Decimal::of(text);
    exact.shift(shift);
    number = parseNumber(exact.text());
  }
  if (!number.ok() || std::abs(number.value) > kLongest) return std::nullopt;
  return number.value;
}

std::string formatLength(double mm, LengthUnit unit) {
  switch (unit) {
    case LengthUnit::Millimetre:
      return trimmedFixed(mm, 0) + " mm";
    case LengthUnit::Metre:
      return trimmedFixed(mm / 1000, 3) + " m";
    case LengthUnit::Inch:
      return trimmedFixed(mm / 25.4, 2) + " in";
    case LengthUnit::Foot:
      return feetAndInchesText(std::llround(mm / 25.4 * 16), 12 * 16);
  }
  std::abort();
}

std::string_view unitName(LengthUnit unit) {
  switch (unit) {
    case LengthUnit::Millimetre:
      return "mm";
    case LengthUnit::Metre:
      return "m";
    case LengthUnit::Inch:
      return "in";
    case LengthUnit::Foot:
      return "ft";
  }
  std::abort();
}

}  // namespace stopwalk::layout
