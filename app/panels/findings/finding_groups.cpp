#include "app/panels/findings/finding_groups.h"

#include <QCoreApplication>
#include <algorithm>
#include <map>
#include <set>
#include <string_view>
#include <tuple>
#include <unordered_map>

#include "app/panels/search_line.h"
#include "core/audit/rule.h"
#include "core/audit/wording.h"
#include "core/layout/names.h"

namespace stopwalk::panels {
namespace {

using audit::Finding;
using audit::Severity;

struct Words {
  Q_DECLARE_TR_FUNCTIONS(FindingGroups)
};

bool isWanted(const Finding& finding, const FindingFilter& filter) {
  const bool severity = finding.severity == Severity::Fail   ? filter.fails
                        : finding.severity == Severity::Warn ? filter.warns
                                                             : filter.notes;
  if (!severity) return false;
  const std::string text = finding.text + " " + finding.rule + " " + finding.subject + " " + finding.room;
  return filter.search.isEmpty() || matches(QString::fromStdString(text), filter.search);
}

// What a finding stands under, by its id, and how that is called: with the id where another is called so too.
class Titles {
 public:
  Titles(const layout::Layout& layout, GroupBy by) : by_(by) {
    if (by == GroupBy::Room) name(layout.rooms);
    if (by == GroupBy::Machine) name(layout.machines);
  }

  // Empty: under none of them.
  std::string keyOf(const Finding& finding) const {
    if (by_ == GroupBy::Rule) return finding.rule;
    const std::string id =
        by_ == GroupBy::Room ? finding.room : finding.subject.substr(0, finding.subject.find('/'));
    return names_.contains(id) ? id : std::string();
  }

  QString of(const std::string& key) const {
    if (by_ == GroupBy::Rule) {
      const audit::Rule* rule = audit::findRule(key);
      return QString::fromStdString(rule ? audit::withCapital(rule->finds) : key);
    }
    const auto found = names_.find(key);
    if (found == names_.end())
      return by_ == GroupBy::Room ? Words::tr("In no room") : Words::tr("Of no machine");
    const QString name = QString::fromStdString(found->second);
    return how_many_.at(found->second) == 1
               ? name
               : QStringLiteral("%1 (%2)").arg(name, QString::fromStdString(key));
  }

 private:
  template <class Things>
  void name(const Things& things) {
    for (const auto& thing : things) ++how_many_[names_[thing.id] = layout::nameOf(thing)];
  }

  GroupBy by_;
  std::unordered_map<std::string, std::string> names_;  // by id
  std::unordered_map<std::string, int> how_many_;       // by name
};

// Findings of one sort may be the same one with another number; a rule that measures nothing says by its
// sentence what it is about, such as to where there is no way.
using Sort = std::tuple<std::string_view, std::string_view, std::string_view>;

Sort sortOf(const Finding& f) {
  return {f.rule, f.subject, f.measured ? std::string_view() : std::string_view(f.text)};
}

}  // namespace

std::vector<FindingGroup> groupsOf(const audit::Report& report, const layout::Layout& layout,
                                   const FindingFilter& filter) {
  const Titles titles(layout, filter.group_by);
  std::vector<FindingGroup> groups;
  std::unordered_map<std::string, std::size_t> known;  // by key, into `groups`
  for (std::size_t i = 0; i < report.findings.size(); ++i) {
    const Finding& finding = report.findings[i];
    if (!isWanted(finding, filter)) continue;
    const std::string key = titles.keyOf(finding);
    const auto [group, is_first] = known.emplace(key, groups.size());
    if (is_first) groups.push_back({titles.of(key), {}});
    groups[group->second].findings.push_back(i);
  }
  return groups;
}

std::vector<bool> newSince(const audit::Report& report, const audit::Report& before) {
  std::map<Sort, std::vector<std::string_view>> known;  // what they say
  for (const Finding& f : before.findings) known[sortOf(f)].push_back(f.text);
  std::vector<bool> is_new(report.findings.size());
  std::vector<std::size_t> others;  // that say something else than all before
  for (std::size_t i = 0; i < report.findings.size(); ++i) {
    auto& texts = known[sortOf(report.findings[i])];
    const auto same = std::ranges::find(texts, report.findings[i].text);
    if (same == texts.end())
      others.push_back(i);
    else
      texts.erase(same);
  }
  for (const std::size_t i : others) {
    auto& texts = known[sortOf(report.findings[i])];
    if (texts.empty())
      is_new[i] = true;
    else
      texts.pop_back();
  }
  return is_new;
}

std::size_t goneBy(const planning::Suppositions& suppositions, const layout::Layout& layout,
                   const audit::Report& as_it_is, const audit::Report& supposed) {
  const std::set<std::string> out{suppositions.out_of_order.begin(), suppositions.out_of_order.end()};
  std::set<std::string> unlooked = out;
  for (const layout::TapeCheck& tape : layout.tape_checks)
    if (out.contains(tape.from) || out.contains(tape.to)) unlooked.insert(tape.id);
  const std::vector<bool> is_gone = newSince(as_it_is, supposed);
  std::size_t gone = 0;
  for (std::size_t i = 0; i < is_gone.size(); ++i)
    gone += is_gone[i] && !unlooked.contains(as_it_is.findings[i].subject);
  return gone;
}

}  // namespace stopwalk::panels
