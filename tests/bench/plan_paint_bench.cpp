// How long a frame of the plan takes, painted into a raster as large as a window: dragged about and zoomed,
// at each of the sizes of docs/speed.md up to the factory's thousand machines.
#include <QGuiApplication>
#include <QImage>
#include <algorithm>
#include <cstdio>
#include <ctime>

#include "app/plan/catalogue.h"
#include "app/plan/picture.h"
#include "tests/support/shop_layout.h"

namespace stopwalk::bench {
namespace {

using plan::Picture;
using plan::ViewTransform;

constexpr QSize kWindow(1600, 1000);
constexpr int kFrames = 200;

// By processor time, so that other programs on the machine do not count.
double since(std::clock_t start) {
  return 1000.0 * static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC;
}

class Screen {
 public:
  Screen() : image_(kWindow, QImage::Format_ARGB32_Premultiplied) {}

  double frame(const Picture& picture, const ViewTransform& view, const plan::Marks& marks) {
    const auto start = std::clock();
    image_.fill(theme_.outside);
    QPainter painter(&image_);
    picture.paint(painter, view, theme_, QRectF(QPointF(), kWindow), marks);
    painter.end();
    return since(start);
  }

 private:
  QImage image_;
  const plan::Theme theme_ = plan::Theme::light();
};

void report(const char* shop, const char* what, std::vector<double> times) {
  std::ranges::sort(times);
  const auto at = [&](double part) {
    return times[static_cast<std::size_t>(part * static_cast<double>(times.size() - 1))];
  };
  std::printf("%-8s %-28s %8.2f %8.2f %8.2f\n", shop, what, at(0.5), at(0.99), times.back());
}

std::map<std::string, plan::StationState> statesOf(const layout::Layout& layout) {
  std::map<std::string, plan::StationState> states;
  int i = 0;
  for (const edits::Thing& thing : edits::allThings(layout))
    if (thing.kind == edits::ThingKind::Station)
      states[edits::idOf(layout, thing)] = static_cast<plan::StationState>(i++ % 5);
  return states;
}

void measure(const support::ShopSize& size) {
  const layout::Layout layout = support::shopLayout(size);
  const layout::DeviceKinds kinds = plan::bundledCatalogue().kinds;
  const auto states = statesOf(layout);
  const plan::Marks marks{{}, "", &states};

  std::vector<double> making;
  for (int i = 0; i < 20; ++i) {
    const auto start = std::clock();
    const Picture made(layout, kinds);
    making.push_back(since(start));
  }
  report(size.name, "making the items", making);

  const Picture picture(layout, kinds);
  Screen screen;
  ViewTransform whole;
  whole.fit(picture.bounds(), kWindow, 30);
  const QPointF middle(kWindow.width() / 2.0, kWindow.height() / 2.0);
  for (const double closer : {1.0, 2.0, 4.0, 10.0}) {
    std::vector<double> times;
    ViewTransform view = whole;
    view.zoomAt(middle, closer);
    for (int i = 0; i < kFrames; ++i) {
      view.pan(i % 100 < 50 ? QPointF(7, 3) : QPointF(-7, -3));
      times.push_back(screen.frame(picture, view, marks));
    }
    char what[64];
    std::snprintf(what, sizeof what, "panning, %g times the whole", closer);
    report(size.name, what, times);
  }
  std::vector<double> times;
  ViewTransform view = whole;
  for (int i = 0; i < kFrames; ++i) {
    view.zoomAt(middle + QPointF(100, 50), i % 100 < 50 ? 1.06 : 1 / 1.06);
    times.push_back(screen.frame(picture, view, marks));
  }
  report(size.name, "zooming, 1 to 18 times", times);
}

}  // namespace
}  // namespace stopwalk::bench

int main(int count, char** arguments) {
  qputenv("QT_QPA_PLATFORM", "offscreen");
  const QGuiApplication application(count, arguments);
  std::printf("%-8s %-28s %8s %8s %8s  (ms)\n", "shop", "", "median", "p99", "worst");
  for (const auto& size : stopwalk::support::kShopSizes)
    if (size.machines <= 1000) stopwalk::bench::measure(size);
}
