#include "app/edits/selection.h"

namespace stopwalk::edits {

void Selection::set(std::vector<std::string> ids) {
  if (ids == ids_) return;
  ids_ = std::move(ids);
  selected_ = {ids_.begin(), ids_.end()};
  emit changed();
}

void Selection::toggle(const std::string& id) {
  if (selected_.erase(id) > 0) {
    std::erase(ids_, id);
  } else {
    ids_.push_back(id);
    selected_.insert(id);
  }
  emit changed();
}

}  // namespace stopwalk::edits
