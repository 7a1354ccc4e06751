#pragma once

#include <algorithm>
#include <cstdint>
#include <random>
#include <string>
#include <vector>

#include "core/files/inspection_log.h"

namespace stopwalk::files {

// Records as they may come, the same for the same seed; the first of more are the same as of fewer.
inline std::vector<inspection::Record> randomRecords(std::uint64_t seed, std::size_t count) {
  using namespace inspection;
  std::mt19937_64 random(seed);
  const auto below = [&](std::size_t n) { return static_cast<std::size_t>(random() % n); };
  const std::vector<std::string> texts = {
      "", "plain", "a \"quoted\" \\ one", "two\nlines\ttab", "Grüße, 検査", "{\"sha256\":\"", "\x01\x7f"};
  const auto text = [&] { return texts[below(texts.size())]; };
  const auto moment = [&] {
    return Moment{daysAfter(*parseDate("2026-01-01"), static_cast<int>(below(3000))),
                  static_cast<int>(below(86400)), static_cast<int>(below(1439)) - 719};
  };
  const auto layout = [&] {
    return LayoutThen{below(3) == 0 ? std::nullopt : std::optional(static_cast<int>(below(50))),
                      std::string(64, static_cast<char>('a' + below(6)))};
  };
  const auto entered = [&] { return below(3) == 0 ? std::optional(moment()) : std::nullopt; };
  std::vector<Record> records;
  for (std::size_t number = 1; number <= count; ++number) {
    if (number == 1 || below(5) == 0) {
      records.emplace_back(Round{number, moment(), text(), text(), {"a/stop", text()}, layout(), entered()});
      continue;
    }
    Check c{number, 1,  "saw/stop", {"saw", text()}, text(), moment(), text(), text(), {}, {}, {}, {}, {},
            {},     {}, {}};
    for (const Tried test : kTried)
      if (below(2) == 0) c.tested.emplace_back(test, below(2) == 0);
    c.result = kResults[below(kResults.size())];
    for (std::size_t runs = below(4); runs > 0; --runs)
      c.run_down_s.push_back(static_cast<double>(below(100000)) / 7);
    c.note = text(), c.action = text();
    if (below(2) == 0)
      c.corrective = Corrective{text(), text(), below(2) == 0 ? std::optional(moment().date) : std::nullopt};
    if (number > 2 && below(3) == 0) c.corrects = 1 + below(number - 1);
    c.layout = layout();
    c.entered = entered();
    if (below(3) == 0)
      c.tagged_out = TagOut{text(), below(2) == 0 ? std::optional(moment().date) : std::nullopt};
    c.no_stop = below(4) == 0;
    records.emplace_back(c);
  }
  return records;
}

inline std::string logOf(const std::vector<inspection::Record>& records) {
  std::string text, before = kNoLineBefore;
  for (std::size_t i = 0; i < records.size(); ++i) {
    const std::string line = recordLine(records[i], i + 1, before);
    before = endOfLog(line).head;
    text += line;
  }
  return text;
}

inline std::vector<std::string> linesOf(const std::string& text) {
  std::vector<std::string> lines;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t end = text.find('\n', at) + 1;
    lines.push_back(text.substr(at, end - at));
    at = end;
  }
  return lines;
}

inline inspection::Records recordsOf(const std::vector<inspection::Record>& records) {
  inspection::Records all;
  for (const inspection::Record& r : records)
    if (const auto* round = std::get_if<inspection::Round>(&r))
      all.rounds.push_back(*round);
    else
      all.checks.push_back(std::get<inspection::Check>(r));
  return all;
}

}  // namespace stopwalk::files
