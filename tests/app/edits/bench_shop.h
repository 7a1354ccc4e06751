#pragma once

#include <gtest/gtest.h>

#include <string>

#include "core/files/device_kinds_reader.h"
#include "core/files/layout_reader.h"
#include "core/files/layout_writer.h"

namespace stopwalk::edits {

inline layout::Layout layoutOf(const std::string& text) {
  const auto read = files::readLayout(text, "shop.layout.yaml", files::bundledDeviceKinds());
  for (const auto& d : read.diagnostics)
    if (d.severity == files::Severity::Error) ADD_FAILURE() << files::format(d);
  return read.value.value_or(layout::Layout{});
}

// Written, it is read again as the same.
inline void expectReadable(const layout::Layout& layout) {
  EXPECT_EQ(layoutOf(files::writeLayout(layout)), layout);
}

// An invented shop of two rooms in which everything that can speak of something else does.
inline layout::Layout benchShop() {
  return layoutOf(R"(stopwalk_layout: 1
units: mm
site: {name: Invented shop}
underlay: {image: scan.png, at: [0, 0], mm_per_pixel: 12.5}
rooms:
  - {id: wood, name: Wood room, outline: [[0, 0], [9000, 0], [9000, 7000], [0, 7000]]}
  - {id: metal, name: Metal room, outline: [[9100, 0], [18000, 0], [18000, 7000], [9100, 7000]]}
doors:
  - {id: d1, joins: [wood, metal], at: [9000, 3500], width: 1800}
  - {id: d2, joins: [wood, outside], at: [0, 2000], width: 900}
  - {id: d3, joins: [metal, outside], at: [18000, 2000], width: 900}
fixtures:
  - {id: bench-1, name: Bench, at: [4000, 600], footprint: {width: 2400, depth: 900}, height: 900}
machines:
  - id: saw
    name: Table saw
    at: [3000, 3000]
    turn: 90
    footprint: {width: 1000, depth: 800}
    stations:
      - {id: operator, role: operator, at: [0, -700]}
      - {id: helper, role: helper, at: [0, 700]}   # takes the board
    devices:
      - {id: paddle, kind: paddle, at: [0, -400], stops: [lathe, saw], run_down: {lathe: 3, saw: 2}}
      - {id: trigger, kind: trigger, at: [100, -400], held_at: [operator, helper]}
  - id: lathe
    name: Engine lathe
    at: [12000, 3000]
    footprint: {outline: [[-1000, -400], [1000, -400], [1000, 400], [-1000, 400]]}
    stations:
      - {id: operator, role: operator, at: [0, -800]}
    devices:
      - {id: bar, kind: foot-bar, at: [0, -400], length: 1800, stops: [lathe]}
devices:
  - {id: cut-off, kind: room-cut-off, at: [9100, 3000], faces: 0, stops: [metal], run_down: {lathe: 2.5}}
phones:
  - {id: phone-1, name: Yard phone, at: [0, 3000], faces: 0}
notes:
  - {id: n1, at: [5000, 5000], points_to: [5200, 6000], text: Keep clear}
tape_checks:
  - {id: t1, from: lathe/operator, to: phone-1, taped: 14250}
  - {id: t2, from: saw/operator, to: cut-off, taped: 6000}
...
)");
}

}  // namespace stopwalk::edits
