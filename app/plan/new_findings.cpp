#include "app/plan/new_findings.h"

#include <functional>
#include <set>
#include <unordered_set>
#include <utility>

#include "app/plan/rule_words.h"
#include "app/plan/words.h"

namespace stopwalk::plan {
namespace {

using audit::Severity;

using Broken = std::pair<std::string_view, std::string_view>;  // subject and rule

struct HashOfBroken {
  std::size_t operator()(const Broken& b) const {
    const std::hash<std::string_view> hash;
    return 31 * hash(b.first) + hash(b.second);
  }
};

}  // namespace

NewFindings::NewFindings(const audit::Report& before, const audit::Report& after) {
  // What both reports share is not new.
  std::unordered_set<const audit::Finding*> shared;
  shared.reserve(before.findings.size());
  for (const audit::Finding& f : before.findings) shared.insert(&f);
  std::vector<const audit::Finding*> otherwise;
  for (const audit::Finding& f : after.findings)
    if (f.severity != Severity::Note && !shared.contains(&f)) otherwise.push_back(&f);
  std::unordered_set<std::string_view> subjects;
  for (const audit::Finding* f : otherwise) subjects.insert(f->subject);
  std::unordered_map<Broken, Severity, HashOfBroken> known;  // the worst; findings stand worst first
  for (const audit::Finding& f : before.findings)
    if (subjects.contains(f.subject)) known.try_emplace(Broken{f.subject, f.rule}, f.severity);
  for (const audit::Finding* finding : otherwise) {
    const audit::Finding& f = *finding;
    const auto was = known.find(Broken{f.subject, f.rule});
    if (was != known.end() && was->second <= f.severity) continue;
    const auto [of, is_first] = of_.try_emplace(f.subject, Of{f.severity, {}});
    if (is_first) subjects_.push_back(f.subject);
    if (f.severity == of->second.worst) of->second.findings.push_back(finding);
  }
}

bool NewFindings::has(const std::string& subject, Severity least) const {
  const auto found = of_.find(subject);
  return found != of_.end() && found->second.worst <= least;
}

QString NewFindings::words(const std::string& subject) const {
  const auto found = of_.find(subject);
  if (found == of_.end()) return {};
  QStringList words;
  for (const audit::Finding* f : found->second.findings) words << ruleWords(f->rule, f->which);
  words.removeDuplicates();
  return words.join(Words::tr(", "));
}

std::vector<StationChange> NewFindings::changesOfThings(const audit::Report& after) const {
  std::set<std::string_view> stations;
  for (const auto& station : after.stations) stations.insert(station.id);
  std::vector<StationChange> changes;
  for (const std::string_view subject : subjects_) {
    if (stations.contains(subject)) continue;
    const bool fails = of_.at(subject).worst == Severity::Fail;
    const std::string id(subject);
    changes.push_back({id, Turn::Worse,
                       (fails ? Words::tr("now fails: %1") : Words::tr("now warns: %1")).arg(words(id)),
                       fails ? Gravity::NowFails : Gravity::NowWarns});
  }
  return changes;
}

}  // namespace stopwalk::plan
