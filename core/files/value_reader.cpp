#include "core/files/value_reader.h"

#include <cmath>

#include "core/geometry/segment.h"

namespace stopwalk::files {

using layout::LengthUnit;

// A quoted text is one, a plain one too: `12' 6"` needs no quotes where it begins with a digit.
std::optional<double> ValueReader::feetAndInches(Node node) {
  const bool may_be =
      node.isScalar() && (node.isQuoted() || node.text().find_first_of("'\"") != std::string_view::npos);
  if (!may_be) return std::nullopt;
  return layout::feetAndInches(node.text());
}

std::optional<double> ValueReader::coordinate(Node node) {
  const bool in_feet = !unit_ || *unit_ == LengthUnit::Foot || *unit_ == LengthUnit::Inch;
  const auto in_words = feetAndInches(node);
  double mm = 0;
  if (in_words) {
    if (!in_feet) {
      problems_.error(node.begin(),
                      "feet and inches can be read in a file in ft or in only; this one is in " +
                          std::string(layout::unitName(*unit_)));
      return std::nullopt;
    }
    mm = *in_words;
  } else if (node.isScalar() && layout::hasCurlyMarks(node.text())) {
    problems_.error(node.begin(),
                    "feet and inches are written with the plain marks ' and \", such as 12' 6\", not " +
                        quoted(node.text()));
    return std::nullopt;
  } else if (node.isScalar() && !node.isQuoted() &&
             node.text().find_first_of("'\"") == std::string_view::npos) {
    const auto number = readNumber(node, problems_);
    if (!number) return std::nullopt;
    const layout::Number exact = layout::millimetres(node.text(), unit_.value_or(LengthUnit::Millimetre));
    mm = exact.ok() ? exact.value : HUGE_VAL;
  } else if (node.isScalar()) {
    const std::string also = in_feet ? ", or feet and inches such as 12' 6 1/2\"," : "";
    problems_.error(node.begin(),
                    "a number" + also + " is expected here, not the text " + quoted(node.text()));
    return std::nullopt;
  } else {
    return readNumber(node, problems_);
  }
  if (std::abs(mm) <= layout::kLongest) return mm;
  problems_.error(node.begin(), quoted(node.text()) + " is beyond 10 km");
  return std::nullopt;
}

std::optional<double> ValueReader::size(Node node) {
  const auto mm = coordinate(node);
  if (!mm || *mm > 0) return mm;
  problems_.error(node.begin(),
                  quoted(node.text()) + " is not positive; leave the key out where a size is unknown");
  return std::nullopt;
}

std::optional<double> ValueReader::distance(Node node) {
  const auto mm = coordinate(node);
  if (!mm || *mm >= 0) return mm;
  problems_.error(node.begin(), "a distance cannot be negative, as " + quoted(node.text()) + " is");
  return std::nullopt;
}

std::optional<double> ValueReader::angle(Node node) {
  const auto degrees = readNumber(node, problems_);
  if (!degrees || std::abs(*degrees) <= layout::kMostAngle) return degrees;
  problems_.error(node.begin(),
                  quoted(node.text()) + " is no direction: degrees from 0 to 360 are expected here");
  return std::nullopt;
}

std::optional<double> ValueReader::seconds(Node node) {
  const auto s = readNumber(node, problems_);
  if (!s || *s >= 0) return s;
  problems_.error(node.begin(), "a time in seconds cannot be negative, as " + quoted(node.text()) + " is");
  return std::nullopt;
}

std::optional<layout::Point> ValueReader::point(Node node) {
  if (!node.isList() || node.size() != 2) {
    problems_.error(node.begin(), "a place is expected here: [x, y]");
    return std::nullopt;
  }
  auto i = node.items().begin();
  const auto x = coordinate(*i);
  ++i;
  const auto y = coordinate(*i);
  if (!x || !y) return std::nullopt;
  return layout::Point{*x, *y};
}

// A corner from which the outline runs back the way it came: no room or machine has such a spike.
void ValueReader::warnOfSpikes(Node node, const geometry::Polygon& corners) {
  std::size_t i = 0;
  for (const Node item : node.items()) {
    const geometry::Point tip = corners[i], before = corners[i == 0 ? corners.size() - 1 : i - 1],
                          after = corners[i + 1 == corners.size() ? 0 : i + 1];
    ++i;
    const geometry::Point out = before - tip, back = after - tip;
    if (squaredLength(out) == 0 || squaredLength(back) == 0 || dot(out, back) <= 0) continue;
    const bool out_is_longer = squaredLength(out) > squaredLength(back);
    const geometry::Segment longer{tip, out_is_longer ? before : after};
    if (geometry::distance(longer, out_is_longer ? after : before) <= geometry::kTouch_mm)
      problems_.warn(item.begin(),
                     "the outline runs to this corner and back along its own line, a spike of no width; "
                     "leave the corner out");
  }
}

std::optional<geometry::Polygon> ValueReader::outline(Node node) {
  if (!node.isList()) {
    problems_.error(node.begin(), "an outline is expected here: a list of corners [x, y]");
    return std::nullopt;
  }
  geometry::Polygon corners;
  bool good = true;
  for (const Node item : node.items()) {
    const auto corner = point(item);
    good = good && corner;
    if (corner) corners.push_back(*corner);
  }
  if (!good) return std::nullopt;
  if (corners.size() >= 3) {
    warnOfSpikes(node, corners);
    return corners;
  }
  problems_.error(node.begin(),
                  "an outline needs three corners or more; this has " + std::to_string(corners.size()));
  return std::nullopt;
}

std::optional<layout::Footprint> ValueReader::footprint(Node node) {
  MapReader map(node, problems_, "a footprint");
  std::optional<layout::Footprint> footprint;
  if (const auto shape = map.optional("outline")) {
    for (const char* other : {"width", "depth"})
      if (const auto extra = map.optional(other))
        problems_.error(extra->begin(), "a footprint has either an outline or width and depth");
    if (const auto corners = outline(*shape)) footprint = *corners;
  } else if (map.isMap()) {
    const auto width = map.required("width");
    const auto depth = map.required("depth");
    const auto w = width ? size(*width) : std::nullopt;
    const auto d = depth ? size(*depth) : std::nullopt;
    if (w && d) footprint = layout::Rectangle{*w, *d};
  }
  map.finish();
  return footprint;
}

}  // namespace stopwalk::files
