#include "core/audit/audit.h"

#include <algorithm>

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
       Failed by_failed, LastWalks* walks)
      : layout(of),
        kinds(by_kinds),
        profile(by),
        failed(by_failed.begin(), by_failed.end()),
        context(layout, kinds, profile, at, failed, walks),
        judged(context) {}

  layout::Layout layout;
  const layout::DeviceKinds kinds;
  const Profile profile;
  const std::vector<inspection::FailedDevice> failed;
  Context context;
  Judged judged;
  int moves = 0;
};

Auditor::Auditor() : walks_(std::make_unique<LastWalks>()) {}
Auditor::~Auditor() = default;

const Report& Auditor::audit(const layout::Layout& layout, const layout::DeviceKinds& kinds,
                             const Profile& profile, floor::Hours hours, Failed failed) {
  // From time to time all is made anew: what was asked for on the way and never again is forgotten.
  constexpr int kMostMoves = 500;
  if (last_ && last_->moves < kMostMoves && last_->context.hours == hours && last_->profile == profile &&
      last_->kinds.all() == kinds.all() && std::ranges::equal(last_->failed, failed))
    if (const auto moves = movesBetween(last_->layout, layout)) {
      for (const Move& m : *moves) put(m, last_->layout);
      ++last_->moves;
      if (moves->empty()) return last_->judged.report();
      if (const auto changed = last_->context.move(*moves)) {
        last_->judged.again(*changed);
        return last_->judged.report();
      }
    }
  last_ = nullptr;
  last_ = std::make_unique<Last>(layout, kinds, profile, hours, failed, walks_.get());
  return last_->judged.report();
}

std::size_t Auditor::walksKept() const {
  return walks_->count().kept;
}

std::size_t Auditor::walksFound() const {
  return walks_->count().found;
}

std::size_t Report::count(Severity severity) const {
  return static_cast<std::size_t>(std::ranges::count(findings, severity, &Finding::severity));
}

}  // namespace stopwalk::audit
