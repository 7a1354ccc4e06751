// A machine dragged across its room: sixty positions, each audited by an Auditor that saw the last, and every
// tenth from nothing beside it; then round and round for two thousand, which is half a minute of it.
// Milliseconds of the processor.
#include <sys/resource.h>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <ctime>
#include <iterator>
#include <string_view>
#include <vector>

#include "app/command_line/kept_memory.h"
#include "core/audit/audit.h"
#include "core/files/device_kinds_reader.h"
#include "tests/support/shop_layout.h"

namespace stopwalk::bench {
namespace {

constexpr int kFrames = 60, kLongFrames = 2000;

double milliseconds() {
  std::timespec now{};
  clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &now);
  return 1e3 * static_cast<double>(now.tv_sec) + 1e-6 * static_cast<double>(now.tv_nsec);
}

struct Times {
  std::vector<double> all;
  template <class Job>
  void add(Job job) {
    const double begin = milliseconds();
    job();
    all.push_back(milliseconds() - begin);
  }
  double at(double share) {
    std::ranges::sort(all);
    return all[std::min(all.size() - 1, static_cast<std::size_t>(share * static_cast<double>(all.size())))];
  }
};

void drag(const support::ShopSize& size) {
  layout::Layout layout = support::shopLayout(size);
  const audit::Profile profile = audit::defaultProfile();
  const auto& kinds = files::bundledDeviceKinds();
  audit::Auditor auditor;
  auditor.audit(layout, kinds, profile);
  Times dragged, anew;
  std::size_t kept = 0, found = 0;
  layout::Machine& machine = layout.machines[layout.machines.size() / 2];
  for (int frame = 0; frame < kFrames; ++frame) {
    machine.at = machine.at + geometry::Point{30, 17};
    dragged.add([&] { auditor.audit(layout, kinds, profile); });
    kept += auditor.walksKept();
    found += auditor.walksFound();
    if (frame % 10 == 0) anew.add([&] { audit::audit(layout, kinds, profile); });
  }
  std::printf("%-8s | %8.2f | %8.2f | %8.2f | %8.2f | %5.1f | %3.0f %%\n", size.name, dragged.at(0.5),
              dragged.at(0.99), dragged.at(1), anew.at(0.5), anew.at(0.5) / dragged.at(0.5),
              100.0 * static_cast<double>(kept) / static_cast<double>(kept + found));
}

double peakMegabytes() {
  rusage usage{};
  getrusage(RUSAGE_SELF, &usage);
  return static_cast<double>(usage.ru_maxrss) / 1024;
}

// No position comes twice.
void dragLong(const support::ShopSize& size) {
  layout::Layout layout = support::shopLayout(size);
  const audit::Profile profile = audit::defaultProfile();
  const auto& kinds = files::bundledDeviceKinds();
  audit::Auditor auditor;
  auditor.audit(layout, kinds, profile);
  layout::Machine& machine = layout.machines[layout.machines.size() / 2];
  const geometry::Point start = machine.at;
  const double before_MB = peakMegabytes();
  Times first, last, all;
  for (int frame = 1; frame <= kLongFrames; ++frame) {
    machine.at = start + geometry::Point{900 * std::sin(0.037 * frame), 500 * std::sin(0.0411 * frame)};
    const auto audited = [&] { auditor.audit(layout, kinds, profile); };
    (frame <= kLongFrames / 10 ? first : frame > kLongFrames - kLongFrames / 10 ? last : all).add(audited);
  }
  for (const double t : first.all) all.all.push_back(t);
  for (const double t : last.all) all.all.push_back(t);
  std::printf("%-8s | %8.2f | %8.2f | %8.2f | %8.2f | %8.2f | %6.1f\n", size.name, first.at(0.5),
              last.at(0.5), all.at(0.5), all.at(0.99), all.at(1), peakMegabytes() - before_MB);
}

}  // namespace
}  // namespace stopwalk::bench

// Of the sizes named, or of all.
int main(int argc, char** argv) {
  stopwalk::app::keepMemory();  // as the program does
  const auto isAsked = [&](const stopwalk::support::ShopSize& size) {
    return argc == 1 || std::find(argv + 1, argv + argc, std::string_view(size.name)) != argv + argc;
  };
  std::puts("         |   median |      p99 |    worst | from nothing | times | walks kept");
  for (const auto& size : stopwalk::support::kShopSizes)
    if (isAsked(size)) stopwalk::bench::drag(size);
  std::puts("long     |    first |     last |   median |      p99 |    worst | MB more");
  for (const auto& size : stopwalk::support::kShopSizes)
    if (isAsked(size)) stopwalk::bench::dragLong(size);
}
