#include "app/plan/audit_marks.h"

#include <gtest/gtest.h>

#include "app/plan/guides.h"
#include "app/plan/plan_view.h"

namespace stopwalk::plan {
namespace {

std::shared_ptr<const audit::Report> walkOf(double stop_m) {
  audit::StationReport station;
  station.id = station.name = "saw/operator";
  station.stop.status = audit::Status::Walk;
  station.stop.walk_m = stop_m;
  audit::Report report;
  report.stations.push_back(station);
  return std::make_shared<const audit::Report>(report);
}

StationState stateIn(const AuditMarks& marks) {
  return marks.states().at("saw/operator");
}

TEST(AuditMarks, TellWhatIsAcceptedFromWhatIsNot) {
  audit::Report report = *walkOf(7);
  report.stations.own(0).verdict = audit::Verdict::Fails;
  audit::Finding finding;
  finding.subject = "saw/operator";
  report.findings.push_back(finding);
  AuditMarks marks;
  marks.set({std::make_shared<const audit::Report>(report), true, false});
  EXPECT_EQ(stateIn(marks), StationState::Fails);
  report.findings.own(0).accepted = {"on order", "Ada Example", "2999-12-31"};
  marks.set({std::make_shared<const audit::Report>(report), true, false});
  EXPECT_EQ(stateIn(marks), StationState::FailsAccepted);
  report.findings.own(0).accepted->until = "2024-01-01";
  marks.set({std::make_shared<const audit::Report>(report), true, false});
  EXPECT_EQ(stateIn(marks), StationState::Fails);
}

class AuditMarksOfADrag : public testing::Test {
 protected:
  AuditMarksOfADrag() {
    marks.set({walkOf(3), true, false});
    marks.set({moved, true, true});
  }
  std::shared_ptr<const audit::Report> moved = walkOf(4);
  AuditMarks marks;
};

TEST_F(AuditMarksOfADrag, TellWhatChangesFromTheLayoutAsItIs) {
  EXPECT_EQ(marks.tellsOfChanges(), "▼ saw/operator: stop 3 m → 4 m");
  EXPECT_EQ(stateIn(marks), StationState::Meets);
}

TEST_F(AuditMarksOfADrag, SayWhenTheyAreOfAnEarlierMoment) {
  marks.set({moved, false, true});
  EXPECT_FALSE(marks.isCurrent());
  EXPECT_EQ(marks.tellsOfChanges(), "A moment ago:\n▼ saw/operator: stop 3 m → 4 m");
  EXPECT_EQ(stateIn(marks), StationState::BeingComputed);
  marks.set({walkOf(5), false, true});  // of where it was meanwhile
  EXPECT_EQ(marks.tellsOfChanges(), "A moment ago:\n▼ saw/operator: stop 3 m → 5 m");
  marks.set({walkOf(6), true, true});
  EXPECT_EQ(marks.tellsOfChanges(), "▼ saw/operator: stop 3 m → 6 m");
}

TEST_F(AuditMarksOfADrag, TellNothingWhenItIsOver) {
  marks.set({moved, false, false});
  EXPECT_EQ(marks.tellsOfChanges(), "");
  marks.set({moved, true, false});
  EXPECT_EQ(marks.tellsOfChanges(), "");
  marks.set({walkOf(3), true, true});
  EXPECT_EQ(marks.tellsOfChanges(), "▲ saw/operator: stop 4 m → 3 m");
}

TEST_F(AuditMarksOfADrag, CompareWithNothingOfAnotherWorkshop) {
  marks.set({nullptr, false, false});
  marks.set({walkOf(5), true, true});
  EXPECT_EQ(marks.tellsOfChanges(), "");
}

TEST_F(AuditMarksOfADrag, CompareWithNothingOfALayoutBeforeTheEdit) {
  marks.set({walkOf(3), false, false});  // put down, or typed, and not audited yet
  marks.set({walkOf(5), true, true});    // dragged on before that
  EXPECT_EQ(marks.tellsOfChanges(), "");
}

// What is supposed is measured by the layout as it is, also while it is dragged.
TEST(AuditMarks, TellWhatASuppositionChangesWhileItIsDragged) {
  const auto as_it_is = walkOf(3), supposed = walkOf(4);
  AuditMarks marks;
  marks.set({supposed, true, false, as_it_is});
  const auto drag = [&](const auto& report, bool is_current, const auto& before) {
    marks.set({report, is_current, false, before, nullptr, true});
    return marks.tellsOfChanges();
  };
  const std::shared_ptr<const audit::Report> none;
  EXPECT_EQ(drag(supposed, false, none), "A moment ago:\n▼ saw/operator: stop 3 m → 4 m");
  EXPECT_EQ(drag(walkOf(5), false, as_it_is), "A moment ago:\n▼ saw/operator: stop 3 m → 5 m");
  EXPECT_EQ(drag(walkOf(6), true, as_it_is), "▼ saw/operator: stop 3 m → 6 m");
  marks.set({walkOf(6), false, false});
  EXPECT_EQ(marks.tellsOfChanges(), "") << "put down";
}

audit::StationReport station(const std::string& id, double stop_m, audit::Verdict verdict) {
  audit::StationReport s;
  s.id = s.name = id;
  s.stop.status = audit::Status::Walk;
  s.stop.walk_m = stop_m;
  s.verdict = verdict;
  return s;
}

// Only so many are told, and what is left out must not be what matters.
TEST(AuditMarks, TellTheGravestChangeFirstWhereverItStandsInTheFile) {
  audit::Report before, after;
  for (int i = 0; i < 7; ++i) {
    before.stations.push_back(station("saw " + std::to_string(i), 3, audit::Verdict::Meets));
    after.stations.push_back(station("saw " + std::to_string(i), 2.8, audit::Verdict::Meets));
  }
  after.stations.replace(6, station("saw 6", 3, audit::Verdict::Fails));
  AuditMarks marks;
  marks.set({std::make_shared<const audit::Report>(before), true, false});
  marks.set({std::make_shared<const audit::Report>(after), true, true});
  EXPECT_TRUE(marks.tellsOfChanges().startsWith("▼ saw 6: now fails\n"))
      << marks.tellsOfChanges().toStdString();
  EXPECT_TRUE(marks.tellsOfChanges().endsWith("and 2 more"));
  EXPECT_EQ(marks.tellsOfChanges(1), "▼ saw 6: now fails\nand 6 more");
}

// However small the window is.
TEST(AuditMarks, AreToldInABoxThatLeavesMostOfThePlanInSight) {
  edits::EditedLayout edited;
  edits::Selection selection;
  PlanView view{edited, selection, bundledCatalogue()};
  audit::Report before, after;
  for (int i = 0; i < 7; ++i) {
    const std::string id = "Saw of the second hall on the left, operator " + std::to_string(i);
    before.stations.push_back(station(id, 3, audit::Verdict::Meets));
    after.stations.push_back(station(id, 13.8, audit::Verdict::Fails));
  }
  view.setReport(std::make_shared<const audit::Report>(after), true,
                 std::make_shared<const audit::Report>(before));
  const auto linesAt = [&](QSize size) {
    view.resize(size);
    const QString text = view.tellsOfChanges();
    const QRectF inside = tagRoom(view.rect());
    const QSizeF box = tagSize(text, view.font(), inside);
    EXPECT_LE(box.width() * box.height(), inside.width() * inside.height() / 4) << size.width();
    return text.split('\n');
  };
  EXPECT_EQ(linesAt({1200, 900}).size(), 6);
  const QStringList few = linesAt({420, 320});
  EXPECT_LT(few.size(), 4);
  EXPECT_TRUE(few.first().startsWith("▼ Saw of the second hall on the left, operator 0"));
  EXPECT_EQ(few.last(), QString("and %1 more").arg(7 - (few.size() - 1)));
}

TEST(AuditMarks, TellOfWhatIsNoStationAndFailsByADrag) {
  audit::Finding blocked;
  blocked.rule = "blocked-device";
  blocked.subject = "cut-off";
  audit::Finding short_of_it = blocked;
  short_of_it.subject = "lathe";
  audit::Report before, after;
  before.stations = after.stations = {station("saw", 3, audit::Verdict::Meets)};
  before.findings = {short_of_it};
  after.findings = {blocked, short_of_it};
  AuditMarks marks;
  layout::Layout layout;
  layout.devices.emplace_back().id = "cut-off";
  marks.set({std::make_shared<const audit::Report>(before), true, false}, layout);
  marks.set({std::make_shared<const audit::Report>(after), true, true}, layout);
  EXPECT_EQ(marks.tellsOfChanges(), "▼ cut-off: now fails: nobody can walk to it");
}

}  // namespace
}  // namespace stopwalk::plan
