#include "app/edits/scale_underlay.h"

#include "app/edits/move_things.h"
#include "app/edits/step_names.h"
#include "app/edits/words.h"

namespace stopwalk::edits {

Edit scaleUnderlay(const layout::Layout& layout, geometry::Point first, geometry::Point second,
                   double true_mm) {
  const double seen = geometry::distance(first, second);
  if (!layout.underlay || seen <= 0 || true_mm <= 0) return noStep(layout);
  layout::Layout after = layout;
  const double factor = true_mm / seen;
  layout::Underlay& underlay = *after.underlay;
  underlay.mm_per_pixel *= factor;
  underlay.at = rounded(first + factor * (underlay.at - first));
  return step(layout, Words::tr("Scale the underlay picture"), std::move(after));
}

}  // namespace stopwalk::edits
