#pragma once

#include <span>
#include <vector>

#include "core/inspection/schedule.h"

// As which tests a pass counts by what was tried, whoever made it and when.
namespace stopwalk::inspection {

// What is asked of the device some day: of a stop that it is looked at only where the schedule says so.
std::vector<Due::What> testsOf(const DeviceNow& device, const Schedule& schedule);

// A retest is that of a device that failed.
bool isTest(const Check& pass, Due::What test, const DeviceNow& device);

// The fewest things that would have to be ticked besides for the pass to be each of these tests.
std::vector<Tried> notTicked(const Check& pass, std::span<const Due::What> tests, const DeviceNow& device);

// Of what is due that which the pass is none of.
std::vector<Due::What> notTestedBy(const Check& pass, std::span<const Due> due, const DeviceNow& device);

}  // namespace stopwalk::inspection
