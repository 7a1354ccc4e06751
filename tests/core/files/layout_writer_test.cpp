#include "core/files/layout_writer.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <functional>

#include "core/files/device_kinds_reader.h"
#include "core/files/layout_reader.h"
#include "tests/core/files/random_layout.h"
#include "tests/core/files/texts.h"

namespace stopwalk::files {
namespace {

TEST(LayoutWriter, GivesTheSamplesBackToTheLetter) {
  int count = 0;
  for (const auto& entry : std::filesystem::directory_iterator(STOPWALK_SOURCE_DIR "/sample-layouts")) {
    const std::string text = textOf(entry.path());
    const auto read = readLayout(text, entry.path().filename().string(), bundledDeviceKinds());
    ASSERT_TRUE(read.value) << all(read.diagnostics);
    EXPECT_EQ(difference(writeLayout(*read.value), text), "") << entry.path();
    ++count;
  }
  EXPECT_GE(count, 4);
}

using layout::LengthUnit;

// Warnings apart: a random layout has texts that are no dates, and outlines that run back.
layout::Layout mustRead(const std::string& text) {
  const auto read = readLayout(text, "a.layout.yaml", bundledDeviceKinds());
  EXPECT_TRUE(read.value) << all(read.diagnostics) << text;
  return read.value.value_or(layout::Layout());
}

std::string changed(const std::string& text, const std::function<void(layout::Layout&)>& edit) {
  const auto read = readLayout(text, "a.layout.yaml", bundledDeviceKinds());
  EXPECT_TRUE(read.value) << all(read.diagnostics);
  layout::Layout plan = read.value.value_or(layout::Layout());
  edit(plan);
  return writeLayout(plan);
}

TEST(LayoutWriter, WhatItWritesIsReadAsTheSameInEveryUnit) {
  for (const LengthUnit unit :
       {LengthUnit::Millimetre, LengthUnit::Metre, LengthUnit::Inch, LengthUnit::Foot}) {
    for (std::uint64_t seed = 0; seed < 250; ++seed) {
      const layout::Layout plan = randomLayout(seed, unit);
      const std::string text = writeLayout(plan);
      const layout::Layout again = mustRead(text);
      ASSERT_TRUE(again == plan) << "seed " << seed << "\n" << text;
      ASSERT_EQ(difference(writeLayout(again), text), "") << "seed " << seed;
    }
  }
}

TEST(LayoutWriter, HasTheNumbersOfTheUnitItChangesTo) {
  for (std::uint64_t seed = 0; seed < 100; ++seed) {
    layout::Layout plan = randomLayout(seed, LengthUnit::Foot);
    plan = mustRead(writeLayout(plan));
    plan.unit = LengthUnit::Metre;
    ASSERT_TRUE(mustRead(writeLayout(plan)) == plan) << seed;
  }
}

const char* const kHandWritten = R"(# Above all
stopwalk_layout: 1   # the format
site:
    # indented by four
    name: 'Quoted'
    x_owner: nobody
units: ft
colour: {of: the, walls: "white"}   # unknown

rooms:   # one only
# at the margin
- outline: [[0, 0], [12' 6 1/2", 0], [12.50, 10], [0, 10.0]]
  id: "hall"
  unknown_block:
     - a   # kept too
     - b: |
         text
           more
  outdoors: false
machines:
- {id: saw, at: [5, 5], footprint: {width: 2, depth: 24", guard: 1}, turn: 0.0, x: 1}   # behind
- id: drill
  at: [3, 3]
  footprint:
    width: 1     # inner
    depth: 1
  stations: []
# the end
...
)";

const char* const kAsWritten = R"(# Above all
stopwalk_layout: 1   # the format
site:
  # indented by four
  name: 'Quoted'
  x_owner: nobody
units: ft
colour: {of: the, walls: "white"}   # unknown

rooms:   # one only
  # at the margin
  - outline: [[0, 0], [12' 6 1/2", 0], [12.50, 10], [0, 10.0]]
    id: "hall"
    unknown_block:
       - a   # kept too
       - b: |
           text
             more
    outdoors: false
machines:
  - {id: saw, at: [5, 5], footprint: {width: 2, depth: 24", guard: 1}, turn: 0.0, x: 1}   # behind
  - id: drill
    at: [3, 3]
    footprint:
      width: 1     # inner
      depth: 1
    stations: []
# the end
...
)";

TEST(LayoutWriter, KeepsOrderUnknownKeysSpellingAndComments) {
  EXPECT_EQ(difference(changed(kHandWritten, [](auto&) {}), kAsWritten), "");
  EXPECT_EQ(difference(changed(kAsWritten, [](auto&) {}), kAsWritten), "");
}

TEST(LayoutWriter, ReadsItsOwnTextOfAKeptThingAsTheSame) {
  const auto first = readLayout(kHandWritten, "a", bundledDeviceKinds());
  ASSERT_TRUE(first.value);
  const auto second = readLayout(writeLayout(*first.value), "a", bundledDeviceKinds());
  ASSERT_TRUE(second.value);
  EXPECT_TRUE(*first.value == *second.value);
  layout::Layout without = *first.value;
  without.rooms.front().kept = {};
  EXPECT_FALSE(*first.value == without);  // the unknown keys are gone
}

TEST(LayoutWriter, ChangesWhatWasChangedAlone) {
  const std::string text = changed(kHandWritten, [](layout::Layout& plan) {
    plan.machines[0].turn = 90;
    plan.machines[0].footprint = layout::Rectangle{304.8, 304.8};
    plan.machines[0].height = 914.4;
    plan.machines[1].id = "drill-2";
    plan.rooms[0].name = "Hall";
  });
  std::string expected = kAsWritten;
  const auto replace = [&](const std::string& from, const std::string& to) {
    ASSERT_NE(expected.find(from), std::string::npos) << from;
    expected.replace(expected.find(from), from.size(), to);
  };
  replace("{width: 2, depth: 24\", guard: 1}, turn: 0.0, x: 1}",
          "{width: 1', depth: 1', guard: 1}, height: 3', turn: 90, x: 1}");
  replace("id: drill", "id: drill-2");
  replace("    id: \"hall\"\n", "    id: \"hall\"\n    name: Hall\n");
  EXPECT_EQ(difference(text, expected), "");
}

TEST(LayoutWriter, CarriesWhatIsKeptWithTheThing) {
  const std::string text = changed(kHandWritten, [](layout::Layout& plan) {
    std::swap(plan.machines[0], plan.machines[1]);
    plan.rooms.clear();
  });
  EXPECT_NE(text.find("machines:\n  - id: drill\n"), std::string::npos) << text;
  EXPECT_NE(text.find("x: 1}   # behind\n# the end\n...\n"), std::string::npos) << text;
  EXPECT_EQ(text.find("unknown_block"), std::string::npos);
}

TEST(LayoutWriter, SpellsNoFeetInAFileOfAnotherUnit) {
  const std::string text =
      changed(kHandWritten, [](layout::Layout& plan) { plan.unit = LengthUnit::Millimetre; });
  EXPECT_EQ(text.find("12' 6"), std::string::npos) << text;
  EXPECT_NE(text.find("[3822.7, 0]"), std::string::npos) << text;
}

TEST(LayoutWriter, AFileInBracesBecomesOneOfLines) {
  const std::string text = changed(
      R"({"stopwalk_layout": 1, "units": "mm", "site": {"name": "S"}, "x": [1], "rooms": [{"id": "a", "outline": [[0,0],[1,0],[1,1]]}]})",
      [](auto&) {});
  EXPECT_EQ(text,
            "stopwalk_layout: 1\nunits: \"mm\"\nsite: {name: \"S\"}\nx: [1]\nrooms:\n  - {id: \"a\", "
            "outline: [[0,0],[1,0],[1,1]]}\n...\n");
}

}  // namespace
}  // namespace stopwalk::files
