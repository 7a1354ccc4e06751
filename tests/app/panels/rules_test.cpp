#include <gtest/gtest.h>

#include "app/edits/house_rules.h"
#include "app/panels/rules/rules_panel.h"
#include "tests/app/panels/person.h"
#include "tests/app/panels/workshop.h"

namespace stopwalk::panels {
namespace {

class RulesOfTheHouse : public testing::Test {
 protected:
  RulesOfTheHouse() { bringUp(panel); }
  const std::vector<layout::HouseRule>& house() const { return shop.layout().house_rules; }
  audit::Setting kept(const char* rule) const {
    return audit::withHouseRules(audit::defaultProfile(), house()).of(*audit::findRule(rule));
  }

  Workshop shop;
  RulesPanel panel{shop.desk};
};

TEST_F(RulesOfTheHouse, ALimitIsTypedAndUndone) {
  panel.choose("stop-too-far");
  ASSERT_EQ(panel.limits().size(), 1u);
  enter(panel.limits()[0]->line(), "4.2 m");
  ASSERT_EQ(house().size(), 1u);
  EXPECT_EQ(house()[0].limit, 4.2);
  EXPECT_EQ(kept("stop-too-far").basis.kind, audit::BasisKind::HouseRule);
  EXPECT_EQ(shop.lastStep(), "Change the rule stop-too-far");
  enter(panel.reason()->line(), "helpers are slow here");
  EXPECT_EQ(kept("stop-too-far").basis.reference, "helpers are slow here");
  shop.edited.history().undo();
  shop.edited.history().undo();
  EXPECT_TRUE(house().empty());
}

TEST_F(RulesOfTheHouse, AReasonTypedBeforeTheLimitIsKeptWithIt) {
  panel.choose("stop-too-far");
  enter(panel.reason()->line(), "helpers are slow here");
  EXPECT_TRUE(house().empty());
  EXPECT_EQ(panel.reason()->line()->text(), "helpers are slow here");
  EXPECT_TRUE(panel.basis().contains("kept as soon as the rule is changed")) << panel.basis().toStdString();
  panel.choose("hidden-stop");
  EXPECT_EQ(panel.reason()->line()->text(), "");
  panel.choose("stop-too-far");
  EXPECT_EQ(panel.reason()->line()->text(), "helpers are slow here");
  enter(panel.limits()[0]->line(), "4.2 m");
  ASSERT_EQ(house().size(), 1u);
  EXPECT_EQ(house()[0].reason, "helpers are slow here");
  shop.edited.history().undo();
  EXPECT_EQ(panel.reason()->line()->text(), "");
}

// It was said that it is kept as soon as the rule is changed.
TEST_F(RulesOfTheHouse, AReasonTypedFirstOutlastsAProfileThatIsReadAgainAndARefusal) {
  panel.choose("stop-too-far");
  enter(panel.reason()->line(), "helpers are slow here");
  panel.setProfile(audit::defaultProfile());
  EXPECT_EQ(panel.reason()->line()->text(), "helpers are slow here");
  shop.edited.setReadOnly(true);
  enter(panel.limits()[0]->line(), "4.2 m");
  EXPECT_TRUE(house().empty());
  EXPECT_EQ(panel.reason()->line()->text(), "helpers are slow here");
  shop.edited.setReadOnly(false);
  enter(panel.limits()[0]->line(), "4.2 m");
  ASSERT_EQ(house().size(), 1u);
  EXPECT_EQ(house()[0].reason, "helpers are slow here");
}

TEST_F(RulesOfTheHouse, AReasonTypedFirstIsNotOfAnotherLayout) {
  panel.choose("stop-too-far");
  enter(panel.reason()->line(), "helpers are slow here");
  panel.forget();
  EXPECT_EQ(panel.reason()->line()->text(), "");
}

TEST_F(RulesOfTheHouse, AskForTheReasonOfALimitThatLostItsBasis) {
  panel.choose("stop-too-far");
  EXPECT_EQ(panel.reason()->line()->placeholderText(), "");
  enter(panel.limits()[0]->line(), "4.2 m");
  EXPECT_EQ(panel.reason()->line()->placeholderText(), "Why is it otherwise here?");
  EXPECT_TRUE(panel.basis().contains("Type the reason")) << panel.basis().toStdString();
  enter(panel.reason()->line(), "helpers are slow here");
  EXPECT_EQ(panel.reason()->line()->placeholderText(), "");
  EXPECT_FALSE(panel.basis().contains("Type the reason"));
}

TEST_F(RulesOfTheHouse, WhatIsAsTheProfileHasItIsNotWrittenDown) {
  panel.choose("stop-too-far");
  enter(panel.limits()[0]->line(), "4 m");
  enter(panel.limits()[0]->line(), "5 m");
  EXPECT_TRUE(house().empty());
  panel.choose("hidden-stop");
  panel.tree()->currentItem()->setCheckState(0, Qt::Unchecked);
  EXPECT_EQ(kept("hidden-stop").on, false);
  panel.asProfile()->click();
  EXPECT_TRUE(house().empty());
  EXPECT_FALSE(panel.asProfile()->isEnabled());
}

TEST_F(RulesOfTheHouse, OfSeveralLimitsEachIsKeptByItsName) {
  panel.choose("stop-out-of-reach");
  ASSERT_EQ(panel.limits().size(), 2u);
  enter(panel.limits()[1]->line(), "0.4 m");
  enter(panel.limits()[0]->line(), "0.6 m");
  ASSERT_EQ(house().size(), 2u);
  EXPECT_EQ(kept("stop-out-of-reach").limits, (std::vector<double>{0.6, 0.4}));
}

TEST_F(RulesOfTheHouse, WhatTheSearchHidesIsNotActedOn) {
  panel.choose("hidden-stop");
  panel.search()->setText("stop-too-far");
  panel.verbs().front()->trigger();
  ASSERT_EQ(house().size(), 1u);
  EXPECT_EQ(house()[0].rule, "stop-too-far") << "the one that is seen";
  panel.search()->setText("no rule is called so");
  for (const Verb* verb : {panel.verbs()[0], panel.verbs()[1]}) {
    EXPECT_FALSE(verb->isEnabled()) << verb->text().toStdString();
    EXPECT_EQ(verb->toolTip(), "Choose a rule in the list first.");
  }
  EXPECT_FALSE(panel.limits()[0]->isEnabled());
  panel.search()->clear();
  EXPECT_TRUE(panel.verbs()[0]->isEnabled());
  EXPECT_EQ(house().size(), 1u);
}

TEST_F(RulesOfTheHouse, AreTickedByTheKeyboard) {
  panel.choose("no-room-cut-off");
  panel.tree()->setFocus();
  QTest::keyClick(panel.tree(), Qt::Key_Space);
  EXPECT_FALSE(kept("no-room-cut-off").on);
}

TEST_F(RulesOfTheHouse, ALimitThatCannotBeIsTold) {
  panel.choose("stop-too-far");
  enter(panel.limits()[0]->line(), "far away");
  EXPECT_FALSE(panel.limits()[0]->trouble().isEmpty());
  EXPECT_TRUE(house().empty());
}

// Walks are measured that wide: a way cannot be asked to be wider and found narrow.
TEST_F(RulesOfTheHouse, ALimitThatIsMoreThanTheRuleCanHoldSaysHowMuchItCan) {
  panel.choose("narrow-passage");
  enter(panel.limits()[0]->line(), "0.7 m");
  EXPECT_EQ(panel.limits()[0]->trouble().toStdString(),
            "The limit of `narrow-passage` can be at most 0.61 m.");
  EXPECT_EQ(panel.limits()[0]->line()->text(), "0.7 m") << "it is there to be mended";
  EXPECT_TRUE(house().empty());
  EXPECT_EQ(shop.edited.history().count(), 0);
  enter(panel.limits()[0]->line(), "0.6 m");
  EXPECT_TRUE(panel.limits()[0]->trouble().isEmpty());
  EXPECT_EQ(kept("narrow-passage").limits, std::vector<double>{0.6});
}

TEST_F(RulesOfTheHouse, WhatIsToldOfALimitIsReadWhole) {
  panel.resize(300, 700);
  panel.choose("stop-too-far");
  enter(panel.limits()[0]->line(), "4300");
  QTest::qWait(50);
  for (const QLabel* label : panel.limits()[0]->findChildren<QLabel*>())
    if (label->text() == panel.limits()[0]->trouble()) {
      EXPECT_GE(label->height(), label->heightForWidth(label->width()));
      const QRect in_panel(label->mapTo(&panel, QPoint()), label->size());
      EXPECT_TRUE(panel.rect().contains(in_panel));
      const QRect in_field(label->mapTo(panel.limits()[0], QPoint()), label->size());
      EXPECT_TRUE(panel.limits()[0]->rect().contains(in_field)) << "no more of it is shown";
    }
}

TEST_F(RulesOfTheHouse, TheListSaysALimitExactly) {
  panel.choose("stop-out-of-reach");
  enter(panel.limits()[0]->line(), "0.795 m");
  EXPECT_TRUE(panel.tree()->currentItem()->text(0).contains("0.795 m, "))
      << panel.tree()->currentItem()->text(0).toStdString();
  layout::Layout in_feet = shop.layout();
  in_feet.unit = layout::LengthUnit::Foot;
  shop.edited.reset(in_feet);
  EXPECT_TRUE(panel.tree()->currentItem()->text(0).contains("2' 7 1/4\" (0.795 m)"))
      << panel.tree()->currentItem()->text(0).toStdString();
}

// The list says 5 m in a drawing of millimetres: a bare 4.2 is no 4.2 mm, nor is 4200 some kilometres.
TEST_F(RulesOfTheHouse, ALimitIsTypedInWhatTheListSays) {
  panel.choose("stop-too-far");
  EXPECT_EQ(panel.limits()[0]->line()->text(), "5 m");
  enter(panel.limits()[0]->line(), "4.2");
  EXPECT_EQ(kept("stop-too-far").limit(), 4.2);
  enter(panel.limits()[0]->line(), "4300");
  EXPECT_TRUE(panel.limits()[0]->trouble().contains("5 m is usual"))
      << panel.limits()[0]->trouble().toStdString();
  EXPECT_EQ(kept("stop-too-far").limit(), 4.2);
  enter(panel.limits()[0]->line(), "4300 mm");
  EXPECT_EQ(kept("stop-too-far").limit(), 4.3);
}

TEST_F(RulesOfTheHouse, AreOfTheProfileThatIsChosenFromTheBundledOnesOrNamedByTheLayout) {
  EXPECT_EQ(panel.profileBox()->currentData().toString(), "teaching-shop");
  const int strict = panel.profileBox()->findData("strict");
  ASSERT_GE(strict, 0);
  panel.profileBox()->setCurrentIndex(strict);
  emit panel.profileBox()->activated(strict);
  EXPECT_EQ(shop.layout().profile, "strict");
  EXPECT_EQ(shop.lastStep(), "Change the profile");
  shop.edited.history().undo();
  EXPECT_EQ(panel.profileBox()->currentData().toString(), "teaching-shop");
  layout::Layout own = shop.layout();
  own.profile = "ours.yaml";
  shop.edited.reset(own);
  EXPECT_EQ(panel.profileBox()->currentText(), "ours.yaml");
  own.profile = "";
  shop.edited.reset(own);
  EXPECT_LT(panel.profileBox()->findData("ours.yaml"), 0);
  EXPECT_EQ(panel.profileBox()->currentData().toString(), "teaching-shop");
}

TEST_F(RulesOfTheHouse, AProfileThatIsNotTheLayoutsOwnIsNotSaved) {
  EXPECT_TRUE(panel.saveVerb().isEnabled());
  panel.setProfile(audit::defaultProfile(), "There is no profile `house`.");
  EXPECT_FALSE(panel.saveVerb().isEnabled());
  EXPECT_EQ(panel.saveVerb().toolTip(), "There is no profile `house`.");
}

TEST_F(RulesOfTheHouse, CanBeKeptOtherwiseAndPutBackInAnyOrder) {
  const audit::Profile profile = audit::defaultProfile();
  layout::Layout layout = shop.layout();
  for (const audit::Rule* rule : audit::rules()) {
    audit::Setting wanted = profile.of(*rule);
    wanted.on = false;
    wanted.severity = audit::Severity::Note;
    for (std::size_t i = 0; i < rule->limits.size(); ++i)
      if (!rule->limits[i].unit.empty()) wanted.limits[i] /= 2;  // a count is at least 1
    const layout::Layout other = edits::keepRule(layout, profile, *rule, wanted, "a try").after;
    const audit::Setting is = audit::withHouseRules(profile, other.house_rules).of(*rule);
    EXPECT_EQ(is.on, false) << rule->id;
    EXPECT_EQ(is.severity, audit::Severity::Note) << rule->id;
    EXPECT_EQ(edits::keepRule(other, profile, *rule, profile.of(*rule), "").after, layout) << rule->id;
  }
}

TEST_F(RulesOfTheHouse, TheHeadSaysHowManyAreOffAndWhetherTheyAreTheLayoutsOwn) {
  EXPECT_FALSE(panel.head().contains("off"));
  panel.choose("hidden-stop");
  panel.tree()->currentItem()->setCheckState(0, Qt::Unchecked);
  EXPECT_TRUE(panel.head().endsWith("1 rule is off."));
  panel.setProfile(audit::defaultProfile(), "There is no profile `house`.");
  EXPECT_TRUE(panel.head().startsWith("There is no profile `house`."));
}

}  // namespace
}  // namespace stopwalk::panels
