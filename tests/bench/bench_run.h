#pragma once

#include <benchmark/benchmark.h>

#include <functional>
#include <string>

namespace stopwalk::bench {

// With this goes main(): it keeps memory as the program does, from before the first shop is drawn.

// Runs the job for the shop size in the first argument, and counts beside its time: `growth`, how it grew
// from the size before against n log n (1 is n log n); `times`, how often as long it took as the job named
// `against` did in this run (by processor time, so that other programs on the machine do not count);
// `peak_MB`, the peak of memory during the job.
void run(benchmark::State& state, const std::string& name, const std::string& against,
         const std::function<void()>& job);

// All shop sizes; by time, or one iteration each.
void allSizes(benchmark::internal::Benchmark* benchmark);
void allSizesOnce(benchmark::internal::Benchmark* benchmark);

}  // namespace stopwalk::bench
