#pragma once

#include <QPainter>

namespace stopwalk::plan {

// The head of an arrow, with the painter's pen and brush.
void paintArrow(QPainter& painter, QPointF from, QPointF tip);

}  // namespace stopwalk::plan
