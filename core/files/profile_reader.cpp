#include "core/files/profile_reader.h"

#include <algorithm>
#include <cassert>

#include "core/files/layout_keys.h"
#include "core/files/map_reader.h"
#include "core/files/resources.h"

namespace stopwalk::files {
namespace {

using audit::Basis;
using audit::BasisKind;
using audit::Profile;
using audit::Rule;
using audit::Setting;

constexpr std::string_view kFolder = "profiles/", kEnding = ".yaml";

const Choices<BasisKind> kBases = {{"published", BasisKind::Published},
                                   {"common-practice", BasisKind::CommonPractice},
                                   {"house-rule", BasisKind::HouseRule}};

std::optional<NamedText> bundledText(const std::string& name) {
  const auto text = resource(std::string(kFolder) + name + std::string(kEnding));
  return text ? std::optional<NamedText>({name, std::string(*text)}) : std::nullopt;
}

bool isLikeABundledOne(const std::string& id, const NamedText& source) {
  const auto bundled = bundledText(id);
  return bundled && bundled->text != source.text;
}

std::optional<Basis> readBasis(Node node, Problems& problems) {
  MapReader map(node, problems, "a basis");
  Basis basis;
  if (const auto kind = map.required("kind"))
    basis.kind = readChoice(*kind, kBases, problems).value_or(basis.kind);
  if (const auto reference = map.optional("reference"))
    basis.reference = readText(*reference, problems).value_or("");
  map.finish();
  return map.isMap() ? std::optional<Basis>(basis) : std::nullopt;
}

void readLimits(MapReader& map, const Rule& rule, Setting& setting) {
  for (std::size_t i = 0; i < rule.limits.size(); ++i) {
    const auto node = map.optional(rule.limits[i].name);
    const auto value = node ? readNumber(*node, map.problems()) : std::nullopt;
    if (!value) continue;
    if (const std::string wrong = audit::setLimit(setting, rule, i, *value); !wrong.empty())
      map.problems().error(node->begin(), wrong);
  }
}

void readRule(Node node, const Rule& rule, Profile& profile, Problems& problems) {
  Setting& setting = profile.of(rule);
  const std::vector<double> before = setting.limits;
  MapReader map(node, problems, "a rule");
  if (const auto on = map.optional("on")) setting.on = readFlag(*on, problems).value_or(setting.on);
  if (const auto severity = map.optional("severity"))
    setting.severity = readChoice(*severity, kSeverities, problems).value_or(setting.severity);
  readLimits(map, rule, setting);
  // A limit that is not the source's must not go under its name.
  if (setting.limits != before)
    setting.basis = {BasisKind::HouseRule, "limit of the profile " + profile.called()};
  if (const auto basis = map.optional("basis"))
    if (const auto read = readBasis(*basis, problems)) setting.basis = *read;
  map.finish();
}

constexpr int kMostMonths = 120, kMostDays = 3660;

// What it does not say is as in the profile it extends.
void readInspection(Node node, inspection::Schedule& schedule, Problems& problems) {
  MapReader map(node, problems, "the inspection of a profile");
  if (const auto days = map.optional("seen_days"))
    schedule.seen_days = readWhole(*days, 1, kMostDays, problems);
  if (const auto months = map.optional("pressed_months"))
    schedule.pressed_months = readWhole(*months, 1, kMostMonths, problems).value_or(schedule.pressed_months);
  if (const auto months = map.optional("full_months"))
    schedule.full_months = readWhole(*months, 1, kMostMonths, problems).value_or(schedule.full_months);
  if (const auto flag = map.optional("retest_by_another"))
    schedule.retest_by_another = readFlag(*flag, problems).value_or(schedule.retest_by_another);
  if (const auto flag = map.optional("failed_stops_count"))
    schedule.failed_stops_count = readFlag(*flag, problems).value_or(schedule.failed_stops_count);
  map.finish();
}

class ProfileReader {
 public:
  explicit ProfileReader(const FileSource& files) : files_(files) {}

