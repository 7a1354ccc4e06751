#include "core/files/layout_writer.h"

#include <gtest/gtest.h>

#include <filesystem>

#include "core/files/device_kinds_reader.h"
#include "core/files/layout_reader.h"
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

}  // namespace
}  // namespace stopwalk::files
