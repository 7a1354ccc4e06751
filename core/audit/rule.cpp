#include "core/audit/rule.h"

namespace stopwalk::audit {

#define STOPWALK_RULE(name) const Rule& name();
#include "core/audit/rules/rules.def"
#undef STOPWALK_RULE

const std::vector<const Rule*>& rules() {
  static const std::vector<const Rule*> all = {
#define STOPWALK_RULE(name) &name(),
#include "core/audit/rules/rules.def"
#undef STOPWALK_RULE
  };
  return all;
}

const Rule* findRule(std::string_view id) {
  for (const Rule* rule : rules())
    if (rule->id == id) return rule;
  return nullptr;
}

std::optional<std::size_t> findLimit(const Rule& rule, std::string_view name) {
  if (name.empty()) return rule.limits.size() == 1 ? std::optional<std::size_t>(0) : std::nullopt;
  for (std::size_t i = 0; i < rule.limits.size(); ++i)
    if (rule.limits[i].name == name) return i;
  return std::nullopt;
}

Setting Rule::setting() const {
  Setting s{.on = true, .severity = severity, .limits = {}, .basis = basis};
  for (const Limit& l : limits) s.limits.push_back(l.value);
  return s;
}

}  // namespace stopwalk::audit
