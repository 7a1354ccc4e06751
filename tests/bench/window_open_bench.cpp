// How long the window takes from the start of main to the first picture of a workshop of 100 machines, opened
// from a file; in a process of its own each time: `for i in 1 2 3 4 5; do window_open_bench; done`.
#include <QApplication>
#include <QFile>
#include <QTemporaryDir>
#include <QTimer>
#include <chrono>
#include <cstdio>
#include <ctime>

#include "app/plan/plan_view.h"
#include "app/window/main_window.h"
#include "core/files/layout_writer.h"
#include "tests/support/shop_layout.h"

int main(int argc, char** argv) {
  using Clock = std::chrono::steady_clock;
  using namespace stopwalk;
  QTemporaryDir home;
  const QString path = home.filePath("big.layout.yaml");
  QFile file(path);
  if (!file.open(QIODevice::WriteOnly)) return 1;
  file.write(QByteArray::fromStdString(files::writeLayout(support::shopLayout(support::kShopSizes[1]))));
  file.close();

  const auto start = Clock::now();
  const auto start_cpu = std::clock();
  qputenv("QT_QPA_PLATFORM", "offscreen");
  QApplication application(argc, argv);
  QSettings settings(home.filePath("settings.ini"), QSettings::IniFormat);
  documents::RecoveryStore store(home.filePath("state"));
  window::MainWindow window(store, settings);
  window.openPath(path);
  window.show();
  QApplication::processEvents();
  const QImage picture = window.grab().toImage();
  const auto ms = std::chrono::duration<double, std::milli>(Clock::now() - start).count();
  std::printf("%zu machines, %d x %d pixels: %.0f ms, of the processor %.0f ms\n",
              window.document().edited().layout().machines.size(), picture.width(), picture.height(), ms,
              1000.0 * static_cast<double>(std::clock() - start_cpu) / CLOCKS_PER_SEC);
  return 0;
}
