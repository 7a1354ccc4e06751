#pragma once

#include <cstddef>
#include <map>
#include <optional>
#include <set>
#include <span>
#include <string>
#include <vector>

#include "core/inspection/closing.h"

// How often devices are inspected, and what the records say of each.
namespace stopwalk::inspection {

// House rules but for the months, which are those of CNB/M/11.050 (circuits of category 3 and 4 monthly), as
// quoted, and 29 CFR 1910.147(c)(6)(i) (at least annually) by analogy.
struct Schedule {
  std::optional<int> seen_days = std::nullopt;  // none: at each opening, and not followed here
  int pressed_months = 1;                       // worked, and it stopped; what is no stop, looked at
  int full_months = 12;                         // all that may be tried
  bool retest_by_another = false;   // a failure is closed by another person than the one who found it
  bool failed_stops_count = false;  // in the audit
  bool operator==(const Schedule&) const = default;
};

// What the records are held against. A device that is not among `devices` is asked for no machines.
struct AsOf {
  Now now = {};
  std::vector<DeviceNow> devices = {};
};

// What the records come to for one device. A pass that is in doubt counts for nothing (reliance.h), and for
// pressed and in full only that of all machines which the device stops now. A check that was corrected says
// what its last correction says; but what was once written down as failed counts as failed, and what was not
// written down as passed from the first closes no failure: only a check of its own does, that was surely made
// after it (check_chain.h), in whatever order they were entered.
struct DeviceState {
  std::string device;
  // The last check that was not corrected, of those that are not still to come: its number, and when it was,
  // or kUnreadDay.
  std::optional<std::size_t> last = {};
  std::optional<Date> last_on = {};
  std::optional<Date> seen = {}, pressed = {}, in_full = {};  // when it last passed each
  // A pass since that, which counts for nothing.
  std::optional<NotCounted> seen_not_counted = {}, pressed_not_counted = {}, full_not_counted = {};
  std::optional<FailedDevice> failed = {};
  bool is_stop = true;  // false: it is only looked at
  bool operator==(const DeviceState&) const = default;
};

// Of all devices that are on record or in the layout, sorted by device.
std::vector<DeviceState> statesOf(const Records& records, const Schedule& schedule, const AsOf& as_of);
const DeviceState* findState(std::span<const DeviceState> states, const std::string& device);
std::vector<FailedDevice> failedDevices(const Records& records, const Schedule& schedule, const AsOf& as_of);
// The passes that count for nothing, or leave open what their device failed; by the number of the check.
std::map<std::size_t, ShortOfPass> passesShort(const Records& records, const Schedule& schedule,
                                               const AsOf& as_of);
// That of the check; null: it is no such pass. A line that was changed may say of others that they failed.
const ShortOfPass* findShort(const std::map<std::size_t, ShortOfPass>& passes, const Check& check);

// What stands to be done at one device.
struct Due {
  enum class What { Retest, Pressed, Full, Seen };
  std::string device;
  What what = What::Pressed;
  std::optional<Date> on;  // none: as soon as can be, as nothing that counts is on record or it failed
  std::optional<NotCounted> despite = {};  // a later pass, which counts for nothing
  bool operator==(const Due&) const = default;
};
std::string_view word(Due::What what);

// Due on `day` or before, of the devices given, in their order.
std::vector<Due> dueOn(std::span<const std::string> devices, std::span<const DeviceState> states,
                       const Schedule& schedule, Date day);
// Whether its day has gone by.
bool isOverdue(const Due& due, Date day);
// The first day after `day` on which something falls due, or one of the actions; none: never.
std::optional<Date> nextDue(std::span<const std::string> devices, std::span<const DeviceState> states,
                            const Schedule& schedule, Date day,
                            std::span<const Check* const> open_actions = {});

// Those of which it was said after all that they failed, and all that is to be done at them, that they are
// no longer there.
std::set<std::string> removedDevices(const Records& records, const Now& now);
// The checks that ask for something to be done, whose device has passed no check since.
std::vector<const Check*> openActions(const Records& records, const AsOf& as_of);
// For each check the place in `records.checks` of the one that it corrects; its own place: none.
std::vector<std::size_t> placesCorrected(const Records& records);
// For each check the number of the round that it belongs to: that of the first that it corrects, whatever it
// says itself.
std::vector<std::size_t> roundsOf(const Records& records);
// For each check the number of the one that corrects it; 0: none. In the order of `records.checks`.
std::vector<std::size_t> correctedBy(const Records& records);

}  // namespace stopwalk::inspection
