#pragma once

#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "core/inspection/schedule.h"

namespace stopwalk::inspection {

// What would be of a device if a check of it were written down behind all that is on record.
struct IfRecorded {
  DeviceState before, after;
  std::vector<Due::What> counts = {};        // as what the pass counts; of what is no pass nothing
  std::optional<ShortOfPass> short_of = {};  // what the pass does not do
  Date on = kUnreadDay;                      // the day that it is of: a correction is of that of its check
};

// The last line, and when the latest of all was written; none: there is no line.
struct LastLine {
  std::size_t number = 0;
  std::optional<std::int64_t> latest = {};
};

// Records held against a day and a layout: put together once, and asked many times.
class OnRecord {
 public:
  // Refers to the records.
  OnRecord(const Records& records, const Schedule& schedule, AsOf as_of);
  OnRecord(const OnRecord&) = delete;
  OnRecord& operator=(const OnRecord&) = delete;

  const std::vector<CheckChain>& chains() const { return chains_; }
  // Of one device, in the order of writing.
  const Chains& of(const std::string& device) const;
  // Null: the layout does not have it.
  const DeviceNow* now(const std::string& device) const;

  // What schedule.h says of each.
  std::vector<DeviceState> states() const;
  std::vector<FailedDevice> failed() const;
  std::map<std::size_t, ShortOfPass> passesShort() const;
  std::vector<const Check*> openActions() const;
  std::set<std::string> removed() const;

  // Its number is not looked at. Without a name it is of somebody who may close any failure.
  IfRecorded ifRecorded(Check check) const;

 private:
  Closing closingOf(const std::string& device, const Chains& its, bool by_another) const;

  const Records& records_;
  const bool by_another_;
  const AsOf as_of_;
  const Reliance reliance_;
  const LastLine last_;
  const std::vector<CheckChain> chains_;
  std::map<std::string, Chains> of_;
  std::map<std::string, const DeviceNow*> now_;
};

}  // namespace stopwalk::inspection
