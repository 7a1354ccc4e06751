// The report as a whole, on the sample workshops: the same whatever the order of the file, and true to its
// own words.
#include <cmath>
#include <fstream>
#include <map>
#include <random>
#include <sstream>

#include "tests/core/audit/shop.h"

namespace stopwalk::audit {
namespace {

layout::Layout sample(const std::string& name) {
  std::ostringstream text;
  text << std::ifstream(STOPWALK_SOURCE_DIR "/sample-layouts/" + name + ".layout.yaml").rdbuf();
  return layoutOf(text.str());
}

Report auditOf(const layout::Layout& layout) {
  return audit(layout, files::bundledDeviceKinds(), defaultProfile());
}

using Numbers = std::map<std::string, std::pair<std::pair<Status, double>, std::pair<Status, double>>>;

Numbers numbersOf(const Report& report) {
  Numbers numbers;
  for (const StationReport& s : report.stations)
    numbers[s.id] = {{s.stop.status, s.stop.walk_m.value_or(-1)},
                     {s.phone.status, s.phone.walk_m.value_or(-1)}};
  return numbers;
}

std::map<std::string, int> countsOf(const Report& report) {
  std::map<std::string, int> counts;
  for (const Finding& f : report.findings) ++counts[f.rule];
  return counts;
}

std::string nameOf(const testing::TestParamInfo<const char*>& info) {
  std::string name = info.param;
  std::ranges::replace(name, '-', '_');
  return name;
}

class Sample : public testing::TestWithParam<const char*> {};

TEST_P(Sample, IsAuditedTheSameTwice) {
  const layout::Layout layout = sample(GetParam());
  const Report a = auditOf(layout), b = auditOf(layout);
  EXPECT_EQ(numbersOf(a), numbersOf(b));
  ASSERT_EQ(a.findings.size(), b.findings.size());
  for (std::size_t i = 0; i < a.findings.size(); ++i) EXPECT_EQ(a.findings[i].text, b.findings[i].text);
}

TEST_P(Sample, HasTheSameNumbersInAnyOrderOfTheFile) {
  layout::Layout layout = sample(GetParam());
  const Report before = auditOf(layout);
  std::mt19937 random(7);
  for (int round = 0; round < 3; ++round) {
    std::ranges::shuffle(layout.machines, random);
    std::ranges::shuffle(layout.devices, random);
    std::ranges::shuffle(layout.phones, random);
    std::ranges::shuffle(layout.fixtures, random);
    std::ranges::shuffle(layout.doors, random);
    const Report after = auditOf(layout);
    const Numbers was = numbersOf(before), is = numbersOf(after);
    ASSERT_EQ(was.size(), is.size());
    for (const auto& [id, n] : was) {
      EXPECT_EQ(n.first.first, is.at(id).first.first) << id;
      EXPECT_NEAR(n.first.second, is.at(id).first.second, 1e-7) << id;
      EXPECT_EQ(n.second.first, is.at(id).second.first) << id;
      EXPECT_NEAR(n.second.second, is.at(id).second.second, 1e-7) << id;
    }
    EXPECT_EQ(countsOf(before), countsOf(after));
  }
}

TEST_P(Sample, KeepsItsWordOnSecondsAndVerdicts) {
  const Report report = auditOf(sample(GetParam()));
  for (const StationReport& s : report.stations) {
    if (s.stop.walk_m) {
      EXPECT_DOUBLE_EQ(*s.stop.seconds, 1.5 + *s.stop.walk_m / 1.067 + s.stop.run_down_s.value_or(0)) << s.id;
    }
    if (s.phone.walk_m) {
      EXPECT_DOUBLE_EQ(*s.phone.seconds, 1.5 + *s.phone.walk_m / 1.067) << s.id;
    }
    EXPECT_EQ(s.stop.status == Status::AtHand, s.stop.walk_m == 0.0) << s.id;
    bool fails = false, warns = false;
    for (const Finding& f : report.findings) {
      fails = fails || (f.subject == s.id && f.severity == Severity::Fail);
      warns = warns || (f.subject == s.id && f.severity == Severity::Warn);
    }
    EXPECT_EQ(s.verdict, fails ? Verdict::Fails : warns ? Verdict::Warns : Verdict::Meets) << s.id;
  }
}
INSTANTIATE_TEST_SUITE_P(Layouts, Sample, testing::Values("tram-depot", "school-wing", "scene-shop"), nameOf);

TEST(SceneShop, MeetsEveryFailingRule) {
  EXPECT_EQ(auditOf(sample("scene-shop")).count(Severity::Fail), 0u);
}

}  // namespace
}  // namespace stopwalk::audit
