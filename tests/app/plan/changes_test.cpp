#include "app/plan/changes.h"

#include <gtest/gtest.h>

namespace stopwalk::plan {
namespace {

audit::Report report(audit::Verdict verdict, std::optional<double> stop_m, double phone_m) {
  audit::StationReport station;
  station.id = "saw/operator";
  station.name = "Saw, operator";
  station.verdict = verdict;
  station.stop.status = stop_m ? audit::Status::Walk : audit::Status::Unreachable;
  station.stop.walk_m = stop_m;
  station.phone.status = audit::Status::Walk;
  station.phone.walk_m = phone_m;
  audit::Report r;
  r.stations.push_back(station);
  return r;
}

using audit::Verdict;

TEST(Changes, OfLessThanACentimetreAreNone) {
  EXPECT_TRUE(changesBetween(report(Verdict::Meets, 3, 9), report(Verdict::Meets, 3.009, 9)).empty());
  EXPECT_EQ(changesBetween(report(Verdict::Meets, 3, 9), report(Verdict::Meets, 3.011, 9)).size(), 1u);
}

TEST(Changes, AreJudgedByTheVerdictBeforeTheWalk) {
  const auto change = changesBetween(report(Verdict::Meets, 3, 9), report(Verdict::Fails, 2, 9)).at(0);
  EXPECT_EQ(change.turn, Turn::Worse);
  EXPECT_EQ(change.text.toStdString(), "Saw, operator: stop 3 m → 2 m, now fails");
}

TEST(Changes, OfTheWalkToThePhoneCountWhereTheStopIsTheSame) {
  EXPECT_EQ(changesBetween(report(Verdict::Meets, 3, 9), report(Verdict::Meets, 3, 8)).at(0).turn,
            Turn::Better);
  EXPECT_EQ(changesBetween(report(Verdict::Meets, 3, 9), report(Verdict::Meets, 3, 10)).at(0).turn,
            Turn::Worse);
}

TEST(Changes, ALostWayIsWorseThanAnyWalk) {
  EXPECT_EQ(changesBetween(report(Verdict::Fails, 90, 9), report(Verdict::Fails, {}, 9)).at(0).turn,
            Turn::Worse);
  EXPECT_EQ(changesBetween(report(Verdict::Fails, {}, 9), report(Verdict::Fails, 90, 9)).at(0).turn,
            Turn::Better);
}

TEST(Changes, NoStopAtAllIsNotAStopWithoutAWay) {
  audit::Report after = report(Verdict::Fails, {}, 9);
  const auto text = [&] {
    return changesBetween(report(Verdict::Fails, 3, 9), after).at(0).text.toStdString();
  };
  EXPECT_EQ(text(), "Saw, operator: stop 3 m → no way");
  after.stations[0].stop.status = audit::Status::None;
  EXPECT_EQ(text(), "Saw, operator: stop 3 m → none");
}

TEST(Changes, NearerHereAndFartherThereIsNeitherBetterNorWorse) {
  EXPECT_EQ(changesBetween(report(Verdict::Fails, 4, 9), report(Verdict::Fails, 1, 10)).at(0).turn,
            Turn::Other);
  audit::Report lost = report(Verdict::Fails, 1, 9);
  lost.stations[0].phone.walk_m.reset();
  EXPECT_EQ(changesBetween(report(Verdict::Fails, 4, 9), lost).at(0).turn, Turn::Worse);
}

TEST(Changes, OfTheSecondsAloneAreTold) {
  audit::Report before = report(Verdict::Meets, 0, 9), after = before;
  for (audit::Report* r : {&before, &after}) r->stations[0].stop.status = audit::Status::AtHand;
  before.stations[0].stop.seconds = 4;
  after.stations[0].stop.seconds = 7.5;
  const auto change = changesBetween(before, after).at(0);
  EXPECT_EQ(change.turn, Turn::Worse);
  EXPECT_EQ(change.text.toStdString(), "Saw, operator: stop 4.0 s → 7.5 s");
}

TEST(Changes, AWayThatIsLostIsWorseWhateverTheVerdict) {
  EXPECT_EQ(changesBetween(report(Verdict::Fails, 4, 9), report(Verdict::Warns, {}, 9)).at(0).turn,
            Turn::Worse);
}

TEST(Changes, OfSecondsThatAreNotKnownAreNeitherBetterNorWorse) {
  audit::Report known = report(Verdict::Meets, 3, 9), unknown = known;
  known.stations[0].stop.seconds = 4;
  EXPECT_EQ(changesBetween(known, unknown).at(0).turn, Turn::Other);
  EXPECT_EQ(changesBetween(unknown, known).at(0).turn, Turn::Other);
}

TEST(Changes, OfStationsThatCameOrWentAreNone) {
  EXPECT_TRUE(changesBetween(audit::Report(), report(Verdict::Meets, 3, 9)).empty());
}

TEST(Changes, OfANarrowWayThatIsNarrowerAreTold) {
  audit::Report before = report(Verdict::Warns, 3, 9), after = before;
  for (audit::Report* r : {&before, &after}) r->stations[0].stop.status = audit::Status::Narrow;
  before.stations[0].stop.clear_width_m = 0.7;
  after.stations[0].stop.clear_width_m = 0.55;
  auto change = changesBetween(before, after).at(0);
  EXPECT_EQ(change.turn, Turn::Worse);
  EXPECT_EQ(change.text.toStdString(), "Saw, operator: stop narrowest 0.7 m → 0.55 m");
  EXPECT_EQ(changesBetween(after, before).at(0).turn, Turn::Better);
  change = changesBetween(report(Verdict::Warns, 3, 9), after).at(0);
  EXPECT_EQ(change.turn, Turn::Worse);
  EXPECT_EQ(change.text.toStdString(), "Saw, operator: stop narrowest wide → 0.55 m");
}

TEST(Changes, ToAnotherStopAsFarAwayNameBoth) {
  audit::Report before = report(Verdict::Meets, 3, 9), after = before;
  before.stations[0].stop.device = before.stations[0].stop.name = "foot bar";
  after.stations[0].stop.device = after.stations[0].stop.name = "paddle";
  const auto change = changesBetween(before, after).at(0);
  EXPECT_EQ(change.turn, Turn::Other);
  EXPECT_EQ(change.text.toStdString(), "Saw, operator: stop foot bar → paddle");
}

}  // namespace
}  // namespace stopwalk::plan
