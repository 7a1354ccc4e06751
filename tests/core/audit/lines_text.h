#pragma once

#include <cmath>
#include <sstream>

#include "core/audit/report.h"

namespace stopwalk::audit {

// What findings have drawn, to a millionth of a millimetre as in the report's JSON, which leaves it out.
inline std::string linesText(const Report& report) {
  const auto rounded = [](double m) { return std::round(m * 1e9) / 1e9 + 0.0; };
  std::ostringstream text;
  text.precision(17);
  for (const Finding& f : report.findings)
    for (const MeasuredLine& line : f.lines) {
      text << '\n' << f.rule << ' ' << f.subject << ' ' << static_cast<int>(line.kind);
      if (line.length_m) text << ' ' << rounded(*line.length_m);
      for (const geometry::Point p : line.line_m) text << ' ' << rounded(p.x) << ',' << rounded(p.y);
    }
  return text.str();
}

}  // namespace stopwalk::audit
