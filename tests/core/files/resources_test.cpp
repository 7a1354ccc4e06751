#include "core/files/resources.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <sstream>

namespace stopwalk::files {
namespace {

TEST(Resources, AreTheFilesOfTheFolder) {
  ASSERT_FALSE(resourceNames().empty());
  for (const std::string_view name : resourceNames()) {
    std::ifstream in(std::string(STOPWALK_SOURCE_DIR "/resources/") + std::string(name), std::ios::binary);
    std::stringstream text;
    text << in.rdbuf();
    ASSERT_TRUE(in.good()) << name;
    EXPECT_EQ(resource(name), text.str()) << name;
  }
}

TEST(Resources, AreSortedAndFoundByNameOnly) {
  const auto names = resourceNames();
  EXPECT_TRUE(std::is_sorted(names.begin(), names.end()));
  EXPECT_TRUE(std::find(names.begin(), names.end(), "device-kinds.yaml") != names.end());
  EXPECT_FALSE(resource("no-such-file.yaml"));
}

}  // namespace
}  // namespace stopwalk::files
