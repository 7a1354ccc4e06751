// The reach map from a layout to samples and contours. See docs/speed.md.
#include <benchmark/benchmark.h>

#include "core/audit/reach.h"
#include "core/files/device_kinds_reader.h"
#include "tests/bench/bench_run.h"
#include "tests/support/shop_layout.h"

namespace stopwalk::bench {
namespace {

void reachMap(benchmark::State& state, const char* name, audit::ReachTarget::What what, std::size_t samples) {
  const layout::Layout layout = support::shopLayout(support::kShopSizes[state.range(0)]);
  const layout::DeviceKinds kinds = files::bundledDeviceKinds();
  run(state, name, "", [&] {
    benchmark::DoNotOptimize(audit::reachOf(layout, kinds, floor::Hours::Open, {what, ""}, samples));
  });
}

using What = audit::ReachTarget::What;
BENCHMARK_CAPTURE(reachMap, phone_coarse, "phone, coarse", What::Phone, 2500)->Apply(allSizes);
BENCHMARK_CAPTURE(reachMap, any_stop_coarse, "any stop, coarse", What::AnyStop, 2500)->Apply(allSizes);
BENCHMARK_CAPTURE(reachMap, phone_fine, "phone, fine", What::Phone, 16000)->Apply(allSizes);
BENCHMARK_CAPTURE(reachMap, any_stop_fine, "any stop, fine", What::AnyStop, 16000)->Apply(allSizes);

}  // namespace
}  // namespace stopwalk::bench
