#pragma once

#include <QStringList>

#include "app/poster/block.h"
#include "app/poster/content.h"
#include "app/poster/sizes.h"
#include "app/poster/words.h"
#include "core/layout/layout.h"

namespace stopwalk::poster {

// The plan of the room with its signs, drawn within an area of the page.
struct PlanPicture {
  std::vector<Mark> marks;
  QRectF room;  // its box on the page
  bool signs_placed = false;
  QStringList unnamed;   // machines whose names found no place
  QStringList off_plan;  // devices drawn outside the room
};

PlanPicture planPicture(const Content& content, const layout::Layout& layout, const Languages& languages,
                        const Lettering& letters, QRectF area, int scale, const Sizes& sizes);

// Between the drawing and the edge of its area, for signs and names that stand outside the walls.
QSizeF ringOf(const Sizes& sizes);

}  // namespace stopwalk::poster
