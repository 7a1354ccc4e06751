#include "core/files/layout_reader.h"

#include <gtest/gtest.h>

#include <filesystem>

#include "core/files/device_kinds_reader.h"
#include "tests/core/files/texts.h"

namespace stopwalk::files {
namespace {

TEST(LayoutReader, ReadsEverySampleWithoutAWarning) {
  int read = 0;
  for (const auto& entry : std::filesystem::directory_iterator(STOPWALK_SOURCE_DIR "/sample-layouts")) {
    const auto result =
        readLayout(textOf(entry.path()), entry.path().filename().string(), bundledDeviceKinds());
    EXPECT_TRUE(result.value.has_value());
    EXPECT_EQ(all(result.diagnostics), "");
    ++read;
  }
  EXPECT_GE(read, 4);
}

}  // namespace
}  // namespace stopwalk::files
