#include "app/plan/inspection_layer.h"

#include <gtest/gtest.h>

#include <QImage>

#include "app/plan/catalogue.h"
#include "app/plan/plan_view.h"
#include "tests/app/plan/every_kind.h"
#include "tests/support/draw.h"

namespace stopwalk::plan {
namespace {

constexpr QSize kView(900, 700);

class OnThePlan : public testing::Test {
 protected:
  OnThePlan() : layout(everyKind()), catalogue(bundledCatalogue()), picture(layout, catalogue.kinds) {
    view.fit(picture.bounds(), kView, 20);
  }
  QImage painted(const std::map<std::string, CheckMark>& checks) {
    QImage image(kView, QImage::Format_RGB32);
    image.fill(Theme::light().outside);
    QPainter painter(&image);
    Marks marks;
    marks.checks = &checks;
    picture.paint(painter, view, Theme::light(), QRectF(QPointF(), kView), marks);
    return image;
  }
  // As whoever sees no colours, and as whoever tells no red from green.
  static QImage grey(const QImage& image) { return image.convertToFormat(QImage::Format_Grayscale8); }
  static int differences(const QImage& a, const QImage& b) {
    int count = 0;
    for (int y = 0; y < a.height(); ++y)
      for (int x = 0; x < a.width(); ++x) count += a.pixel(x, y) != b.pixel(x, y);
    return count;
  }
  QRect around(const std::string& id) {
    const geometry::Box box = picture.find(id)->bounds();
    QRect square(0, 0, 80, 80);
    square.moveCenter(view.toPixels(0.5 * (box.low + box.high)).toPoint());
    return square;
  }

