#pragma once

#include <QString>

#include "app/edits/things.h"
#include "core/audit/report.h"
#include "core/layout/device_kind.h"

namespace stopwalk::plan {

// A distance as people of the layout's unit read it: `4.20 m`, or feet and inches as findings and routes have
// them.
QString walkText(double metres, layout::LengthUnit unit);

// A thing in a sentence: what it is, its size, and of a station or machine the walks to its stop and to the
// phone.
QString describe(const layout::Layout& layout, const layout::DeviceKinds& kinds, const edits::Thing& thing,
                 const audit::Report* report);

// "4.20 m, narrow" or "at hand" or "no way to it".
QString describe(const audit::Nearest& nearest, layout::LengthUnit unit);

}  // namespace stopwalk::plan
