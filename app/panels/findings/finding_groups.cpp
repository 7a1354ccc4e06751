#include "app/panels/findings/finding_groups.h"

#include <QCoreApplication>
#include <algorithm>
#include <limits>
#include <map>
#include <set>
#include <string_view>
#include <tuple>
#include <unordered_map>

#include "app/panels/search_line.h"
#include "core/audit/accepted.h"
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
  if (!severity || filter.search.isEmpty()) return severity;
  const std::string text = finding.text + " " + finding.rule + " " + finding.subject + " " + finding.room;
  return matches(QString::fromStdString(text), filter.search);
}

// How many times its limit it is: less than once where more is worse and the limit itself is kept, such as a
// short walk to what is not at hand. 0 where there is no number.
double pastLimit(const Finding& f) {
  if (!f.measured || !f.limit) return 0;
  const bool more_is_worse = audit::moreIsWorse(f);
  const double part = more_is_worse ? *f.measured : *f.limit, whole = more_is_worse ? *f.limit : *f.measured;
  return whole > 0 ? part / whole : std::numeric_limits<double>::infinity();
}

// `lathe-2` before `lathe-10`: numbers without leading zeros are the greater, the longer they are.
bool isBefore(const std::string& a, const std::string& b) {
  const auto isDigit = [](char c) { return c >= '0' && c <= '9'; };
  const auto [at, in_b] = std::ranges::mismatch(a, b);
  const auto digits = [&](const std::string& text, auto from) {
    return std::find_if_not(from, text.end(), isDigit) - from;
  };
  const auto in_a = digits(a, at), of_b = digits(b, in_b);
  const bool in_number = at != a.begin() && isDigit(*std::prev(at));
  if (in_a != of_b && ((in_a > 0 && of_b > 0) || in_number)) return in_a < of_b;
  return a < b;
}

// Those of the same rank stay in the order of the report, the worst first.
void sort(std::vector<std::size_t>& which, const audit::SharedList<Finding>& findings, OrderBy order) {
  if (order == OrderBy::Gravity) return;  // as they are
  std::ranges::stable_sort(which, [&](std::size_t a, std::size_t b) {
    if (order == OrderBy::PastLimit) return pastLimit(findings[a]) > pastLimit(findings[b]);
    return isBefore(findings[a].subject, findings[b].subject);
  });
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
    if (by_ == GroupBy::Nothing) return {};
    if (by_ == GroupBy::Rule) return finding.rule;
    const std::string id =
        by_ == GroupBy::Room ? finding.room : finding.subject.substr(0, finding.subject.find('/'));
    return names_.contains(id) ? id : std::string();
  }

  QString of(const std::string& key) const {
    if (by_ == GroupBy::Nothing) return Words::tr("The whole shop");
    if (by_ == GroupBy::Rule) {
      const audit::Rule* rule = audit::findRule(key);
      return QString::fromStdString(rule ? audit::withCapital(rule->finds) : key);
    }
    const auto found = names_.find(key);
    if (found == names_.end())
      return by_ == GroupBy::Room ? Words::tr("In no room") : Words::tr("Of no machine");
    return QString::fromStdString(found->second);
  }

 private:
  template <class Things>
  void name(const Things& things) {
    const layout::NamesApart apart(things);
    for (const auto& thing : things) names_[thing.id] = apart.of(thing);
  }

  GroupBy by_;
  std::unordered_map<std::string, std::string> names_;  // by id
};

// Findings of one sort may be the same one grown worse or milder. What a rule does not measure, and of which
// it may find several about one thing, is told apart: no way to the stop is not no way to the phone.
using Sort = std::tuple<std::string_view, std::string_view, std::string_view>;

Sort sortOf(const Finding& f) {
  const audit::Rule* rule = audit::findRule(f.rule);
  const bool is_apart = rule && rule->several && !f.measured;
  return {f.rule, f.subject, is_apart ? std::string_view(f.which) : std::string_view()};
}

// Of each finding which of `before` it is, by its place there; none: it is new. Of several of a sort those
// that say the same are the same, and of the others as many as there were.
std::vector<std::optional<std::size_t>> knownFrom(const audit::Report& report, const audit::Report& before) {
  std::map<Sort, std::vector<std::size_t>> known;
  for (std::size_t i = 0; i < before.findings.size(); ++i) known[sortOf(before.findings[i])].push_back(i);
  std::vector<std::optional<std::size_t>> from(report.findings.size());
  const auto take = [&](std::size_t i, const auto& is_it) {
    auto& some = known[sortOf(report.findings[i])];
    const auto found = std::ranges::find_if(some, is_it);
    if (from[i] || found == some.end()) return;
    from[i] = *found;
    some.erase(found);
  };
  for (std::size_t i = 0; i < from.size(); ++i)
    take(i, [&](std::size_t b) { return before.findings[b].text == report.findings[i].text; });
  for (std::size_t i = 0; i < from.size(); ++i)
    take(i, [&](std::size_t b) { return before.findings[b].which == report.findings[i].which; });
  for (std::size_t i = 0; i < from.size(); ++i) take(i, [](std::size_t) { return true; });
  return from;
}

}  // namespace

std::vector<FindingGroup> groupsOf(const audit::Report& report, const layout::Layout& layout,
                                   const FindingFilter& filter) {
  const Titles titles(layout, filter.group_by);
  std::vector<FindingGroup> groups;
  std::unordered_map<std::string, std::size_t> known;  // by key, into `groups`
  std::vector<std::size_t> wanted;
  for (std::size_t i = 0; i < report.findings.size(); ++i)
    if (isWanted(report.findings[i], filter)) wanted.push_back(i);
  sort(wanted, report.findings, filter.order_by);
  for (const std::size_t i : wanted) {
    const std::string key = titles.keyOf(report.findings[i]);
    const auto [group, is_first] = known.emplace(key, groups.size());
    if (is_first) groups.push_back({titles.of(key), {}, 0});
    groups[group->second].findings.push_back(i);
  }
  for (const Finding& finding : report.findings)
    if (const auto group = known.find(titles.keyOf(finding)); group != known.end())
      ++groups[group->second].all;
  return groups;
}

std::vector<bool> newSince(const audit::Report& report, const audit::Report& before) {
  std::vector<bool> is_new;
  for (const auto& from : knownFrom(report, before)) is_new.push_back(!from);
  return is_new;
}

std::size_t otherwiseSince(const audit::Report& report, const audit::Report& before) {
  const auto from = knownFrom(report, before);
  std::size_t otherwise = 0;
  for (std::size_t i = 0; i < from.size(); ++i)
    otherwise += from[i] && before.findings[*from[i]].text != report.findings[i].text;
  return otherwise;
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
