#include "app/edits/scale_underlay.h"

#include <QCoreApplication>

namespace stopwalk::edits {

Edit scaleUnderlay(const layout::Layout& layout, geometry::Point first, geometry::Point second,
                   double true_mm) {
  Edit edit{QCoreApplication::translate("edits", "Scale the underlay picture"), layout};
  const double seen = geometry::distance(first, second);
  if (!edit.after.underlay || seen <= 0 || true_mm <= 0) return edit;
  const double factor = true_mm / seen;
  layout::Underlay& underlay = *edit.after.underlay;
  underlay.mm_per_pixel *= factor;
  underlay.at = first + factor * (underlay.at - first);
  return edit;
}

}  // namespace stopwalk::edits
