#pragma once

#include <string>

namespace stopwalk::app {

// A shop of one hall with so many machines, in rows, each with a stop.
inline std::string hallOf(int machines, const std::string& name = "M", const std::string& room = "Hall") {
  std::string text =
      "stopwalk_layout: 1\nunits: mm\nsite: {name: " + room + "}\nrooms:\n  - {id: a, name: " + room +
      ", outline: [[0, 0], [24000, 0], [24000, 30000], [0, 30000]]}\n"
      "  - {id: bare, name: Bare, outline: [[24200, 0], [27000, 0], [27000, 3000], [24200, 3000]]}\n";
  if (machines > 0) text += "machines:\n";
  for (int i = 0; i < machines; ++i) {
    const int x = 1200 + (i % 16) * 1400, y = 1500 + (i / 16) * 2000;
    text +=
        "  - {id: m" + std::to_string(i) + ", name: " + name + ", at: [" + std::to_string(x) + ", " +
        std::to_string(y) +
        "], footprint: {width: 500, depth: 400}, stations: [{id: operator, role: operator, at: [0, -700]}], "
        "devices: [{id: stop, kind: mushroom-button, at: [0, -200], height: 1000}]}\n";
  }
  return text + "...\n";
}

}  // namespace stopwalk::app
