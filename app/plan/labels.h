#pragma once

#include <QPainter>
#include <vector>

#include "app/plan/items/item.h"

namespace stopwalk::plan {

// Where something lies that labels leave free: see Label::clear_of. Walls are left free where that can be.
struct Covered {
  QRectF box;
  ItemLayer layer = ItemLayer::Note;
  const Item* item = nullptr;
};

// Where each label that finds a place goes: no two overlap, none covers what it is to be clear of, and none
// leaves `visible`. In the order of importance.
struct PlacedLabel {
  QString text;
  QRectF box;
  bool on_ground = true;
  bool quiet = false;
};
std::vector<PlacedLabel> placeLabels(std::vector<Label> labels, const QFontMetricsF& metrics,
                                     const QRectF& visible, const std::vector<Covered>& covered = {});

void paintLabels(QPainter& painter, const Theme& theme, const QRectF& visible, std::vector<Label> labels,
                 const std::vector<Covered>& covered = {});

}  // namespace stopwalk::plan
