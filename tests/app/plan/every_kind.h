#pragma once

#include "core/layout/layout.h"

namespace stopwalk::plan {

// An invented room with one thing of every kind, far from one another.
layout::Layout everyKind();

}  // namespace stopwalk::plan
