#include "app/plan/changes.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <string_view>
#include <unordered_map>

#include "app/plan/new_findings.h"
#include "app/plan/told_figures.h"
#include "app/plan/words.h"
#include "core/audit/wording.h"

namespace stopwalk::plan {
namespace {

constexpr double kSame_m = 0.01;
constexpr double kSame_s = 0.1;

// Farther than any walk where there is no way at all.
double farness(const audit::Nearest& nearest) {
  return nearest.walk_m.value_or(std::numeric_limits<double>::infinity());
}

// What is not known is not the same as what is.
bool sameSeconds(const std::optional<double>& a, const std::optional<double>& b) {
  return a && b ? std::abs(*a - *b) < kSame_s : a.has_value() == b.has_value();
}

// How wide the way is where it is narrowest; none where it is as wide as walks are measured, or is no way.
std::optional<double> narrowness(const audit::Nearest& nearest) {
  return nearest.status == audit::Status::Narrow ? nearest.clear_width_m : std::nullopt;
}

bool sameWidth(const audit::Nearest& a, const audit::Nearest& b) {
  const auto was = narrowness(a), is = narrowness(b);
  return was && is ? std::abs(*was - *is) < kSame_m : was.has_value() == is.has_value();
}

bool sameWalk(const audit::Nearest& a, const audit::Nearest& b) {
  return farness(a) == farness(b) || std::abs(farness(a) - farness(b)) < kSame_m;
}

bool same(const audit::Nearest& a, const audit::Nearest& b) {
  return a.status == b.status && a.device == b.device && sameSeconds(a.seconds, b.seconds) &&
         sameWidth(a, b) && sameWalk(a, b);
}

Turn turnOfWidths(const audit::StationReport& before, const audit::StationReport& after) {
  bool wider = false, narrower = false;
  for (const auto nearest : {&audit::StationReport::stop, &audit::StationReport::phone}) {
    if (sameWidth(before.*nearest, after.*nearest)) continue;
    const auto was = narrowness(before.*nearest), is = narrowness(after.*nearest);
    (!is || (was && *is > *was) ? wider : narrower) = true;
  }
  if (wider == narrower) return Turn::Other;
  return wider ? Turn::Better : Turn::Worse;
}

// What the station is newly said to fail or warn for, beside a verdict that stays.
bool breaksMore(const audit::StationReport& after, const NewFindings& found) {
  return found.has(after.id,
                   after.verdict == audit::Verdict::Fails ? audit::Severity::Fail : audit::Severity::Warn);
}

// A way that is lost outweighs all, then the verdict, then another rule that is broken; what is nearer here
// and farther there is neither, and so is what is not known before or after.
Turn turnOf(const audit::StationReport& before, const audit::StationReport& after, const NewFindings& found) {
  bool nearer = false, farther = false;
  for (const auto nearest : {&audit::StationReport::stop, &audit::StationReport::phone}) {
    const double was = farness(before.*nearest), is = farness(after.*nearest);
    if (std::isinf(is) && !std::isinf(was)) return Turn::Worse;
    if (was != is && !(std::abs(was - is) < kSame_m)) (is < was ? nearer : farther) = true;
  }
  if (before.verdict != after.verdict) return after.verdict < before.verdict ? Turn::Better : Turn::Worse;
  if (breaksMore(after, found)) return Turn::Worse;
  const auto& was = before.stop.seconds;
  const auto& is = after.stop.seconds;
  if (!nearer && !farther && was && is && !sameSeconds(was, is))
    return *is < *was ? Turn::Better : Turn::Worse;
  if (nearer != farther) return nearer ? Turn::Better : Turn::Worse;
  return nearer ? Turn::Other : turnOfWidths(before, after);
}

QString widthText(const audit::Nearest& nearest, layout::LengthUnit unit) {
  const auto width = narrowness(nearest);
  return width ? QString::fromStdString(audit::lengthText(*width, unit)) : Words::tr("wide");
}

// What is told of both reports.
struct Told {
  ToldFigures before, after;
  layout::LengthUnit unit;
};

// All that differs from one to the other, in its parts: "3 m → 4 m".
QStringList differences(const std::string& station, const audit::Nearest& was, const audit::Nearest& is,
                        const Told& told) {
  QStringList parts;
  const auto add = [&](const QString& from, const QString& to) {
    parts << Words::tr("%1 → %2").arg(from, to);
  };
  const QString from = told.before.walk(station, was), to = told.after.walk(station, is);
  if (from != to)
    add(from, to);
  else if (!sameSeconds(was.seconds, is.seconds))
    add(told.before.seconds(station, was), told.after.seconds(station, is));
  if (!sameWidth(was, is) && was.walk_m && is.walk_m)  // no way is not a wide one
    parts << Words::tr("narrowest %1 → %2").arg(widthText(was, told.unit), widthText(is, told.unit));
  if (parts.isEmpty() && was.device != is.device)
    add(QString::fromStdString(was.name), QString::fromStdString(is.name));
  return parts;
}

bool isLost(const audit::Nearest& was, const audit::Nearest& is) {
  return std::isinf(farness(is)) && !std::isinf(farness(was));
}

Gravity gravityOf(const audit::StationReport& before, const audit::StationReport& after, Turn turn) {
  const bool is_worse = after.verdict > before.verdict;
  if (is_worse && after.verdict == audit::Verdict::Fails) return Gravity::NowFails;
  bool unmeasured = false;
  for (const auto nearest : {&audit::StationReport::stop, &audit::StationReport::phone}) {
    if (!isLost(before.*nearest, after.*nearest)) continue;
    if ((after.*nearest).status != audit::Status::Unmeasured) return Gravity::WayLost;
    unmeasured = true;
  }
  if (is_worse) return Gravity::NowWarns;
  if (unmeasured) return Gravity::NotMeasured;
  return turn == Turn::Worse ? Gravity::Worse : turn == Turn::Other ? Gravity::Other : Gravity::Better;
}

double farthestChange_m(const audit::StationReport& before, const audit::StationReport& after) {
  double most = 0;
  for (const auto nearest : {&audit::StationReport::stop, &audit::StationReport::phone}) {
    const double was = farness(before.*nearest), is = farness(after.*nearest);
    if (was != is) most = std::max(most, std::abs(is - was));
  }
  return most;
}

// First, since it matters most, the verdict, with the reasons that are new.
QString verdictText(const audit::StationReport& before, const audit::StationReport& after,
                    const NewFindings& found) {
  const bool fails = after.verdict == audit::Verdict::Fails;
  const QString reasons = breaksMore(after, found) ? found.words(after.id) : QString();
  if (before.verdict == after.verdict) {
    if (reasons.isEmpty()) return {};
    return (fails ? Words::tr("fails now also: %1") : Words::tr("warns now also: %1")).arg(reasons);
  }
  if (after.verdict == audit::Verdict::Meets) return Words::tr("now meets");
  if (reasons.isEmpty()) return fails ? Words::tr("now fails") : Words::tr("now warns");
  return (fails ? Words::tr("now fails: %1") : Words::tr("now warns: %1")).arg(reasons);
}

QString textOf(const audit::StationReport& before, const audit::StationReport& after,
               const NewFindings& found, const Told& told) {
  QStringList parts;
  const auto add = [&](const QString& what, const audit::Nearest& was, const audit::Nearest& is) {
    if (same(was, is)) return;
    if (const QStringList all = differences(after.id, was, is, told); !all.isEmpty())
      parts << what.arg(all.join(Words::tr(", ")));
  };
  if (const QString verdict = verdictText(before, after, found); !verdict.isEmpty()) parts << verdict;
  add(Words::tr("stop %1"), before.stop, after.stop);
  add(Words::tr("phone %1"), before.phone, after.phone);
  return QString::fromStdString(after.name) + ": " + parts.join(Words::tr("; "));
}

// The stations of a report by their ids; most often another report has them at the same place.
class StationsOf {
 public:
  explicit StationsOf(const audit::Report& report) : stations_(report.stations) {}
  const audit::StationReport* find(const std::string& id, std::size_t likely) const {
    if (likely < stations_.size() && stations_[likely].id == id) return &stations_[likely];
    if (by_id_.empty())
      for (const auto& station : stations_) by_id_.emplace(station.id, &station);
    const auto found = by_id_.find(id);
    return found == by_id_.end() ? nullptr : found->second;
  }

