#include "tests/bench/bench_run.h"

#include <cmath>
#include <ctime>
#include <fstream>
#include <iterator>
#include <map>

#include "app/command_line/kept_memory.h"
#include "tests/support/shop_layout.h"

namespace stopwalk::bench {
namespace {

using support::kShopSizes;
constexpr int kLast = static_cast<int>(std::size(kShopSizes)) - 1;

// Seconds an iteration of each job so far, by size.
std::map<std::string, std::map<std::size_t, double>>& secondsOf() {
  static std::map<std::string, std::map<std::size_t, double>> all;
  return all;
}

double processorSeconds() {
  std::timespec now{};
  clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &now);
  return static_cast<double>(now.tv_sec) + 1e-9 * static_cast<double>(now.tv_nsec);
}

// Linux: the peak of this process's memory is counted from here on.
void forgetPeak() {
  std::ofstream("/proc/self/clear_refs") << 5;
}

double peakMegabytes() {
  std::ifstream status("/proc/self/status");
  for (std::string word; status >> word;)
    if (double kilobytes = 0; word == "VmHWM:" && status >> kilobytes) return kilobytes / 1024;
  return 0;
}

double nLogN(std::size_t size) {
  return kShopSizes[size].machines * std::log(kShopSizes[size].machines);
}

}  // namespace

void run(benchmark::State& state, const std::string& name, const std::string& against,
         const std::function<void()>& job) {
  const auto size = static_cast<std::size_t>(state.range(0));
  state.SetLabel(kShopSizes[size].name);
  forgetPeak();
  double total = 0;
  for (auto _ : state) {
    const double begin = processorSeconds();
    job();
    total += processorSeconds() - begin;
  }
  auto& times = secondsOf()[name];
  times[size] = total / static_cast<double>(state.iterations());
  state.counters["peak_MB"] = peakMegabytes();
  if (const auto before = times.find(size - 1); size > 0 && before != times.end())
    state.counters["growth"] = times[size] / before->second * nLogN(size - 1) / nLogN(size);
  const auto& other = secondsOf()[against];
  if (const auto same = other.find(size); same != other.end())
    state.counters["times"] = times[size] / same->second;
}

void allSizes(benchmark::internal::Benchmark* benchmark) {
  benchmark->DenseRange(0, kLast)->Unit(benchmark::kMillisecond)->MinTime(0.3);
}

void allSizesOnce(benchmark::internal::Benchmark* benchmark) {
  benchmark->DenseRange(0, kLast)->Unit(benchmark::kMillisecond)->Iterations(1);
}

}  // namespace stopwalk::bench

int main(int argc, char** argv) {
  stopwalk::app::keepMemory();
  benchmark::Initialize(&argc, argv);
  if (benchmark::ReportUnrecognizedArguments(argc, argv)) return 1;
  benchmark::RunSpecifiedBenchmarks();
  benchmark::Shutdown();
  return 0;
}
