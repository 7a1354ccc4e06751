#pragma once

#include <QPainter>
#include <functional>

#include "app/plan/theme.h"

namespace stopwalk::plan {

// What a mark looks like, as far as it differs from others.
struct StampKey {
  enum class What { Dot, Station, Sign, Check } what = What::Dot;
  int kind = 0;  // ground, state or sign
  int size = 0;  // in half pixels; of a check in tenths
  int turn = 0;  // in degrees; of a check its age
  bool operator==(const StampKey&) const = default;
};

// Paints a mark of a size in pixels round `middle`, within `reach` of it: on a screen a picture that is kept
// from the last time, in whole pixels, since a thousand small marks cost more than all else in a frame.
// `paint` has its origin in the middle.
void paintStamp(QPainter& painter, const Theme& theme, QPointF middle, double reach, const StampKey& key,
                const std::function<void(QPainter&)>& paint);

// Whether what is painted ends as pixels.
bool isRaster(const QPainter& painter);

}  // namespace stopwalk::plan
