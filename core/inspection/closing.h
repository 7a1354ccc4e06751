#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "core/inspection/reliance.h"

// Which failures are open, and why a pass does not close one. Failures are closed one by one, each by a pass
// that is surely later.
namespace stopwalk::inspection {

// A device that failed and has not passed since.
struct FailedDevice {
  std::string device;
  Date on{};              // of the last check that it failed and no later one closed, or kUnreadDay
  std::size_t check = 0;  // its number
  std::string found_by;
  Date since{};          // of the first such
  bool removed = false;  // said since to be no longer there: it counts only if the layout has it again
  std::vector<std::string> machines = {};  // that it named
  bool no_stop = false;                    // it says that the device was none
  bool operator==(const FailedDevice&) const = default;
};

inline const std::string kUnreadName = "somebody whose name cannot be read";
// Whether it can be read who found it; of a line that was changed not always.
bool isFinderKnown(const FailedDevice& failed);
// Who must pass it where that is to be another person than who found it, behind "made by".
std::string whoElse(const FailedDevice& failed);

// Those of one device, in the order of writing.
using Chains = std::vector<const CheckChain*>;

// What passes are held against.
struct Closing {
  // Than who found the failure. If nobody can read who that was, by two who surely are two people.
  bool by_another = false;
  Reliance reliance;
  const DeviceNow* now = nullptr;  // the device, if the layout has it
  Chains removals = {};            // that say that it was taken away
};

// Why a pass does not close a failure.
enum class LeftOpen {
  Correction,      // it was not passed from the first: only a check of its own closes a failure
  NotPressed,      // it was not worked, did not stay in, or what it stops did not stop
  InDoubt,         // it counts for nothing
  NotSeen,         // of what stops nothing: it was not looked at
  NotNamed,        // it did not name all machines that are to be tested
  NotSurelyAfter,  // by the times given
  SamePerson       // who found it, or perhaps did, passed it, and another is to
};
inline constexpr std::array kLeftOpen = {LeftOpen::Correction, LeftOpen::NotPressed, LeftOpen::InDoubt,
                                         LeftOpen::NotSeen,    LeftOpen::NotNamed,   LeftOpen::NotSurelyAfter,
                                         LeftOpen::SamePerson};
// None: it closes it.
std::optional<LeftOpen> whyLeftOpen(const CheckChain& pass, const CheckChain& failed, const Check& failure,
                                    const Closing& closing);

// The machines that a pass names which closes a failure of a device: those that failed, as far as it stops
// them now, or all that it stops where it is not clear which of them those were.
std::vector<std::string> machinesToTest(const std::vector<std::string>& failed, const DeviceNow* now);

// Of the failures that no pass closes the last; none: all are closed.
std::optional<FailedDevice> openFailure(const Chains& chains, const Closing& closing);

// Whether it was said after all that was found of the device that it is no longer there.
bool isRemoved(const Chains& chains, const Reliance& reliance);

// Why a pass counts for nothing as a test by hand, or as a look, of what the layout has now; none: it counts.
std::optional<NotCounted> notCounted(const CheckChain& pass, const Closing& closing);
std::optional<NotCounted> lookNotCounted(const CheckChain& pass, const Closing& closing);

// What a pass does not do though it says pass.
struct ShortOfPass {
  std::size_t check = 0;                       // that says pass
  std::optional<NotCounted> not_counted = {};  // it counts for nothing
  std::optional<LeftOpen> left_open = {};      // though the device failed before, or perhaps before
  std::optional<FailedDevice> failed = {};     // what is left open
  std::vector<std::string> not_named = {};     // machines, where it is left open for them
  bool operator==(const ShortOfPass&) const = default;
};
// Of a device's passes those that fall short.
std::vector<ShortOfPass> shortOf(const Chains& chains, const Closing& closing);

// Why a failure is left open, without the check and the device.
std::string reasonOf(const ShortOfPass& pass);
// What it does not do, and why.
std::string clauseOf(const ShortOfPass& pass);

}  // namespace stopwalk::inspection
