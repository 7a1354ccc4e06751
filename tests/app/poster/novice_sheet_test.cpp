// The sheet of one machine says no more than is so.
#include "app/poster/novice_sheet.h"

#include <algorithm>

#include "app/poster/sheet_facts.h"
#include "app/poster/sizes.h"
#include "tests/app/poster/sample.h"

namespace stopwalk::poster {
namespace {

// The cut-off is behind a door that is shut after hours; the long way round it is not.
const char* const kShop = R"(stopwalk_layout: 1
units: mm
site: {name: A shop}
rooms:
  - {id: a, name: Shop, outline: [[0, 0], [8000, 0], [8000, 6000], [0, 6000]]}
  - {id: b, name: Store, outline: [[8000, 0], [12000, 0], [12000, 6000], [8000, 6000]]}
doors:
  - {id: near, joins: [a, b], at: [8000, 5000], width: 1000, locked: after-hours}
  - {id: far, joins: [a, b], at: [8000, 1000], width: 1000}
machines:
  - id: saw
    name: Saw
    at: [6500, 4800]
    footprint: {width: 800, depth: 400}
    stations: [{id: operator, role: operator, at: [0, -900]}]
    devices:
      - {id: stop, kind: mushroom-button, at: [-200, -200], height: 1000}
      - {id: other, kind: mushroom-button, at: [200, -200], height: 1000, stops: [drill]}
      - {id: start, kind: guarded-start, at: [300, -200], height: 1000, pin: fitted}
  - id: drill
    name: Drill
    at: [2000, 3000]
    footprint: {width: 500, depth: 500}
devices:
  - {id: cut, kind: room-cut-off, at: [12000, 5000], faces: 180, height: 1200, stops: [a]}
phones:
  - {id: phone, name: Store phone, at: [12000, 3000], faces: 180}
...
)";

QString sheetOf(const Sample& sample, std::size_t machine) {
  const Sheet sheet = noviceSheet(*sample.shop, machine, wishFor("a4"));
  EXPECT_TRUE(sheet.page) << sheet.why_not.toStdString();
  return sheet.page ? wordsOn(*sheet.page) : QString();
}

TEST(NoviceSheet, WhatDoesNotStopTheMachineIsNotUnderHowItStops) {
  const QString words = sheetOf(Sample(kShop), 0);
  const auto how = words.indexOf("How it stops"), apart = words.indexOf("These do not stop it");
  EXPECT_LT(how, words.indexOf("Press the red button."));
  EXPECT_LT(words.indexOf("Press the red button."), apart);
  EXPECT_LT(apart, words.indexOf("Does not stop this machine."));
  EXPECT_LT(apart, words.indexOf("put the pin back"));
}

TEST(NoviceSheet, AStopThatFailedIsOutOfOrderAndTheNextOneIsWhatStopsIt) {
  const Sample sample(kShop, failedCheckOf("saw/stop"));
  const QString words = sheetOf(sample, 0);
  EXPECT_TRUE(words.contains("This machine has no stop of its own."));
  EXPECT_TRUE(words.contains("Out of order")) << words.toStdString();
  EXPECT_TRUE(words.contains("Failed a check on 2026-05-04"));
  EXPECT_TRUE(words.contains("What stops it")) << words.toStdString();
  EXPECT_FALSE(words.contains("If you cannot reach it"));
  const Sheet sheet = noviceSheet(*sample.shop, 0, wishFor("a4"));
  EXPECT_TRUE(std::ranges::any_of(sheet.shortfalls, [](const QString& text) {
    return text.contains("the check of saw/stop on 2026-05-04 failed");
  }));
}

TEST(NoviceSheet, TheLongerWayAfterHoursIsSaid) {
  const Sample sample(kShop);
  const SheetFacts facts = sheetFacts(*sample.shop, 0, 0);
  ASSERT_TRUE(facts.next.found() && facts.next_late.found());
  ASSERT_GT(facts.next_late.walk_m, facts.next.walk_m + 1);
  const Language english("en");
  EXPECT_TRUE(sheetOf(sample, 0).contains("After hours: Room cut-off in Store: " +
                                          walkText(facts.next_late.walk_m * 1000, english)));
}

// Nobody's place of work: no way is told from a wall where the sheet does not hang.
TEST(NoviceSheet, OfAMachineWithoutAStationTellsNoWays) {
  const Sample sample(kShop);
  const SheetFacts facts = sheetFacts(*sample.shop, 1, 0);
  EXPECT_EQ(facts.content.reader, Content::Reader::NotShown);
  EXPECT_TRUE(facts.content.phone.path.empty());
  const QString words = sheetOf(sample, 1);
  EXPECT_TRUE(words.contains("No way to a phone is known from here."));
  EXPECT_FALSE(words.contains(" from here. Phone"));
}

// Many words are said in smaller letters before there is no sheet at all; and that is told.
TEST(NoviceSheet, OfManyWordsIsSmallerRatherThanNone) {
  const Sample sample(Sample::fileText("tram-depot"));
  std::size_t smaller = 0;
  for (std::size_t m = 0; m < sample.layout.machines.size(); ++m) {
    const Sheet sheet = noviceSheet(*sample.shop, m, wishFor("a4", {"de", "es"}));
    ASSERT_TRUE(sheet.page) << sheet.why_not.toStdString();
    smaller += std::ranges::count_if(sheet.shortfalls,
                                     [](const QString& text) { return text.contains("fits on one page"); });
    for (const Mark& mark : sheet.page->marks)
      if (const Text* text = std::get_if<Text>(&mark)) {
        EXPECT_LT(text->at.y(), sheet.page->size.height() - 5) << text->text.toStdString();
      }
  }
  EXPECT_GE(smaller, 1u);
}

// The largest letters of the words of how it stops, and of the name, as they are on the page.
TEST(NoviceSheet, PromisesTheSizesThatItHas) {
  for (const char* name : {"tram-depot", "scene-shop"}) {
    const Sample sample(Sample::fileText(name));
    for (std::size_t m = 0; m < sample.layout.machines.size(); ++m) {
      const Sheet sheet = noviceSheet(*sample.shop, m, wishFor("a4"));
      ASSERT_TRUE(sheet.page);
      double name_cap = 0, smallest_sign = 1e9;
      for (const Mark& mark : sheet.page->marks) {
        if (const Text* text = std::get_if<Text>(&mark)) name_cap = std::max(name_cap, text->cap);
        if (const Sign* sign = std::get_if<Sign>(&mark); sign && sign->ground != plan::Ground::Phone)
          smallest_sign = std::min(smallest_sign, sign->square.height());
      }
      const QString words = wordsOn(*sheet.page);
      const auto promised = [&](const QString& before) {
        const auto at = words.indexOf(before);
        return at < 0 ? 0 : words.mid(at + before.size()).section(' ', 0, 0).toDouble();
      };
      EXPECT_GT(promised("Letters (ASR A1.3): name "), 4);
      EXPECT_LE(promised("Letters (ASR A1.3): name "), name_cap);
      if (!words.contains("Signs on the plan: ")) continue;
      EXPECT_LE(promised("Signs on the plan: "), smallest_sign);
      EXPECT_GT(promised("Signs on the plan: "), smallest_sign / kCutOffOver - 0.2) << "or the cut-off alone";
    }
  }
}

}  // namespace
}  // namespace stopwalk::poster
