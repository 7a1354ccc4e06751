#include <benchmark/benchmark.h>

#include "core/files/device_kinds_reader.h"
#include "core/files/layout_reader.h"
#include "core/files/layout_writer.h"
#include "core/files/source_tree.h"

// A file of `machines` machines, each with a station and a device, read and written. Invented.
namespace {

using namespace stopwalk;

std::string hall(long machines) {
  std::string text =
      "stopwalk_layout: 1\nunits: mm\nsite:\n  name: Hall\nrooms:\n"
      "  - {id: hall, name: Hall, outline: [[0, 0], [600000, 0], [600000, 400000], [0, "
      "400000]]}\nmachines:\n";
  for (long i = 0; i < machines; ++i) {
    const std::string x = std::to_string(i % 100 * 6000 + 3000), y = std::to_string(i / 100 * 4000 + 2000);
    text += "  - id: m-" + std::to_string(i) + "\n    name: Machine " + std::to_string(i) +
            "\n    kind: engine-lathe\n    at: [" + x + ", " + y + "]\n    turn: " + std::to_string(i % 360) +
            "\n    footprint: {width: 2200, depth: 950}\n    height: 1400\n    run_down: 4\n    stations:\n"
            "      - {id: operator, role: operator, at: [0, -925]}\n    devices:\n"
            "      - {id: bar, kind: foot-bar, at: [0, -475], length: 1800, height: 150}\n";
  }
  return text + "...\n";
}

void treeOfFile(benchmark::State& state) {
  const std::string text = hall(state.range(0));
  for (auto _ : state) {
    files::Problems problems(text, "hall");
    benchmark::DoNotOptimize(files::parseTree(text, problems));
  }
  state.SetBytesProcessed(static_cast<std::int64_t>(state.iterations()) *
                          static_cast<std::int64_t>(text.size()));
}

void readFile(benchmark::State& state) {
  const std::string text = hall(state.range(0));
  for (auto _ : state) benchmark::DoNotOptimize(files::readLayout(text, "hall", files::bundledDeviceKinds()));
  state.SetBytesProcessed(static_cast<std::int64_t>(state.iterations()) *
                          static_cast<std::int64_t>(text.size()));
}

void writeFile(benchmark::State& state) {
  const auto read = files::readLayout(hall(state.range(0)), "hall", files::bundledDeviceKinds());
  for (auto _ : state) benchmark::DoNotOptimize(files::writeLayout(*read.value));
}

BENCHMARK(treeOfFile)->Arg(20)->Arg(100)->Arg(1000)->Arg(10000)->Unit(benchmark::kMillisecond);
BENCHMARK(readFile)->Arg(20)->Arg(100)->Arg(1000)->Arg(10000)->Unit(benchmark::kMillisecond);
BENCHMARK(writeFile)->Arg(20)->Arg(100)->Arg(1000)->Arg(10000)->Unit(benchmark::kMillisecond);

}  // namespace

BENCHMARK_MAIN();
