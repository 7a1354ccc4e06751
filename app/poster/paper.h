#pragma once

#include <QSizeF>
#include <span>
#include <string>

namespace stopwalk::poster {

// A sheet of paper upright.
struct Paper {
  const char* key;  // as said on the command line: `a3`
  const char* name;
  double width_mm;
  double height_mm;

  QSizeF size(bool landscape) const {
    return landscape ? QSizeF(height_mm, width_mm) : QSizeF(width_mm, height_mm);
  }
};

// From small to large.
std::span<const Paper> papers();
const Paper* paperOf(const std::string& key);

}  // namespace stopwalk::poster
