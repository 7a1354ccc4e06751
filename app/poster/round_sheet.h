#pragma once

#include <QString>
#include <QStringList>
#include <optional>
#include <string>
#include <vector>

#include "app/poster/poster.h"
#include "core/inspection/schedule.h"
#include "core/planning/round_order.h"

// The paper on which an inspection round is walked where no computer is: a block for each device with boxes
// to tick, in the order of the walk.
namespace stopwalk::poster {

struct RoundSheetMatter {
  const layout::Layout& layout;
  const layout::DeviceKinds& kinds;
  std::string file;                  // the layout's name on the disk
  std::string sha256;                // of its bytes
  std::vector<std::string> devices;  // ids, in the order of the walk; none: there is no sheet
  std::string of;                    // as `inspection::Round::of`: `all`, `due`, a room's id, `due in ` such
  std::optional<inspection::Round> round;        // none: it is opened when the sheet is entered
  std::vector<inspection::FailedDevice> failed;  // that are still open
  inspection::Date today{};
  inspection::RoundWalk walk = {};
  // Past the devices; none: their order is another than would be found now.
  std::optional<planning::InspectionWalk> found = {};
};

struct RoundSheet {
  Document document;
  QStringList shortfalls;  // what the sheet does not do as it should
};

// Of the wish the paper, upright, the first language and the letters are taken.
RoundSheet roundSheet(const RoundSheetMatter& matter, const Wish& wish);

}  // namespace stopwalk::poster
