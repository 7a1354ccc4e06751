#include "app/poster/content.h"

#include <algorithm>
#include <stdexcept>

#include "app/poster/table.h"
#include "app/poster/texts.h"
#include "tests/app/poster/sample.h"

namespace stopwalk::poster {
namespace {

const char* const kTwoMachines = R"(stopwalk_layout: 1
units: mm
site: {name: A shop}
rooms:
  - {id: a, name: Shop, outline: [[0, 0], [8000, 0], [8000, 6000], [0, 6000]]}
  - {id: b, name: Store, outline: [[8000, 0], [12000, 0], [12000, 6000], [8000, 6000]]}
doors:
  - {id: d, joins: [a, b], at: [8000, 3000], width: 1000, locked: after-hours}
machines:
  - id: saw
    name: Saw
    at: [2000, 3000]
    footprint: {width: 800, depth: 800}
    after_stop: Wait for the blade.
    stations: [{id: operator, role: operator, at: [0, -900]}]
    devices:
      - {id: stop, kind: mushroom-button, at: [-200, -400], height: 1000}
      - {id: other, kind: mushroom-button, at: [200, -400], height: 1000, stops: [drill]}
      - {id: start, kind: guarded-start, at: [300, -400], height: 1000, pin: fitted}
  - id: drill
    name: Drill
    at: [5000, 3000]
    footprint: {width: 500, depth: 500}
    stations: [{id: operator, role: operator, at: [0, -800]}]
devices:
  - {id: cut, kind: room-cut-off, at: [0, 1000], faces: 0, height: 1200, stops: [a]}
phones:
  - {id: phone, name: Store phone, at: [12000, 3000], faces: 180}
...
)";

struct Two : testing::Test {
  Sample sample{std::string(kTwoMachines)};
  Content content = sample.shop->content(0, viewerNear(sample.layout, 0, {4000, 0}));

