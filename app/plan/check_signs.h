#pragma once

#include <QPainter>
#include <array>
#include <utility>
#include <vector>

#include "app/plan/items/check_sign.h"

// On the plan, what the last checks of devices came to.
namespace stopwalk::plan {

// As they are laid: the gravest first.
inline constexpr std::array kSignsGravestFirst = {CheckSign::Failed,     CheckSign::Short,
                                                  CheckSign::NotReached, CheckSign::NotTested,
                                                  CheckSign::Never,      CheckSign::Passed};

// One at a device, or one for several that stand together, with how many of each result.
struct LaidSign {
  QRectF box;              // pixels
  QRectF symbol;           // of its device; of several the gravest
  std::size_t device = 0;  // the place of that among those given
  struct Row {
    CheckMark mark;  // the ring of the one whose time has gone the furthest
    int count = 0;
  };
  std::vector<Row> rows;  // by sign, the gravest first
  int count() const;
};
// Of devices by the squares of their symbols. At a corner of its symbol each where there is room, the gravest
// first; where signs would lie over one another one stands for them, and no result is left out. None lies
// over another.
std::vector<LaidSign> layCheckSigns(const std::vector<std::pair<QRectF, CheckMark>>& devices);

void paintCheckSigns(QPainter& painter, const Theme& theme, const std::vector<LaidSign>& signs);

}  // namespace stopwalk::plan
