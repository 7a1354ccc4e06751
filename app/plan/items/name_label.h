#pragma once

#include "app/plan/items/item.h"

namespace stopwalk::plan {

// The name of a thing that covers `box` on the screen: inside, in as many lines as fit it, else beside it;
// none if the thing is too small to be named.
std::optional<Label> nameLabel(const QString& name, const QRectF& box, int importance);

}  // namespace stopwalk::plan
