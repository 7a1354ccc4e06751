#include <gtest/gtest.h>

#include <QApplication>
#include <QCheckBox>
#include <QClipboard>
#include <QRegularExpression>
#include <QScrollBar>
#include <QSignalSpy>

#include "app/panels/findings/finding_list.h"
#include "app/panels/findings/why.h"
#include "app/panels/problem.h"
#include "core/audit/audit.h"
#include "core/audit/rule.h"
#include "core/audit/wording.h"
#include "tests/app/panels/person.h"
#include "tests/app/panels/workshop.h"
#include "tests/support/random_layout.h"

namespace stopwalk::panels {
namespace {

using audit::Severity;

std::shared_ptr<const audit::Report> reportOf(const layout::Layout& layout) {
  return std::make_shared<const audit::Report>(
      audit::audit(layout, plan::bundledCatalogue().kinds, audit::defaultProfile(), floor::Hours::Open));
}

struct List {
  explicit List(const layout::Layout& l)
      : layout(std::make_shared<const layout::Layout>(l)), report(reportOf(l)) {
    list.setReport(report, layout);
  }
  int shown() const {
    int n = 0;
    for (int g = 0; g < list.tree()->topLevelItemCount(); ++g)
      n += list.tree()->topLevelItem(g)->childCount();
    return n;
  }
  std::shared_ptr<const layout::Layout> layout;
  std::shared_ptr<const audit::Report> report;
  FindingList list;
};

TEST(FindingGroups, HoldEachFindingOnceHoweverTheyAreGrouped) {
  for (std::uint64_t seed = 1; seed <= 20; ++seed) {
    const layout::Layout layout = support::randomLayout(seed);
    const auto report = reportOf(layout);
    for (const GroupBy by : {GroupBy::Room, GroupBy::Machine, GroupBy::Rule, GroupBy::Nothing}) {
      std::vector<int> seen(report->findings.size());
      for (const FindingGroup& group : groupsOf(*report, layout, {by, true, true, true, {}})) {
        EXPECT_FALSE(group.title.isEmpty());
        for (const std::size_t i : group.findings) ++seen[i];
        EXPECT_TRUE(std::ranges::is_sorted(group.findings));
      }
      EXPECT_EQ(std::ranges::count(seen, 1), std::ssize(seen)) << seed;
    }
  }
}

// The whole shop in one list; or in groups, of which none stands before one that has worse.
TEST(FindingGroups, AreTheWorstFirst) {
  for (std::uint64_t seed = 1; seed <= 20; ++seed) {
    const layout::Layout layout = support::randomLayout(seed);
    const auto report = reportOf(layout);
    const auto severityOf = [&](std::size_t i) { return report->findings[i].severity; };
    const auto whole = groupsOf(*report, layout, {GroupBy::Nothing, true, true, true, {}});
    if (report->findings.empty()) continue;
    ASSERT_EQ(whole.size(), 1u);
    EXPECT_EQ(whole[0].findings.size(), report->findings.size());
    EXPECT_TRUE(std::ranges::is_sorted(whole[0].findings, {}, severityOf));
    for (const GroupBy by : {GroupBy::Room, GroupBy::Machine, GroupBy::Rule}) {
      const auto groups = groupsOf(*report, layout, {by, true, true, true, {}});
      EXPECT_TRUE(std::ranges::is_sorted(
          groups, {}, [&](const FindingGroup& group) { return severityOf(group.findings.front()); }));
    }
  }
}

TEST(FindingGroups, AreInTheOrderThatIsChosen) {
  const auto found = [](const std::string& subject, std::optional<double> measured,
                        std::optional<double> limit) {
    audit::Finding finding;
    finding.rule = "stop-too-far";
    finding.subject = subject;
    finding.measured = measured;
    finding.limit = limit;
    return finding;
  };
  audit::Report report;
  report.findings = {found("saw-10/operator", 6.0, 5.0), found("saw-2/operator", {}, {}),
                     found("lathe/operator", 15.0, 5.0), found("door", 0.4, 0.8), found("count", 1.0, 0.0)};
  const auto ordered = [&](OrderBy order) {
    FindingFilter filter;
    filter.group_by = GroupBy::Rule;
    filter.order_by = order;
    return groupsOf(report, smallShop(), filter).at(0).findings;
  };
  using Order = std::vector<std::size_t>;
  EXPECT_EQ(ordered(OrderBy::Gravity), (Order{0, 1, 2, 3, 4}));
  EXPECT_EQ(ordered(OrderBy::PastLimit), (Order{4, 2, 3, 0, 1})) << "what has no number comes last";
  EXPECT_EQ(ordered(OrderBy::Name), (Order{4, 3, 2, 1, 0})) << "2 before 10";
}

// A stop that is near enough, but behind something, is past no limit.
TEST(FindingGroups, AStopThatIsPreventedFromBeingAtHandComesAfterOneThatIsTooFar) {
  audit::Report report;
  for (const double straight_m : {0.05, 4.0, 0.3, 0.7}) {
    audit::Finding finding;
    finding.rule = "stop-out-of-reach";
    finding.subject = "saw/operator";
    finding.measured = straight_m;
    if (straight_m > 0.65) finding.limit = 0.65;
    report.findings.push_back(finding);
  }
  FindingFilter filter;
  filter.group_by = GroupBy::Nothing;
  filter.order_by = OrderBy::PastLimit;
  EXPECT_EQ(groupsOf(report, smallShop(), filter).at(0).findings, (std::vector<std::size_t>{1, 3, 0, 2}));
}

TEST(FindingList, WhatIsSearchedForStandsAtTheTop) {
  layout::Layout many = smallShop();
  for (int i = 0; i < 40; ++i) {
    layout::Machine copy = many.machines[0];
    copy.id = "copy-" + std::to_string(i);
    copy.devices.clear();
    many.machines.push_back(copy);
  }
  List l(many);
  l.list.resize(300, 500);
  l.list.show();
  QTest::qWait(50);
  l.list.tree()->scrollToBottom();
  ASSERT_GT(l.list.tree()->verticalScrollBar()->value(), 0);
  l.list.search()->setText("copy");
  QTest::qWait(50);
  EXPECT_EQ(l.list.tree()->verticalScrollBar()->value(), 0);
}

TEST(FindingList, IsListedInTheOrderThatIsChosenAndExportedOnlyOnceAudited) {
  List l(smallShop());
  const QString gravest = l.list.asText();
  l.list.orderBy()->setCurrentIndex(2);
  EXPECT_NE(l.list.asText(), gravest);
  l.list.orderBy()->setCurrentIndex(0);
  EXPECT_EQ(l.list.asText(), gravest);
  EXPECT_TRUE(l.list.exportVerb().isEnabled());
  l.list.setReport(nullptr, nullptr);
  EXPECT_FALSE(l.list.exportVerb().isEnabled());
  EXPECT_EQ(l.list.exportVerb().toolTip(), "Not audited yet.");
}

TEST(FindingGroups, OfARoomAreOfThatRoom) {
  const layout::Layout layout = smallShop();
  const auto report = reportOf(layout);
  for (const FindingGroup& group : groupsOf(*report, layout, {})) {
    const std::string first = report->findings[group.findings.front()].room;
    for (const std::size_t i : group.findings) EXPECT_EQ(report->findings[i].room, first);
  }
}

TEST(FindingGroups, NewIsWhatWasNotFoundBefore) {
  const layout::Layout layout = smallShop();
  const auto report = reportOf(layout);
  ASSERT_GT(report->findings.size(), 1u);
  audit::Report before = *report;
  before.findings.erase(0);
  const auto is_new = newSince(*report, before);
  EXPECT_TRUE(is_new.front());
  EXPECT_EQ(std::ranges::count(is_new, true), 1);
}

audit::Report foundOf(std::vector<std::tuple<std::string, std::optional<double>, std::string>> findings) {
  audit::Report report;
  for (auto& [rule, measured, text] : findings) {
    audit::Finding f;
    f.rule = rule;
    f.subject = "saw-1/operator";
    f.measured = measured;
    f.text = f.which = text;
    report.findings.push_back(f);
  }
  return report;
}

// A rule may find several things of one station: the stop's way and the phone's.
TEST(FindingGroups, NewIsASecondFindingOfTheSameRuleAboutTheSameThing) {
  using Bools = std::vector<bool>;
  const std::tuple stop{"unreachable", std::nullopt, "stop"};
  const std::tuple phone{"unreachable", std::nullopt, "phone"};
  EXPECT_EQ(newSince(foundOf({stop, phone}), foundOf({stop})), (Bools{false, true}));
  EXPECT_EQ(newSince(foundOf({stop, phone}), foundOf({phone})), (Bools{true, false}));
  EXPECT_EQ(newSince(foundOf({phone}), foundOf({stop})), Bools{true});
  const std::tuple narrow{"narrow-passage", 0.6, "stop by 0.6 m"};
  const std::tuple narrower{"narrow-passage", 0.5, "stop by 0.5 m"};
  const std::tuple phone_too{"narrow-passage", 0.6, "phone by 0.6 m"};
  EXPECT_EQ(newSince(foundOf({narrower}), foundOf({narrow})), Bools{false}) << "the same, by another number";
  EXPECT_EQ(newSince(foundOf({narrow, phone_too}), foundOf({narrow})), (Bools{false, true}));
  EXPECT_EQ(newSince(foundOf({narrower, phone_too}), foundOf({narrow})), (Bools{false, true}));
}

// What was too far and is now not to be had at all is the same finding, grown worse.
TEST(FindingGroups, WhatGrowsWorseIsNeitherNewNorGone) {
  using Bools = std::vector<bool>;
  const auto far = foundOf({{"phone-too-far", 31.0, "31 m"}}),
             none = foundOf({{"phone-too-far", {}, "no phone"}});
  EXPECT_EQ(newSince(none, far), Bools{false});
  EXPECT_EQ(goneBy({}, smallShop(), far, none), 0u);
  EXPECT_EQ(otherwiseSince(none, far), 1u);
  EXPECT_EQ(otherwiseSince(far, far), 0u);
  const auto bar = foundOf({{"hidden-stop", {}, "bar"}}), cord = foundOf({{"hidden-stop", {}, "cord"}});
  EXPECT_EQ(newSince(cord, bar), Bools{false}) << "there is one of a station";
  EXPECT_EQ(otherwiseSince(cord, bar), 1u);
}

// It is out of order, and neither gone nor mended: what was found of itself is only not looked at.
TEST(FindingGroups, WhatIsOutOfOrderTakesNoFindingsAwayWithIt) {
  layout::Layout layout = smallShop();
  layout::TapeCheck tape;
  tape.id = "tape-1";
  tape.from = "saw-1/operator";
  tape.to = "saw-1/paddle";
  layout.tape_checks = {tape};
  audit::Report before = foundOf({{"actuator-height", 1.9, "too high"},
                                  {"tape-disagrees", 2.0, "by 2 m"},
                                  {"look-alike", std::nullopt, "the paddle"}});
  before.findings.own(0).subject = "saw-1/paddle";
  before.findings.own(1).subject = "tape-1";
  planning::Suppositions suppositions;
  EXPECT_EQ(goneBy(suppositions, layout, before, {}), 3u);
  suppositions.out_of_order = {"saw-1/paddle"};
  EXPECT_EQ(goneBy(suppositions, layout, before, {}), 1u);
}

TEST(FindingList, FiltersBySeverityAndWords) {
  List all(smallShop());
  EXPECT_EQ(all.shown(), static_cast<int>(all.report->findings.size()));
  for (const Severity severity : {Severity::Fail, Severity::Warn, Severity::Note}) {
    all.list.shows(severity)->setChecked(false);
    EXPECT_EQ(all.list.shows(severity)->text(), QString::number(all.report->count(severity)));
  }
  EXPECT_EQ(all.shown(), 0);
  EXPECT_EQ(all.list.summary(), "No finding is like that.");
  for (const Severity severity : {Severity::Fail, Severity::Warn, Severity::Note})
    all.list.shows(severity)->setChecked(true);
  all.list.search()->setText("no such words");
  EXPECT_EQ(all.shown(), 0);
  all.list.search()->setText("saw-1");
  EXPECT_GT(all.shown(), 0);
}

TEST(FindingList, SaysOfHowManyWhatIsShownIs) {
  List some(smallShop());
  const auto all = std::ssize(some.report->findings);
  EXPECT_EQ(some.list.summary(), QString("%1 findings.").arg(all));
  some.list.search()->setText("saw-1");
  ASSERT_LT(some.shown(), all);
  EXPECT_EQ(some.list.summary(), QString("%1 of %2 findings.").arg(some.shown()).arg(all));
  some.list.search()->clear();
  const QString heading = some.list.tree()->topLevelItem(0)->text(0);
  const int in_group = some.list.tree()->topLevelItem(0)->childCount();
  some.list.search()->setText(QString::fromStdString(some.report->findings.front().rule));
  const auto* group = some.list.tree()->topLevelItem(0);
  ASSERT_LT(group->childCount(), in_group);
  EXPECT_EQ(group->text(0),
            heading.section(": ", 0, 0) + QString(": %1 of %2").arg(group->childCount()).arg(in_group));
}

TEST(FindingList, KeepsLookingAtTheSameOfTwoOfARuleAboutOneThing) {
  List some(smallShop());
  audit::Report report = foundOf({{"unreachable", {}, "stop"}, {"unreachable", {}, "phone"}});
  some.list.setReport(std::make_shared<const audit::Report>(report), some.layout);
  some.list.tree()->setCurrentItem(some.list.tree()->topLevelItem(0)->child(1));
  some.list.groupBy()->setCurrentIndex(2);
  ASSERT_TRUE(some.list.current());
  EXPECT_EQ(some.list.current()->which, "phone");
}

TEST(FindingList, KeepsWhatIsClosedAndThePlaceScrolledToWhenItIsFoundAnew) {
  List some(smallShop());
  some.list.groupBy()->setCurrentIndex(static_cast<int>(GroupBy::Nothing));
  audit::Report many = *some.report;
  while (many.findings.size() < 60) many.findings.push_back(many.findings[0]);
  const auto report = std::make_shared<const audit::Report>(many);
  some.list.setReport(report, some.layout);
  some.list.resize(400, 300);
  bringUp(some.list);
  QTreeWidget* tree = some.list.tree();
  tree->setCurrentItem(tree->topLevelItem(0)->child(0));
  tree->verticalScrollBar()->setValue(20);
  ASSERT_EQ(tree->verticalScrollBar()->value(), 20);
  some.list.setReport(report, some.layout);
  QTest::qWait(20);
  EXPECT_EQ(tree->verticalScrollBar()->value(), 20);

  some.list.groupBy()->setCurrentIndex(static_cast<int>(GroupBy::Rule));
  const int groups = tree->topLevelItemCount();
  ASSERT_GT(groups, 1);
  tree->topLevelItem(0)->setExpanded(false);
  many.findings.push_back(many.findings[0]);  // its group says another number
  some.list.setReport(std::make_shared<const audit::Report>(many), some.layout);
  for (int g = 0; g < groups; ++g) EXPECT_EQ(tree->topLevelItem(g)->isExpanded(), g > 0) << g;
  some.list.search()->setText("saw");
  EXPECT_TRUE(tree->topLevelItem(0)->isExpanded()) << "what is searched for is not hidden";
  some.list.search()->clear();
  EXPECT_FALSE(tree->topLevelItem(0)->isExpanded());
}

TEST(FindingList, ReadsHowManyThereAreAloud) {
  List some(smallShop());
  for (const Severity severity : {Severity::Fail, Severity::Warn, Severity::Note}) {
    const QCheckBox* shows = some.list.shows(severity);
    EXPECT_EQ(shows->accessibleName(), shows->toolTip() + ": " + shows->text());
    EXPECT_FALSE(shows->text().isEmpty());
  }
}

TEST(FindingList, KeepsLookingAtTheSameFinding) {
  List some(smallShop());
  auto* tree = some.list.tree();
  tree->setCurrentItem(tree->topLevelItem(tree->topLevelItemCount() - 1)->child(0));
  ASSERT_TRUE(some.list.current());
  const audit::Finding looked = *some.list.current();
  some.list.groupBy()->setCurrentIndex(2);
  ASSERT_TRUE(some.list.current());
  EXPECT_EQ(some.list.current()->rule, looked.rule);
  EXPECT_EQ(some.list.current()->subject, looked.subject);
}

TEST(FindingList, GoesToThePlanByTheKeyboard) {
  List some(smallShop());
  QSignalSpy gone(&some.list, &FindingList::goTo);
  bringUp(some.list);
  some.list.search()->setFocus();
  QTest::keyClick(some.list.search(), Qt::Key_Down);
  QTest::keyClick(some.list.search(), Qt::Key_Down);
  QTest::keyClick(some.list.search(), Qt::Key_Return);
  ASSERT_EQ(gone.count(), 1);
  EXPECT_FALSE(gone[0][0].toString().isEmpty());
}

TEST(FindingList, SaysWhatIsWellAndWhatIsNotThereYet) {
  FindingList list;
  EXPECT_EQ(list.summary(), "Not audited yet.");
  List nothing{layout::Layout()};
  EXPECT_TRUE(nothing.list.summary().contains("Draw a machine")) << nothing.list.summary().toStdString();
}

TEST(FindingList, IsCopiedAsText) {
  List some(smallShop());
  const QString text = some.list.asText();
  for (const audit::Finding& finding : some.report->findings)
    EXPECT_TRUE(text.contains(QString::fromStdString(finding.text))) << finding.text;
}

void letAllMeet(audit::Report& report) {
  report.findings.clear();
  for (std::size_t i = 0; i < report.stations.size(); ++i) {
    audit::StationReport& s = report.stations.own(i);
    s.verdict = audit::Verdict::Meets;
    s.lacks_stop = s.lacks_phone = false;
  }
}

TEST(FindingList, CopiedSaysOfWhatByWhatAndHowMuchOfItIsThere) {
  List some(smallShop());
  EXPECT_TRUE(some.list.asText().startsWith("Invented shop, audited by the profile "))
      << some.list.asText().toStdString();
  EXPECT_TRUE(some.list.asText().contains("certifies nothing"));
  EXPECT_FALSE(some.list.asText().contains("are not shown"));
  some.list.shows(Severity::Note)->setChecked(false);
  const auto all = some.report->findings.size();
  EXPECT_TRUE(some.list.asText().contains(
      QString("%1 of %2 findings; the others are not shown.").arg(some.shown()).arg(all)))
      << some.list.asText().toStdString();
  audit::Report well = *some.report;
  letAllMeet(well);
  some.list.setReport(std::make_shared<const audit::Report>(well), some.layout);
  EXPECT_TRUE(some.list.asText().contains("Every rule is met"));
}

TEST(FindingGroups, OfMachinesThatAreCalledTheSameAreOfOneEach) {
  layout::Layout layout = smallShop();
  layout.machines[1].name = layout.machines[0].name;
  const auto groups = groupsOf(*reportOf(layout), layout, {GroupBy::Machine, true, true, true, {}});
  const auto isThere = [&](const QString& title) {
    return std::ranges::find(groups, title, &FindingGroup::title) != groups.end();
  };
  EXPECT_TRUE(isThere("Table saw 1 (saw-1)"));
  EXPECT_TRUE(isThere("Table saw 1 (saw-2)"));
  EXPECT_FALSE(isThere("Table saw 1"));
}

// Where the shop is drawn it is not as if nobody had meant to accept it.
TEST(Problems, SayWhatIsAcceptedUnclearly) {
  audit::Report report = *reportOf(smallShop());
  report.findings.own(0).unclear = {"the guard is on order", "Ada Example", "2999-12-31"};
  EXPECT_TRUE(problemsOf(report)[0].text.endsWith(
      "Not accepted: what is accepted does not say which of several it means."))
      << problemsOf(report)[0].text.toStdString();
  EXPECT_EQ(problemsOf(report)[1].text.toStdString(), report.findings[1].text);
}

TEST(FindingList, SaysWhatIsAcceptedAndWhatIsNoLonger) {
  List some(smallShop());
  audit::Report report = *some.report;
  ASSERT_GT(report.findings.size(), 1u);
  report.findings.own(0).accepted = {"the guard is on order", "Ada Example", "2999-12-31"};
  report.findings.own(1).accepted = {"the guard is on order", "Grace Example", "2024-01-01"};
  some.list.setReport(std::make_shared<const audit::Report>(report), some.layout);
  EXPECT_TRUE(some.list.asText().contains("Accepted by Ada Example until 2999-12-31."));
  EXPECT_TRUE(some.list.asText().contains("No longer accepted: the last day, 2024-01-01, has passed."));
  EXPECT_EQ(some.list.asText().count(QRegularExpression("accepted|Accepted")), 2);
  Why why;
  why.show(&report.findings[0], report.unit);
  EXPECT_TRUE(why.toPlainText().contains("Accepted: by Ada Example"));
  why.show(&report.findings[1], report.unit);
  EXPECT_TRUE(why.toPlainText().contains(
      "No longer accepted, the last day, 2024-01-01, has passed: by Grace Example"));
}

TEST(FindingList, SaysOfALastDayThatIsNoneWhatWouldBeOne) {
  List some(smallShop());
  audit::Report report = *some.report;
  report.findings.own(0).accepted = {"the guard is on order", "Ada Example", "soon"};
  some.list.setReport(std::make_shared<const audit::Report>(report), some.layout);
  const QString why = "its last day, soon, cannot be read: a day such as 2026-12-31 is expected";
  EXPECT_TRUE(some.list.asText().contains("No longer accepted: " + why + "."))
      << some.list.asText().toStdString();
}

TEST(FindingList, SaysWhatHasGrownWorseThanWasAccepted) {
  List some(smallShop());
  audit::Report report = foundOf({{"stop-too-far", 9.8, "9.8 m to walk"}});
  report.findings.own(0).limit = 5;
  report.findings.own(0).unit = "m";
  report.findings.own(0).accepted = {"the guard is on order", "Ada Example", "2999-12-31", 5.2};
  some.list.setReport(std::make_shared<const audit::Report>(report), some.layout);
  EXPECT_TRUE(some.list.asText().contains("No longer accepted: accepted at 5.2 m, now 9.8 m."))
      << some.list.asText().toStdString();
  Why why;
  why.show(&report.findings[0], report.unit);
  EXPECT_TRUE(why.toPlainText().contains("No longer accepted, accepted at 5.2 m, now 9.8 m: by Ada Example"))
      << why.toPlainText().toStdString();
}

TEST(FindingList, ListsWhatIsAcceptedAndFoundNoMore) {
  layout::Layout layout = smallShop();
  layout.accepted_findings = {
      {"stop-too-far", "saw-1/nobody", "", "the stop is on order", "Ada Example", "2027-12-31", {}}};
  List some(layout);
  QSignalSpy idle(&some.list, &FindingList::lookedIdle);
  auto* group = some.list.tree()->topLevelItem(some.list.tree()->topLevelItemCount() - 1);
  EXPECT_EQ(group->text(0), "Accepted, and found no more: 1");
  ASSERT_EQ(group->childCount(), 1);
  EXPECT_TRUE(some.list.asText().contains("the stop is on order"));
  EXPECT_EQ(some.list.summary(), QString("%1 findings.").arg(some.report->findings.size()))
      << "it is no finding";
  some.list.tree()->setCurrentItem(group->child(0));
  EXPECT_EQ(idle.count(), 1);
  ASSERT_TRUE(some.list.currentIdle());
  EXPECT_FALSE(some.list.current());
  some.list.search()->setText("no such words");
  EXPECT_EQ(some.list.tree()->topLevelItemCount(), 0);
}

TEST(FindingList, SaysOfWhatIsFoundNoMoreWhetherItWouldBeAcceptedAgain) {
  const auto said = [](layout::AcceptedFinding idle) {
    layout::Layout layout = smallShop();
    layout.accepted_findings = {idle};
    List some(layout);
    Why why;
    why.showIdle(idle, layout::LengthUnit::Metre);
    return some.list.asText() + why.toPlainText();
  };
  layout::AcceptedFinding idle{"stop-too-far", "saw-1/nobody", "", "it is on order",
                               "Ada Example",  "2999-12-31",   {}, {}};
  EXPECT_TRUE(said(idle).contains("it is accepted again. Take it back")) << said(idle).toStdString();
  idle.measured = 5.2;
  EXPECT_TRUE(said(idle).contains("it is accepted again as long as it is no worse than 5.2 m."))
      << said(idle).toStdString();
  for (const char* until : {"2024-01-01", "soon"}) {
    idle.until = until;
    EXPECT_EQ(said(idle).count("accepted again"), 0) << until;
    EXPECT_EQ(said(idle).count("no longer accepted, "), 2) << said(idle).toStdString();
    EXPECT_TRUE(said(idle).contains("Should it come back, it is not accepted: ")) << until;
  }
  idle.until = "2999-12-31", idle.rule = "unreachable", idle.measured.reset();
  EXPECT_TRUE(said(idle).contains("it is not said which of several is meant")) << said(idle).toStdString();
}

TEST(FindingList, ThatIsFoundAnewPicksNothing) {
  List some(smallShop());
  QSignalSpy picked(&some.list, &FindingList::picked);
  QSignalSpy looked(&some.list, &FindingList::looked);
  some.list.tree()->setCurrentItem(some.list.tree()->topLevelItem(0)->child(0));
  ASSERT_EQ(picked.count(), 1);
  looked.clear();
  some.list.setReport(some.report, some.layout);
  some.list.search()->setText("saw");
  EXPECT_EQ(picked.count(), 1);
  EXPECT_EQ(looked.count(), 2) << "what is said of it is of now";
}

TEST(Why, SaysRuleLimitBasisAndWhatWouldMendIt) {
  const auto report = reportOf(smallShop());
  ASSERT_FALSE(report->findings.empty());
  Why why;
  for (const audit::Finding& finding : report->findings) {
    why.show(&finding, report->unit);
    const QString text = why.toPlainText();
    const audit::Rule* rule = audit::findRule(finding.rule);
    for (const std::string& part : {finding.text, finding.rule, rule->mend, audit::basisText(finding.basis)})
      EXPECT_TRUE(text.contains(QString::fromStdString(part))) << part << "\n" << text.toStdString();
  }
  why.show(nullptr, report->unit);
  EXPECT_TRUE(why.toPlainText().startsWith("Pick a finding"));
}

// 10.04 s stands beside 10 s as more than that.
TEST(Why, TellsWhatWasMeasuredFromItsLimit) {
  audit::Finding finding = reportOf(smallShop())->findings[0];
  Why why;
  const auto says = [&](const char* unit, double measured, double limit) {
    finding.unit = unit, finding.measured = measured, finding.limit = limit;
    why.show(&finding, layout::LengthUnit::Millimetre);
    return why.toPlainText();
  };
  const QString seconds = says("s", 10.04, 10);
  EXPECT_TRUE(seconds.contains("Measured: 10.04 s")) << seconds.toStdString();
  EXPECT_TRUE(seconds.contains("Limit: 10 s")) << seconds.toStdString();
  EXPECT_TRUE(says("s", 12.04, 10).contains("Measured: 12 s"));
  EXPECT_TRUE(says("m", 5.003, 5).contains("Measured: 5.003 m"));
}

TEST(FindingList, SaysThatItIsOfAMomentAgoInWordsAndPaler) {
  List l(smallShop());
  const QString summary = l.list.summary();
  const QColor ink = l.list.tree()->palette().color(QPalette::Text);
  EXPECT_EQ(summary, QString("%1 findings.").arg(l.report->findings.size()));
  l.list.setAge(Age::MomentAgo);
  EXPECT_EQ(l.list.summary(), "Of a moment ago: " + summary);
  EXPECT_NE(l.list.tree()->palette().color(QPalette::Text), ink);
  EXPECT_TRUE(l.list.asText().startsWith("Of a moment ago"));
  l.list.setAge(Age::Current);
  EXPECT_EQ(l.list.summary(), summary);
  EXPECT_EQ(l.list.tree()->palette().color(QPalette::Text), ink);
}

// What stands below words must not move with each change.
TEST(FindingList, IsPaleAsSoonAsSomethingElseIsComputedAndSaysNothingYet) {
  List l(smallShop());
  const QString summary = l.list.summary();
  const QColor ink = l.list.tree()->palette().color(QPalette::Text);
  l.list.setAge(Age::JustChanged);
  EXPECT_EQ(l.list.tree()->palette().color(QPalette::Text), ink);
  EXPECT_TRUE(l.list.asText().startsWith("Of a moment ago")) << "what is copied says so at once";
  l.list.setAge(Age::BeingComputed);
  const QColor pale = l.list.tree()->palette().color(QPalette::Text);
  EXPECT_NE(pale, ink);
  EXPECT_EQ(l.list.summary(), summary);
  l.list.setAge(Age::MomentAgo);
  EXPECT_EQ(l.list.tree()->palette().color(QPalette::Text), pale) << "no paler";
}

TEST(FindingList, RulesThatAreOffAreNoSuccess) {
  const auto layout = std::make_shared<const layout::Layout>(smallShop());
  audit::Profile none = audit::defaultProfile();
  for (auto& setting : none.settings) setting.on = false;
  FindingList list;
  list.setReport(std::make_shared<const audit::Report>(
                     audit::audit(*layout, plan::bundledCatalogue().kinds, none, floor::Hours::Open)),
                 layout);
  EXPECT_TRUE(list.summary().contains("Every rule is met"));
  list.setCircumstances({"12 rules are off"}, {});
  EXPECT_EQ(list.summary(), "No findings, as drawn and as entered. 12 rules are off.");
  EXPECT_TRUE(list.asText().contains("12 rules are off."));
}

TEST(FindingList, AStationWithoutAWayIsNoSuccessThoughNoRuleSaysSo) {
  List l(smallShop());
  audit::Report report = *l.report;
  letAllMeet(report);
  report.stations.own(0).lacks_phone = true;
  report.stations.own(0).verdict = audit::Verdict::Warns;
  l.list.setReport(std::make_shared<const audit::Report>(report), l.layout);
  EXPECT_EQ(l.list.summary(),
            "No findings, as drawn and as entered. 1 station has no way to a stop or to a phone, and no rule "
            "that is "
            "on warns of it.");
  EXPECT_TRUE(l.list.asText().contains("1 station has no way to a stop or to a phone"));
}

// Else the plan beside them jumps under the pointer when something is put down.
TEST(Findings, NeedNoMoreWidthWhenTheirCountsGrow) {
  List l(smallShop());
  const auto withFindings = [&](std::size_t n) {
    audit::Report report;
    for (const Severity severity : {Severity::Fail, Severity::Warn, Severity::Note})
      for (std::size_t i = 0; i < n; ++i) {
        audit::Finding f;
        f.severity = severity;
        report.findings.push_back(f);
      }
    l.list.setReport(std::make_shared<const audit::Report>(report), l.layout);
  };
  withFindings(9);
  l.list.show();
  const int width = l.list.sizeHint().width();
  withFindings(10);
  EXPECT_LE(l.list.minimumSizeHint().width(), width);
}

TEST(Findings, AreReachedByTabAfterTheTicksThatFilterThem) {
  List l(smallShop());
  const QWidget* after = l.list.findChildren<QCheckBox*>().last();
  do after = after->nextInFocusChain();
  while (!(after->focusPolicy() & Qt::TabFocus));
  EXPECT_EQ(after, l.list.tree());
}

}  // namespace
}  // namespace stopwalk::panels
