// An audit that is no longer wanted is left at once, and nothing of it is in the next one.
#include "core/audit/wanted.h"

#include <gtest/gtest.h>

#include "core/audit/audit.h"
#include "core/files/device_kinds_reader.h"
#include "core/files/report_json.h"
#include "tests/support/shop_layout.h"

namespace stopwalk::audit {
namespace {

class Wanting : public testing::Test {
 protected:
  const Report& audited(const Wanted& wanted = {}) {
    return auditor.audit(layout, kinds, profile, floor::Hours::Open, {}, wanted);
  }
  static std::string textOf(const Report& report) {
    return files::reportJson({"shop", "", report}, inspection::kUnreadDay);
  }
  std::string fromNothing() { return textOf(audit(layout, kinds, profile)); }

  layout::Layout layout = support::shopLayout(support::kShopSizes[0]);
  const layout::DeviceKinds& kinds = files::bundledDeviceKinds();
  Profile profile = defaultProfile();
  Auditor auditor;
};

TEST_F(Wanting, ALeftAuditIsInNoneThatComesAfter) {
  int looks = 0;
  audited([&] { return ++looks, true; });
  ASSERT_GT(looks, 40) << "at each thing that is judged";
  for (int at = 1; at <= looks; at += 1 + looks / 25) {
    profile.settings[0].on = !profile.settings[0].on;  // so that it is made from nothing
    int look = 0;
    EXPECT_THROW(audited([&] { return ++look < at; }), NoLongerWanted);
    EXPECT_EQ(look, at) << "not a step further";
    layout.machines[0].at.x += 10;
    EXPECT_EQ(textOf(audited()), fromNothing());
  }
}

TEST_F(Wanting, WhatOnlyFollowsIsMadeToItsEnd) {
  audited();
  layout.machines[0].at.x += 10;
  EXPECT_EQ(textOf(audited([] { return false; })), fromNothing());
  EXPECT_EQ(auditor.followed(), 1u);
}

}  // namespace
}  // namespace stopwalk::audit
