// Every rule of the registry: is documented, is found where it must be, and is silent where all is well.
#include <fstream>
#include <set>
#include <sstream>

#include "core/audit/rule.h"
#include "core/audit/rules_document.h"
#include "tests/core/audit/rule_cases.h"

namespace stopwalk::audit {
namespace {

TEST(Shop, MeetsEveryRule) {
  const Report report = auditOf(kShop);
  EXPECT_EQ(report.stations.size(), 2u);
  for (const Finding& f : report.findings) ADD_FAILURE() << f.rule << ": " << f.text;
}

class EachRule : public testing::TestWithParam<RuleCase> {};

TEST_P(EachRule, IsFoundInItsCaseAndSaysAWholeSentence) {
  const RuleCase& c = GetParam();
  const Report report = auditOf(shopWith(c.edits), c.limits, floor::Hours::Open, c.failed);
  EXPECT_TRUE(finds(report, c.rule, c.subject));
  for (const Finding& f : report.findings) {
    if (f.rule != c.rule) continue;
    ASSERT_FALSE(f.text.empty());
    EXPECT_EQ(f.text.back(), '.') << f.text;
    EXPECT_EQ(f.severity, findRule(c.rule)->severity);
    EXPECT_EQ(f.basis, c.limits.empty() ? findRule(c.rule)->basis
                                        : (Basis{BasisKind::HouseRule, "limit chosen for this audit"}));
  }
}

std::string nameOf(const testing::TestParamInfo<RuleCase>& info) {
  std::string name = info.param.rule;
  std::ranges::replace(name, '-', '_');
  return name;
}
INSTANTIATE_TEST_SUITE_P(Cases, EachRule, testing::ValuesIn(kRuleCases), nameOf);

TEST(Rules, EachHasACase) {
  std::set<std::string> cases;
  for (const RuleCase& c : kRuleCases) cases.insert(c.rule);
  for (const Rule* rule : rules())
    EXPECT_TRUE(cases.contains(rule->id)) << rule->id << " has no case in rule_cases.h";
  EXPECT_EQ(cases.size(), rules().size());
}

// What is accepted without saying which is told by these marks that it says too little.
TEST(Rules, ThoseThatNameWhichDoSoAlways) {
  for (const RuleCase& c : kRuleCases) {
    const Rule& rule = *findRule(c.rule);
    EXPECT_FALSE(rule.several && rule.names_which) << c.rule;
    const Report report = auditOf(shopWith(c.edits), c.limits, floor::Hours::Open, c.failed);
    for (const Finding& f : report.findings)
      if (f.rule == c.rule && f.subject == c.subject) {
        EXPECT_TRUE(!f.which.empty() || !(rule.several || rule.names_which)) << f.text;
      }
  }
  EXPECT_TRUE(findRule("failed-check")->names_which);
}

TEST(Rules, AreTurnedOffByTheProfile) {
  for (const RuleCase& c : kRuleCases) {
    Profile profile = defaultProfile();
    for (const std::string& limit : c.limits) EXPECT_EQ(applyLimit(profile, limit), "");
    profile.of(*findRule(c.rule)).on = false;
    const Report report = audit(layoutOf(shopWith(c.edits)), files::bundledDeviceKinds(), profile,
                                floor::Hours::Open, c.failed);
    EXPECT_EQ(subjects(report, c.rule), Subjects{});
  }
}

TEST(Rules, HaveIdsOfTheirOwnAndSaySomething) {
  std::set<std::string> ids;
  for (const Rule* rule : rules()) {
    EXPECT_TRUE(ids.insert(rule->id).second) << rule->id;
    EXPECT_FALSE(rule->find.empty()) << rule->id;
    EXPECT_FALSE(rule->finds.empty()) << rule->id;
    EXPECT_FALSE(rule->meaning.empty()) << rule->id;
    EXPECT_EQ(rule->basis.kind == BasisKind::CommonPractice, rule->basis.reference.empty()) << rule->id;
  }
}

TEST(Rules, DocumentIsCurrent) {
  std::ostringstream committed;
  committed << std::ifstream(STOPWALK_SOURCE_DIR "/docs/rules.md").rdbuf();
  EXPECT_EQ(committed.str(), rulesDocument()) << "write it again: stopwalk profile rules > docs/rules.md";
}

}  // namespace
}  // namespace stopwalk::audit
