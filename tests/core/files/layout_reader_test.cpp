#include "core/files/layout_reader.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <sstream>

#include "core/files/device_kinds_reader.h"

namespace stopwalk::files {
namespace {

std::string textOf(const std::filesystem::path& path) {
  std::ifstream in(path, std::ios::binary);
  std::stringstream text;
  text << in.rdbuf();
  return text.str();
}

std::string all(const std::vector<Diagnostic>& diagnostics) {
  std::string text;
  for (const Diagnostic& d : diagnostics) text += format(d);
  return text;
}

TEST(LayoutReader, ReadsEverySampleWithoutAWarning) {
  int read = 0;
  for (const auto& entry : std::filesystem::directory_iterator(STOPWALK_SOURCE_DIR "/sample-layouts")) {
    const auto result = readLayout(textOf(entry.path()), entry.path().filename().string(), bundledDeviceKinds());
    EXPECT_TRUE(result.value.has_value());
    EXPECT_EQ(all(result.diagnostics), "");
    ++read;
  }
  EXPECT_GE(read, 4);
}

}  // namespace
}  // namespace stopwalk::files
