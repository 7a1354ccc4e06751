#include "app/plan/told_figures.h"

#include "app/plan/words.h"
#include "core/audit/wording.h"

namespace stopwalk::plan {

QString ToldFigures::walk(const std::string& station, const audit::Nearest& nearest) const {
  if (nearest.status == audit::Status::AtHand) return Words::tr("at hand");
  if (nearest.status == audit::Status::None) return Words::tr("none");
  if (nearest.status == audit::Status::Unmeasured) return Words::tr("not measured");
  if (!nearest.walk_m) return Words::tr("no way");
  const auto limit = limitOf(station, *nearest.walk_m, "m");
  return QString::fromStdString(limit ? audit::lengthText(*nearest.walk_m, *limit, unit_)
                                      : audit::lengthText(*nearest.walk_m, unit_));
}

QString ToldFigures::seconds(const std::string& station, const audit::Nearest& nearest) const {
  if (!nearest.seconds) return Words::tr("not known");
  const double seconds = *nearest.seconds;
  const auto limit = limitOf(station, seconds, "s");
  if (limit && audit::secondsCell(seconds) == audit::secondsCell(*limit))
    return QString::fromStdString(audit::secondsText(seconds, *limit));
  return Words::tr("%1 s").arg(seconds, 0, 'f', 1);
}

std::optional<double> ToldFigures::limitOf(const std::string& station, double value,
                                           std::string_view unit) const {
  if (!held_) {
    held_.emplace();
    for (const audit::Finding& f : report_.findings)
      if (f.measured && f.limit && *f.measured != *f.limit) held_->emplace(f.subject, &f);
  }
  for (auto [held, end] = held_->equal_range(station); held != end; ++held)
    if (held->second->unit == unit && *held->second->measured == value) return held->second->limit;
  return std::nullopt;
}

}  // namespace stopwalk::plan
