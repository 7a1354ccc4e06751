#pragma once

#include <chrono>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace stopwalk::inspection {

using Date = std::chrono::year_month_day;

// A time on the clock of the place, and how far that clock is from UTC.
struct Moment {
  Date date{};
  int second = 0;    // of the day, 0 to 86,399
  int zone_min = 0;  // east of UTC
  bool operator==(const Moment&) const = default;
};

// `2026-03-02`; none for anything else, or a day that there is not.
std::optional<Date> parseDate(std::string_view text);
std::string dateText(Date date);

// Of what is on record, and when it was cannot be read.
inline constexpr Date kUnreadDay{std::chrono::year(1970), std::chrono::January, std::chrono::day(1)};
// As a sentence says it.
std::string dayText(Date date);

// `2026-03-02T09:15:00+01:00`
std::optional<Moment> parseMoment(std::string_view text);
std::string momentText(const Moment& moment);

// Seconds since 1970 in UTC: what tells which of two is earlier.
std::int64_t instantOf(const Moment& moment);

// Now, as a clock of some place shows it. A day alone has no time: what bears a later date is to come then.
struct Now {
  Now() = default;
  Now(Date today) : day(today) {}
  Now(const Moment& at) : day(at.date), instant(instantOf(at)) {}
  Date day{};
  std::optional<std::int64_t> instant = {};
  // Another place may have the next day already: what bears that is no longer to come once its time is here.
  bool isToCome(const Moment& at) const { return at.date > day && (!instant || instantOf(at) > *instant); }
};

// As people type it: `2026-03-02 09:15`, or with `T` between, seconds, a zone (`+01:00` or `Z`) behind.
struct TypedMoment {
  Date date{};
  int second = 0;
  std::optional<int> zone_min;  // none: that of the place
};
std::optional<TypedMoment> parseTyped(std::string_view text);

// The same day so many months on; the month's last where it has no such day.
Date monthsAfter(Date date, int months);
Date daysAfter(Date date, int days);
int daysBetween(Date from, Date to);

}  // namespace stopwalk::inspection
