#pragma once

#include <QPainter>
#include <vector>

#include "app/plan/items/item.h"

namespace stopwalk::plan {

// Where each label that finds a place goes: no two overlap, and none leaves `visible`. In the order of
// importance.
struct PlacedLabel {
  QString text;
  QRectF box;
};
std::vector<PlacedLabel> placeLabels(std::vector<Label> labels, const QFontMetricsF& metrics,
                                     const QRectF& visible);

void paintLabels(QPainter& painter, const Theme& theme, const QRectF& visible, std::vector<Label> labels);

}  // namespace stopwalk::plan
