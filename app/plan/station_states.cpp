#include "app/plan/station_states.h"

#include "core/audit/accepted.h"

namespace stopwalk::plan {
namespace {

StationState stateOf(audit::Verdict verdict, bool accepted) {
  switch (verdict) {
    case audit::Verdict::Meets:
      return StationState::Meets;
    case audit::Verdict::Warns:
      return accepted ? StationState::WarnsAccepted : StationState::Warns;
    case audit::Verdict::Fails:
      return accepted ? StationState::FailsAccepted : StationState::Fails;
  }
  return StationState::NotAudited;
}

}  // namespace

std::vector<StationState> statesOf(const audit::Report& report, inspection::Date today) {
  const std::vector<bool> accepted = audit::acceptedStations(report, today);
  std::vector<StationState> states;
  states.reserve(accepted.size());
  for (std::size_t i = 0; i < accepted.size(); ++i)
    states.push_back(stateOf(report.stations[i].verdict, accepted[i]));
  return states;
}

}  // namespace stopwalk::plan
