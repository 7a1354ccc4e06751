#pragma once

#include <QString>
#include <optional>
#include <vector>

#include "app/rounds/entered.h"
#include "core/inspection/on_record.h"
#include "core/layout/layout.h"

// What a pass counts for by what was tried at it, and what stays due all the same.
namespace stopwalk::rounds {

// A device as the layout and its records have it on a day.
struct DeviceOn {
  inspection::DeviceNow now;
  const inspection::DeviceState* state = nullptr;  // null: none
  inspection::Schedule schedule;
  inspection::Date day{};

  std::vector<inspection::Due> due() const;
};

// Before it is recorded, what it will and will not do, in sentences; of what is neither a pass nor a
// correction nothing. `entered`: as it stands on the card; `check`: what would be recorded; `then`: what
// would come of it (core/inspection/on_record.h).
struct WillCount {
  QString text;
  bool is_short = false;  // something stays, or becomes, due or failed
};
WillCount willCountFor(const Entered& entered, const inspection::Check& check,
                       const inspection::IfRecorded& then, const DeviceOn& device,
                       const layout::Layout& layout);

// What is due at the device on the day though the check passed, as that did not try all of it: "full test,
// not ticked: …"; empty: nothing.
QString stillDueText(const inspection::Check& check, const DeviceOn& device);
// Why the check is not that test though it passed: "not ticked: …"; empty: it is, or did not pass.
QString whyNot(inspection::Due::What test, const inspection::Check& check,
               const inspection::DeviceNow& device);

}  // namespace stopwalk::rounds
