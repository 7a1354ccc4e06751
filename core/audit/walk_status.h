#pragma once

#include "core/audit/report.h"
#include "core/floor/walks.h"

namespace stopwalk::audit {

// What a walk by itself comes to: never at hand, and never without anything to walk to.
inline Status statusOf(floor::WalkStatus status) {
  switch (status) {
    case floor::WalkStatus::Walk:
      return Status::Walk;
    case floor::WalkStatus::Narrow:
      return Status::Narrow;
    case floor::WalkStatus::Unreachable:
      return Status::Unreachable;
    case floor::WalkStatus::Unmeasured:
      break;
  }
  return Status::Unmeasured;
}

}  // namespace stopwalk::audit
