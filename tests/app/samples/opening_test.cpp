// What is meant to be read without a word: the sample layouts, and the example in the description of the
// format.
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <set>
#include <sstream>
#include <string>
#include <vector>

#include "core/files/device_kinds_reader.h"
#include "core/files/layout_reader.h"
#include "core/floor/plan.h"

namespace stopwalk {
namespace {

namespace fs = std::filesystem;
const fs::path root = STOPWALK_ROOT;

std::string textOf(const fs::path& file) {
  std::ostringstream text;
  text << std::ifstream(file).rdbuf();
  return text.str();
}

std::string sample(const std::string& name) {
  return textOf(root / "sample-layouts" / (name + ".layout.yaml"));
}

std::string exampleOfTheFormat() {
  const std::string document = textOf(root / "docs/layout-format.md"), fence = "```yaml\n";
  const std::size_t begin = document.find(fence) + fence.size();
  return document.substr(begin, document.find("```", begin) - begin);
}

layout::Layout opened(const std::string& text, const std::string& name) {
  const auto result = files::readLayout(text, name, files::bundledDeviceKinds());
  for (const files::Diagnostic& d : result.diagnostics) ADD_FAILURE() << files::format(d);
  return result.value.value_or(layout::Layout{});
}

void expectNoFaults(const layout::Layout& layout, const std::string& name) {
  for (const floor::Hours hours : {floor::Hours::Open, floor::Hours::After})
    for (const floor::Fault& fault : floor::buildPlan(layout, hours).faults)
      ADD_FAILURE() << name << ": " << fault.subject << ": " << fault.text;
}

TEST(Samples, OpenWithoutAWordOrAFault) {
  std::size_t samples = 0;
  for (const auto& entry : fs::directory_iterator(root / "sample-layouts")) {
    const std::string name = entry.path().filename().string();
    ASSERT_TRUE(name.ends_with(".layout.yaml")) << name;
    const layout::Layout layout = opened(textOf(entry.path()), name);
    EXPECT_FALSE(layout.machines.empty()) << name;
    expectNoFaults(layout, name);
    ++samples;
  }
  EXPECT_EQ(samples, 4u);
}

TEST(Samples, HaveTheSizesTheyTellOf) {
  EXPECT_EQ(opened(sample("tram-depot"), "tram-depot").rooms.size(), 4u);
  EXPECT_EQ(opened(sample("tram-depot"), "tram-depot").machines.size(), 26u);
  EXPECT_EQ(opened(sample("school-wing"), "school-wing").rooms.size(), 7u);
  EXPECT_EQ(opened(sample("school-wing"), "school-wing").machines.size(), 60u);
  EXPECT_EQ(opened(sample("scene-shop"), "scene-shop").unit, layout::LengthUnit::Foot);
}

TEST(Samples, ThreeMachinesMoveInTheTramDepotAndNothingElse) {
  layout::Layout before = opened(sample("tram-depot"), "before"),
                 after = opened(sample("tram-depot-moved"), "after");
  EXPECT_EQ(after.revision->number, before.revision->number + 1);
  std::set<std::string> moved;
  for (std::size_t i = 0; i < before.machines.size(); ++i) {
    layout::Machine &was = before.machines[i], &is = after.machines.at(i);
    if (was.at != is.at) moved.insert(is.id);
    is.at = was.at;
    is.turn = was.turn;
    is.kept = was.kept;
    EXPECT_EQ(was, is);
  }
  EXPECT_EQ(moved, (std::set<std::string>{"drill-2", "linisher", "polisher"}));
  EXPECT_EQ(before.rooms, after.rooms);
  EXPECT_EQ(before.doors, after.doors);
  EXPECT_EQ(before.fixtures, after.fixtures);
  EXPECT_EQ(before.devices, after.devices);
  EXPECT_EQ(before.phones, after.phones);
}

TEST(LayoutFormatDocument, ExampleOpensWithoutAWordOrAFault) {
  const layout::Layout layout = opened(exampleOfTheFormat(), "docs/layout-format.md");
  EXPECT_EQ(layout.machines.size(), 1u);
  expectNoFaults(layout, "docs/layout-format.md");
}

}  // namespace
}  // namespace stopwalk