  const Listed& listed(const std::string& id) const {
    for (const Group& g : content.groups)
      for (const Listed& l : g.stops)
        if (l.id == id) return l;
    for (const Listed& l : content.not_stops)
      if (l.id == id) return l;
    throw std::runtime_error("not listed: " + id);
  }
};

TEST_F(Two, ListEveryStopOnceAndNumberThemAll) {
  std::vector<int> numbers;
  for (const char* id : {"cut", "saw/stop", "saw/other", "saw/start"}) numbers.push_back(listed(id).number);
  std::ranges::sort(numbers);
  EXPECT_EQ(numbers, (std::vector<int>{1, 2, 3, 4}));
}

TEST_F(Two, AStopOfAnotherMachineSaysThatItIsNotThisOnes) {
  const Listed& l = listed("saw/other");
  EXPECT_EQ(l.span.of, Span::Of::Named);
  EXPECT_FALSE(l.span.own);
  EXPECT_EQ(l.span.others, std::vector<std::string>{"Drill"});
  EXPECT_TRUE(wordsOf(l, Language("en")).join(' ').startsWith("Does not stop this machine. Stops: Drill."));
}

// A sheet and a table must not give it as the way to stop the machine that it is on.
TEST_F(Two, AMachineThatOnlyAnotherStopsIsToldSoBeforeAnyButton) {
  Sample other{QString::fromUtf8(kTwoMachines)
                   .replace("id: stop, kind: mushroom-button", "id: stop, kind: guarded-start, pin: fitted")
                   .toStdString()};
  const Content told = other.shop->content(0, viewerNear(other.layout, 0, {4000, 0}));
  const auto saw = std::ranges::find(told.groups, "Saw", &Group::machine);
  ASSERT_NE(saw, told.groups.end());
  EXPECT_EQ(saw->use_instead, std::vector<int>{1});  // the cut-off
  const Lettering letters(usualFamily());
  QStringList texts;
  for (const Block& block : tableBlocks(told, {Language("en")}, letters, 300, Sizes{}))
    for (const Mark& mark : block.marks)
      if (const Text* text = std::get_if<Text>(&mark)) texts << text->text;
  const auto at = [&](const QString& part) {
    return std::ranges::find_if(texts, [&](const QString& t) { return t.contains(part); }) - texts.begin();
  };
  EXPECT_LT(at("No stop of its own. Use 1."), at("Does not stop this machine."));
  EXPECT_LT(at("Does not stop this machine."), texts.size());
}

TEST_F(Two, MachinesOfOneNameAreToldApart) {
  const Sample same{QString::fromUtf8(kTwoMachines).replace("name: Drill", "name: Saw").toStdString()};
  const Content told = same.shop->content(0, viewerNear(same.layout, 0, {4000, 0}));
  const auto drill = std::ranges::find(told.groups, "drill", &Group::id);
  ASSERT_NE(drill, told.groups.end());
  EXPECT_EQ(drill->use_instead.size(), 2u);
  EXPECT_TRUE(std::ranges::find(told.groups, "saw", &Group::id)->use_instead.empty());
}

// Hung for a long time, and read by somebody who has no time: what failed must not be run to.
TEST_F(Two, AStopThatFailedIsOutOfOrderAndNothingIsSaidToBeStoppedByIt) {
  const Sample broken(kTwoMachines, failedCheckOf("cut"));
  const Content told = broken.shop->content(0, std::nullopt);
  ASSERT_EQ(told.out_of_order.size(), 1u);
  const Listed& cut = told.out_of_order[0];
  EXPECT_EQ(cut.id, "cut");
  EXPECT_EQ(cut.ground, plan::Ground::Plain) << "no red on yellow";
  EXPECT_TRUE(wordsOf(cut, Language("en")).join(' ').contains("Failed a check on 2026-05-04: do not rely"));
  for (const Group& group : told.groups)
    for (const Listed& l : group.stops) EXPECT_NE(l.id, "cut");
  const auto drill = std::ranges::find(told.groups, "drill", &Group::id);
  ASSERT_NE(drill, told.groups.end());
  EXPECT_EQ(drill->use_instead.size(), 1u) << "the button on the saw";
  EXPECT_EQ(listedIn(told).size(), listedIn(content).size());
}

TEST_F(Two, AStopThatFailedIsOneWhereTheProfileSaysSoAndThatIsTold) {
  Sample broken(kTwoMachines, failedCheckOf("cut"));
  broken.profile.inspection.failed_stops_count = true;
  const Shop shop(broken.layout, broken.kinds, broken.profile, broken.sha256, broken.failed);
  EXPECT_TRUE(shop.content(0, std::nullopt).out_of_order.empty());
  const Poster poster = shop.poster(0, std::nullopt, wishFor("a3"));
  EXPECT_TRUE(std::ranges::any_of(poster.shortfalls, [](const Shortfall& s) {
    return s.text.contains(
        "the check of cut on 2026-05-04 failed, and it has not passed since: the profile counts it as a "
        "stop");
  }));
  EXPECT_EQ(posterHash(shop.about()), broken.sha256);
}

TEST_F(Two, APosterIsHeldAgainstWhatIsOutOfOrderToo) {
  const Sample broken(kTwoMachines, failedCheckOf("cut")), other(kTwoMachines, failedCheckOf("saw/stop"));
  const std::string hash = posterHash(broken.shop->about());
  EXPECT_EQ(posterHash(sample.shop->about()), sample.sha256);
  EXPECT_NE(hash, sample.sha256);
  EXPECT_NE(hash, posterHash(other.shop->about()));
  EXPECT_EQ(hash, posterHash(Sample(kTwoMachines, failedCheckOf("cut")).shop->about()));
}

// A trigger that is held on one machine is no way for another to be stopped.
TEST_F(Two, WhatIsHeldElsewhereIsNotToBeUsedInstead) {
  const Sample held{QString::fromUtf8(kTwoMachines)
                        .replace("id: other, kind: mushroom-button", "id: other, kind: trigger")
                        .toStdString()};
  const Content told = held.shop->content(0, std::nullopt);
  EXPECT_EQ(std::ranges::find(told.groups, "drill", &Group::id)->use_instead, std::vector<int>{1})
      << "the cut-off";
}

TEST_F(Two, AGuardedStartIsListedApartAndIsNoStop) {
  ASSERT_EQ(content.not_stops.size(), 1u);
  EXPECT_EQ(content.not_stops[0].id, "saw/start");
  EXPECT_EQ(content.not_stops[0].ground, plan::Ground::Start);
}

TEST_F(Two, AMachineWithoutAStopOfItsOwnNamesWhatStopsIt) {
  const auto drill = std::ranges::find(content.groups, "Drill", &Group::machine);
  ASSERT_NE(drill, content.groups.end());
  EXPECT_TRUE(drill->stops.empty());
  EXPECT_EQ(drill->use_instead.size(), 2u);  // the cut-off and the button on the saw
}

TEST_F(Two, TheWayToThePhoneGoesThroughTheDoorAndNotAfterHours) {
  EXPECT_EQ(content.phone.status, audit::Status::Walk);
  EXPECT_EQ(content.phone.through, std::vector<std::string>{"Store"});
  ASSERT_TRUE(content.phone_after_hours);
  EXPECT_EQ(content.phone_after_hours->status, audit::Status::Unreachable);
}

TEST_F(Two, TheWalkIsTheOneThatIsMeasured) {
  const Viewer viewer = *viewerNear(sample.layout, 0, {4000, 0});
  const auto& open = sample.shop->open();
  const floor::Place at{{viewer.stands()}, {}};
  EXPECT_DOUBLE_EQ(content.phone.length_mm, open.walks.between(at, open.phones[0].standing.place).length_mm);
}

// A cut-off of this room and others must not read as if it left machines of this room running.
TEST(CutOff, ThatStopsMoreThanThisRoomSaysThatItStopsAllOfIt) {
  const Sample sample(Sample::fileText("school-wing"));
  const std::size_t room = sample.room("wood-machines");
  const Content content = sample.shop->content(room, std::nullopt);
  std::size_t more = 0;
  for (const Listed* l : listedIn(content)) {
    if (!l->cut_off) continue;
    EXPECT_EQ(l->span.of, Span::Of::EveryMachineHere) << l->id;
    const QString words = wordsOf(*l, Language("en")).join(' ');
    EXPECT_TRUE(words.contains("Stops every machine in this room.")) << words.toStdString();
    EXPECT_EQ(words.contains("Also stops: Bench drill 1"), !l->span.others.empty());
    more += l->span.others.empty() ? 0 : 1;
  }
  EXPECT_EQ(more, 1u);
}

// Two machines in one place are a fault: the page says that something may be missing.
TEST(Faults, OfTheDrawingAreToldOnThePage) {
  const auto told = [](const std::string& text) {
    const Sample sample(text);
    const Poster poster = sample.shop->poster(0, std::nullopt, wishFor("a3"));
    return wordsOn(poster.document->pages[0]).contains("The plan has drawing faults (");
  };
  EXPECT_FALSE(told(kTwoMachines));
  EXPECT_TRUE(
      told(QString::fromUtf8(kTwoMachines).replace("at: [5000, 3000]", "at: [2100, 3000]").toStdString()));
}

// A way may turn just where it crosses a wall's line.
TEST(PhoneWay, NamesTheRoomsOfEverySampleThatItGoesInto) {
  for (const char* name : {"tram-depot", "scene-shop", "school-wing"}) {
    const Sample sample(Sample::fileText(name));
    const audit::Context& open = sample.shop->open();
    for (std::size_t r = 0; r < sample.layout.rooms.size(); ++r) {
      const PhoneWay way = sample.shop->content(r, std::nullopt).phone;
      if (way.path.empty()) continue;
      const auto end = open.surroundings.roomAt(way.path.back());
      ASSERT_TRUE(end) << name << " " << sample.layout.rooms[r].id;
      EXPECT_EQ(way.through.empty() ? open.roomName(r) : way.through.back(), open.roomName(*end));
    }
  }
}

TEST(Walk, IsNeverSaidToBeNearerThanItIs) {
  EXPECT_EQ(walkText(12301, Language("en")), "12.4 m (41 ft)");
  EXPECT_EQ(walkText(12300, Language("en")), "12.3 m (41 ft)");
  EXPECT_EQ(walkText(304.8, Language("en")), "0.4 m (1 ft)");
  EXPECT_EQ(walkText(12301, Language("de")), "12,4 m (41 ft)");
}

// What a poster says of the bundled kinds can be translated.
TEST(Kinds, OfTheBundledFileAreAmongTheTexts) {
  const auto said = [](const std::string& text) {
    return std::ranges::any_of(texts::kKinds, [&](const char* known) { return text == known; });
  };
  const layout::DeviceKinds kinds = plan::bundledCatalogue().kinds;
  for (const layout::DeviceKind& kind : kinds.all()) {
    EXPECT_TRUE(said(kind.label)) << kind.label;
    EXPECT_TRUE(said(kind.instruction)) << kind.instruction;
  }
}

}  // namespace
}  // namespace stopwalk::poster
