#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

#include "core/inspection/moment.h"

// What is written down of inspections. A record is never changed: it is known by its number, which is its
// line in the log, and a later one may correct it.
namespace stopwalk::inspection {

// The layout as it was that day; of what was entered afterwards, when it was.
struct LayoutThen {
  std::optional<int> revision;
  std::string sha256;  // of the file's bytes
  bool operator==(const LayoutThen&) const = default;
};

// How a round is walked.
struct RoundWalk {
  bool after_hours = false;  // doors as after opening hours
  std::string start;         // id of the place where it begins; empty: wherever is best
  bool closed = false;       // back to where it began
  bool operator==(const RoundWalk&) const = default;
};

// A dated walk by a named person over a set of devices.
struct Round {
  std::size_t number = 0;
  Moment at;
  std::string by;
  std::string of;                    // `all`, `due`, `metal` (a room's id) or `due in metal`
  std::vector<std::string> devices;  // in the order to be walked
  LayoutThen layout;
  std::optional<Moment> entered = {};  // when it was written; none: at once
  RoundWalk walk = {};
  bool operator==(const Round&) const = default;
};

// What may have been tried. Of seen and pressed, no: it was not done. Of the others, no: it was tried, and is
// not so. Seen says in one what clear (nothing is in its way) and legible (its marking) say apart.
enum class Tried {
  Seen,
  Clear,
  Legible,
  Pressed,
  PressedRunning,
  Latches,
  StaysStoppedReleased,
  StaysStoppedPower
};
inline constexpr std::array kTried = {Tried::Seen,
                                      Tried::Clear,
                                      Tried::Legible,
                                      Tried::Pressed,
                                      Tried::PressedRunning,
                                      Tried::Latches,
                                      Tried::StaysStoppedReleased,
                                      Tried::StaysStoppedPower};

// Pass: it was pressed and did what it must, unless `tested` says otherwise.
enum class Result { Pass, Fail, NotTested, NotAccessible };
inline constexpr std::array kResults = {Result::Pass, Result::Fail, Result::NotTested, Result::NotAccessible};

// What is still to be done.
struct Corrective {
  std::string what;
  std::string owner;
  std::optional<Date> due;
  bool operator==(const Corrective&) const = default;
};

// Of the machine that a device failed to stop: out of use, and marked so.
struct TagOut {
  std::string by;
  std::optional<Date> until;  // none: until the device passes
  bool operator==(const TagOut&) const = default;
};

// One device in one round.
struct Check {
  std::size_t number = 0;
  std::size_t round = 0;              // the number of its round
  std::string device;                 // `lathe-1/bar`
  std::vector<std::string> machines;  // ids of what it stops
  std::string room;                   // id; empty: in none
  Moment at;
  std::string inspector;
  std::string second;  // person; may be empty
  std::vector<std::pair<Tried, bool>> tested;
  Result result = Result::NotTested;
  std::vector<double> run_down_s;  // each run
  std::string note;
  std::string action;  // what else was done at once
  std::optional<Corrective> corrective;
  std::optional<std::size_t> corrects;  // the number of the check that this one takes the place of
  LayoutThen layout;
  std::optional<Moment> entered =
      {};                // when it was written, where `at` was given, such as from paper; none: at once
  bool removed = false;  // what was not tested is no longer there
  // `at` cannot be read: it is when this, or else the record before it, was written, if that can be.
  bool is_undated = false;
  std::optional<TagOut> tagged_out = {};
  bool no_stop = false;  // the device was none that day: it is only looked at
  bool operator==(const Check&) const = default;
};

using Record = std::variant<Round, Check>;

// All that a log holds, each in the order it was written.
struct Records {
  std::vector<Round> rounds;
  std::vector<Check> checks;
  std::size_t unsure_to = 0;  // the last line that is not as it was written; 0: all are
  const Round* findRound(std::size_t number) const;
  // One of that number: a line that was changed may say of several devices that they failed.
  const Check* findCheck(std::size_t number) const;
  const Check* findCheck(std::size_t number, const std::string& device) const;
  bool operator==(const Records&) const = default;
};

// When it was written down.
inline const Moment& writtenAt(const Check& check) {
  return check.entered ? *check.entered : check.at;
}
inline const Moment& writtenAt(const Round& round) {
  return round.entered ? *round.entered : round.at;
}

inline const std::string kNoReadableTime = "no readable time";
// When it was made, as a record has it, or that.
std::string timeText(const Check& check);

std::optional<bool> testedFor(const Check& check, Tried test);
// Whether it says that it was looked at and was as it should be.
bool wasSeen(const Check& check);
// Whether it says that the device was worked and stopped, and nothing else against that: what a test by hand
// asks for.
bool passedPressed(const Check& check);
// Whether it says that the device was looked at and all was as it should be: what is asked of what stops
// nothing, such as a guarded start. Whoever pressed it looked at it.
bool passedSeen(const Check& check);
// Whether everything that may be tried was, and was so. That it stays in when pressed may be left unsaid, and
// is not asked of a kind that does not.
bool passedInFull(const Check& check, bool latches = true);
// What of all that it leaves out, or says was not done or not so; of seen, clear and legible what is wanting.
std::vector<Tried> missingInFull(const Check& check);

// None for no runs.
std::optional<double> meanOf(const std::vector<double>& run_down_s);

std::string_view word(Tried test);
std::string_view word(Result result);
std::optional<Tried> triedOf(std::string_view word);
std::optional<Result> resultOf(std::string_view word);

}  // namespace stopwalk::inspection
