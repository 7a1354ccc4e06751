#pragma once

#include <array>
#include <memory>
#include <string>
#include <unordered_map>
#include <utility>
#include <vector>

#include "core/audit/context.h"
#include "core/audit/report.h"
#include "core/audit/rule.h"

namespace stopwalk::audit {

// A context held against the profile's rules: the report, and what each finding hangs on.
class Judged {
 public:
  explicit Judged(const Context& context, const Wanted& wanted = {});

  // After the context was moved.
  void again(const Changed& changed);

  const Report& report() const { return report_; }
  Report takeReport() { return std::move(report_); }

 private:
  // Where in the report a finding stands: severity, room, subject, then the order of the rules and of what
  // they look at.
  struct Place {
    Severity severity = Severity::Fail;
    std::size_t room = 0, subject = 0;
    std::size_t rule = 0, search = 0, of = 0, number = 0;
    auto operator<=>(const Place&) const = default;
  };
  struct Placed {
    Place place;
    Finding finding;
  };
  // One station, machine or other thing that rules look at.
  struct Subject {
    Trace trace;
    std::size_t findings = 0;
  };
  struct Counts {
    std::size_t fails = 0, warns = 0;
  };

  std::size_t countOf(Each each) const;
  void noteOwn(Each each, std::size_t index);
  void judge(Each each, std::size_t index, std::vector<Placed>& fresh);
  void count(const Finding& finding, int by);
  void orderIds();
  std::size_t orderOf(const std::string& id) const;
  StationReport stationReport(std::size_t station) const;
  Verdict verdictOf(const StationReport& station) const;
  void replace(const std::array<std::vector<char>, kEachKinds>& judged, std::vector<Placed> fresh);

  const Context& context_;
  std::unordered_map<std::string, std::size_t> order_;  // of rooms, and of all that a finding can be about
  std::array<std::vector<Subject>, kEachKinds> subjects_;
  std::vector<std::pair<Place, Each>> places_;  // of the report's findings
  std::unordered_map<std::string, Counts> counts_;
  std::unordered_multimap<std::string, std::size_t> station_of_id_;
  Report report_;
};

}  // namespace stopwalk::audit
