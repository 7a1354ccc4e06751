#pragma once

#include <QPainter>
#include <vector>

#include "app/plan/items/item.h"

namespace stopwalk::plan {

// Where each label that finds a place goes: no two overlap, none lies on what is `taken`, and none leaves
// `visible`. In the order of importance.
struct PlacedLabel {
  QString text;
  QRectF box;
};
std::vector<PlacedLabel> placeLabels(std::vector<Label> labels, const QFontMetricsF& metrics,
                                     const QRectF& visible, const std::vector<QRectF>& taken = {});

void paintLabels(QPainter& painter, const Theme& theme, const QRectF& visible, std::vector<Label> labels,
                 const std::vector<QRectF>& taken = {});

}  // namespace stopwalk::plan
