#include "core/files/profile_writer.h"

#include <gtest/gtest.h>

#include "core/files/profile_reader.h"

namespace stopwalk::files {
namespace {

std::optional<NamedText> nothingBeside(const std::string&, const std::string&) {
  return std::nullopt;
}

// Printed, it once said `extends: base`, which is no file's name, and could be read nowhere.
TEST(ProfileWriter, WhatExtendsAFileCanBeReadWhereThatFileIsNot) {
  const FileSource base = [](const std::string& asked, const std::string&) -> std::optional<NamedText> {
    return NamedText{asked, "stopwalk_profile: 1\nid: base\nrules: {stop-too-far: {limit: 4.5}}\n"};
  };
  const auto ours = readProfile({"ours.yaml", "stopwalk_profile: 1\nid: ours\nextends: base.yaml\n"}, base);
  ASSERT_TRUE(ours.value);
  const auto again = readProfile({"elsewhere.yaml", writeProfile(*ours.value)}, nothingBeside);
  ASSERT_TRUE(again.value);
  EXPECT_EQ(again.value->settings, ours.value->settings);
  EXPECT_EQ(again.value->inspection, ours.value->inspection);
  EXPECT_EQ(again.value->id, "ours");
}

TEST(ProfileWriter, TheBundledOnesAreReadAgainAsTheyAre) {
  for (const std::string& name : bundledProfiles()) {
    const auto again = readProfile({"again.yaml", writeProfile(*bundledProfile(name))}, nothingBeside);
    ASSERT_TRUE(again.value) << name;
    EXPECT_EQ(*again.value, *bundledProfile(name));
  }
}

}  // namespace
}  // namespace stopwalk::files
