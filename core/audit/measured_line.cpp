#include "core/audit/measured_line.h"

#include <algorithm>
#include <utility>

namespace stopwalk::audit {
namespace {

using Kind = MeasuredLine::Kind;

constexpr double kMetres = 0.001;  // of a millimetre

MeasuredLine between(Kind kind, Point a, Point b, std::optional<double> length_m = std::nullopt) {
  return {kind, {kMetres * a, kMetres * b}, length_m};
}

Point nearestOn(const PlacedEntry& entry, Point from) {
  return geometry::nearestPoint(entry.placed.line(), from);
}

}  // namespace

MeasuredLine walkLine(const std::vector<Point>& path_mm, double length_m) {
  MeasuredLine line{Kind::Route, {}, length_m};
  line.line_m.reserve(path_mm.size());
  for (const Point p : path_mm) line.line_m.push_back(kMetres * p);
  return line;
}

MeasuredLine lineOf(const Context& c, std::size_t station, const Way& way) {
  return way.status == Status::AtHand ? reachLine(c, station, *way.index) : walkLine(way.path, way.walk_m);
}

MeasuredLine reachLine(const Context& c, std::size_t station, std::size_t device) {
  const Point at = c.stations[station].at;
  return between(Kind::Straight, at, nearestOn(c.placed[device], at), c.straight_m(station, device));
}

MeasuredLine straightLine(Point a, Point b, std::optional<double> length_m) {
  return between(Kind::Straight, a, b, length_m);
}

MeasuredLine widthLine(geometry::Segment opening, double width_m) {
  return between(Kind::Width, opening.a, opening.b, width_m);
}

MeasuredLine placeLine(Point p) {
  return {Kind::Place, {kMetres * p}};
}

MeasuredLine placeLine(geometry::Segment s) {
  return between(Kind::Place, s.a, s.b);
}

std::optional<MeasuredLine> nearestStop(const Context& c, std::size_t station,
                                        std::span<const std::size_t> devices) {
  std::optional<std::size_t> nearest;
  for (const std::size_t d : devices)
    if (c.mayUse(station, d) && (!nearest || c.straight_m(station, d) < c.straight_m(station, *nearest)))
      nearest = d;
  if (!nearest) return std::nullopt;
  return placeLine(nearestOn(c.placed[*nearest], c.stations[station].at));
}

std::optional<MeasuredLine> nearestPhone(const Context& c, std::size_t station) {
  const Point from = c.stations[station].at;
  const auto away = [&](const PlacedEntry& phone) { return geometry::distance(phone.placed.at, from); };
  const auto nearest = std::ranges::min_element(c.phones, {}, away);
  if (nearest == c.phones.end()) return std::nullopt;
  return placeLine(nearest->placed.at);
}

}  // namespace stopwalk::audit
