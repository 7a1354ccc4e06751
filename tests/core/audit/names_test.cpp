// Things of one name are told apart by their ids, and only they.
#include "tests/core/audit/rule_cases.h"

namespace stopwalk::audit {
namespace {

const Edit kDrillIsCalledSaw = {"name: Drill", "name: Saw"};

TEST(Names, TwoMachinesOfOneNameAreToldApart) {
  const Report report = auditOf(shopWith({kDrillIsCalledSaw}));
  EXPECT_EQ(stationOf(report, "saw/operator").name, "Saw (saw), operator");
  EXPECT_EQ(stationOf(report, "drill/operator").name, "Saw (drill), operator");
}

TEST(Names, WhatIsUniqueStaysAsItIs) {
  const Report report = auditOf(shopWith({}));
  EXPECT_EQ(stationOf(report, "saw/operator").name, "Saw, operator");
  EXPECT_EQ(stationOf(report, "saw/operator").phone.name, "Phone");
  EXPECT_EQ(stationOf(auditOf(shopWith({{"    name: Saw\n", ""}})), "saw/operator").name, "saw, operator");
}

TEST(Names, ASentenceNamesTheOtherMachineOfTheName) {
  const Report report = auditOf(shopWith({kDrillIsCalledSaw,
                                          {"at: [0, -400], height: 1001", "at: [-3200, -710], height: 1001"},
                                          kSawStopIsNone,
                                          kCutOffOfDrillOnly}));
  EXPECT_NE(findingOf(report, "look-alike").text.find("the mushroom button of Saw (drill)"),
            std::string::npos)
      << findingOf(report, "look-alike").text;
  EXPECT_EQ(findingOf(report, "no-stop").text,
            "Saw (saw): nothing stops this machine; the rule asks for at least one device that does.");
}

TEST(Names, RoomsAndPhonesAreToldApartAsWell) {
  const std::string store =
      "  - {id: store, name: Shop, outline: [[8000, 0], [12000, 0], [12000, 6000], [8000, 6000]]}\n";
  const std::string other = "  - {id: other, name: Phone, at: [0, 1000], faces: 0, height: 1200}\n";
  const Report report =
      auditOf(shopWith({before("doors:\n", store), before("...\n", other), kCutOffOfDrillOnly}));
  EXPECT_EQ(findingOf(report, "no-room-cut-off").text.substr(0, 12), "Shop (shop):");
  EXPECT_EQ(stationOf(report, "saw/operator").phone.name, "Phone (phone)");
}

}  // namespace
}  // namespace stopwalk::audit
