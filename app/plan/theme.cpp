#include "app/plan/theme.h"

#include <algorithm>

namespace stopwalk::plan {

Theme Theme::light() {
  Theme t;
  t.outside = QColor(0xEEF0F2);
  t.floor = QColor(0xFFFFFF);
  t.outdoors = QColor(0xF4F7F2);
  t.grid = QColor(0xE3E6EA);
  t.ink = QColor(0x1F2328);
  t.quiet_ink = QColor(0x59636E);
  t.machine = QColor(0xE0E6EC);
  t.fixture = QColor(0xF3F3F2);
  t.hatch = QColor(0xB9BEC4);
  t.stop_ground = QColor(0xF9A800);  // RAL 1003
  t.stop_sign = QColor(0x9B2423);    // RAL 3001
  t.start_ground = QColor(0xB8BDC3);
  t.dark_sign = QColor(0x1F2328);
  t.phone = QColor(0x237F52);  // RAL 6032
  t.phone_sign = QColor(0xFFFFFF);
  t.symbol_rim = QColor(0x1F2328);
  t.selection = QColor(0x0072B2);
  t.measured = QColor(0xA0006E);
  t.hazard = QColor(0xD55E00);
  t.meets = QColor(0x007A5A);
  t.warns = QColor(0xE69F00);
  t.fails = QColor(0xD55E00);
  t.computing = QColor(0x7A828B);
  t.label_ground = QColor(255, 255, 255, 220);
  t.reach_near = QColor(0xF4F8F4);
  t.reach_middle = QColor(0xBFCBE0);
  t.reach_far = QColor(0x9489C2);
  t.reach_none = QColor(0xD9D6D2);
  return t;
}

Theme Theme::darkened() {
  Theme t = light();
  t.dark = true;
  t.outside = QColor(0x15181C);
  t.floor = QColor(0x23282E);
  t.outdoors = QColor(0x222A24);
  t.grid = QColor(0x2F353C);
  t.ink = QColor(0xE8EBEE);
  t.quiet_ink = QColor(0xA6AFB8);
  t.machine = QColor(0x3B4550);
  t.fixture = QColor(0x2B3036);
  t.hatch = QColor(0x5A626B);
  t.start_ground = QColor(0xA6AFB8);
  t.symbol_rim = QColor(0xE8EBEE);
  t.selection = QColor(0x56B4E9);
  t.measured = QColor(0xF5A3D3);
  t.hazard = QColor(0xF08A3C);
  t.meets = QColor(0x3CC9A0);
  t.fails = QColor(0xF08A3C);
  t.computing = QColor(0x9AA3AC);
  t.label_ground = QColor(35, 40, 46, 220);
  t.reach_near = QColor(0x232B2C);
  t.reach_middle = QColor(0x34435E);
  t.reach_far = QColor(0x625C92);
  t.reach_none = QColor(0x3A3835);
  return t;
}

QColor Theme::reachAt(double part) const {
  const auto between = [](const QColor& a, const QColor& b, double t) {
    const auto mix = [t](int x, int y) { return static_cast<int>(x + t * (y - x) + 0.5); };
    return QColor(mix(a.red(), b.red()), mix(a.green(), b.green()), mix(a.blue(), b.blue()));
  };
  const double t = std::clamp(part, 0.0, 1.0);
  return t < 0.5 ? between(reach_near, reach_middle, 2 * t) : between(reach_middle, reach_far, 2 * t - 1);
}

Theme Theme::of(const QPalette& palette) {
  const bool is_dark =
      palette.color(QPalette::WindowText).lightness() > palette.color(QPalette::Window).lightness();
  return is_dark ? darkened() : light();
}

}  // namespace stopwalk::plan
