// A finding that somebody looks at is seen on the plan with all that was measured for it.
#include <QImage>
#include <QTreeWidgetItemIterator>
#include <algorithm>
#include <set>

#include "app/panels/findings/finding_list.h"
#include "app/panels/suppose/suppose_panel.h"
#include "app/plan/theme.h"
#include "tests/app/window/auditing.h"

namespace stopwalk::window {
namespace {

// Limits by which more of the sample is found.
const QByteArray kHouseRules =
    "house_rules:\n"
    "  - {rule: phone-too-far, limit: 12, reason: test}\n"
    "  - {rule: stop-too-far, limit: 3, reason: test}\n"
    "  - {rule: cut-off-too-far, limit: 5, reason: test}\n"
    "  - {rule: standing-conflict, limit: 1.2, reason: test}\n"
    "\nsite:\n";

class LooksAtFindings : public InTheAuditPlace {
 protected:
  LooksAtFindings() {
    QFile file(path);
    EXPECT_TRUE(file.open(QFile::ReadOnly));
    QByteArray text = file.readAll();
    EXPECT_TRUE(text.contains("\nsite:\n"));
    QFile strict(pathOf("strict.layout.yaml"));
    EXPECT_TRUE(strict.open(QFile::WriteOnly));
    strict.write(text.replace("\nsite:\n", "\n" + kHouseRules));
    strict.close();
    window->openPath(strict.fileName());
    window->goToPlace(WorkPlace::Audit);
    EXPECT_TRUE(settled());
    tree()->setFocus();
  }
  panels::FindingList& findings() { return window->auditPlace().findings(); }
  QTreeWidget* tree() { return findings().tree(); }
  const audit::Finding* lookAt(const std::string& rule, const std::string& subject = {}) {
    for (int g = 0; g < tree()->topLevelItemCount(); ++g)
      for (int i = 0; i < tree()->topLevelItem(g)->childCount(); ++i) {
        tree()->setCurrentItem(tree()->topLevelItem(g)->child(i));
        const audit::Finding* finding = findings().current();
        if (finding->rule == rule && (subject.empty() || finding->subject == subject)) return finding;
      }
    ADD_FAILURE() << "no finding of " << rule;
    return nullptr;
  }
  // Pixels in the colour of what was measured.
  int painted() {
    const QImage image = plan().grab().toImage();
    const QRgb measured = plan::Theme::of(plan().palette()).measured.rgb();
    int count = 0;
    for (int y = 0; y < image.height(); ++y)
      for (int x = 0; x < image.width(); ++x) count += image.pixel(x, y) == measured;
    return count;
  }
  bool isInSight(const audit::MeasuredLine& line) {
    const QRectF seen(plan().rect());
    return std::ranges::all_of(
        line.line_m, [&](geometry::Point p) { return seen.contains(plan().transform().toPixels(1000 * p)); });
  }
};

TEST_F(LooksAtFindings, AllThatWasMeasuredIsPaintedAndInSight) {
  std::set<std::string> seen;
  for (int g = 0; g < tree()->topLevelItemCount(); ++g)
    for (int i = 0; i < tree()->topLevelItem(g)->childCount(); ++i) {
      plan().zoomBy(40);  // so that little is in sight
      tree()->setCurrentItem(tree()->topLevelItem(g)->child(i));
      const audit::Finding finding = *findings().current();
      for (const audit::MeasuredLine& line : finding.lines) EXPECT_TRUE(isInSight(line)) << finding.text;
      if (!seen.insert(finding.rule).second) continue;  // one of each is enough to look at
      EXPECT_EQ(painted() > 0, !finding.lines.empty()) << finding.text;
    }
  for (const char* rule : {"phone-too-far", "cut-off-too-far", "exit-width", "helper-too-slow", "look-alike",
                           "cut-off-at-exit", "standing-conflict", "blocked-device", "narrow-passage",
                           "tape-disagrees", "phone-after-hours", "stop-out-of-reach"})
    EXPECT_TRUE(seen.contains(rule)) << rule;
}

TEST_F(LooksAtFindings, NothingMeasuredIsPaintedWhereNobodyLooksAtFindings) {
  ASSERT_TRUE(lookAt("phone-too-far"));
  EXPECT_GT(painted(), 0);
  window->goToPlace(WorkPlace::Draw);
  EXPECT_TRUE(settled());
  EXPECT_EQ(painted(), 0);
  window->goToPlace(WorkPlace::Audit);
  EXPECT_TRUE(settled());
  EXPECT_GT(painted(), 0) << "the finding is still looked at";
  tree()->setCurrentItem(tree()->topLevelItem(0));
  EXPECT_EQ(painted(), 0) << "a heading is no finding";
}

TEST_F(LooksAtFindings, PickingSomethingElseEndsItAndAClickOnItsRowBringsItBack) {
  const audit::Finding* finding = lookAt("phone-too-far");
  ASSERT_TRUE(finding);
  const std::string subject = finding->subject;
  EXPECT_EQ(window->selection().ids(), std::vector{subject});
  EXPECT_GT(painted(), 0);
  window->selection().set(subject.substr(0, subject.find('/')));
  EXPECT_GT(painted(), 0) << "its machine is no other thing";
  plan().setFocus();
  window->selection().set(layout().phones.front().id);
  EXPECT_EQ(painted(), 0);
  EXPECT_EQ(findings().current(), nullptr);
  window->auditPlace().findings().search()->setText("to");  // listed anew
  window->auditPlace().findings().search()->clear();
  EXPECT_EQ(painted(), 0) << "it comes back only when somebody comes to it";
  plan().zoomBy(40);
  QTreeWidgetItemIterator row(tree());
  while (*row && ((*row)->data(0, Qt::UserRole + 1).toString() != "phone-too-far" ||
                  (*row)->data(0, Qt::UserRole + 2).toString().toStdString() != subject))
    ++row;
  ASSERT_TRUE(*row);
  tree()->scrollToItem(*row);
  QTest::mouseClick(tree()->viewport(), Qt::LeftButton, {}, tree()->visualItemRect(*row).center());
  EXPECT_EQ(window->selection().ids(), std::vector{subject});
  EXPECT_GT(painted(), 0);
  for (const audit::MeasuredLine& line : findings().current()->lines) EXPECT_TRUE(isInSight(line));
}

TEST_F(LooksAtFindings, AfterAMoveItIsThatOfTheLayoutShown) {
  const audit::Finding* finding = lookAt("phone-too-far");
  ASSERT_TRUE(finding);
  const audit::MeasuredLine was = finding->lines.at(0);
  const std::string subject = finding->subject, machine = subject.substr(0, subject.find('/'));
  plan().setFocus();
  window->selection().set(machine);
  key(Qt::Key_Right, Qt::ShiftModifier);
  EXPECT_EQ(painted(), 0) << "an old line is not shown while it is computed anew";
  ASSERT_TRUE(QTest::qWaitFor(
      [&] {
        const audit::Finding* now = findings().current();
        return now && now->subject == subject && !now->lines.empty() && now->lines[0] != was;
      },
      10000));
  EXPECT_GT(painted(), 0);
}

TEST_F(LooksAtFindings, WhatIfTheFindingIsGoneSoIsItsLine) {
  const audit::Finding* finding = lookAt("look-alike", "table-saw/helper");
  ASSERT_TRUE(finding);
  EXPECT_GT(painted(), 0);
  planning::Suppositions suppositions;
  suppositions.out_of_order = {"table-saw/paddle"};
  for (const auto& device : layout().devices) suppositions.out_of_order.push_back(device.id);
  for (const auto& machine : layout().machines)
    for (const auto& device : machine.devices)
      suppositions.out_of_order.push_back(machine.id + "/" + device.id);
  window->suppose(suppositions);
  EXPECT_EQ(painted(), 0);
  ASSERT_TRUE(QTest::qWaitFor([&] { return !findings().current(); }, 10000));
  EXPECT_EQ(painted(), 0);
}

}  // namespace
}  // namespace stopwalk::window