  layout::Layout layout;
  Catalogue catalogue;
  Picture picture;
  ViewTransform view;
};

using CheckAge::Fresh, CheckAge::HalfGone, CheckAge::Overdue;
using CheckSign::Failed, CheckSign::Passed;

constexpr CheckSign kSigns[] = {
    Passed, CheckSign::Short, Failed, CheckSign::NotReached, CheckSign::NotTested, CheckSign::Never};
constexpr CheckAge kAges[] = {Fresh, HalfGone, CheckAge::Due, Overdue};

TEST_F(OnThePlan, EachSignAndEachRingOfADeviceHasAShapeOfItsOwnAtTheDeviceWithoutColoursToo) {
  const QImage plain = grey(painted({}));
  std::vector<QImage> images{plain.copy(around("cut-off"))};
  for (const CheckSign sign : kSigns)
    for (const CheckAge age : kAges) {
      const QImage whole = grey(painted({{"cut-off", {sign, age}}}));
      images.push_back(whole.copy(around("cut-off")));
      EXPECT_EQ(differences(plain, whole), differences(images.front(), images.back())) << "and nowhere else";
      for (std::size_t i = 0; i + 1 < images.size(); ++i)
        EXPECT_GT(differences(images[i], images.back()), 10)
            << static_cast<int>(sign) << " " << static_cast<int>(age) << " and " << i;
    }
}

// The tone goes with the time: each ring has more ink than the one before.
TEST_F(OnThePlan, TheMoreTimeHasGoneTheMoreInkIsInTheRing) {
  for (const Theme& theme : {Theme::light(), Theme::darkened()}) {
    double before = 0;
    for (const CheckAge age : kAges) {
      QImage image(40, 40, QImage::Format_RGB32);
      image.fill(theme.floor);
      {
        QPainter painter(&image);
        paintCheckMark(painter, theme, {CheckSign::None, age}, {20, 20}, 6);
      }
      double ink = 0;
      for (int y = 0; y < 40; ++y)
        for (int x = 0; x < 40; ++x) ink += std::abs(qGray(image.pixel(x, y)) - qGray(theme.floor.rgb()));
      EXPECT_GT(ink, 1.3 * before) << static_cast<int>(age) << (theme.dark ? " dark" : " light");
      before = ink;
    }
  }
}

TEST_F(OnThePlan, TheLegendSaysInWordsWhatStandsOnThePlanAndNothingElse) {
  InspectedOnPlan inspected;
  inspected.title = "Last check";
  inspected.devices["cut-off"] = {{Failed, Overdue}, "12 d", "Last check: failed; overdue."};
  inspected.devices["lathe/bar"] = {{Passed, HalfGone}, "3 d", ""};
  const InspectionLayer layer(inspected);
  EXPECT_EQ(layer.legend().lines(), (QStringList{"passed", "failed", "half of its time gone", "overdue"}));
  EXPECT_TRUE(InspectionLayer({}).legendBox(picture, view, QRectF({}, kView)).isEmpty());
  const QRectF box = layer.legendBox(picture, view, QRectF({}, kView));
  EXPECT_TRUE(QRectF({}, kView).contains(box));
  for (const char* id : {"cut-off", "lathe/bar"})
    EXPECT_FALSE(box.contains(view.toPixels(picture.find(id)->bounds().low))) << "it hides no device: " << id;
  EXPECT_EQ(layer.told("cut-off"), "Last check: failed; overdue.");
  EXPECT_EQ(layer.told("lathe"), "");
}

// Whichever of two that stand close comes later in the file.
TEST_F(OnThePlan, NoTickHidesTheCrossOfADeviceThatFailed) {
  for (layout::Device& d : layout.machines[0].devices) d.at = {0, -475};
  picture = Picture(layout, catalogue.kinds);
  const auto inked = [&](const std::map<std::string, CheckMark>& checks, const QColor& ink) {
    const QImage image = painted(checks);
    int count = 0;
    for (int y = 0; y < kView.height(); ++y)
      for (int x = 0; x < kView.width(); ++x) count += image.pixel(x, y) == ink.rgb();
    return count;
  };
  const Theme theme = Theme::light();
  const std::map<std::string, CheckMark> both[] = {{{"lathe/bar", {Failed}}, {"lathe/start", {Passed}}},
                                                   {{"lathe/start", {Failed}}, {"lathe/bar", {Passed}}}};
  for (const auto& checks : both) {
    EXPECT_GT(inked(checks, theme.fails), inked({}, theme.fails) + 10);
    EXPECT_GT(inked(checks, theme.meets), inked({}, theme.meets) + 5) << "nor the cross the tick";
  }
}

// So many that stand close share a sign with its numbers, which does not say which of them failed.
TEST_F(OnThePlan, WhatFailedBearsItsCrossWhereItsSignIsSharedWithOthers) {
  edits::EditedLayout edited;
  edits::Selection selection;
  PlanView plan(edited, selection, bundledCatalogue());
  plan.resize(kView);
  // How much red the crosses are besides the signs.
  const auto crosses = [&](const std::vector<std::string>& failed) {
    const QColor ink = Theme::of(plan.palette()).fails;
    const auto red = [&](const std::vector<std::string>& with_cross) {
      plan.setFailed(with_cross);
      const QImage image = plan.grab().toImage();
      int count = 0;
      for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x)
          count += image.pixelColor(x, y).rgb() == ink.rgb();
      return count;
    };
    InspectedOnPlan inspected;
    for (const std::string& id : failed) inspected.devices[id] = {{Failed}, "", ""};
    plan.showInspected(inspected);
    return red(failed) - red({});
  };
  edited.reset(layout);
  plan.fit();
  EXPECT_EQ(crosses({"cut-off", "lathe/bar"}), 0) << "the sign of each says so";
  std::vector<layout::Device>& devices = layout.machines[0].devices;
  std::vector<std::string> failed;
  devices.clear();
  for (int i = 0; i < 6; ++i) {
    devices.push_back(draw::device("stop-" + std::to_string(i), "mushroom-button", {200.0 * i, -475}));
    failed.push_back("lathe/" + devices.back().id);
  }
  edited.reset(layout);
  plan.fit();
  EXPECT_GT(crosses(failed), 50);
}

TEST_F(OnThePlan, TextsStandBesideTheirDevicesAndOfWhatIsGoneThereAreNone) {
  InspectedOnPlan inspected;
  inspected.devices["cut-off"] = {{Passed, Fresh}, "12 d", ""};
  inspected.devices["phone-that-is-gone"] = {{Passed, Fresh}, "3 d", ""};
  inspected.devices["lathe/bar"] = {{Passed, Fresh}, "", ""};
  const auto labels = InspectionLayer(inspected).labels(picture, view);
  ASSERT_EQ(labels.size(), 1u);
  EXPECT_EQ(labels[0].text, "12 d");
  const geometry::Box box = picture.find("cut-off")->bounds();
  for (const QPointF middle : labels[0].middles)
    EXPECT_LT(QLineF(middle, view.toPixels(box.low)).length(), 40);
}

TEST_F(OnThePlan, TheLegToTheNextDeviceStandsOutOfTheWalk) {
  const auto paintedWalk = [&](bool is_next) {
    QImage image(kView, QImage::Format_RGB32);
    image.fill(Theme::light().floor);
    QPainter painter(&image);
    InspectionLayer({"", {}, {{{{1000, 1000}, {5000, 1000}}, is_next}, {{{1000, 3000}}, false}}})
        .paintWalk(painter, view, Theme::light());
    return image;
  };
  const auto inked = [](const QImage& image, const QColor& ink) {
    int count = 0;
    for (int y = 0; y < kView.height(); ++y)
      for (int x = 0; x < kView.width(); ++x) count += image.pixel(x, y) == ink.rgb();
    return count;
  };
  EXPECT_EQ(inked(paintedWalk(false), Theme::light().selection), 0);
  EXPECT_GT(inked(paintedWalk(false), Theme::light().quiet_ink), 30);
  EXPECT_GT(inked(paintedWalk(true), Theme::light().selection), 100);
}

}  // namespace
}  // namespace stopwalk::plan
