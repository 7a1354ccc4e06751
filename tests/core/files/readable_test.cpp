#include "core/files/readable.h"

#include <gtest/gtest.h>

#include <functional>
#include <limits>

#include "core/files/device_kinds_reader.h"
#include "core/files/layout_reader.h"
#include "core/files/layout_writer.h"
#include "tests/core/files/random_layout.h"

namespace stopwalk::files {
namespace {

using layout::Layout;

bool isRead(const Layout& layout) {
  return readLayout(writeLayout(layout), "a.layout.yaml", bundledDeviceKinds()).value.has_value();
}

TEST(Readable, IsWhatTheReaderAccepts) {
  for (std::uint64_t seed = 0; seed < 300; ++seed)
    EXPECT_TRUE(isReadable(randomLayout(seed, layout::LengthUnit::Millimetre))) << seed;
}

// One of everything.
Layout whole() {
  Layout l;
  l.site.name = "Invented shop";
  l.revision = layout::Revision{};
  l.underlay = layout::Underlay{};
  l.rooms = {{"wood", "", {{0, 0}, {9, 0}, {0, 9}}, false, {}}};
  l.doors = {{"d1", "wood", "outside", {}, 900, layout::Locked::Never, {}}};
  l.fixtures = {{"bench", "", {}, 0, layout::Rectangle{1, 1}, 900.0, {}}};
  layout::Machine m;
  m.id = "saw";
  m.footprint = geometry::Polygon{{0, 0}, {1, 0}, {0, 1}};
  m.stations = {{"operator", layout::Role::Operator, {}, {}}};
  layout::Device d;
  d.id = "stop";
  d.kind = "trigger";
  d.stops = layout::Stops{false, {"saw", "wood"}};
  d.run_down_each = {{"saw", 2}};
  d.held_at = {{"operator"}};
  m.devices = {d};
  l.machines = {m};
  l.phones = {{"phone", "", {}, 0, {}, {}}};
  l.notes = {{"note", {}, layout::Point{}, "x", {}}};
  l.tape_checks = {{"check", "saw/operator", "phone", 5, "", "", {}}};
  return l;
}

TEST(Readable, DiffersNowhereFromTheReader) {
  const double kInfinite = std::numeric_limits<double>::infinity();
  using Spoil = std::function<void(Layout&)>;
  const Spoil spoils[] = {
      [](Layout& l) { l.rooms[0].id = "Wood"; },
      [](Layout& l) { l.rooms[0].id = "all"; },
      [](Layout& l) { l.rooms[0].id = "saw"; },
      [](Layout& l) { l.rooms[0].outline.pop_back(); },
      [](Layout& l) { l.rooms[0].outline[0].x = 1.1e7; },
      [](Layout& l) { l.doors[0].first = "outside"; },
      [](Layout& l) { l.doors[0].second = "saw"; },
      [](Layout& l) { l.doors[0].width = 0; },
      [](Layout& l) { l.fixtures[0].height = -1; },
      [](Layout& l) {
        l.fixtures[0].footprint = layout::Rectangle{0, 1};
      },
      [](Layout& l) {
        l.fixtures[0].footprint = geometry::Polygon{{0, 0}, {1, 1}};
      },
      [=](Layout& l) { l.machines[0].turn = kInfinite; },
      [](Layout& l) { l.machines[0].turn = 2e9; },
      [](Layout& l) { l.machines[0].run_down = -1; },
      [](Layout& l) {
        l.machines[0].hazard = {{0, 0}};
      },
      [](Layout& l) { l.machines[0].stations[0].id = "stop"; },
      [](Layout& l) { l.machines[0].stations[0].id = "outside"; },
      [](Layout& l) { l.machines[0].devices[0].stops->ids = {"phone"}; },
      [](Layout& l) { l.machines[0].devices[0].run_down_each[0].first = "wood"; },
      [](Layout& l) { l.machines[0].devices[0].run_down_each.emplace_back("saw", 1); },
      [](Layout& l) { l.machines[0].devices[0].held_at = {{"stop"}}; },
      [](Layout& l) { l.machines[0].devices[0].length = 0; },
      [](Layout& l) { l.tape_checks[0].to = "saw"; },
      [](Layout& l) { l.tape_checks[0].taped = -1; },
      [](Layout& l) { l.revision->number = -1; },
      [](Layout& l) { l.underlay->mm_per_pixel = 0; },
      [](Layout& l) { l.underlay->opacity = 1.5; },
      [](Layout& l) { l.notes[0].text = std::string("a\0b", 3); },
      [](Layout& l) { l.notes[0].points_to->y = -1.1e7; },
  };
  ASSERT_TRUE(isReadable(whole()) && isRead(whole()));
  for (std::size_t i = 0; i < std::size(spoils); ++i) {
    Layout l = whole();
    spoils[i](l);
    EXPECT_FALSE(isReadable(l)) << i;
    EXPECT_FALSE(isRead(l)) << i << "\n" << writeLayout(l);
  }
}

TEST(Readable, IsNotWhatOneKeyCannotSay) {
  Layout l = whole();
  l.machines[0].devices[0].run_down = 3;
  EXPECT_FALSE(isReadable(l)) << "the file has either one run-down or one for each machine";
}

}  // namespace
}  // namespace stopwalk::files
