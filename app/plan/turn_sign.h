#pragma once

#include <QString>

#include "app/plan/changes.h"

namespace stopwalk::plan {

// "▲ " or "▼ ", before what is told; nothing where it is neither better nor worse.
inline QString signOf(Turn turn) {
  return turn == Turn::Better ? QStringLiteral("▲ ") : turn == Turn::Worse ? QStringLiteral("▼ ") : QString();
}

}  // namespace stopwalk::plan
