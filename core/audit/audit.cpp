#include "core/audit/audit.h"

#include <algorithm>
#include <string_view>
#include <unordered_map>
#include <utility>

#include "core/audit/accepted.h"
#include "core/audit/context.h"
#include "core/audit/judged.h"
#include "core/audit/moves.h"

namespace stopwalk::audit {

Report audit(const layout::Layout& layout, const layout::DeviceKinds& kinds, const Profile& profile,
             floor::Hours hours, Failed failed) {
  const Context context(layout, kinds, profile, hours, failed);
  return Judged(context).takeReport();
}

// The last audit, with all that it was made of.
struct Auditor::Last {
  Last(const layout::Layout& of, const layout::DeviceKinds& by_kinds, const Profile& by, floor::Hours at,
       Failed by_failed, LastWalks* walks, const Wanted& wanted)
      : layout(of),
        kinds(by_kinds),
        profile(by),
        failed(by_failed.begin(), by_failed.end()),
        context(layout, kinds, profile, at, failed, walks, wanted),
        judged(context, wanted) {}

  bool isOf(const layout::DeviceKinds& by_kinds, const Profile& by, floor::Hours at, Failed by_failed) const {
    return context.hours == at && profile == by && kinds.all() == by_kinds.all() &&
           std::ranges::equal(failed, by_failed);
  }
  // False: too much is otherwise, and this is of no further use.
  bool follow(const layout::Layout& now) {
    // From time to time all is made anew: what was asked for on the way and never again is forgotten.
    constexpr int kMostMoves = 20000;
    const auto moves = movesBetween(layout, now);
    if (!moves || ++followed > kMostMoves) return false;
    if (moves->empty()) return true;
    for (const Move& m : *moves) put(m, layout);
    const auto changed = context.move(*moves);
    if (changed) judged.again(*changed);
    return changed.has_value();
  }

  layout::Layout layout;
  const layout::DeviceKinds kinds;
  const Profile profile;
  const std::vector<inspection::FailedDevice> failed;
  Context context;
  Judged judged;
  int followed = 0;
};

Auditor::Auditor() : walks_(std::make_unique<LastWalks>()) {}
Auditor::~Auditor() = default;

const Report& Auditor::audit(const layout::Layout& layout, const layout::DeviceKinds& kinds,
                             const Profile& profile, floor::Hours hours, Failed failed,
                             const Wanted& wanted) {
  // What throws on the way leaves nothing half moved: the next audit is made from nothing.
  std::unique_ptr<LastWalks> walks = std::exchange(walks_, std::make_unique<LastWalks>());
  std::unique_ptr<Last> last = std::move(last_);
  if (last && last->isOf(kinds, profile, hours, failed) && last->follow(layout)) {
    ++followed_;
  } else {
    last = nullptr;
    last = std::make_unique<Last>(layout, kinds, profile, hours, failed, walks.get(), wanted);
  }
  last_ = std::move(last);
  walks_ = std::move(walks);
  return last_->judged.report();
}

std::size_t Auditor::walksKept() const {
  return walks_->count().kept;
}

std::size_t Auditor::waysByDay() const {
  return last_ ? last_->context.countByDay() : 0;
}

std::size_t Auditor::walksFound() const {
  return walks_->count().found;
}

std::size_t Report::count(Severity severity) const {
  return static_cast<std::size_t>(std::ranges::count(findings, severity, &Finding::severity));
}

std::size_t Report::count(Verdict verdict) const {
  return static_cast<std::size_t>(std::ranges::count(stations, verdict, &StationReport::verdict));
}

std::size_t Report::countUntold() const {
  std::unordered_map<std::string_view, Lacks> told;
  for (const Finding& f : findings) {
    if (f.severity == Severity::Note) continue;
    const Lacks lacks = lackTold(f);
    Lacks& all = told[f.subject];
    all = {all.stop || lacks.stop, all.phone || lacks.phone};
  }
  return static_cast<std::size_t>(std::ranges::count_if(stations, [&](const StationReport& s) {
    const auto at = told.find(s.id);
    const Lacks all = at == told.end() ? Lacks() : at->second;
    return (s.lacks_stop && !all.stop) || (s.lacks_phone && !all.phone);
  }));
}

}  // namespace stopwalk::audit
