#include "app/records/local_time.h"

#include <algorithm>
#include <ctime>

namespace stopwalk::records {
namespace {

using inspection::Moment;

std::tm fieldsOf(inspection::Date date, int second, int summer) {
  std::tm fields{};
  fields.tm_year = static_cast<int>(date.year()) - 1900;
  fields.tm_mon = static_cast<int>(static_cast<unsigned>(date.month())) - 1;
  fields.tm_mday = static_cast<int>(static_cast<unsigned>(date.day()));
  fields.tm_hour = second / 3600;
  fields.tm_min = second / 60 % 60;
  fields.tm_sec = second % 60;
  fields.tm_isdst = summer;
  return fields;
}

}  // namespace

std::vector<Moment> momentsAt(inspection::Date date, int second_of_day) {
  std::vector<Moment> moments;
  for (const int summer : {0, 1}) {
    std::tm asked = fieldsOf(date, second_of_day, summer);
    const std::time_t at = std::mktime(&asked);
    std::tm shown{};
    if (!::localtime_r(&at, &shown)) continue;
    const std::tm same = fieldsOf(date, second_of_day, summer);
    if (shown.tm_mday != same.tm_mday || shown.tm_hour != same.tm_hour || shown.tm_min != same.tm_min)
      continue;
    const Moment moment{date, second_of_day, static_cast<int>(shown.tm_gmtoff / 60)};
    if (std::ranges::find(moments, moment) == moments.end()) moments.push_back(moment);
  }
  return moments;
}

std::optional<std::vector<Moment>> momentsTyped(std::string_view text) {
  const auto typed = inspection::parseTyped(text);
  if (!typed) return std::nullopt;
  if (typed->zone_min) return std::vector{Moment{typed->date, typed->second, *typed->zone_min}};
  return momentsAt(typed->date, typed->second);
}

}  // namespace stopwalk::records