  Result<Profile> read(const NamedText& source) {
    chain_.push_back(source.file);
    Problems problems(source.text, source.file);
    std::vector<Diagnostic> of_base;
    Profile profile = audit::defaultProfile();
    if (const auto tree = parseTree(source.text, problems)) {
      MapReader map(tree->root(), problems, "a profile");
      if (const auto format = map.required("stopwalk_profile")) readWhole(*format, 1, 1, problems);
      const auto id = map.required("id");
      const auto name = map.optional("name");
      if (const auto extends = map.optional("extends"))
        of_base = readBase(*extends, source.file, profile, problems);
      if (id) profile.id = readId(*id, problems).value_or("");
      profile.file =
          isLikeABundledOne(profile.id, source) ? source.file.substr(source.file.rfind('/') + 1) : "";
      profile.name = name ? readText(*name, problems).value_or("") : profile.id;
      if (const auto found = map.optional("inspection")) readInspection(*found, profile.inspection, problems);
      if (const auto rules = map.optional("rules")) readRules(*rules, profile, problems);
      map.finish();
    }
    chain_.pop_back();
    Result<Profile> result = problems.result(std::move(profile));
    const bool base_failed =
        std::ranges::any_of(of_base, [](const Diagnostic& d) { return d.severity == Severity::Error; });
    if (base_failed) result.value.reset();
    result.diagnostics.insert(result.diagnostics.end(), of_base.begin(), of_base.end());
    return result;
  }

 private:
  std::vector<Diagnostic> readBase(Node node, const std::string& beside, Profile& profile,
                                   Problems& problems) {
    const auto asked = readText(node, problems);
    if (!asked) return {};
    std::optional<NamedText> base = bundledText(*asked);
    if (!base) base = files_(*asked, beside);
    if (!base) {
      problems.error(node.begin(),
                     "there is no profile " + quoted(*asked) + audit::nearestName(*asked, bundledProfiles()));
      return {};
    }
    if (std::ranges::find(chain_, base->file) != chain_.end()) {
      problems.error(node.begin(), "the profile would extend itself");
      return {};
    }
    if (chain_.size() >= kDeepest) {
      problems.error(node.begin(),
                     "profiles extend one another over more than " + std::to_string(kDeepest) + " files");
      return {};
    }
    Result<Profile> read = this->read(*base);
    if (read.value) {
      profile = std::move(*read.value);
      profile.extends = profile.called();
    }
    return std::move(read.diagnostics);
  }

  static void readRules(Node node, Profile& profile, Problems& problems) {
    MapReader map(node, problems, "the rules of a profile");
    for (const Rule* rule : audit::rules())
      if (const auto found = map.optional(rule->id)) readRule(*found, *rule, profile, problems);
    map.finish();
  }

  static constexpr std::size_t kDeepest = 20;
  const FileSource& files_;
  std::vector<std::string> chain_;
};

}  // namespace

Result<audit::Profile> readProfile(const NamedText& source, const FileSource& files) {
  Result<audit::Profile> read = ProfileReader(files).read(source);
  if (!read.value || read.value->file.empty()) return read;
  Profile same = *read.value;
  same.file.clear();
  if (same == bundledProfile(same.id)) read.value = std::move(same);  // it says what the bundled one says
  return read;
}

std::vector<std::string> bundledProfiles() {
  std::vector<std::string> names;
  for (const std::string_view name : resourceNames())
    if (name.starts_with(kFolder) && name.ends_with(kEnding))
      names.emplace_back(name.substr(kFolder.size(), name.size() - kFolder.size() - kEnding.size()));
  return names;
}

std::optional<audit::Profile> bundledProfile(std::string_view name) {
  const auto text = bundledText(std::string(name));
  if (!text) return std::nullopt;
  Result<audit::Profile> read = readProfile(*text, [](const auto&, const auto&) { return std::nullopt; });
  assert(read.value && read.diagnostics.empty());
  return std::move(read.value);
}

}  // namespace stopwalk::files
