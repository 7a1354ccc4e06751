#include "app/plan/wheel.h"

#include <QInputDevice>
#include <cmath>

namespace stopwalk::plan {
namespace {

constexpr double kNotch = 120;  // of a wheel, in eighths of a degree
constexpr double kZoomANotch = 1.25;

// Two fingers on a touchpad give many small steps in pixels; a wheel gives notches.
bool isTouchpad(const QWheelEvent& event) {
  return !event.pixelDelta().isNull() || event.phase() != Qt::NoScrollPhase ||
         event.device()->type() == QInputDevice::DeviceType::TouchPad;
}

}  // namespace

void zoomOrPan(ViewTransform& view, const QWheelEvent& event) {
  if (event.modifiers() & Qt::ControlModifier || !isTouchpad(event))
    view.zoomAt(event.position(), std::pow(kZoomANotch, event.angleDelta().y() / kNotch));
  else
    view.pan(event.pixelDelta().isNull() ? QPointF(event.angleDelta()) / 4 : QPointF(event.pixelDelta()));
}

}  // namespace stopwalk::plan
