// What an Auditor keeps from one layout to the next is right by any profile: with other limits and
// severities, rules off, failed devices, findings let stand, in feet, after hours.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <set>
#include <tuple>

#include "core/audit/audit.h"
#include "core/files/device_kinds_reader.h"
#include "core/files/report_json.h"
#include "tests/core/audit/lines_text.h"
#include "tests/core/audit/random_edits.h"
#include "tests/support/furnished.h"
#include "tests/support/grid_layout.h"
#include "tests/support/neglected.h"
#include "tests/support/random_layout.h"

namespace stopwalk::audit {
namespace {

const layout::DeviceKinds& kinds() {
  return files::bundledDeviceKinds();
}

// Between a third and thrice as much; a count from 1 to 3.
double otherLimit(const Limit& limit, Random& random) {
  if (limit.unit.empty()) return 1 + random.below(3);
  const double value = limit.value * std::pow(3, random.between(-1, 1));
  return limit.most ? std::min(value, *limit.most) : value;
}

Profile randomProfile(Random& random) {
  Profile profile = defaultProfile();
  for (const Rule* rule : rules()) {
    Setting& setting = profile.of(*rule);
    if (random.chance(0.25)) setting.on = false;
    if (random.chance(0.25)) setting.severity = static_cast<Severity>(random.below(3));
    for (std::size_t i = 0; i < rule->limits.size(); ++i)
      if (random.chance(0.5)) setting.limits[i] = otherLimit(rule->limits[i], random);
  }
  profile.inspection.failed_stops_count = random.chance(0.2);
  return profile;
}

std::vector<inspection::FailedDevice> someFailed(const Layout& layout, Random& random) {
  std::vector<inspection::FailedDevice> failed;
  const auto add = [&](const std::string& id) {
    if (random.chance(0.15))
      failed.push_back({id, *inspection::parseDate("2026-03-02"), failed.size() + 1, "Ada Example"});
  };
  for (const layout::Machine& m : layout.machines)
    for (const layout::Device& d : m.devices) add(m.id + "/" + d.id);
  for (const layout::Device& d : layout.devices) add(d.id);
  return failed;
}

void acceptSome(Layout& layout, const Report& report, Random& random) {
  for (const Finding& f : report.findings)
    if (random.chance(0.2))
      layout.accepted_findings.push_back({f.rule,
                                          f.subject,
                                          random.chance(0.5) ? f.which : "",
                                          "invented",
                                          "Ada Example",
                                          "2027-12-31",
                                          {}});
}

void expectToldApart(const Report& report) {
  std::set<std::tuple<std::string, std::string, std::string>> known;
  for (const Finding& f : report.findings)
    EXPECT_TRUE(known.emplace(f.rule, f.subject, findRule(f.rule)->several ? f.which : "").second)
        << f.rule << " about " << f.subject << ", " << f.which << ": " << f.text;
}

struct Seen {
  std::size_t followed = 0, accepted = 0, unclear = 0;
  std::set<std::string> rules;  // by which something was found
};

// What is never found on the way is not known to be followed.
void expectEveryRule(const Seen& seen) {
  for (const Rule* rule : rules())
    EXPECT_TRUE(seen.rules.contains(rule->id)) << rule->id << " finds nothing on the way";
}

template <class Edit>
void follow(Layout layout, std::uint64_t seed, int edits, Edit edit, Seen& seen) {
  Random random(seed ^ 0x9a0f11e);
  const Profile profile = randomProfile(random);
  const floor::Hours hours = random.chance(0.3) ? floor::Hours::After : floor::Hours::Open;
  const auto failed = someFailed(layout, random);
  if (random.chance(0.3)) layout.unit = layout::LengthUnit::Foot;
  acceptSome(layout, audit(layout, kinds(), profile, hours, failed), random);
  Auditor auditor;
  for (int i = 0; i <= edits; ++i) {
    const Report& kept = auditor.audit(layout, kinds(), profile, hours, failed);
    const Report anew = audit(layout, kinds(), profile, hours, failed);
    ASSERT_EQ(files::reportJson({"shop", "", kept}, inspection::kUnreadDay) + linesText(kept),
              files::reportJson({"shop", "", anew}, inspection::kUnreadDay) + linesText(anew))
        << "seed " << seed << ", after edit " << i;
    expectToldApart(anew);
    for (const Finding& f : anew.findings)
      seen.accepted += f.accepted ? 1 : 0, seen.unclear += f.unclear ? 1 : 0, seen.rules.insert(f.rule);
    edit(layout, random);
  }
  seen.followed += auditor.followed();
}

template <class Draw, class Edit>
Seen followAll(Draw draw, int seeds, int edits, Edit edit) {
  Seen seen;
  for (int seed = 0; seed < seeds && !testing::Test::HasFatalFailure(); ++seed)
    follow(draw(static_cast<std::uint64_t>(seed)), static_cast<std::uint64_t>(seed), edits, edit, seen);
  EXPECT_GT(seen.followed, 0u);
  EXPECT_GT(seen.accepted, 0u);
  return seen;
}

Layout randomShop(std::uint64_t seed) {
  return support::neglected(support::furnished(support::randomLayout(seed + 300), seed), seed);
}
Layout narrowShop(std::uint64_t seed) {
  const Layout drawn = support::randomLayout(seed + 900, {.most_machines = 16, .narrow = true});
  return support::neglected(support::furnished(drawn, seed), seed);
}
Layout gridShop(std::uint64_t seed) {
  return support::neglected(support::furnished(support::gridLayout(seed + 300), seed), seed);
}

TEST(AuditorByAnyProfile, FollowsDragsInRandomShops) {
  const Seen seen = followAll(randomShop, 16, 20, Drag());
  EXPECT_GT(seen.unclear, 0u);
  expectEveryRule(seen);
}
TEST(AuditorByAnyProfile, FollowsDragsInNarrowShops) {
  expectEveryRule(followAll(narrowShop, 12, 20, Drag()));
}
TEST(AuditorByAnyProfile, FollowsDragsInShopsDrawnWithARuler) {
  expectEveryRule(followAll(gridShop, 16, 20, Drag()));
}
TEST(AuditorByAnyProfile, FollowsAnyEdit) {
  followAll(randomShop, 8, 12, edited);
  followAll(gridShop, 8, 12, edited);
}

}  // namespace
}  // namespace stopwalk::audit
