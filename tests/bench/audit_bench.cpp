// The whole audit of a layout's text: read, measured, judged. Without the start of a process, which takes a
// few milliseconds.
#include <benchmark/benchmark.h>

#include <cstddef>
#include <string>

#include "core/audit/audit.h"
#include "core/files/device_kinds_reader.h"
#include "core/files/layout_reader.h"
#include "core/files/layout_writer.h"
#include "tests/bench/bench_run.h"
#include "tests/support/shop_layout.h"

namespace stopwalk::bench {
namespace {

void wholeAudit(benchmark::State& state) {
  const auto size = static_cast<std::size_t>(state.range(0));
  const std::string text = files::writeLayout(support::shopLayout(support::kShopSizes[size]));
  std::size_t stations = 0;
  run(state, "audit", "", [&] {
    const auto layout = files::readLayout(text, "shop", files::bundledDeviceKinds());
    stations =
        audit::audit(*layout.value, files::bundledDeviceKinds(), audit::defaultProfile()).stations.size();
  });
  state.counters["stations"] = static_cast<double>(stations);
}

void reading(benchmark::State& state) {
  const auto size = static_cast<std::size_t>(state.range(0));
  const std::string text = files::writeLayout(support::shopLayout(support::kShopSizes[size]));
  run(state, "reading", "audit", [&] {
    benchmark::DoNotOptimize(
        files::readLayout(text, "shop", files::bundledDeviceKinds()).value->machines.size());
  });
}

BENCHMARK(wholeAudit)->Apply(allSizes);
BENCHMARK(reading)->Apply(allSizes);

}  // namespace
}  // namespace stopwalk::bench
