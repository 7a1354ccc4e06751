#include "app/plan/theme.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace stopwalk::plan {
namespace {

// Relative luminance and contrast ratio of WCAG 2.1, which also sets 4.5 for text and 3 for marks
// (success criteria 1.4.3 and 1.4.11).
double luminance(const QColor& c) {
  const auto linear = [](double v) { return v <= 0.04045 ? v / 12.92 : std::pow((v + 0.055) / 1.055, 2.4); };
  return 0.2126 * linear(c.redF()) + 0.7152 * linear(c.greenF()) + 0.0722 * linear(c.blueF());
}

double contrast(const QColor& a, const QColor& b) {
  const double la = luminance(a), lb = luminance(b);
  return (std::max(la, lb) + 0.05) / (std::min(la, lb) + 0.05);
}

QColor over(const QColor& top, const QColor& bottom) {
  const double a = top.alphaF();
  const auto mix = [&](double t, double b) { return static_cast<float>(a * t + (1 - a) * b); };
  return QColor::fromRgbF(mix(top.redF(), bottom.redF()), mix(top.greenF(), bottom.greenF()),
                          mix(top.blueF(), bottom.blueF()));
}

constexpr double kText = 4.5, kMark = 3;

class Contrast : public testing::TestWithParam<bool> {
 protected:
  Theme theme = GetParam() ? Theme::darkened() : Theme::light();
};

TEST_P(Contrast, TextIsReadable) {
  const std::pair<const char*, QColor> grounds[] = {{"floor", theme.floor},
                                                    {"outdoors", theme.outdoors},
                                                    {"outside", theme.outside},
                                                    {"label", over(theme.label_ground, theme.machine)},
                                                    {"label on a wall", over(theme.label_ground, theme.ink)}};
  for (const auto& [name, ground] : grounds) {
    EXPECT_GE(contrast(theme.ink, ground), kText) << name;
    EXPECT_GE(contrast(theme.quiet_ink, ground), kText) << name;
  }
  EXPECT_GE(contrast(theme.ink, theme.machine), kText);
  EXPECT_GE(contrast(theme.ink, theme.fixture), kText);
  EXPECT_GE(contrast(theme.selection, theme.floor), kText);  // the length of a walk
  EXPECT_GE(contrast(theme.measured, over(theme.label_ground, theme.machine)), kText);
}

TEST_P(Contrast, MarksAreSeen) {
  const std::tuple<const char*, QColor, QColor> pairs[] = {
      {"selection on floor", theme.selection, theme.floor},
      {"selection on machine", theme.selection, theme.machine},
      {"selection on yard", theme.selection, theme.outdoors},
      {"measured on its ground", theme.measured, theme.floor},
      {"hazard on floor", theme.hazard, theme.floor},
      {"hazard on machine", theme.hazard, theme.machine},
      {"meets on floor", theme.meets, theme.floor},
      {"meets on yard", theme.meets, theme.outdoors},
      {"fails on floor", theme.fails, theme.floor},
      {"fails on yard", theme.fails, theme.outdoors},
      {"computing on floor", theme.computing, theme.floor},
      {"computing on yard", theme.computing, theme.outdoors},
      {"rim of warning on floor", theme.ink, theme.floor},
      {"feet on warning", theme.dark_sign, theme.warns},
      {"stop sign on its ground", theme.stop_sign, theme.stop_ground},
      {"start sign on its ground", theme.dark_sign, theme.start_ground},
      {"phone sign on its ground", theme.phone_sign, theme.phone},
      {"rim of symbol on floor", theme.symbol_rim, theme.floor},
      {"rim of symbol on machine", theme.symbol_rim, theme.machine},
      {"outline of machine on floor", theme.ink, theme.floor},
      {"outline of fixture on floor", theme.quiet_ink, theme.floor},
      {"wall on outside", theme.ink, theme.outside}};
  for (const auto& [name, mark, ground] : pairs) EXPECT_GE(contrast(mark, ground), kMark) << name;
}

// Without any colour, in grey, farther is always darker on paper and lighter on a dark screen.
TEST_P(Contrast, TheReachMapIsToldApartByLightnessAndLeavesInkReadable) {
  const double sign = theme.dark ? 1 : -1;
  for (int i = 0; i < 20; ++i) {
    const QColor nearer = theme.reachAt(i / 20.0), farther = theme.reachAt((i + 1) / 20.0);
    EXPECT_GT(sign * (luminance(farther) - luminance(nearer)), 0) << i;
    EXPECT_GE(contrast(theme.ink, farther), kText) << i;
  }
  EXPECT_GE(contrast(theme.reachAt(0), theme.reachAt(1)), 2);
}

INSTANTIATE_TEST_SUITE_P(Themes, Contrast, testing::Bool(),
                         [](const auto& set) { return set.param ? "Dark" : "Light"; });

TEST(Theme, FollowsTheWindow) {
  QPalette palette;
  palette.setColor(QPalette::Window, Qt::black);
  palette.setColor(QPalette::WindowText, Qt::white);
  EXPECT_TRUE(Theme::of(palette).dark);
  palette.setColor(QPalette::Window, Qt::white);
  palette.setColor(QPalette::WindowText, Qt::black);
  EXPECT_FALSE(Theme::of(palette).dark);
}

// Black on white is 21 by the definition: what is measured here is what was defined.
TEST(Theme, ContrastIsMeasuredAsDefined) {
  EXPECT_NEAR(contrast(Qt::black, Qt::white), 21, 1e-9);
}

}  // namespace
}  // namespace stopwalk::plan
