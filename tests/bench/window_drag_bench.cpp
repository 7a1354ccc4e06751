// A machine dragged for ten seconds at sixty positions a second in the whole window: window_drag_bench SIZE
// [audit|reach], in a process of its own each time; where it is drawn, or audited without or with the map.
// For each position: how long until the plan is painted with it, the processor's time of the window's thread
// until the next one, and the longest that one event held the window up.
#include <sys/resource.h>

#include <QApplication>
#include <QElapsedTimer>
#include <QFile>
#include <QMouseEvent>
#include <QTemporaryDir>
#include <QTest>
#include <QWheelEvent>
#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <cstring>
#include <ctime>
#include <iterator>
#include <optional>
#include <thread>

#include "app/command_line/kept_memory.h"
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
  std::vector<double> painted, processor, held_up;
  int told = 0;         // frames painted with the audit of that very position
  double put_down = 0;  // the longest that one event took after the button was let go of
};

// Watches how long events take, and when the plan is painted.
class Watched : public QApplication {
 public:
  using QApplication::QApplication;
  bool notify(QObject* receiver, QEvent* event) override {
    const auto begin = Clock::now();
    ++depth_;
    const bool done = QApplication::notify(receiver, event);
    if (receiver == plan && event->type() == QEvent::Paint) {
      painted = Clock::now();
      told = plan->isAudited();
    }
    if (--depth_ == 0) longest = std::max(longest, Clock::now() - begin);
    return done;
  }

  plan::PlanView* plan = nullptr;
  std::optional<Clock::time_point> painted;  // last
  bool told = false;                         // then
  Clock::duration longest{};

 private:
  int depth_ = 0;
};

double milliseconds(Clock::duration time) {
  return std::chrono::duration<double, std::milli>(time).count();
}

void bringNearer(plan::PlanView& view, geometry::Point at) {
  const QPointF pixel = view.transform().toPixels(at);
  QWheelEvent event(pixel, view.mapToGlobal(pixel), {}, {0, 120}, Qt::NoButton, Qt::NoModifier,
                    Qt::NoScrollPhase, false);
  QApplication::sendEvent(&view, &event);
}

// A point of the machine where the pointer takes hold of it, and not of what is on it.
std::optional<geometry::Point> gripOf(window::MainWindow& window, const layout::Machine& machine) {
  for (const geometry::Point corner : layout::outlineInPlan(machine.footprint, machine.at, machine.turn))
    for (const double part : {0.2, 0.4, 0.6, 0.8}) {
      const geometry::Point at = machine.at + part * (corner - machine.at);
      window.selection().clear();  // nor by its handles
      for (const auto type : {QEvent::MouseButtonPress, QEvent::MouseButtonRelease})
        send(window.plan(), type, window.plan().transform().toPixels(at));
      if (window.selection().contains(machine.id)) return at;
    }
  return std::nullopt;
}

// In a figure of eight about where it stands, so that it comes near its neighbours and away again.
Frames drag(Watched& application, window::MainWindow& window, geometry::Point from) {
  plan::PlanView& view = window.plan();
  application.plan = &view;
  const QPointF start = view.transform().toPixels(from);
  const double reach_px = 1500 * view.transform().pixelsPerMm();
  Frames frames;
  send(view, QEvent::MouseButtonPress, start);
  auto next = Clock::now();
  for (int i = 1; i <= kFrames; ++i) {
    const double turn = i * 2 * M_PI / 240;
    const auto begin = Clock::now();
    const double begin_cpu = threadMilliseconds();
    application.painted.reset();
    application.longest = {};
    send(view, QEvent::MouseMove, start + reach_px * QPointF(std::sin(turn), std::sin(2 * turn) / 2));
    next = std::max(next + kFrame, Clock::now());
    while (Clock::now() < next) {
      QApplication::processEvents();
      std::this_thread::sleep_for(std::chrono::microseconds(100));
    }
    frames.processor.push_back(threadMilliseconds() - begin_cpu);
    frames.held_up.push_back(milliseconds(application.longest));
    if (!application.painted) continue;
    frames.painted.push_back(milliseconds(*application.painted - begin));
    frames.told += application.told;
  }
  application.longest = {};
  send(view, QEvent::MouseButtonRelease, start + QPointF(30, 30));
  QTest::qWait(2000);
  frames.put_down = milliseconds(application.longest);
  return frames;
}

enum class Where { Draw, Audit, AuditWithMap };

void run(Watched& application, const support::ShopSize& size, Where where) {
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
  if (where != Where::Draw) window.goToPlace(window::WorkPlace::Audit);
  if (where == Where::AuditWithMap) window.auditPlace().reach().whatBox()->setCurrentIndex(1);
  QTest::qWait(3000);  // audited, and the map is there
  window.plan().fit();
  QTest::qWait(200);
  const layout::Machine& machine = layout.machines[layout.machines.size() / 2];
  auto grip = gripOf(window, machine);
  for (; !grip; grip = gripOf(window, machine)) bringNearer(window.plan(), machine.at);
  Frames frames = drag(application, window, *grip);
  rusage used{};
  getrusage(RUSAGE_SELF, &used);
  const auto row = [](std::vector<double>& all) {
    std::printf(" %6.1f | %6.1f | %6.1f |", at(all, 0.5), at(all, 0.99), at(all, 1));
  };
  const char* names[] = {"", ", audit", ", map"};
  std::printf("%-8s%-7s |", size.name, names[static_cast<int>(where)]);
  row(frames.painted);
  row(frames.processor);
  row(frames.held_up);
  std::printf(" %zu | %d | %.1f | %.0f MB\n", frames.painted.size(), frames.told, frames.put_down,
              static_cast<double>(used.ru_maxrss) / 1024);
}

}  // namespace
}  // namespace stopwalk::bench

int main(int argc, char** argv) {
  using namespace stopwalk;
  const auto size = std::ranges::find_if(support::kShopSizes, [&](const support::ShopSize& s) {
    return argc > 1 && std::strcmp(s.name, argv[1]) == 0;
  });
  if (size == std::end(support::kShopSizes))
    return std::fprintf(stderr, "usage: window_drag_bench small|big|factory|hall [audit|reach]\n"), 2;
  app::keepMemory();  // as the program does
  qputenv("QT_QPA_PLATFORM", "offscreen");
  bench::Watched application(argc, argv);
  using bench::Where;
  const bool with_map = argc > 2 && std::strcmp(argv[2], "reach") == 0;
  bench::run(application, *size, argc < 3 ? Where::Draw : with_map ? Where::AuditWithMap : Where::Audit);
  return 0;
}
