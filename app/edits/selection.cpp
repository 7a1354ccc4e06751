#include "app/edits/selection.h"

#include <algorithm>

namespace stopwalk::edits {

bool Selection::contains(const std::string& id) const {
  return std::ranges::find(ids_, id) != ids_.end();
}

void Selection::set(std::vector<std::string> ids) {
  if (ids == ids_) return;
  ids_ = std::move(ids);
  emit changed();
}

void Selection::toggle(const std::string& id) {
  if (std::erase(ids_, id) == 0) ids_.push_back(id);
  emit changed();
}

}  // namespace stopwalk::edits
