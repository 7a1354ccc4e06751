#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/audit/rule.h"
#include "core/inspection/schedule.h"
#include "core/layout/layout.h"

namespace stopwalk::audit {

inline constexpr const char* kDefaultProfile = "teaching-shop";

// Which rules are on, how severe they are and at which limits.
struct Profile {
  std::string id;
  std::string name;
  std::string extends;            // id of the profile it started from, or empty
  std::vector<Setting> settings;  // one for each of rules(), in that order
  inspection::Schedule inspection = {};
  std::string file = {};  // its name, where the id alone would be taken for a bundled profile's

  const Setting& of(const Rule& rule) const;
  Setting& of(const Rule& rule);
  // What reports call it: "teaching-shop", or of a file with that id "teaching-shop (our-shop.yaml)".
  std::string called() const { return file.empty() ? id : id + " (" + file + ")"; }
  bool operator==(const Profile&) const = default;
};

// Every rule as it is by itself.
Profile defaultProfile();

// Applies `RULE=VALUE` or `RULE.NAME=VALUE`; the limit's basis becomes a house rule. Returns what is wrong
// with it, with the nearest known name; empty when it was applied.
std::string applyLimit(Profile& profile, std::string_view text);

// What is wrong with a house rule: no such rule, limit or value; empty: nothing.
std::string troubleOf(const layout::HouseRule& house);

// What is wrong with an accepted finding: no such rule, no last day; empty: nothing.
std::string troubleOf(const layout::AcceptedFinding& accepted);

// The profile as a workshop keeps it. Its id says that it does; what cannot be applied is left out.
Profile withHouseRules(Profile profile, const std::vector<layout::HouseRule>& house_rules);

// Sets one limit, and says what is wrong with the value (empty: nothing).
std::string setLimit(Setting& setting, const Rule& rule, std::size_t limit, double value);

// The profile as a profile file that says everything.
std::string profileText(const Profile& profile);

// ": did you mean `x`?", or the known names where none is near.
std::string nearestName(std::string_view asked, const std::vector<std::string>& known);
// At most so many of them, the nearest first; empty: none is near.
std::vector<std::string> nearestNames(std::string_view asked, std::vector<std::string> known,
                                      std::size_t most);

}  // namespace stopwalk::audit
