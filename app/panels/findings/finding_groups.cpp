#include "app/panels/findings/finding_groups.h"

#include <QCoreApplication>
#include <algorithm>
#include <set>
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
  std::set<std::pair<std::string_view, std::string_view>> known;
  for (const Finding& finding : before.findings) known.emplace(finding.rule, finding.subject);
  std::vector<bool> is_new;
  for (const Finding& finding : report.findings)
    is_new.push_back(!known.contains({finding.rule, finding.subject}));
  return is_new;
}

}  // namespace stopwalk::panels
