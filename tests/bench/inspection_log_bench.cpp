#include <benchmark/benchmark.h>

#include <cstdio>
#include <filesystem>
#include <fstream>

#include "app/records/records_file.h"
#include "core/inspection/schedule.h"

// Ten years of records: 200 devices checked monthly, a round each month. Invented.
namespace {

using namespace stopwalk;

std::string tenYears() {
  std::string text, head = files::kNoLineBefore;
  std::size_t number = 0;
  const auto add = [&](const inspection::Record& record) {
    const std::string line = files::recordLine(record, ++number, head);
    head = files::endOfLog(line).head;
    text += line;
  };
  const inspection::LayoutThen layout{7, std::string(64, 'a')};
  std::vector<std::string> devices;
  for (int d = 0; d < 200; ++d) devices.push_back("machine-" + std::to_string(d) + "/stop");
  for (int month = 0; month < 120; ++month) {
    const inspection::Moment at{inspection::monthsAfter(*inspection::parseDate("2026-01-05"), month), 32400,
                                60};
    add(inspection::Round{0, at, "Ada Example", "all", devices, layout});
    const std::size_t round = number;
    for (int d = 0; d < 200; ++d) {
      inspection::Check c;
      c.round = round;
      c.device = devices[static_cast<std::size_t>(d)];
      c.machines = {"machine-" + std::to_string(d)};
      c.room = "hall";
      c.at = at;
      c.inspector = "Ada Example";
      c.tested = {{inspection::Tried::Seen, true}, {inspection::Tried::Pressed, true}};
      c.result = (d + month) % 97 == 0 ? inspection::Result::Fail : inspection::Result::Pass;
      c.run_down_s = {2.4, 2.6, 2.5};
      c.note = d % 10 == 0 ? "label worn, still readable" : "";
      c.layout = layout;
      add(c);
    }
  }
  return text;
}

// From the file to what is failed, every hash looked at.
void open(benchmark::State& state) {
  const std::string layout = (std::filesystem::temp_directory_path() / "stopwalk-bench.layout.yaml").string();
  const std::string file = records::recordsFileOf(layout), text = tenYears();
  std::ofstream(file, std::ios::binary) << text;
  std::size_t failed = 0;
  for (auto _ : state) {
    const records::ReadRecords read = records::readRecords(layout);
    if (!read.log.bad.empty() || read.log.records.checks.size() != 24000)
      state.SkipWithError("not read whole");
    failed = inspection::failedDevices(read.log.records, {}, {*inspection::parseDate("2026-06-01")}).size();
  }
  state.counters["MB"] = static_cast<double>(text.size()) / 1e6;
  state.counters["failed"] = static_cast<double>(failed);
  std::remove(file.c_str());
}
BENCHMARK(open)
    ->Name("open/24000_checks")
    ->Unit(benchmark::kMillisecond)
    ->MeasureProcessCPUTime()
    ->UseRealTime();

}  // namespace

BENCHMARK_MAIN();
