// Somebody looks at a finding on the plan: all that was measured for it comes into sight, and is painted.
#include <QImage>
#include <algorithm>

#include "app/edits/edited_layout.h"
#include "app/plan/plan_view.h"
#include "tests/core/audit/rule_cases.h"

namespace stopwalk::plan {
namespace {

class LookedAt : public testing::Test {
 protected:
  LookedAt() {
    view.resize(900, 640);
    view.show();
  }
  void show(const layout::Layout& layout, const audit::Profile& profile = audit::defaultProfile(),
            audit::Failed failed = {}, floor::Hours hours = floor::Hours::Open) {
    edited.reset(layout);
    report = std::make_shared<const audit::Report>(
        audit::audit(layout, bundledCatalogue().kinds, profile, hours, failed));
    const auto narrow = std::make_shared<const floor::NarrowPlaces>(floor::buildPlan(layout, hours));
    view.setReport(report, true, nullptr, narrow);
  }
  void lookAt(const audit::Finding& finding) {
    view.fit();
    view.zoomBy(30);  // so that little is in sight
    view.lookAt(&finding);
    selection.set(finding.subject);
    view.goTo(finding.subject);
  }
  // Pixels in the colour of what was measured.
  int painted() {
    const QImage image = view.grab().toImage();
    const QRgb measured = Theme::of(view.palette()).measured.rgb();
    int count = 0;
    for (int y = 0; y < image.height(); ++y)
      for (int x = 0; x < image.width(); ++x) count += image.pixel(x, y) == measured;
    return count;
  }
  bool isInSight(const audit::MeasuredLine& line) {
    const QRectF seen = QRectF(view.rect()).adjusted(20, 20, -20, -20);
    return std::ranges::all_of(
        line.line_m, [&](geometry::Point p) { return seen.contains(view.transform().toPixels(1000 * p)); });
  }

  edits::EditedLayout edited;
  edits::Selection selection;
  PlanView view{edited, selection, bundledCatalogue()};
  std::shared_ptr<const audit::Report> report;
};

TEST_F(LookedAt, OfEachRuleAllThatWasMeasuredIsInSightAndPainted) {
  int seen = 0;
  for (const audit::RuleCase& c : audit::kRuleCases) {
    audit::Profile profile = audit::defaultProfile();
    for (const std::string& limit : c.limits) EXPECT_EQ(applyLimit(profile, limit), "");
    show(audit::layoutOf(audit::shopWith(c.edits)), profile, c.failed);
    for (const audit::Finding& finding : report->findings) {
      if (finding.rule != c.rule) continue;
      lookAt(finding);
      for (const audit::MeasuredLine& line : finding.lines) EXPECT_TRUE(isInSight(line)) << finding.text;
      EXPECT_EQ(painted() > 0, !finding.lines.empty()) << finding.text;
      seen += !finding.lines.empty();
    }
  }
  EXPECT_GT(seen, 15);
  view.lookAt(nullptr);
  EXPECT_EQ(painted(), 0);
}

// Across the room: farther than the stop's walk, which alone was framed.
TEST_F(LookedAt, AFarPhoneIsInSight) {
  audit::Profile profile = audit::defaultProfile();
  EXPECT_EQ(applyLimit(profile, "phone-too-far=3"), "");
  show(audit::layoutOf(audit::shopWith({{"[[0, 0], [8000, 0], [8000, 6000], [0, 6000]]",
                                         "[[0, 0], [60000, 0], [60000, 6000], [0, 6000]]"},
                                        {"at: [0, 3000], faces: 0", "at: [60000, 3000], faces: 180"}})),
       profile);
  const audit::Finding& finding = audit::findingOf(*report, "phone-too-far");
  ASSERT_EQ(finding.lines.size(), 1u);
  EXPECT_GT(*finding.lines[0].length_m, 50);
  lookAt(finding);
  EXPECT_TRUE(isInSight(finding.lines[0]));
  EXPECT_GT(painted(), 0);
}

}  // namespace
}  // namespace stopwalk::plan
