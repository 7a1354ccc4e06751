#include "core/audit/wording.h"

#include <array>
#include <charconv>
#include <cmath>

namespace stopwalk::audit {
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
std::string lengthAt(double length_m, layout::LengthUnit unit, int fineness) {
  if (unit == layout::LengthUnit::Inch || unit == layout::LengthUnit::Foot)
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

std::string lengthText(double length_m, layout::LengthUnit unit) {
  return lengthAt(length_m, unit, 0);
}

std::string lengthText(double length_m, double limit_m, layout::LengthUnit unit) {
  int fineness = 0;
  while (fineness < 4 && lengthAt(length_m, unit, fineness) == lengthAt(limit_m, unit, fineness)) ++fineness;
  return lengthAt(length_m, unit, fineness);
}

std::string secondsText(double seconds) {
  return decimal(seconds, 1) + " s";
}

std::string_view word(layout::Role role) {
  switch (role) {
    case layout::Role::Operator:
      return "operator";
    case layout::Role::Helper:
      return "helper";
    case layout::Role::Setter:
      return "setter";
    case layout::Role::Instructor:
      return "instructor";
  }
  return "";
}

std::string_view word(Severity severity) {
  switch (severity) {
    case Severity::Fail:
      return "fail";
    case Severity::Warn:
      return "warn";
    case Severity::Note:
      return "note";
  }
  return "";
}

std::string_view word(Status status) {
  switch (status) {
    case Status::AtHand:
      return "at-hand";
    case Status::Walk:
      return "walk";
    case Status::Narrow:
      return "narrow";
    case Status::Unreachable:
      return "unreachable";
    case Status::None:
      return "none";
    case Status::Unmeasured:
      return "unmeasured";
  }
  return "";
}

std::string_view word(Verdict verdict) {
  switch (verdict) {
    case Verdict::Meets:
      return "meets";
    case Verdict::Warns:
      return "warns";
    case Verdict::Fails:
      return "fails";
  }
  return "";
}

std::string_view word(BasisKind kind) {
  switch (kind) {
    case BasisKind::Published:
      return "published";
    case BasisKind::CommonPractice:
      return "common-practice";
    case BasisKind::HouseRule:
      return "house-rule";
  }
  return "";
}

std::string_view word(floor::Hours hours) {
  return hours == floor::Hours::Open ? "open" : "after";
}

std::string listed(const std::vector<std::string>& names, std::size_t most) {
  std::string text;
  const bool cut = names.size() > most + 1;
  const std::size_t shown = cut ? most : names.size();
  for (std::size_t i = 0; i < shown; ++i) {
    if (i > 0) text += i + 1 == shown && !cut ? " and " : ", ";
    text += names[i];
  }
  if (cut) text += " and " + std::to_string(names.size() - shown) + " more";
  return text;
}

std::string withCapital(std::string text) {
  if (!text.empty() && text[0] >= 'a' && text[0] <= 'z') text[0] = static_cast<char>(text[0] - 'a' + 'A');
  return text;
}

std::string basisText(const Basis& basis) {
  const std::string kind = basis.kind == BasisKind::Published   ? "published"
                           : basis.kind == BasisKind::HouseRule ? "house rule"
                                                                : "common practice";
  return basis.reference.empty() ? kind : kind + ": " + basis.reference;
}

}  // namespace stopwalk::audit
