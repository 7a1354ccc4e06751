#pragma once

#include <chrono>
#include <compare>
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

// `2026-03-02T09:15:00+01:00`
std::optional<Moment> parseMoment(std::string_view text);
std::string momentText(const Moment& moment);

// The same day so many months on; the month's last where it has no such day.
Date monthsAfter(Date date, int months);
Date daysAfter(Date date, int days);
int daysBetween(Date from, Date to);

}  // namespace stopwalk::inspection
