#include "app/edits/house_rules.h"

#include <algorithm>

#include "app/edits/step_names.h"
#include "app/edits/words.h"

namespace stopwalk::edits {
namespace {

using layout::HouseRule;

// The one for a limit of the rule, with what the file says beside it; or a new one.
HouseRule entryFor(const layout::Layout& layout, const std::string& rule, const std::string& of) {
  for (const HouseRule& house : layout.house_rules)
    if (house.rule == rule && house.of == of) {
      HouseRule kept = house;
      kept.limit.reset(), kept.severity.reset(), kept.on.reset();
      return kept;
    }
  HouseRule fresh;
  fresh.rule = rule;
  fresh.of = of;
  return fresh;
}

std::vector<HouseRule> entriesFor(const layout::Layout& layout, const audit::Setting& usual,
                                  const audit::Rule& rule, const audit::Setting& wanted) {
  std::vector<HouseRule> entries;
  for (std::size_t i = 0; i < rule.limits.size(); ++i) {
    if (wanted.limits[i] == usual.limits[i]) continue;
    const std::string of = rule.limits.size() == 1 ? "" : rule.limits[i].name;
    entries.push_back(entryFor(layout, rule.id, of));
    entries.back().limit = wanted.limits[i];
  }
  if (wanted.severity == usual.severity && wanted.on == usual.on) return entries;
  if (entries.empty()) entries.push_back(entryFor(layout, rule.id, ""));
  if (wanted.severity != usual.severity) entries.front().severity = wanted.severity;
  if (wanted.on != usual.on) entries.front().on = wanted.on;
  return entries;
}

}  // namespace

Edit keepRule(const layout::Layout& layout, const audit::Profile& profile, const audit::Rule& rule,
              const audit::Setting& wanted, const std::string& reason) {
  std::vector<HouseRule> entries = entriesFor(layout, profile.of(rule), rule, wanted);
  for (HouseRule& entry : entries) entry.reason = reason;
  layout::Layout after = layout;
  auto& rules = after.house_rules;
  const auto first = std::ranges::find(rules, rule.id, &HouseRule::rule);
  const auto at = first - rules.begin();
  std::erase_if(rules, [&](const HouseRule& house) { return house.rule == rule.id; });
  rules.insert(rules.begin() + at, entries.begin(), entries.end());
  return step(layout, Words::tr("Change the rule %1").arg(QString::fromStdString(rule.id)), std::move(after));
}

std::string reasonFor(const layout::Layout& layout, const audit::Rule& rule) {
  for (const HouseRule& house : layout.house_rules)
    if (house.rule == rule.id && !house.reason.empty()) return house.reason;
  return {};
}

}  // namespace stopwalk::edits
