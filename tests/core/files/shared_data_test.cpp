#include <gtest/gtest.h>

#include "core/files/device_kinds_reader.h"
#include "core/files/machine_templates_reader.h"
#include "core/files/resources.h"
#include "tests/core/files/texts.h"

namespace stopwalk::files {
namespace {

using layout::DeviceKind;

TEST(DeviceKinds, BundledFileIsReadWithoutAWord) {
  const auto read = readDeviceKinds(*resource("device-kinds.yaml"), "device-kinds.yaml");
  EXPECT_EQ(all(read.diagnostics), "");
  ASSERT_TRUE(read.value);
}

// The table of layout-format.md, "Device kinds".
TEST(DeviceKinds, AreThoseOfTheTable) {
  struct Row {
    const char* key;
    bool stop, emergency, held;
    layout::Shape shape;
    layout::ActuatedBy by;
  };
  using enum layout::Shape;
  using enum layout::ActuatedBy;
  const Row rows[] = {{"mushroom-button", true, true, false, Point, Hand},
                      {"foot-bar", true, true, false, Line, Foot},
                      {"horizontal-switch", true, false, false, Point, Hand},
                      {"trigger", true, false, true, Point, Release},
                      {"guarded-start", false, false, false, Point, Hand},
                      {"pull-cord", true, true, false, Line, Hand},
                      {"paddle", true, false, false, Point, Hand},
                      {"room-cut-off", true, true, false, Point, Hand},
                      {"isolator", true, false, false, Point, Hand}};
  EXPECT_EQ(bundledDeviceKinds().all().size(), std::size(rows));
  for (const Row& row : rows) {
    const DeviceKind* kind = bundledDeviceKinds().find(row.key);
    ASSERT_NE(kind, nullptr) << row.key;
    EXPECT_EQ(kind->counts_as_stop, row.stop) << row.key;
    EXPECT_EQ(kind->counts_as_emergency_stop, row.emergency) << row.key;
    EXPECT_EQ(kind->held, row.held) << row.key;
    EXPECT_EQ(kind->shape, row.shape) << row.key;
    EXPECT_EQ(kind->actuated_by, row.by) << row.key;
    EXPECT_FALSE(kind->instruction.empty()) << row.key;
  }
}

TEST(DeviceKinds, OwnFileReplacesAndAdds) {
  const auto own = readDeviceKinds(
      "stopwalk_device_kinds: 1\ndevice_kinds:\n"
      "  paddle: {actuated_by: foot, shape: line, counts_as_stop: true}\n"
      "  knee-plate: {label: Knee plate, actuated_by: foot, shape: line, counts_as_stop: true}\n...\n",
      "own.yaml");
  ASSERT_TRUE(own.value) << all(own.diagnostics);
  const auto merged = mergeDeviceKinds(bundledDeviceKinds(), *own.value);
  EXPECT_EQ(merged.all().size(), bundledDeviceKinds().all().size() + 1);
  EXPECT_EQ(merged.find("paddle")->shape, layout::Shape::Line);
  EXPECT_EQ(merged.find("paddle")->label, "paddle");
  EXPECT_EQ(merged.find("knee-plate")->label, "Knee plate");
}

TEST(DeviceKinds, EveryMistakeIsNamed) {
  const auto read = readDeviceKinds(
      "stopwalk_device_kinds: 2\ndevice_kinds:\n  Knob: {actuated_by: hnad, shape: point, lable: x}\n",
      "own.yaml");
  EXPECT_FALSE(read.value);
  const std::string text = all(read.diagnostics);
  for (const char* piece :
       {"own.yaml:1:24: error:", "own.yaml:3:3: error: the id `Knob`", "did you mean `hand`?",
        "did you mean `label`?", "needs the key `counts_as_stop`"})
    EXPECT_NE(text.find(piece), std::string::npos) << piece << "\n" << text;
}

TEST(MachineTemplates, BundledFileIsReadWithoutAWord) {
  const auto read = readMachineTemplates(*resource("machine-templates.yaml"), "machine-templates.yaml",
                                         bundledDeviceKinds());
  EXPECT_EQ(all(read.diagnostics), "");
  ASSERT_TRUE(read.value);
  EXPECT_GE(read.value->all().size(), 16U);
  for (const auto& machine : read.value->all()) {
    EXPECT_FALSE(machine.label.empty()) << machine.key;
    EXPECT_FALSE(machine.stations.empty()) << machine.key;
  }
}

TEST(MachineTemplates, OwnFileMayUseFeet) {
  const auto own = readMachineTemplates(
      "stopwalk_machine_templates: 1\nunits: ft\nmachine_templates:\n"
      "  jointer: {label: Our jointer, footprint: {width: 6' 2\", depth: 2}, stations: [{id: operator, at: "
      "[0, -3]}]}\n...\n",
      "own.yaml", bundledDeviceKinds());
  ASSERT_TRUE(own.value) << all(own.diagnostics);
  const auto merged = mergeMachineTemplates(bundledMachineTemplates(), *own.value);
  EXPECT_EQ(merged.all().size(), bundledMachineTemplates().all().size());
  EXPECT_EQ(merged.find("jointer")->footprint, layout::Footprint(layout::Rectangle{1879.6, 609.6}));
}

TEST(MachineTemplates, UnknownKindOfDeviceIsAnError) {
  const auto own = readMachineTemplates(
      "stopwalk_machine_templates: 1\nunits: mm\nmachine_templates:\n"
      "  a: {label: A, footprint: {width: 1, depth: 2}, devices: [{id: x, kind: padle, at: [0, 0]}]}\n",
      "own.yaml", bundledDeviceKinds());
  EXPECT_FALSE(own.value);
  EXPECT_NE(all(own.diagnostics).find("did you mean `paddle`?"), std::string::npos) << all(own.diagnostics);
}

// Nothing is left unseen because a line is missing.
TEST(DeviceKinds, WhatIsLeftOutIsLookedAt) {
  const auto read = readDeviceKinds(
      "stopwalk_device_kinds: 1\ndevice_kinds:\n"
      "  pad: {actuated_by: hand, shape: point, counts_as_stop: true}\n"
      "  lamp: {actuated_by: hand, shape: point, counts_as_stop: false}\n"
      "  rail: {actuated_by: foot, shape: line, counts_as_stop: true}\n"
      "  grip: {actuated_by: hand, shape: point, counts_as_stop: true, held: true}\n"
      "  knee: {actuated_by: hand, shape: point, counts_as_stop: true, looks_like_stop: false, height_band: false}\n"
      "...\n",
      "device-kinds.yaml");
  ASSERT_TRUE(read.value);
  const auto is = [&](const char* key, bool looks_like_stop, bool height_band) {
    const layout::DeviceKind* kind = read.value->find(key);
    ASSERT_NE(kind, nullptr) << key;
    EXPECT_EQ(kind->looks_like_stop, looks_like_stop) << key;
    EXPECT_EQ(kind->height_band, height_band) << key;
    EXPECT_FALSE(kind->counts_as_emergency_stop) << key;
  };
  is("pad", true, true);
  is("lamp", false, true);
  is("rail", true, false);
  is("grip", false, false);
  is("knee", false, false);
}

TEST(DeviceKinds, AGuardedStartNeverCountsAsAStop) {
  const auto with = [](const std::string& counts) {
    return readDeviceKinds("stopwalk_device_kinds: 1\ndevice_kinds:\n  guarded-start: {actuated_by: hand, shape: "
                           "point, counts_as_stop: " + counts + "}\n...\n",
                           "device-kinds.yaml");
  };
  EXPECT_TRUE(with("false").value);
  EXPECT_FALSE(with("true").value);
  ASSERT_EQ(with("true").diagnostics.size(), 1u);
  EXPECT_EQ(with("true").diagnostics[0].line, 3);
}

}  // namespace
}  // namespace stopwalk::files
