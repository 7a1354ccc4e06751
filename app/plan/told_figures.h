#pragma once

#include <QString>
#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>

#include "core/audit/report.h"

namespace stopwalk::plan {

// A station's walks and seconds in words, as fine as they must be to look different from the limit that a
// finding holds them against: 5.003 m beside a limit of 5 m.
class ToldFigures {
 public:
  // `report` must live on.
  ToldFigures(const audit::Report& report, layout::LengthUnit unit) : report_(report), unit_(unit) {}

  // "at hand", "3 m", "no way".
  QString walk(const std::string& station, const audit::Nearest& nearest) const;
  // "4.0 s", "not known".
  QString seconds(const std::string& station, const audit::Nearest& nearest) const;

 private:
  std::optional<double> limitOf(const std::string& station, double value, std::string_view unit) const;

  const audit::Report& report_;
  layout::LengthUnit unit_;
  // By subject; found once they are asked for.
  mutable std::optional<std::unordered_multimap<std::string_view, const audit::Finding*>> held_;
};

}  // namespace stopwalk::plan
