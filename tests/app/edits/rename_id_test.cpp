#include "app/edits/rename_id.h"

#include "app/edits/remove_things.h"
#include "tests/app/edits/bench_shop.h"

namespace stopwalk::edits {
namespace {

using layout::Layout;

// The shop's text with one id for another: ids there are words of their own.
std::string withWord(std::string text, const std::string& from, const std::string& to) {
  const auto isPart = [](char c) { return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-'; };
  for (std::size_t at = 0; (at = text.find(from, at)) != std::string::npos; at += to.size()) {
    const bool whole = !isPart(text[at - 1]) && !isPart(text[at + from.size()]);
    if (whole) text.replace(at, from.size(), to);
  }
  return text;
}

TEST(RenameId, LetsEveryMentionFollow) {
  const Layout before = benchShop();
  for (const char* id :
       {"wood", "metal", "d1", "bench-1", "saw", "lathe", "cut-off", "phone-1", "n1", "t1"}) {
    const Edit edit = renameId(before, id, "other-9");
    std::string expected = withWord(files::writeLayout(before), id, "other-9");
    // Words that are in names and kinds too.
    for (const char* word : {"room-", "Table ", "Engine "})
      expected = withWord(expected, word + std::string("other-9"), word + std::string(id));
    EXPECT_EQ(edit.after, layoutOf(expected)) << id;
    EXPECT_EQ(renameId(edit.after, "other-9", id).after, before) << id;
    EXPECT_TRUE(edit.name.startsWith("Change the id of ")) << id;
  }
}

TEST(RenameId, OfAStationIsFollowedOnItsMachineOnly) {
  const Layout before = benchShop();
  const Layout after = renameId(before, "saw/operator", "sawyer").after;
  Layout expected = before;
  expected.machines[0].stations[0].id = "sawyer";
  expected.machines[0].devices[1].held_at = {{"sawyer", "helper"}};
  expected.tape_checks[1].from = "saw/sawyer";
  EXPECT_EQ(after, expected);
  expectReadable(after);
}

TEST(RenameId, WhatIsAcceptedFollows) {
  Layout before = benchShop();
  before.accepted_findings = {
      {"slow-run-down", "lathe", "saw/paddle, cut-off", "invented", "Ada Example", "2027-12-31", {}},
      {"unreachable", "saw/operator", "(phone)", "invented", "Ada Example", "2027-12-31", {}}};
  const auto accepted = [&](const char* id) {
    return renameId(before, id, "other-9").after.accepted_findings;
  };
  EXPECT_EQ(accepted("lathe")[0].subject, "other-9");
  EXPECT_EQ(accepted("saw")[0].which, "other-9/paddle, cut-off");
  EXPECT_EQ(accepted("cut-off")[0].which, "saw/paddle, other-9");
  EXPECT_EQ(accepted("saw")[1].subject, "other-9/operator");
  EXPECT_EQ(accepted("saw")[1].which, "(phone)");
}

TEST(RenameId, OfAThingCalledAsAWordLeavesTheWord) {
  Layout before = benchShop();
  before = renameId(before, "wood", "floor").after;
  before = renameId(before, "phone-1", "phone").after;
  before.accepted_findings = {
      {"drawing-fault", "saw/operator", "(floor)", "invented", "Ada Example", "2027-12-31", {}},
      {"unreachable", "saw/operator", "(phone)", "invented", "Ada Example", "2027-12-31", {}},
      {"failed-check", "saw/paddle", "(check 7, 2026-03-02)", "invented", "Ada Example", "2027-12-31", {}}};
  for (const char* id : {"floor", "phone"}) {
    EXPECT_EQ(renameId(before, id, "other-9").after.accepted_findings, before.accepted_findings) << id;
    const Layout without = removeThings(before, {id}, files::bundledDeviceKinds()).after;
    EXPECT_EQ(without.accepted_findings, before.accepted_findings) << id;
  }
}

TEST(RenameId, SaysWhyNot) {
  const Layout shop = benchShop();
  const auto why = [&](const char* id, const char* new_id) {
    return whyNotRename(shop, id, new_id).toStdString();
  };
  EXPECT_EQ(why("saw", "saw-2"), "");
  EXPECT_EQ(why("saw", "saw"), "");
  EXPECT_EQ(why("saw/operator", "saw"), "");
  EXPECT_EQ(why("saw", ""), "An id has lower-case letters, digits and hyphens only: lathe-1.");
  EXPECT_EQ(why("saw", "Saw 2"), "An id has lower-case letters, digits and hyphens only: lathe-1.");
  EXPECT_EQ(why("saw/operator", "saw/helper-2"),
            "An id has lower-case letters, digits and hyphens only: lathe-1.");
  EXPECT_EQ(why("saw", "all"), "The id all has a meaning of its own; choose another.");
  EXPECT_EQ(why("saw", "phone-1"), "There is something with the id phone-1 already; choose another.");
  EXPECT_EQ(why("saw/paddle", "operator"),
            "There is something with the id saw/operator already; choose another.");
  EXPECT_EQ(why("nothing", "x"), "There is nothing with the id nothing.");
  EXPECT_EQ(why("(underlay)", "x"), "There is nothing with the id (underlay).");
}

TEST(RenameId, ChangesNothingWhereItCannotBe) {
  const Layout shop = benchShop();
  for (const char* bad : {"", "all", "phone-1", "A"})
    EXPECT_EQ(renameId(shop, "saw", bad).after, shop) << bad;
}

}  // namespace
}  // namespace stopwalk::edits
