// A machine dragged for ten seconds at sixty positions a second in the whole window: window_drag_bench SIZE
// [reach], in a process of its own each time. A frame is all that the window's own thread does for a
// position: the pointer's event, answers of audit and map that have come, painting the window.
#include <sys/resource.h>

#include <QApplication>
#include <QElapsedTimer>
#include <QFile>
#include <QMouseEvent>
#include <QTemporaryDir>
#include <QTest>
#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <cstring>
#include <ctime>
#include <iterator>
#include <thread>

#include "app/panels/reach/reach_chooser.h"
#include "app/plan/plan_view.h"
#include "app/window/audit_place.h"
#include "app/window/main_window.h"
#include "core/files/layout_writer.h"
#include "tests/support/shop_layout.h"

namespace stopwalk::bench {
namespace {

using Clock = std::chrono::steady_clock;
constexpr int kFrames = 600;
constexpr auto kFrame = std::chrono::nanoseconds(1000000000 / 60);

double threadMilliseconds() {
  std::timespec now{};
  clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
  return 1e3 * static_cast<double>(now.tv_sec) + 1e-6 * static_cast<double>(now.tv_nsec);
}

double at(std::vector<double>& all, double share) {
  std::ranges::sort(all);
  return all[std::min(all.size() - 1, static_cast<std::size_t>(share * static_cast<double>(all.size())))];
}

void send(QWidget& widget, QEvent::Type type, QPointF pixel) {
  const auto button = type == QEvent::MouseMove ? Qt::NoButton : Qt::LeftButton;
  const auto held = type == QEvent::MouseButtonRelease ? Qt::NoButton : Qt::LeftButton;
  QMouseEvent event(type, pixel, widget.mapToGlobal(pixel), button, held, Qt::NoModifier);
  QApplication::sendEvent(&widget, &event);
}

struct Frames {
  std::vector<double> clock, processor;
  int told = 0;  // frames that show what the drag changes
};

// In a figure of eight about where it stands, so that it comes near its neighbours and away again.
Frames drag(window::MainWindow& window, geometry::Point from) {
  plan::PlanView& view = window.plan();
  const QPointF start = view.transform().toPixels(from);
  const double reach_px = 1500 * view.transform().pixelsPerMm();
  Frames frames;
  send(view, QEvent::MouseButtonPress, start);
  auto next = Clock::now();
  for (int i = 1; i <= kFrames; ++i) {
    const double turn = i * 2 * M_PI / 240;
    const auto begin = Clock::now();
    const double begin_cpu = threadMilliseconds();
    send(view, QEvent::MouseMove, start + reach_px * QPointF(std::sin(turn), std::sin(2 * turn) / 2));
    QApplication::processEvents();
    window.repaint();
    frames.processor.push_back(threadMilliseconds() - begin_cpu);
    frames.clock.push_back(std::chrono::duration<double, std::milli>(Clock::now() - begin).count());
    frames.told += !view.tellsOfChanges().isEmpty();
    next = std::max(next + kFrame, Clock::now());
    std::this_thread::sleep_until(next);
  }
  send(view, QEvent::MouseButtonRelease, start);
  return frames;
}

void run(const support::ShopSize& size, bool with_reach) {
  QTemporaryDir home;
  const QString path = home.filePath("shop.layout.yaml");
  QFile file(path);
  if (!file.open(QIODevice::WriteOnly)) return;
  const layout::Layout layout = support::shopLayout(size);
  file.write(QByteArray::fromStdString(files::writeLayout(layout)));
  file.close();
  QSettings settings(home.filePath("settings.ini"), QSettings::IniFormat);
  documents::RecoveryStore store(home.filePath("state"));
  window::MainWindow window(store, settings);
  window.resize(1600, 1000);
  window.openPath(path);
  window.show();
  if (with_reach) {
    window.goToPlace(window::WorkPlace::Audit);
    window.auditPlace().reach().whatBox()->setCurrentIndex(1);
  }
  QTest::qWait(3000);  // audited, and the map is there
  window.plan().fit();
  Frames frames = drag(window, layout.machines[layout.machines.size() / 2].at);
  rusage used{};
  getrusage(RUSAGE_SELF, &used);
  const auto row = [](std::vector<double>& all) {
    std::printf(" %6.1f | %6.1f | %6.1f |", at(all, 0.5), at(all, 0.99), at(all, 1));
  };
  std::printf("%-8s%s |", size.name, with_reach ? ", map" : "     ");
  row(frames.clock);
  row(frames.processor);
  std::printf(" %3d %% | %.0f MB\n", 100 * frames.told / kFrames, static_cast<double>(used.ru_maxrss) / 1024);
}

}  // namespace
}  // namespace stopwalk::bench

int main(int argc, char** argv) {
  using namespace stopwalk;
  const auto size = std::ranges::find_if(support::kShopSizes, [&](const support::ShopSize& s) {
    return argc > 1 && std::strcmp(s.name, argv[1]) == 0;
  });
  if (size == std::end(support::kShopSizes))
    return std::fprintf(stderr, "usage: window_drag_bench small|big|factory|hall [reach]\n"), 2;
  qputenv("QT_QPA_PLATFORM", "offscreen");
  QApplication application(argc, argv);
  bench::run(*size, argc > 2);
  return 0;
}
