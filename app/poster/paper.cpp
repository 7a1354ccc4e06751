#include "app/poster/paper.h"

#include <algorithm>
#include <array>

namespace stopwalk::poster {
namespace {

// ISO 216 and ANSI/ASME Y14.1 sizes (from memory).
constexpr std::array<Paper, 5> kPapers{{{"letter", "Letter", 215.9, 279.4},
                                        {"a4", "A4", 210, 297},
                                        {"tabloid", "Tabloid", 279.4, 431.8},
                                        {"a3", "A3", 297, 420},
                                        {"a2", "A2", 420, 594}}};

}  // namespace

std::span<const Paper> papers() {
  return kPapers;
}

const Paper* paperOf(const std::string& key) {
  const auto found = std::ranges::find_if(kPapers, [&](const Paper& p) { return key == p.key; });
  return found == kPapers.end() ? nullptr : &*found;
}

}  // namespace stopwalk::poster
