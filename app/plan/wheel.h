#pragma once

#include <QWheelEvent>

#include "app/plan/view_transform.h"

namespace stopwalk::plan {

// A wheel zooms about the pointer; two fingers on a touchpad move the view, with Ctrl they zoom.
void zoomOrPan(ViewTransform& view, const QWheelEvent& event);

}  // namespace stopwalk::plan
