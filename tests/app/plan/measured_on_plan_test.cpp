// What a finding measured is drawn while somebody looks at it, and never what it measured before.
#include <gtest/gtest.h>

#include <QImage>

#include "app/plan/audit_marks.h"
#include "app/plan/routes.h"

namespace stopwalk::plan {
namespace {

using Kind = audit::MeasuredLine::Kind;
using Path = std::vector<geometry::Point>;

audit::Finding findingOf(const std::string& rule, const std::string& which, Kind kind, Path line_m,
                         std::optional<double> length_m) {
  audit::Finding finding;
  finding.rule = rule;
  finding.subject = "saw/operator";
  finding.which = which;
  finding.lines = {{kind, std::move(line_m), length_m}};
  return finding;
}

std::shared_ptr<const audit::Report> reportWith(std::vector<audit::Finding> findings, Path phone_m = {}) {
  audit::Report report;
  audit::StationReport station;
  station.id = station.name = "saw/operator";
  if (!phone_m.empty()) station.phone.walk_m = 4;
  station.phone.path_m = std::move(phone_m);
  report.stations.push_back(station);
  report.findings = std::move(findings);
  return std::make_shared<const audit::Report>(report);
}

class MeasuredOnPlanTest : public testing::Test {
 protected:
  MeasuredOnPlanTest() { view.fit({{0, 0}, {10000, 8000}}, QSizeF(500, 400), 20); }

  void lookAtFirst(std::shared_ptr<const audit::Report> report) {
    marks.set({report, true});
    marks.lookAt(&report->findings.front());
  }
  std::size_t lengths() const { return marks.routes(view, selection).lengthBoxes().size(); }
  QImage painted() const {
    QImage image(500, 400, QImage::Format_RGB32);
    image.fill(theme.floor);
    QPainter painter(&image);
    marks.routes(view, selection).paint(painter, theme);
    return image;
  }
  // Whether it is painted in the colour of what is measured, there.
  bool isBoldAt(geometry::Point m) const {
    return painted().pixelColor(view.toPixels(1000 * m).toPoint()) == theme.measured;
  }

  const Path far = {{1, 1}, {5, 1}};
  const Theme theme = Theme::light();
  ViewTransform view;
  edits::Selection selection;
  AuditMarks marks;
};

TEST_F(MeasuredOnPlanTest, NothingIsDrawnUnlessSomebodyLooks) {
  const auto report = reportWith({findingOf("phone-too-far", "", Kind::Route, far, 4)});
  marks.set({report, true});
  EXPECT_EQ(lengths(), 0u);
  EXPECT_FALSE(isBoldAt({2, 1}));
  marks.lookAt(&report->findings.front());
  EXPECT_EQ(lengths(), 1u);
  EXPECT_TRUE(isBoldAt({2, 1}));
  marks.lookAt(nullptr);
  EXPECT_EQ(lengths(), 0u);
}

TEST_F(MeasuredOnPlanTest, EachKindIsDrawn) {
  for (const Kind kind : {Kind::Route, Kind::Straight, Kind::Width}) {
    lookAtFirst(reportWith({findingOf("phone-too-far", "", kind, far, 4)}));
    EXPECT_TRUE(isBoldAt({2, 1}));
    EXPECT_EQ(lengths(), 1u);
  }
  lookAtFirst(reportWith({findingOf("unreachable", "", Kind::Place, {{3, 3}}, std::nullopt)}));
  EXPECT_EQ(lengths(), 0u);
  EXPECT_FALSE(isBoldAt({3, 3})) << "a ring hides nothing";
  const QPointF on_ring = view.toPixels(geometry::Point{3000, 3000}) + QPointF(13, 0);
  EXPECT_EQ(painted().pixelColor(on_ring.toPoint()), theme.measured);
  lookAtFirst(reportWith({findingOf("blocked-device", "", Kind::Place, far, std::nullopt)}));
  EXPECT_TRUE(isBoldAt({2, 1}));
}

TEST_F(MeasuredOnPlanTest, WhatIsNotOfTheLayoutShownIsNotDrawn) {
  const auto report = reportWith({findingOf("phone-too-far", "", Kind::Route, far, 4)});
  lookAtFirst(report);
  marks.set({report, false});
  EXPECT_EQ(lengths(), 0u);
  EXPECT_FALSE(isBoldAt({2, 1}));
}

TEST_F(MeasuredOnPlanTest, ItFollowsAndGoesWithTheFinding) {
  lookAtFirst(reportWith({findingOf("phone-too-far", "", Kind::Route, far, 4)}));
  marks.set({reportWith({findingOf("phone-too-far", "", Kind::Route, {{1, 5}, {7, 5}}, 6)}), true, true});
  EXPECT_FALSE(isBoldAt({2, 1}));
  EXPECT_TRUE(isBoldAt({2, 5}));
  marks.set({reportWith({findingOf("stop-too-far", "", Kind::Route, {{1, 5}, {7, 5}}, 6)}), true, true});
  EXPECT_FALSE(isBoldAt({2, 5}));
  EXPECT_EQ(lengths(), 0u);
}

TEST_F(MeasuredOnPlanTest, OfSeveralAboutOneThingItIsTheOneLookedAt) {
  const auto phone = findingOf("narrow-passage", "phone", Kind::Route, far, 4);
  const auto stop = findingOf("narrow-passage", "saw/stop", Kind::Route, {{1, 5}, {7, 5}}, 6);
  const auto both = reportWith({phone, stop});
  marks.set({both, true});
  marks.lookAt(&both->findings[1]);
  EXPECT_TRUE(isBoldAt({2, 5}));
  marks.set({reportWith({phone}), true});
  EXPECT_EQ(lengths(), 0u) << "the other is not the one that somebody looks at";
}

TEST_F(MeasuredOnPlanTest, NoWalkIsDrawnTwice) {
  selection.set("saw/operator");
  const auto report = reportWith({findingOf("phone-too-far", "", Kind::Route, far, 4)}, far);
  marks.set({report, true});
  EXPECT_EQ(lengths(), 1u);
  marks.lookAt(&report->findings.front());
  EXPECT_EQ(lengths(), 1u);
  EXPECT_TRUE(isBoldAt({2, 1}));
}

TEST_F(MeasuredOnPlanTest, AllOfItIsBroughtIntoSightWithItsSubject) {
  lookAtFirst(reportWith({findingOf("phone-too-far", "", Kind::Route, {{1, 1}, {30, 2}}, 30)}));
  const geometry::Box box = marks.withWalksOf("saw/operator", geometry::boxOf(geometry::Point{1000, 1000}));
  EXPECT_EQ(box.high.x, 30000);
  EXPECT_EQ(box.high.y, 2000);
  EXPECT_EQ(marks.withWalksOf("drill", geometry::boxOf(geometry::Point{0, 0})).high.x, 0);
}

}  // namespace
}  // namespace stopwalk::plan
