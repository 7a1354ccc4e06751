#include "core/layout/kept.h"

#include <utility>

namespace stopwalk::layout {
namespace {

std::vector<std::pair<std::string, std::string>> unknown(const Kept& kept) {
  std::vector<std::pair<std::string, std::string>> values;
  if (!kept.text) return values;
  for (const KeptEntry& entry : kept.text->entries) {
    if (!entry.known) values.emplace_back(entry.key, entry.source);
    if (!entry.extra.empty()) values.emplace_back(entry.key, entry.extra);
  }
  return values;
}

}  // namespace

bool Kept::operator==(const Kept& other) const {
  return text == other.text || unknown(*this) == unknown(other);
}

}  // namespace stopwalk::layout
