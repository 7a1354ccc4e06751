#include "core/inspection/moment.h"

#include <cstdio>
#include <cstdlib>

namespace stopwalk::inspection {
namespace {

// A number of exactly `size` digits at `at`; -1: there is none.
int digits(std::string_view text, std::size_t at, std::size_t size) {
  if (at + size > text.size()) return -1;
  int value = 0;
  for (const char c : text.substr(at, size)) {
    if (c < '0' || c > '9') return -1;
    value = 10 * value + (c - '0');
  }
  return value;
}

bool has(std::string_view text, std::size_t at, char c) {
  return at < text.size() && text[at] == c;
}

std::string two(int value) {
  return {static_cast<char>('0' + value / 10 % 10), static_cast<char>('0' + value % 10)};
}

// `hh:mm` at `at`, in minutes; -1: there is none.
int minutes(std::string_view text, std::size_t at) {
  const int hour = digits(text, at, 2), minute = digits(text, at + 3, 2);
  return has(text, at + 2, ':') && hour >= 0 && hour < 24 && minute >= 0 && minute < 60 ? 60 * hour + minute
                                                                                        : -1;
}

}  // namespace

std::optional<Date> parseDate(std::string_view text) {
  if (text.size() != 10 || !has(text, 4, '-') || !has(text, 7, '-')) return std::nullopt;
  const int year = digits(text, 0, 4), month = digits(text, 5, 2), day = digits(text, 8, 2);
  if (year < 1 || month < 1 || day < 1) return std::nullopt;
  const Date date{std::chrono::year(year), std::chrono::month(static_cast<unsigned>(month)),
                  std::chrono::day(static_cast<unsigned>(day))};
  return date.ok() ? std::optional<Date>(date) : std::nullopt;
}

std::string dateText(Date date) {
  const int year = static_cast<int>(date.year());
  return two(year / 100) + two(year) + "-" + two(static_cast<int>(static_cast<unsigned>(date.month()))) +
         "-" + two(static_cast<int>(static_cast<unsigned>(date.day())));
}

std::string dayText(Date date) {
  return date == kUnreadDay ? "a day that cannot be read" : dateText(date);
}

std::optional<Moment> parseMoment(std::string_view text) {
  if (text.size() != 25 || text[10] != 'T' || text[16] != ':') return std::nullopt;
  const auto date = parseDate(text.substr(0, 10));
  const int minute = minutes(text, 11), second = digits(text, 17, 2), zone = minutes(text, 20);
  const bool east = text[19] == '+', west = text[19] == '-';
  if (!date || minute < 0 || second < 0 || second > 59 || zone < 0 || !(east || west)) return std::nullopt;
  return Moment{*date, 60 * minute + second, west ? -zone : zone};
}

std::string momentText(const Moment& m) {
  const int zone = std::abs(m.zone_min);
  return dateText(m.date) + "T" + two(m.second / 3600) + ":" + two(m.second / 60 % 60) + ":" +
         two(m.second % 60) + (m.zone_min < 0 ? "-" : "+") + two(zone / 60) + ":" + two(zone % 60);
}

std::int64_t instantOf(const Moment& m) {
  return std::int64_t{86400} * std::chrono::sys_days(m.date).time_since_epoch().count() + m.second -
         60 * m.zone_min;
}

std::optional<TypedMoment> parseTyped(std::string_view text) {
  const auto date = parseDate(text.substr(0, 10));
  if (!date || !(has(text, 10, 'T') || has(text, 10, ' '))) return std::nullopt;
  text.remove_prefix(11);
  const int minute = minutes(text, 0);
  if (minute < 0) return std::nullopt;
  text.remove_prefix(5);
  TypedMoment typed{*date, 60 * minute, {}};
  if (has(text, 0, ':')) {
    const int second = digits(text, 1, 2);
    if (second < 0 || second > 59) return std::nullopt;
    typed.second += second;
    text.remove_prefix(3);
  }
  if (text.empty()) return typed;
  if (text == "Z") return typed.zone_min = 0, typed;
  const int zone = minutes(text, 1);
  if (text.size() != 6 || zone < 0 || !(text[0] == '+' || text[0] == '-')) return std::nullopt;
  typed.zone_min = text[0] == '-' ? -zone : zone;
  return typed;
}

Date monthsAfter(Date date, int months) {
  const Date moved = date + std::chrono::months(months);
  return moved.ok() ? moved : Date(moved.year() / moved.month() / std::chrono::last);
}

Date daysAfter(Date date, int days) {
  return Date(std::chrono::sys_days(date) + std::chrono::days(days));
}

int daysBetween(Date from, Date to) {
  return static_cast<int>((std::chrono::sys_days(to) - std::chrono::sys_days(from)).count());
}

}  // namespace stopwalk::inspection
