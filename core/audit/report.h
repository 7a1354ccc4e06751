#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/audit/shared_list.h"
#include "core/floor/plan.h"
#include "core/geometry/point.h"
#include "core/layout/layout.h"

// The one result that window, table, JSON, poster and tests read. Lengths in metres where the name ends in
// `_m`.
namespace stopwalk::audit {

using layout::Severity;
enum class BasisKind { Published, CommonPractice, HouseRule };

struct Basis {
  BasisKind kind = BasisKind::CommonPractice;
  std::string reference;  // printed; empty where there is no source that was seen
  bool operator==(const Basis&) const = default;
};

// Who lets a finding stand, why, and until when.
struct Acceptance {
  std::string reason;
  std::string by;
  std::string until;  // 2026-12-31: the last day
  // What was measured when it was accepted, in the finding's unit; none: whatever is measured.
  std::optional<double> measured = {};
  bool operator==(const Acceptance&) const = default;
};

// Where a finding was measured, to be drawn on the plan: a walk, a straight line, the width of an opening, or
// a place (a point or a line) that is meant and from which nothing is measured.
struct MeasuredLine {
  enum class Kind { Route, Straight, Width, Place };
  Kind kind = Kind::Route;
  std::vector<geometry::Point> line_m;
  std::optional<double> length_m = {};  // as it was measured; none: it has none that counts
  bool operator==(const MeasuredLine&) const = default;
};

struct Finding {
  std::string rule;
  Severity severity = Severity::Fail;
  std::string subject;  // id, such as `saw-2/operator`
  std::string room;     // id, or empty
  // Tells it from the rule's others about the subject, today's and tomorrow's (core/layout/which.h); empty
  // where there can be but one.
  std::string which = {};
  std::optional<double> measured;
  std::optional<double> limit;
  std::string unit;  // "m", "s", "%", "" for a count
  std::string text;  // a whole sentence that a shop manager can act on
  Basis basis;
  std::optional<Acceptance> accepted = {};  // whether that still holds: acceptedState()
  std::optional<Acceptance> unclear = {};   // may mean this finding or another, and so accepts neither
  std::vector<MeasuredLine> lines = {};
};

enum class Status { AtHand, Walk, Narrow, Unreachable, None, Unmeasured };

// A station's nearest stop or phone. For None, Unreachable and Unmeasured everything but `status` is absent.
struct Nearest {
  Status status = Status::None;
  std::string device;
  std::string name;  // as people call it: "its own foot bar"
  std::string kind;  // of a stop
  std::optional<double> walk_m;
  std::optional<double> clear_width_m;
  std::optional<double> run_down_s;
  std::optional<double> seconds;
  std::vector<geometry::Point> path_m;
};

enum class Verdict { Meets, Warns, Fails };

struct StationReport {
  std::string id;
  std::string name;  // "Belt sander, operator"
  std::string machine;
  layout::Role role = layout::Role::Operator;
  std::string room;
  geometry::Point at_m;
  Nearest stop;
  Nearest phone;
  bool lacks_stop = false, lacks_phone = false;  // needs one and has no way to it, or none that is known
  Verdict verdict = Verdict::Meets;
};

struct Report {
  std::string layout_name;
  std::optional<int> revision;
  std::string profile;
  floor::Hours hours = floor::Hours::Open;
  SharedList<StationReport> stations;  // in the order of the file
  SharedList<Finding> findings;        // worst first, then by room, subject, rule
  std::size_t machines = 0;
  std::size_t devices = 0;  // stops, guarded starts and cut-offs; phones are not counted
  layout::LengthUnit unit = layout::LengthUnit::Millimetre;  // of the layout: what people there measure in
  std::size_t count(Severity severity) const;
  std::size_t count(Verdict verdict) const;
  // The stations without a way to a stop or to a phone of which no failing or warning finding is.
  std::size_t countUntold() const;
};

}  // namespace stopwalk::audit
