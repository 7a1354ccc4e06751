#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/audit/report.h"

// A rule of the audit: what it looks for, its limits and where they come from. One file per rule in
// core/audit/rules, one line in rules/rules.def; no rule knows another.
namespace stopwalk::audit {

class Context;

// A number that a profile may change. `unit` is that of the number: "m", "s", "%", or "" for a count.
struct Limit {
  std::string name;  // `limit` where a rule has one
  std::string unit;
  double value = 0;
  std::optional<double> most = std::nullopt;  // what can be measured ends here
};

// A rule as a profile has it.
struct Setting {
  bool on = true;
  Severity severity = Severity::Fail;
  std::vector<double> limits;  // in the order of the rule's
  Basis basis;
  double limit() const { return limits.front(); }
  bool operator==(const Setting&) const = default;
};

// What a rule judges one by one: on its own, so that after a small change only what is near it is judged
// again.
enum class Each { Station, Machine, Device, Phone, Room, TapeCheck, Layout };
inline constexpr std::size_t kEachKinds = 7;

// Findings about one of them, named by its index, with everything but rule, severity and basis filled in.
struct Search {
  Each each = Each::Layout;
  std::vector<Finding> (*find)(const Context&, const Setting&, std::size_t) = nullptr;
};

struct Rule {
  std::string id;
  Severity severity = Severity::Fail;
  std::vector<Limit> limits;
  Basis basis;
  std::string finds;    // what it finds, as a clause: "a machine that ..."
  std::string meaning;  // one paragraph: why it matters, what is counted and what is not
  std::string mend;     // what would mend it, as advice: a sentence or two
  std::vector<Search> find;
  bool several = false;      // it may find several things of one subject, which Finding::which tells apart
  bool names_which = false;  // it finds one at most, and says by Finding::which what of the subject it is

  Setting setting() const;
};

// All rules, in the order of rules/rules.def.
const std::vector<const Rule*>& rules();
const Rule* findRule(std::string_view id);

// The place of a limit among the rule's by its name; with one limit only, the empty name is it.
std::optional<std::size_t> findLimit(const Rule& rule, std::string_view name);

// Over or under a limit by more than a thousandth of a millimetre (or its like in other units): what rounding
// may add.
inline constexpr double kRounding = 1e-6;
inline bool over(double value, double limit) {
  return value > limit + kRounding;
}
inline bool under(double value, double limit) {
  return value < limit - kRounding;
}

}  // namespace stopwalk::audit
