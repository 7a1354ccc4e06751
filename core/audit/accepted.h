#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/audit/report.h"
#include "core/inspection/moment.h"
#include "core/layout/layout.h"

namespace stopwalk::audit {

// Marks the findings that the layout lets stand, and those that it may mean to. They keep their severity, and
// a station its verdict. Where a rule may find several things of a subject, an acceptance that does not say
// which it means accepts none, also while there is but one: the next may be another.
void markAccepted(SharedList<Finding>& findings, const std::vector<layout::AcceptedFinding>& accepted);

// Whether it accepts the finding, or would if it said which it means.
bool mayMean(const layout::AcceptedFinding& accepted, const Finding& finding);

// Whether it may mean another of all that is found than this one, which nothing accepts clearly.
bool mayMeanAnother(const layout::AcceptedFinding& accepted, const Finding& than,
                    const SharedList<Finding>& all);

// Those of the layout's that no finding needs any more. Should what they accept come back, it is accepted
// where that still holds: idleState().
std::vector<layout::AcceptedFinding> notNeeded(const std::vector<layout::AcceptedFinding>& accepted,
                                               const SharedList<Finding>& findings);

// "unreachable about saw/operator (phone)"
std::string namedText(const layout::AcceptedFinding& accepted);

// Whether the finding is the graver the more is measured, rather than the less. Asked where both it and its
// limit are known.
bool moreIsWorse(const Finding& finding);

// What the finding tells that its station may lack a way to.
struct Lacks {
  bool stop = false, phone = false;
};
Lacks lackTold(const Finding& finding);

// How it holds on a day that the layout lets a finding stand: it does, its last day has passed, that is no
// day that one can read, or the finding is worse than what was accepted by more than people are told.
enum class AcceptedState { No, Yes, Over, NoDay, Worse, Unclear };
AcceptedState acceptedState(const Finding& finding, inspection::Date today);
// Of each station of the report whether all that it fails or warns for is accepted on that day, also that it
// lacks a way to a stop or a phone. What meets is not accepted.
std::vector<bool> acceptedStations(const Report& report, inspection::Date today);
// How what no finding needs would hold on that day, should what it accepts come back just as it was.
AcceptedState idleState(const layout::AcceptedFinding& idle, inspection::Date today);
// "5.2 m": what was measured when it was accepted; empty where nothing was, or in no unit that is known.
std::string acceptedFigureText(const layout::AcceptedFinding& idle, layout::LengthUnit unit);
// "should it come back, it is accepted again as long as it is no worse than 5.2 m", or not accepted.
std::string comeBackText(const layout::AcceptedFinding& idle, inspection::Date today,
                         layout::LengthUnit unit);
// What is accepted of it, to be kept with the layout: a thousandth of its unit is enough.
std::optional<double> acceptedFigure(const Finding& finding);

// Why a finding that was accepted is so no longer: a clause, such as "the last day has passed"; empty where
// it is, or never was.
std::string whyNoLonger(const Finding& finding, inspection::Date today, layout::LengthUnit unit);

// "accepted by M. Okafor-Lind until 2026-12-31: the guard is on order"
std::string acceptedText(const Acceptance& acceptance);
// The same as a sentence of that day: what is over is accepted no longer.
std::string acceptedText(const Acceptance& acceptance, inspection::Date today);
// Of a finding that is accepted, or was: "no longer accepted: accepted at 5.2 m, now 9.8 m; it was ..."
std::string acceptedText(const Finding& finding, inspection::Date today, layout::LengthUnit unit);
// What an acceptance must say to mean this finding, as a line of the layout.
std::string whichLine(const Finding& finding);
// Why a finding is not accepted by the acceptance that is unclear, and what would make it so.
std::string unclearText(const Finding& finding);

}  // namespace stopwalk::audit
