#pragma once

#include <gtest/gtest.h>

#include <algorithm>
#include <string>
#include <utility>
#include <vector>

#include "core/audit/audit.h"
#include "core/files/device_kinds_reader.h"
#include "core/files/layout_reader.h"

namespace stopwalk::audit {

// A shop of two machines that meets every rule; the tests change a thing or two. Saw operator at (2000,
// 3290), drill operator at (5500, 3290).
inline const std::string kShop = R"(stopwalk_layout: 1
units: mm
site: {name: Test shop}
rooms:
  - {id: shop, name: Shop, outline: [[0, 0], [8000, 0], [8000, 6000], [0, 6000]]}
doors:
  - {id: out, joins: [shop, outside], at: [4000, 0], width: 1000}
machines:
  - id: saw
    name: Saw
    at: [2000, 4000]
    footprint: {width: 1000, depth: 800}
    height: 900
    run_down: 3
    stations:
      - {id: operator, role: operator, at: [0, -710]}
    devices:
      - {id: stop, kind: mushroom-button, at: [0, -400], height: 1000}
  - id: drill
    name: Drill
    at: [5500, 4000]
    footprint: {width: 1000, depth: 800}
    height: 900
    run_down: 3
    stations:
      - {id: operator, role: operator, at: [0, -710]}
    devices:
      - {id: stop, kind: mushroom-button, at: [0, -400], height: 1001}
devices:
  - {id: cut-off, kind: room-cut-off, at: [3200, 0], faces: 90, height: 1200, stops: [shop]}
phones:
  - {id: phone, name: Phone, at: [0, 3000], faces: 0, height: 1200}
...
)";

using Edit = std::pair<std::string, std::string>;

// The shop with the first of each text replaced; the text must be there.
inline std::string shopWith(const std::vector<Edit>& edits, std::string text = kShop) {
  for (const auto& [from, to] : edits) {
    const std::size_t at = text.find(from);
    EXPECT_NE(at, std::string::npos) << "no such text: " << from;
    if (at != std::string::npos) text.replace(at, from.size(), to);
  }
  return text;
}

inline Edit before(const std::string& line, const std::string& added) {
  return {line, added + line};
}

inline layout::Layout layoutOf(const std::string& text) {
  auto read = files::readLayout(text, "shop.layout.yaml", files::bundledDeviceKinds());
  for (const auto& d : read.diagnostics) ADD_FAILURE() << files::format(d);
  return read.value ? *read.value : layout::Layout{};
}

inline Report auditOf(const std::string& text, const std::vector<std::string>& limits = {},
                      floor::Hours hours = floor::Hours::Open, Failed failed = {}) {
  Profile profile = defaultProfile();
  for (const std::string& limit : limits) EXPECT_EQ(applyLimit(profile, limit), "");
  return audit(layoutOf(text), files::bundledDeviceKinds(), profile, hours, failed);
}

// The findings of a rule, by subject.
inline std::vector<std::string> subjects(const Report& report, const std::string& rule) {
  std::vector<std::string> found;
  for (const Finding& f : report.findings)
    if (f.rule == rule) found.push_back(f.subject);
  return found;
}

inline bool finds(const Report& report, const std::string& rule, const std::string& subject) {
  const auto found = subjects(report, rule);
  return std::ranges::find(found, subject) != found.end();
}

inline const Finding& findingOf(const Report& report, const std::string& rule) {
  static const Finding none;
  const auto found = std::ranges::find(report.findings, rule, &Finding::rule);
  if (found == report.findings.end()) ADD_FAILURE() << "no finding of " << rule;
  return found == report.findings.end() ? none : *found;
}

inline const StationReport& stationOf(const Report& report, const std::string& id) {
  static const StationReport none;
  const auto found = std::ranges::find(report.stations, id, &StationReport::id);
  if (found == report.stations.end()) ADD_FAILURE() << "no station " << id;
  return found == report.stations.end() ? none : *found;
}

using Subjects = std::vector<std::string>;

}  // namespace stopwalk::audit
