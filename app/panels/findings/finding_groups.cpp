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

// What a finding stands under, and how that is called.
class Titles {
 public:
  Titles(const layout::Layout& layout, GroupBy by) : by_(by) {
    for (const auto& room : layout.rooms) rooms_[room.id] = layout::nameOf(room);
    for (const auto& machine : layout.machines) machines_[machine.id] = layout::nameOf(machine);
  }

  QString of(const Finding& finding) const {
    switch (by_) {
      case GroupBy::Room:
        return named(rooms_, finding.room, Words::tr("In no room"));
      case GroupBy::Machine:
        return named(machines_, finding.subject.substr(0, finding.subject.find('/')),
                     Words::tr("Of no machine"));
      case GroupBy::Rule:
        if (const audit::Rule* rule = audit::findRule(finding.rule))
          return QString::fromStdString(audit::withCapital(rule->finds));
        return QString::fromStdString(finding.rule);
    }
    return {};
  }

 private:
  using Names = std::unordered_map<std::string, std::string>;
  static QString named(const Names& names, const std::string& id, const QString& none) {
    const auto found = names.find(id);
    return found == names.end() ? none : QString::fromStdString(found->second);
  }

  GroupBy by_;
  Names rooms_, machines_;
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
  for (std::size_t i = 0; i < report.findings.size(); ++i) {
    const Finding& finding = report.findings[i];
    if (!isWanted(finding, filter)) continue;
    const QString title = titles.of(finding);
    auto group = std::ranges::find(groups, title, &FindingGroup::title);
    if (group == groups.end()) group = groups.insert(groups.end(), {title, {}});
    group->findings.push_back(i);
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
