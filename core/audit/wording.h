#pragma once

#include <string>
#include <string_view>

#include "core/audit/report.h"
#include "core/layout/device_kind.h"
#include "core/layout/layout.h"

// How findings name things and write numbers; docs/messages.md holds the manner. Independent of the locale.
namespace stopwalk::audit {

// At most `decimals` decimals, without trailing zeros: 4.2, 0.65, 12.
std::string decimal(double value, int decimals = 2);

// A length for people: "4.2 m", or feet and inches to a quarter of an inch where the layout is drawn in them.
std::string lengthText(double length_m, layout::LengthUnit unit);
// The same, as fine as it must be to look different from `limit_m`.
std::string lengthText(double length_m, double limit_m, layout::LengthUnit unit);
// A limit, exact: 0.795 m is not 0.8 m. Feet and inches to a quarter of an inch all the same; beside a length
// as fine as that must be to look different from it.
std::string limitText(double limit_m, layout::LengthUnit unit);
std::string limitText(double limit_m, double length_m, layout::LengthUnit unit);
// One below the other: metres always with two decimals, seconds with one.
std::string lengthCell(double length_m, layout::LengthUnit unit);
std::string secondsCell(double seconds);
std::string secondsText(double seconds);
std::string secondsText(double seconds, double limit);
std::string limitSecondsText(double limit);
// What a finding measured, in its unit, as fine as it must be to look different from `other`.
std::string figureText(double value, double other, const std::string& unit, layout::LengthUnit lengths);

std::string_view word(layout::Role role);
std::string_view word(Severity severity);
std::string_view word(Status status);
std::string_view word(Verdict verdict);
std::string_view word(BasisKind kind);
std::string_view word(floor::Hours hours);
// "published: EN 60204-1, 10.1.2", or the kind alone where no source was seen.
std::string basisText(const Basis& basis);

// "3 stations have no way to a stop or to a phone, which no failing or warning rule that is on says"; empty
// where none has not.
std::string untoldText(const Report& report);
// Where nothing is found, and what that means.
std::string noFindingsText(const Report& report);

// "a", "a and b", "a, b and c"; after `most` names, "a, b and 3 more".
std::string listed(const std::vector<std::string>& names, std::size_t most = 4);
// All of them, for a machine to read: "a, b, c".
std::string joined(const std::vector<std::string>& ids);
std::string withCapital(std::string text);

}  // namespace stopwalk::audit
