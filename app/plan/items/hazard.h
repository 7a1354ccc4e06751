#pragma once

#include "app/plan/items/item.h"

namespace stopwalk::plan {

// Where nobody may reach across: thin dashes, a hatch while its machine is selected.
void paintHazard(QPainter& painter, const PaintContext& context, const geometry::Polygon& outline_in_plan);

}  // namespace stopwalk::plan
