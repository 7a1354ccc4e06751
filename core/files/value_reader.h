#pragma once

#include <optional>

#include "core/files/map_reader.h"
#include "core/layout/layout.h"

namespace stopwalk::files {

// Reads the values that layout files and machine templates share: lengths, points, outlines, footprints.
class ValueReader {
 public:
  explicit ValueReader(Problems& problems) : problems_(problems) {}

  // Absent: it could not be read, so that feet and inches draw no second error.
  void setUnit(std::optional<layout::LengthUnit> unit) { unit_ = unit; }

  std::optional<double> coordinate(Node node);
  std::optional<double> size(Node node);      // positive
  std::optional<double> distance(Node node);  // not negative
  std::optional<double> angle(Node node);
  std::optional<double> seconds(Node node);  // not negative
  std::optional<layout::Point> point(Node node);
  std::optional<geometry::Polygon> outline(Node node);
  std::optional<layout::Footprint> footprint(Node node);

 private:
  std::optional<double> feetAndInches(Node node);
  void warnOfSpikes(Node node, const geometry::Polygon& corners);

  Problems& problems_;
  std::optional<layout::LengthUnit> unit_ = layout::LengthUnit::Millimetre;
};

}  // namespace stopwalk::files
