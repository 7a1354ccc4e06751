#include "app/plan/inspection_layer.h"

#include <gtest/gtest.h>

#include <QImage>

#include "app/plan/catalogue.h"
#include "tests/app/plan/every_kind.h"

namespace stopwalk::plan {
namespace {

constexpr QSize kView(900, 700);

class OnThePlan : public testing::Test {
 protected:
  OnThePlan() : layout(everyKind()), catalogue(bundledCatalogue()), picture(layout, catalogue.kinds) {
    view.fit(picture.bounds(), kView, 20);
  }
  QImage painted(const std::map<std::string, StationState>& states) {
    QImage image(kView, QImage::Format_RGB32);
    image.fill(Theme::light().outside);
    QPainter painter(&image);
    Marks marks;
    marks.states = &states;
    picture.paint(painter, view, Theme::light(), QRectF(QPointF(), kView), marks);
    return image;
  }
  // Of two pictures, how many pixels differ within a few of a thing, and how many elsewhere.
  std::pair<int, int> differences(const QImage& a, const QImage& b, const std::string& id) {
    const geometry::Box box = picture.find(id)->bounds();
    const QPointF at = view.toPixels(0.5 * (box.low + box.high));
    int near = 0, far = 0;
    for (int y = 0; y < kView.height(); ++y)
      for (int x = 0; x < kView.width(); ++x)
        if (a.pixel(x, y) != b.pixel(x, y)) ++(QLineF(QPointF(x, y), at).length() < 40 ? near : far);
    return {near, far};
  }

  layout::Layout layout;
  Catalogue catalogue;
  Picture picture;
  ViewTransform view;
};

TEST_F(OnThePlan, EachStateOfADeviceHasAShapeOfItsOwnAtTheDevice) {
  std::vector<QImage> images{painted({})};
  for (const auto state : {StationState::Meets, StationState::Warns, StationState::Fails}) {
    images.push_back(painted({{"cut-off", state}}));
    for (std::size_t i = 0; i + 1 < images.size(); ++i) {
      const auto [near, far] = differences(images[i], images.back(), "cut-off");
      EXPECT_GT(near, 10);
      EXPECT_EQ(far, 0);
    }
  }
}

// Whichever of two that stand close is painted later.
TEST_F(OnThePlan, NoTickHidesTheCrossOfADeviceThatFailed) {
  for (layout::Device& d : layout.machines[0].devices) d.at = {0, -475};
  picture = Picture(layout, catalogue.kinds);
  const auto crosses = [&](const std::map<std::string, StationState>& states) {
    const QImage image = painted(states);
    int count = 0;
    for (int y = 0; y < kView.height(); ++y)
      for (int x = 0; x < kView.width(); ++x) count += image.pixel(x, y) == Theme::light().fails.rgb();
    return count;
  };
  using enum StationState;
  EXPECT_GT(crosses({{"lathe/bar", Fails}, {"lathe/start", NotAudited}}), 10);
  EXPECT_GE(crosses({{"lathe/bar", Fails}, {"lathe/start", Meets}}),
            crosses({{"lathe/bar", Fails}, {"lathe/start", NotAudited}}));
  EXPECT_GE(crosses({{"lathe/start", Fails}, {"lathe/bar", Meets}}),
            crosses({{"lathe/start", Fails}, {"lathe/bar", NotAudited}}));
}

TEST_F(OnThePlan, TextsStandBesideTheirDevicesAndOfWhatIsGoneThereAreNone) {
  InspectedOnPlan inspected;
  inspected.devices["cut-off"] = {StationState::Meets, "12 d"};
  inspected.devices["phone-that-is-gone"] = {StationState::Meets, "3 d"};
  inspected.devices["lathe/stop"] = {StationState::Meets, ""};
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
    InspectionLayer({{}, {{{{1000, 1000}, {5000, 1000}}, is_next}, {{{1000, 3000}}, false}}})
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
