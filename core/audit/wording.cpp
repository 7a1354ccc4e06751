#include "core/audit/wording.h"

#include "core/layout/length_for_people.h"

namespace stopwalk::audit {
namespace {

constexpr int kExact = 6;  // decimals: a limit is not given finer

bool isInFeet(layout::LengthUnit unit) {
  return unit == layout::LengthUnit::Inch || unit == layout::LengthUnit::Foot;
}

// With zeros up to so many decimals.
std::string even(std::string number, std::size_t decimals) {
  const std::size_t dot = number.find('.');
  const std::size_t has = dot == std::string::npos ? 0 : number.size() - dot - 1;
  if (has == 0) number += '.';
  return number + std::string(decimals - has, '0');
}

}  // namespace

std::string decimal(double value, int decimals) {
  return layout::decimal(value, decimals);
}

std::string lengthText(double length_m, layout::LengthUnit unit) {
  return layout::lengthForPeople(length_m, unit);
}

std::string lengthText(double length_m, double limit_m, layout::LengthUnit unit) {
  return layout::lengthForPeople(length_m, limit_m, unit);
}

std::string limitText(double limit_m, layout::LengthUnit unit) {
  return isInFeet(unit) ? lengthText(limit_m, unit) : decimal(limit_m, kExact) + " m";
}

std::string limitText(double limit_m, double length_m, layout::LengthUnit unit) {
  return isInFeet(unit) ? lengthText(limit_m, length_m, unit) : limitText(limit_m, unit);
}

std::string lengthCell(double length_m, layout::LengthUnit unit) {
  return isInFeet(unit) ? lengthText(length_m, unit) : even(decimal(length_m, 2), 2) + " m";
}

std::string secondsCell(double seconds) {
  return even(decimal(seconds, 1), 1) + " s";
}

std::string secondsText(double seconds) {
  return decimal(seconds, 1) + " s";
}

std::string secondsText(double seconds, double limit) {
  int decimals = 1;
  while (decimals < kExact && decimal(seconds, decimals) == decimal(limit, decimals)) ++decimals;
  return decimal(seconds, decimals) + " s";
}

std::string limitSecondsText(double limit) {
  return decimal(limit, kExact) + " s";
}

std::string figureText(double value, double other, const std::string& unit, layout::LengthUnit lengths) {
  if (unit == "m") return value == other ? lengthText(value, lengths) : lengthText(value, other, lengths);
  if (unit == "s") return value == other ? secondsText(value) : secondsText(value, other);
  return decimal(value) + (unit.empty() ? "" : " " + unit);
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

std::string untoldText(const Report& report) {
  const std::size_t n = report.countUntold();
  if (n == 0) return "";
  return std::to_string(n) + (n == 1 ? " station has" : " stations have") +
         " no way to a stop or to a phone, which no failing or warning rule that is on says";
}

std::string noFindingsText(const Report& report) {
  return report.count(Verdict::Meets) == report.stations.size()
             ? "No findings: the plan, as drawn and as entered, meets the chosen rules."
             : "No findings by the rules that are on.";
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

std::string joined(const std::vector<std::string>& ids) {
  std::string text;
  for (const std::string& id : ids) text += (text.empty() ? "" : ", ") + id;
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
