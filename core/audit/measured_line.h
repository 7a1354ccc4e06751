#pragma once

#include <optional>

#include "core/audit/context.h"

// What rules measured, as lines for a finding. Nothing is measured here: lengths are those that are handed
// in.
namespace stopwalk::audit {

// A way that is found, of a station to a device: at hand, the straight line to it.
MeasuredLine lineOf(const Context& context, std::size_t station, const Way& way);
// A walk to a phone or to a place of any kind.
MeasuredLine walkLine(const std::vector<Point>& path_mm, double length_m);
// From a station to the nearest point of a device.
MeasuredLine reachLine(const Context& context, std::size_t station, std::size_t device);
MeasuredLine straightLine(Point a, Point b, std::optional<double> length_m);
// The line from side to side of a door.
MeasuredLine widthLine(geometry::Segment opening, double width_m);
MeasuredLine placeLine(Point p);
MeasuredLine placeLine(geometry::Segment s);

// Whatever is nearest to the station as the crow flies: to where no way leads. None: there is none.
std::optional<MeasuredLine> nearestStop(const Context& context, std::size_t station,
                                        std::span<const std::size_t> devices);
std::optional<MeasuredLine> nearestPhone(const Context& context, std::size_t station);

}  // namespace stopwalk::audit
