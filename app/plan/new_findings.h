#pragma once

#include <QString>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "app/plan/changes.h"
#include "core/audit/report.h"

namespace stopwalk::plan {

// What fails or warns after a change by a rule that the same thing did not break before, or only mildly.
class NewFindings {
 public:
  NewFindings(const audit::Report& before, const audit::Report& after);

  bool any() const { return !subjects_.empty(); }
  // Whether there is one of a thing, by its id, that is at least that grave.
  bool has(const std::string& subject, audit::Severity least) const;
  // The short words of the gravest of them: "stop too far, the way is narrow"; empty: none.
  QString words(const std::string& subject) const;
  // Of what is no station of `after`, a change for each thing.
  std::vector<StationChange> changesOfThings(const audit::Report& after) const;

 private:
  struct Of {
    audit::Severity worst;
    std::vector<const audit::Finding*> findings;  // of that severity
  };
  std::unordered_map<std::string_view, Of> of_;  // by subject; of `after`, which must live on
  std::vector<std::string_view> subjects_;       // gravest first
};

}  // namespace stopwalk::plan
