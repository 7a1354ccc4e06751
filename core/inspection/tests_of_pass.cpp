#include "core/inspection/tests_of_pass.h"

#include <algorithm>

#include "core/inspection/check_rules.h"

namespace stopwalk::inspection {
namespace {

// As the pass has it, be it no.
void leave(Check& check, Tried test, const Check& pass) {
  std::erase_if(check.tested, [&](const auto& said) { return said.first == test; });
  if (const auto was = testedFor(pass, test)) check.tested.emplace_back(test, *was);
}

}  // namespace

std::vector<Due::What> testsOf(const DeviceNow& device, const Schedule& schedule) {
  if (!device.is_stop) return {Due::What::Seen};
  std::vector<Due::What> tests = {Due::What::Pressed, Due::What::Full};
  if (schedule.seen_days) tests.push_back(Due::What::Seen);
  return tests;
}

bool isTest(const Check& pass, Due::What test, const DeviceNow& device) {
  switch (test) {
    case Due::What::Pressed:
      return passedPressed(pass);
    case Due::What::Full:
      return passedInFull(pass, device.latches);
    case Due::What::Seen:
      return device.is_stop ? testedFor(pass, Tried::Seen).value_or(true) : passedSeen(pass);
    case Due::What::Retest:
      break;
  }
  return workedAsAsked(pass, device.is_stop);
}

std::vector<Tried> notTicked(const Check& pass, std::span<const Due::What> tests, const DeviceNow& device) {
  const auto isAll = [&](const Check& check) {
    return std::ranges::all_of(tests, [&](Due::What test) { return isTest(check, test, device); });
  };
  if (isAll(pass)) return {};
  const auto wasSo = [&](Tried test) { return testedFor(pass, test).value_or(false); };
  std::vector<Tried> left;
  Check all;
  all.result = Result::Pass;
  for (const Tried test : mayBeTried(device.is_stop)) {
    const bool is_asked =
        (test == Tried::Seen) != device.is_stop || testedFor(pass, test);  // in one, or apart
    if (!is_asked && !wasSo(test)) continue;
    all.tested.emplace_back(test, true);
    if (!wasSo(test)) left.push_back(test);
  }
  for (std::size_t i = left.size(); i-- > 0;) {
    Check without = all;
    leave(without, left[i], pass);
    if (!isAll(without)) continue;
    all = without;
    left.erase(left.begin() + static_cast<std::ptrdiff_t>(i));
  }
  return left;
}

std::vector<Due::What> notTestedBy(const Check& pass, std::span<const Due> due, const DeviceNow& device) {
  std::vector<Due::What> left;
  for (const Due& d : due)
    if (d.what != Due::What::Retest && !isTest(pass, d.what, device)) left.push_back(d.what);
  return left;
}

}  // namespace stopwalk::inspection
