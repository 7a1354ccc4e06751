#pragma once

#include <string>
#include <vector>

#include "tests/core/audit/shop.h"

namespace stopwalk::audit {

// A change to the shop that a rule must find, and whom it must name. A rule without a line here fails a test.
struct RuleCase {
  std::string rule;
  std::string subject;
  std::vector<Edit> edits;
  std::vector<std::string> limits = {};
  std::vector<inspection::FailedDevice> failed = {};
};

inline const std::string kStore =
    "  - {id: store, name: Store, outline: [[8000, 0], [12000, 0], [12000, 6000], [8000, 6000]]}\n";
inline const Edit kWithStore = before("doors:\n", kStore);
inline const Edit kPhoneInStore = {"at: [0, 3000], faces: 0", "at: [12000, 3000], faces: 180"};
inline const Edit kSawStopIsNone = {"{id: stop, kind: mushroom-button, at: [0, -400], height: 1000}",
                                    "{id: start, kind: guarded-start, at: [0, -400], height: 1000}"};
inline const Edit kCutOffOfDrillOnly = {"stops: [shop]", "stops: [drill]"};
// Two walls of timber with a gap of 590 mm between the machines and the phone.
inline const Edit kGap590 =
    before("machines:\n",
           "fixtures:\n"
           "  - {id: low, at: [1050, 1452.5], footprint: {width: 100, depth: 2905}, height: 2000}\n"
           "  - {id: high, at: [1050, 4747.5], footprint: {width: 100, depth: 2505}, height: 2000}\n");

inline const std::vector<RuleCase> kRuleCases = {
    {"no-stop", "saw", {kSawStopIsNone, kCutOffOfDrillOnly}},
    {"stop-out-of-reach", "saw/operator", {{"at: [0, -400], height: 1000", "at: [0, 400], height: 1000"}}},
    {"stop-too-far",
     "saw/helper",
     {before("    devices:\n", "      - {id: helper, role: helper, at: [5500, 1500]}\n")}},
    {"phone-too-far", "saw/operator", {}, {"phone-too-far=1"}},
    {"unreachable", "saw/operator", {kWithStore, kPhoneInStore}},
    {"failed-check",
     "saw/stop",
     {},
     {},
     {{"saw/stop", *inspection::parseDate("2026-03-02"), 7, "Ada Example"}}},
    {"blocked-device",
     "phone",
     {before("machines:\n",
             "fixtures:\n  - {id: bin, at: [600, 3000], footprint: {width: 1200, depth: 1200}}\n")}},
    {"narrow-passage", "saw/operator", {kGap590}},
    {"exit-width", "saw/operator", {{"width: 1000}\nmachines", "width: 700}\nmachines"}}},
    {"actuator-height", "saw/stop", {{"height: 1000", "height: 1800"}}},
    {"actuator-height-access", "saw/stop", {{"height: 1000", "height: 1300"}}},
    {"no-emergency-stop", "saw", {{"kind: mushroom-button", "kind: paddle"}, kCutOffOfDrillOnly}},
    {"start-guard-missing",
     "saw/start",
     {before("  - id: drill\n",
             "      - {id: start, kind: guarded-start, at: [300, -400], height: 1000, pin: missing}\n")}},
    {"look-alike",
     "saw/operator",
     {before("  - {id: cut-off",
             "  - {id: post, kind: mushroom-button, at: [2300, 3290], faces: 180, height: 1000, stops: "
             "[drill]}\n")}},
    {"helper-too-slow", "saw", {{"run_down: 3", "run_down: 14"}}},
    {"slow-run-down", "saw", {{"run_down: 3", "run_down: 10.1"}}},
    {"cut-off-lengthens", "cut-off", {{"stops: [shop]", "stops: [shop], run_down: {saw: 5}"}}},
    {"no-room-cut-off", "shop", {kCutOffOfDrillOnly}},
    {"cut-off-too-far", "saw/operator", {}, {"cut-off-too-far=2"}},
    {"cut-off-at-exit", "shop", {{"at: [3200, 0]", "at: [1500, 0]"}}},
    {"hidden-stop",
     "saw/operator",
     {kSawStopIsNone, before("machines:\n",
                             "fixtures:\n  - {id: screen, at: [2600, 1600], footprint: {width: 1500, depth: "
                             "100}, height: 2200}\n")}},
    {"standing-conflict",
     "saw/operator",
     {before("    devices:\n", "      - {id: helper, role: helper, at: [500, -710]}\n")}},
    {"phone-after-hours",
     "saw/operator",
     {kWithStore, kPhoneInStore,
      before(
          "machines:\n",
          "  - {id: between, joins: [shop, store], at: [8000, 3000], width: 1000, locked: after-hours}\n")}},
    {"tape-disagrees",
     "tape",
     {before("...\n", "tape_checks:\n  - {id: tape, from: saw/operator, to: phone, taped: 3000}\n")}},
    {"drawing-fault", "out", {{"at: [4000, 0]", "at: [4000, 500]"}}},
    {"incomplete-record", "saw/stop", {{"at: [0, -400], height: 1000", "at: [0, -400]"}}},
};

}  // namespace stopwalk::audit
