#include "core/audit/profile.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <numeric>

#include "core/audit/wording.h"

namespace stopwalk::audit {
namespace {

std::size_t placeOf(const Rule& rule) {
  return static_cast<std::size_t>(std::ranges::find(rules(), &rule) - rules().begin());
}

// Letters to change, add or drop to come from one to the other.
std::size_t lettersApart(std::string_view a, std::string_view b) {
  std::vector<std::size_t> row(b.size() + 1);
  std::iota(row.begin(), row.end(), std::size_t{0});
  for (std::size_t i = 0; i < a.size(); ++i) {
    std::size_t diagonal = row[0]++;
    for (std::size_t j = 0; j < b.size(); ++j) {
      const std::size_t change = diagonal + (a[i] == b[j] ? 0 : 1);
      diagonal = row[j + 1];
      row[j + 1] = std::min({change, row[j] + 1, diagonal + 1});
    }
  }
  return row.back();
}

std::vector<std::string> ruleIds() {
  std::vector<std::string> ids;
  for (const Rule* r : rules()) ids.push_back(r->id);
  return ids;
}

std::vector<std::string> limitNames(const Rule& rule) {
  std::vector<std::string> names;
  for (const Limit& l : rule.limits) names.push_back(rule.id + "." + l.name);
  return names;
}

std::string unknownLimit(const Rule& rule, std::string_view name) {
  if (rule.limits.empty()) return "the rule `" + rule.id + "` has no limit";
  if (name.empty())
    return "the rule `" + rule.id + "` has several limits: name one of " + listed(limitNames(rule), 9);
  return "the rule `" + rule.id + "` has no limit `" + std::string(name) + "`: there is " +
         listed(limitNames(rule), 9);
}

std::string quoted(const std::string& text) {
  std::string out = "\"";
  for (const char c : text) {
    if (c == '"' || c == '\\') out += '\\';
    out += c;
  }
  return out + "\"";
}

}  // namespace

const Setting& Profile::of(const Rule& rule) const {
  return settings[placeOf(rule)];
}
Setting& Profile::of(const Rule& rule) {
  return settings[placeOf(rule)];
}

Profile defaultProfile() {
  Profile profile{.id = kDefaultProfile, .name = "Teaching shop", .extends = {}, .settings = {}};
  for (const Rule* rule : rules()) profile.settings.push_back(rule->setting());
  return profile;
}

std::string nearestName(std::string_view asked, const std::vector<std::string>& known) {
  if (known.empty()) return "";
  const std::vector<std::string> near = nearestNames(asked, known, 1);
  if (!near.empty()) return ": did you mean `" + near.front() + "`?";
  return "; known are " + listed(known, known.size());
}

std::vector<std::string> nearestNames(std::string_view asked, std::vector<std::string> known,
                                      std::size_t most) {
  const std::size_t furthest = std::max<std::size_t>(2, asked.size() / 3);
  const auto apart = [&](const std::string& name) { return lettersApart(asked.substr(0, 80), name); };
  std::erase_if(known, [&](const std::string& name) { return apart(name) > furthest; });
  std::ranges::stable_sort(known, {}, apart);
  if (known.size() > most) known.resize(most);
  return known;
}

std::string setLimit(Setting& setting, const Rule& rule, std::size_t limit, double value) {
  const Limit& l = rule.limits[limit];
  if (!std::isfinite(value) || value < 0) return "a limit is a number that is not negative";
  if (l.unit.empty() && (value < 1 || value != std::floor(value)))
    return "the limit of `" + rule.id + "` is a count: a whole number, 1 or more";
  if (l.most && value > *l.most)
    return "the limit of `" + rule.id + "` can be at most " + decimal(*l.most, 3) +
           (l.unit.empty() ? "" : " " + l.unit);
  setting.limits[limit] = value;
  return {};
}

std::string applyLimit(Profile& profile, std::string_view text) {
  const std::size_t equals = text.find('=');
  if (equals == std::string_view::npos) return "`" + std::string(text) + "` is not of the form RULE=VALUE";
  const std::string_view key = text.substr(0, equals), number = text.substr(equals + 1);
  const std::size_t dot = key.find('.');
  const std::string_view id = key.substr(0, dot);
  const std::string_view name = dot == std::string_view::npos ? std::string_view() : key.substr(dot + 1);
  const Rule* rule = findRule(id);
  if (!rule) return "there is no rule `" + std::string(id) + "`" + nearestName(id, ruleIds());
  const auto limit = findLimit(*rule, name);
  if (!limit) return unknownLimit(*rule, name);
  double value = 0;
  const auto [end, error] = std::from_chars(number.data(), number.data() + number.size(), value);
  if (error != std::errc() || end != number.data() + number.size())
    return "`" + std::string(number) + "` is not a number" +
           (rule->limits[*limit].unit.empty() ? "" : " (in " + rule->limits[*limit].unit + ")");
  Setting& setting = profile.of(*rule);
  const double before = setting.limits[*limit];
  const std::string wrong = setLimit(setting, *rule, *limit, value);
  if (wrong.empty() && value != before) setting.basis = {BasisKind::HouseRule, "limit chosen for this audit"};
  return wrong;
}

namespace {

// Applies it to the setting of its rule; returns what is wrong with it, and then has changed nothing.
std::string applyHouseRule(Profile& profile, const layout::HouseRule& house) {
  const Rule* rule = findRule(house.rule);
  if (!rule) return "there is no rule `" + house.rule + "`" + nearestName(house.rule, ruleIds());
  Setting& setting = profile.of(*rule);
  if (house.limit) {
    const auto limit = findLimit(*rule, house.of);
    if (!limit) return unknownLimit(*rule, house.of);
    const double before = setting.limits[*limit];
    if (std::string wrong = setLimit(setting, *rule, *limit, *house.limit); !wrong.empty()) return wrong;
    // A limit that is not the source's must not go under its name.
    if (setting.limits[*limit] != before)
      setting.basis = {BasisKind::HouseRule, house.reason.empty() ? "limit of the layout" : house.reason};
  } else if (!house.of.empty()) {
    return "`of` names a limit, but no `limit` is given";
  }
  if (house.severity) setting.severity = *house.severity;
  if (house.on) setting.on = *house.on;
  return {};
}

}  // namespace

std::string troubleOf(const layout::HouseRule& house) {
  Profile profile = defaultProfile();
  return applyHouseRule(profile, house);
}

std::string troubleOf(const layout::AcceptedFinding& accepted) {
  if (accepted.until.empty()) return "an accepted finding needs `until`: the last day that it is let stand";
  if (findRule(accepted.rule)) return {};
  std::vector<std::string> known;
  for (const Rule* rule : rules()) known.push_back(rule->id);
  return "there is no rule `" + accepted.rule + "`" + nearestName(accepted.rule, known);
}

Profile withHouseRules(Profile profile, const std::vector<layout::HouseRule>& house_rules) {
  const std::vector<Setting> before = profile.settings;
  for (const layout::HouseRule& house : house_rules) applyHouseRule(profile, house);
  if (profile.settings != before) profile.id += "+house-rules";
  return profile;
}

namespace {

std::string inspectionText(const inspection::Schedule& s) {
  const auto flag = [](bool yes) { return std::string(yes ? "true" : "false"); };
  return "inspection:\n" +
         (s.seen_days ? "  seen_days: " + std::to_string(*s.seen_days) + "\n" : std::string()) +
         "  pressed_months: " + std::to_string(s.pressed_months) +
         "\n  full_months: " + std::to_string(s.full_months) +
         "\n  retest_by_another: " + flag(s.retest_by_another) +
         "\n  failed_stops_count: " + flag(s.failed_stops_count) + "\n";
}

}  // namespace

std::string profileText(const Profile& profile) {
  std::string text = "stopwalk_profile: 1\nid: " + profile.id + "\nname: " + quoted(profile.name) + "\n";
  if (!profile.extends.empty()) text += "extends: " + profile.extends + "\n";
  text += inspectionText(profile.inspection) + "rules:\n";
  for (const Rule* rule : rules()) {
    const Setting& s = profile.of(*rule);
    text += "  " + rule->id + ":\n    on: " + (s.on ? "true" : "false") +
            "\n    severity: " + std::string(word(s.severity)) + "\n";
    for (std::size_t i = 0; i < rule->limits.size(); ++i) {
      text += "    " + rule->limits[i].name + ": " + decimal(s.limits[i], 6);
      text += rule->limits[i].unit.empty() ? "\n" : "   # " + rule->limits[i].unit + "\n";
    }
    text += "    basis: {kind: " + std::string(word(s.basis.kind));
    text += s.basis.reference.empty() ? "}\n" : ", reference: " + quoted(s.basis.reference) + "}\n";
  }
  return text + "...\n";
}

}  // namespace stopwalk::audit
