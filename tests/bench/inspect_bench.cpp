// What the records of ten years, 24,000 checks of some 200 devices, cost the window's thread in the place
// Inspect, by its processor time: once they are read, and at each key on a card. Invented.
#include <QApplication>
#include <QFile>
#include <QLineEdit>
#include <QTemporaryDir>
#include <QTest>
#include <algorithm>
#include <cstdio>
#include <ctime>
#include <fstream>

#include "app/rounds/check_card.h"
#include "app/rounds/counting.h"
#include "app/rounds/due_rows.h"
#include "app/window/inspect_place.h"
#include "app/window/main_window.h"
#include "app/window/records_beside.h"
#include "core/files/layout_writer.h"
#include "core/planning/round_plan.h"
#include "tests/support/shop_layout.h"

namespace stopwalk::bench {
namespace {

constexpr support::ShopSize kShop = {"inspected", 8, 130};
constexpr std::size_t kChecks = 24000;

double threadMilliseconds() {
  std::timespec now{};
  clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
  return 1e3 * static_cast<double>(now.tv_sec) + 1e-6 * static_cast<double>(now.tv_nsec);
}

template <class Job>
void tell(const char* what, int times, Job job) {
  std::vector<double> took;
  for (int i = 0; i < times; ++i) {
    const double before = threadMilliseconds();
    job(i);
    took.push_back(threadMilliseconds() - before);
  }
  std::ranges::sort(took);
  std::printf("%-58s median %7.2f ms, most %7.2f ms\n", what, took[took.size() / 2], took.back());
}

// A round a month over all devices, the last of them not finished.
void writeRecords(const std::string& file, const std::vector<planning::InspectedDevice>& devices) {
  std::ofstream out(file, std::ios::binary);
  std::string head = files::kNoLineBefore;
  std::size_t number = 0, checks = 0;
  const auto add = [&](const inspection::Record& record) {
    const std::string line = files::recordLine(record, ++number, head);
    head = files::endOfLog(line).head;
    out << line;
  };
  const inspection::LayoutThen layout{7, std::string(64, 'a')};
  const int months = static_cast<int>(kChecks / devices.size()) + 1;
  for (int month = 0; month < months; ++month) {
    const auto day = inspection::monthsAfter(*inspection::parseDate("2026-10-05"), month - months + 1);
    inspection::Moment at{day, 32400, 60};
    inspection::Round round{0, at, "Ada Example", "all", planning::idsOf(devices), layout};
    add(round);
    round.number = number;
    for (std::size_t d = 0; d < devices.size() && checks < kChecks; ++d) {
      inspection::Check c = planning::beginCheck(round, devices[d], at, layout);
      c.inspector = "Ada Example";
      c.tested = {{inspection::Tried::Seen, true}, {inspection::Tried::Pressed, true}};
      c.result = (d + static_cast<std::size_t>(month)) % 97 == 0 ? inspection::Result::Fail
                                                                 : inspection::Result::Pass;
      add(c);
      ++checks;
    }
  }
}

int run() {
  QTemporaryDir home;
  const QString path = home.filePath("inspected.layout.yaml");
  const layout::Layout layout = support::shopLayout(kShop);
  std::ofstream(path.toStdString()) << files::writeLayout(layout);
  QSettings settings(home.filePath("settings.ini"), QSettings::IniFormat);
  documents::RecoveryStore store(home.filePath("state"));
  window::MainWindow window(store, settings);
  window.openPath(path);
  const auto devices =
      planning::inspectedDevices(layout, window.document().catalogue().kinds, floor::buildPlan(layout, {}));
  const std::string file = records::recordsFileOf(path.toStdString());
  writeRecords(file, devices);
  window.resize(1280, 800);
  window.show();
  window.goToPlace(window::WorkPlace::Inspect);
  window.records().lookNow();
  QTest::qWait(3000);  // until all is audited
  std::printf("%zu devices, %zu checks\n", devices.size(), window.records().records().checks.size());

  const inspection::Records& records = window.records().records();
  const inspection::Schedule schedule;
  const inspection::Date today = *inspection::parseDate("2026-11-27");
  const inspection::AsOf as_of = planning::asOf(devices, today);
  const auto states = inspection::statesOf(records, schedule, as_of);
  tell("alone: what the records come to for each device", 9,
       [&](int) { inspection::statesOf(records, schedule, as_of); });
  tell("alone: which passes count", 9,
       [&](int) { rounds::Counting(inspection::OnRecord(records, schedule, as_of), layout); });
  tell("alone: what failed", 9, [&](int) { inspection::failedDevices(records, schedule, as_of); });
  tell("alone: what is due", 9,
       [&](int) { rounds::dueView(layout, devices, records, states, {}, schedule, today); });
  tell("window, what is due: the records are read again", 9, [&](int i) {
    QFile grown(QString::fromStdString(file));
    if (grown.open(QIODevice::Append)) grown.write(i % 2 ? "\n" : " ");
    window.records().lookNow();
  });
  writeRecords(file, devices);
  window.records().lookNow();
  auto& place = window.inspectPlace();
  place.round().walk(window.records().records().rounds.back().number);
  QTest::qWait(500);
  rounds::CheckCard& card = place.card();
  card.setFocus();
  tell("card: a tick, and what follows of it", 41, [&](int) {
    QTest::keyClick(&card, Qt::Key_1);
    QApplication::processEvents();
  });
  card.note()->setFocus();
  tell("card: a letter of the note, and what follows of it", 41, [&](int) {
    QTest::keyClick(card.note(), Qt::Key_A);
    QApplication::processEvents();
  });
  tell("card: the next one", 41, [&](int) {
    place.round().goBy(1);
    QApplication::processEvents();
  });
  return 0;
}

}  // namespace
}  // namespace stopwalk::bench

int main(int argc, char** argv) {
  qputenv("QT_QPA_PLATFORM", "offscreen");
  QApplication application(argc, argv);
  return stopwalk::bench::run();
}