 private:
  const audit::SharedList<audit::StationReport>& stations_;
  mutable std::unordered_map<std::string_view, const audit::StationReport*> by_id_;
};

}  // namespace

std::vector<StationChange> changesBetween(const audit::Report& before, const audit::Report& after) {
  const NewFindings found(before, after);
  const StationsOf was(before);
  const Told told{{before, after.unit}, {after, after.unit}, after.unit};
  std::vector<StationChange> changes;
  for (std::size_t i = 0; i < after.stations.size(); ++i) {
    const audit::StationReport& is = after.stations[i];
    const audit::StationReport* known = was.find(is.id, i);
    if (!known || (known == &is && !found.any())) continue;
    const audit::StationReport& old = *known;
    if (old.verdict == is.verdict && same(old.stop, is.stop) && same(old.phone, is.phone) &&
        !breaksMore(is, found))
      continue;
    const Turn turn = turnOf(old, is, found);
    changes.push_back(
        {is.id, turn, textOf(old, is, found, told), gravityOf(old, is, turn), farthestChange_m(old, is)});
  }
  return changes;
}

void sortGravestFirst(std::vector<StationChange>& changes) {
  std::ranges::stable_sort(changes, [](const StationChange& a, const StationChange& b) {
    return a.gravity != b.gravity ? a.gravity < b.gravity : a.by_m > b.by_m;
  });
}

}  // namespace stopwalk::plan
