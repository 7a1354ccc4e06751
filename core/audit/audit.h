#pragma once

#include <cstddef>
#include <memory>
#include <span>

#include "core/audit/profile.h"
#include "core/audit/report.h"
#include "core/audit/wanted.h"
#include "core/floor/plan.h"
#include "core/inspection/schedule.h"
#include "core/layout/device_kind.h"
#include "core/layout/layout.h"

namespace stopwalk::audit {

// The devices that failed a check and have not passed one since. Those that are not in the layout are
// passed by.
using Failed = std::span<const inspection::FailedDevice>;

// Holds a layout against a profile at the given hours. The same input gives the same report to the last bit.
// What is in `failed` is found by failed-check and counts as no stop, unless the profile says otherwise.
Report audit(const layout::Layout& layout, const layout::DeviceKinds& kinds, const Profile& profile,
             floor::Hours hours = floor::Hours::Open, Failed failed = {});

class LastWalks;

// Audits one layout after another, each a little different from the last, such as while a machine is dragged.
// The reports are those of audit(); docs/walks.md tells how rarely a last digit differs. While machines and
// fixtures are moved or turned, only what that may have touched is judged again; after other changes only the
// walks are kept that it cannot have touched. One thread at a time.
class Auditor {
 public:
  Auditor();
  ~Auditor();
  // The report is good until the next audit. What is made from nothing is left, by NoLongerWanted, once it is
  // not wanted; what follows the last audit is made in any case, for the next one would have to follow it,
  // too.
  const Report& audit(const layout::Layout& layout, const layout::DeviceKinds& kinds, const Profile& profile,
                      floor::Hours hours = floor::Hours::Open, Failed failed = {}, const Wanted& wanted = {});

  // Of the walks that the last audit asked about.
  std::size_t walksKept() const;
  std::size_t walksFound() const;
  // How many audits followed the last one by its moves; the others were made from nothing but its walks.
  std::size_t followed() const { return followed_; }
  // How many ways after hours the last audit knew to be those of the day.
  std::size_t waysByDay() const;

 private:
  struct Last;

  std::unique_ptr<LastWalks> walks_;
  std::unique_ptr<Last> last_;
  std::size_t followed_ = 0;
};

}  // namespace stopwalk::audit
