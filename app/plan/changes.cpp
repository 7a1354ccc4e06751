#include "app/plan/changes.h"

#include <cmath>
#include <limits>
#include <unordered_map>

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

bool same(const audit::Nearest& a, const audit::Nearest& b) {
  if (a.status != b.status || a.device != b.device) return false;
  if (!sameSeconds(a.seconds, b.seconds)) return false;
  return farness(a) == farness(b) || std::abs(farness(a) - farness(b)) < kSame_m;
}

QString words(const audit::Nearest& nearest, layout::LengthUnit unit) {
  if (nearest.status == audit::Status::AtHand) return Words::tr("at hand");
  if (nearest.status == audit::Status::Unmeasured) return Words::tr("not measured");
  if (nearest.walk_m) return QString::fromStdString(audit::lengthText(*nearest.walk_m, unit));
  return Words::tr("no way");
}

// A way that is lost outweighs all, then the verdict; what is nearer here and farther there is neither, and
// so is what is not known before or after.
Turn turnOf(const audit::StationReport& before, const audit::StationReport& after) {
  bool nearer = false, farther = false;
  for (const auto nearest : {&audit::StationReport::stop, &audit::StationReport::phone}) {
    const double was = farness(before.*nearest), is = farness(after.*nearest);
    if (std::isinf(is) && !std::isinf(was)) return Turn::Worse;
    if (was != is && !(std::abs(was - is) < kSame_m)) (is < was ? nearer : farther) = true;
  }
  if (before.verdict != after.verdict) return after.verdict < before.verdict ? Turn::Better : Turn::Worse;
  const auto& was = before.stop.seconds;
  const auto& is = after.stop.seconds;
  if (!nearer && !farther && was && is && !sameSeconds(was, is))
    return *is < *was ? Turn::Better : Turn::Worse;
  if (nearer == farther) return Turn::Other;
  return nearer ? Turn::Better : Turn::Worse;
}

QString secondsText(double seconds) {
  return Words::tr("%1 s").arg(seconds, 0, 'f', 1);
}

QString textOf(const audit::StationReport& before, const audit::StationReport& after,
               layout::LengthUnit unit) {
  QStringList parts;
  const auto add = [&](const QString& what, const audit::Nearest& was, const audit::Nearest& is) {
    if (same(was, is)) return;
    const QString before_words = words(was, unit), after_words = words(is, unit);
    if (before_words != after_words || !was.seconds || !is.seconds)
      parts << what.arg(before_words, after_words);
    else
      parts << what.arg(secondsText(*was.seconds), secondsText(*is.seconds));
  };
  add(Words::tr("stop %1 → %2"), before.stop, after.stop);
  add(Words::tr("phone %1 → %2"), before.phone, after.phone);
  if (before.verdict != after.verdict)
    parts << Words::tr("now %1").arg(QString::fromStdString(std::string(audit::word(after.verdict))));
  return QString::fromStdString(after.name) + ": " + parts.join(", ");
}

}  // namespace

std::vector<StationChange> changesBetween(const audit::Report& before, const audit::Report& after) {
  std::unordered_map<std::string, const audit::StationReport*> was;
  for (const auto& station : before.stations) was.emplace(station.id, &station);
  std::vector<StationChange> changes;
  for (const auto& is : after.stations) {
    const auto found = was.find(is.id);
    if (found == was.end()) continue;
    const audit::StationReport& old = *found->second;
    if (old.verdict == is.verdict && same(old.stop, is.stop) && same(old.phone, is.phone)) continue;
    changes.push_back({is.id, turnOf(old, is), textOf(old, is, after.unit)});
  }
  return changes;
}

}  // namespace stopwalk::plan
