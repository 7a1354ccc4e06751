#include "core/audit/accepted.h"

#include <gtest/gtest.h>

#include "core/audit/audit.h"

namespace stopwalk::audit {
namespace {

Finding finding(std::string rule, std::string subject) {
  Finding f;
  f.rule = std::move(rule);
  f.subject = std::move(subject);
  return f;
}

const layout::AcceptedFinding kAccepted{"hidden-stop", "saw",        "the screen moves in May",
                                        "A. Tester",   "2027-05-31", {}};

TEST(Accepted, MarksOnlyTheFindingOfThatRuleAndSubject) {
  std::vector<Finding> findings{finding("hidden-stop", "saw"), finding("hidden-stop", "drill"),
                                finding("no-stop", "saw")};
  markAccepted(findings, {kAccepted});
  ASSERT_TRUE(findings[0].accepted);
  EXPECT_EQ(acceptedText(*findings[0].accepted),
            "accepted by A. Tester until 2027-05-31: the screen moves in May");
  EXPECT_FALSE(findings[1].accepted);
  EXPECT_FALSE(findings[2].accepted);
}

TEST(Accepted, WhatNoFindingNeedsIsNamed) {
  EXPECT_TRUE(notNeeded({kAccepted}, {finding("hidden-stop", "saw")}).empty());
  EXPECT_EQ(notNeeded({kAccepted}, {finding("hidden-stop", "drill")}).size(), 1u);
}

TEST(Accepted, NeedsARuleThatThereIsAndALastDay) {
  EXPECT_EQ(troubleOf(kAccepted), "");
  layout::AcceptedFinding wrong = kAccepted;
  wrong.rule = "hiden-stop";
  EXPECT_NE(troubleOf(wrong).find("hidden-stop"), std::string::npos);
  wrong = kAccepted;
  wrong.until.clear();
  EXPECT_NE(troubleOf(wrong).find("until"), std::string::npos);
}

}  // namespace
}  // namespace stopwalk::audit
