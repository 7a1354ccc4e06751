#pragma once

#include <QColor>

#include "app/plan/theme.h"

// A poster is printed on white: the light theme's colours, and what only paper has.
namespace stopwalk::poster {

inline const plan::Theme& inks() {
  static const plan::Theme light = plan::Theme::light();
  return light;
}
inline const QColor kPaperWhite{0xFFFFFF};

}  // namespace stopwalk::poster
