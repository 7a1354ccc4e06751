#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/inspection/check_chain.h"

// Which passes may be relied on. Where it is in doubt whether one is as it was written down, or still says
// what it said, it makes nothing good; a failure counts whatever the doubt.
namespace stopwalk::inspection {

// Why a pass counts for nothing.
enum class Doubt {
  NotAsWritten,  // it stands up to a line of the log that is not as it was written, or corrects one such
  AfterToday,    // it is dated, or was entered, on a day still to come
  TakenAway,     // the device was recorded as taken away since: another stands on the plan under its id
  NotNamed       // it did not name all machines that the device stops now
};
inline constexpr std::array kDoubts = {Doubt::NotAsWritten, Doubt::AfterToday, Doubt::TakenAway,
                                       Doubt::NotNamed};

struct NotCounted {
  std::size_t check = 0;  // its number
  Date on{};
  Doubt why = Doubt::NotAsWritten;
  std::vector<std::string> machines = {};  // that it did not name
  bool operator==(const NotCounted&) const = default;
};
// Why, alone and with its number and day; the window says the same in its language (app/rounds/reasons.h).
std::string reasonOf(const NotCounted& pass);
std::string clauseOf(const NotCounted& pass);

// A device as the layout has it.
struct DeviceNow {
  std::string id;
  std::vector<std::string> machines;  // ids of what it stops
  bool latches = true;                // its kind stays in when pressed, or that is not known
  bool is_stop = true;                // its kind stops machines, or that is not known; else it is looked at
  bool operator==(const DeviceNow&) const = default;
};

// Whether what a chain says is held against what a stop must do: by what the device is now, or, where the
// layout does not have it, by what it was.
inline bool isOfStop(const CheckChain& chain, const DeviceNow* now) {
  return now ? now->is_stop : !chain.isOfNoStop();
}

class Reliance {
 public:
  Reliance(const Records& records, const Now& now);

  // None: it counts, whatever the device stops now. `now`: the device, if it is known.
  std::optional<Doubt> doubt(const CheckChain& pass, const DeviceNow* now) const;
  // Whether one of its checks is dated, or was entered, on a day still to come, whatever else is in doubt.
  bool isToCome(const CheckChain& chain) const;
  // As `doubt`, of a test by hand: all that the device stops now is to be named. Looking asks for nothing more.
  std::optional<NotCounted> notCounted(const CheckChain& pass, const DeviceNow* now) const;
  std::optional<NotCounted> lookNotCounted(const CheckChain& pass, const DeviceNow* now) const;

 private:
  bool isAfterDoubt(const CheckChain& pass, const DeviceNow* now) const;

  Now now_;
  std::size_t unsure_to_;
  std::optional<std::int64_t> sure_since_;  // when the first line behind that was written
};

std::string listed(const std::vector<std::string>& machines);
// Of `machines` those that not every check of the chain names: a correction names those of its own day.
std::vector<std::string> notNamed(const CheckChain& pass, const std::vector<std::string>& machines);

}  // namespace stopwalk::inspection
