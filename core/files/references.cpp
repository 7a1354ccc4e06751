#include "core/files/references.h"

#include <algorithm>

#include "core/files/nearest.h"
#include "core/layout/layout.h"

namespace stopwalk::files {

bool References::define(const std::string& full, Names what, std::size_t byte) {
  const std::string id = full.substr(full.find('/') + 1);
  if (id == layout::kAll || id == layout::kOutside) {
    problems_.error(byte, "the id " + quoted(id) + " is reserved; choose another");
    return false;
  }
  if (!defined_.try_emplace(full, what).second) {
    problems_.error(byte, "the id " + quoted(full) + " is taken by another thing above; ids are unique");
    return false;
  }
  order_.push_back(full);
  return true;
}

void References::mention(std::string full, std::vector<Names> wanted, std::string described, std::size_t byte,
                         std::size_t hidden) {
  mentions_.push_back({std::move(full), std::move(wanted), std::move(described), byte, hidden});
}

std::string References::suggestion(const Mention& mention) {
  if (suggestions_left_ == 0) return "";
  --suggestions_left_;
  std::vector<std::string_view> known;
  const std::string_view scope = std::string_view(mention.full).substr(0, mention.hidden);
  for (const std::string& id : order_) {
    if (!id.starts_with(scope)) continue;
    if (std::find(mention.wanted.begin(), mention.wanted.end(), defined_.at(id)) != mention.wanted.end())
      known.push_back(std::string_view(id).substr(mention.hidden));
  }
  return didYouMean(std::string_view(mention.full).substr(mention.hidden), known);
}

void References::check() {
  for (const Mention& m : mentions_) {
    const auto found = defined_.find(m.full);
    if (found != defined_.end() &&
        std::find(m.wanted.begin(), m.wanted.end(), found->second) != m.wanted.end())
      continue;
    const std::string shown = quoted(std::string_view(m.full).substr(m.hidden));
    const std::string wrong = found == defined_.end() ? "there is no " + m.described + " with the id " + shown
                                                      : shown + " is no " + m.described;
    problems_.error(m.byte, wrong + suggestion(m));
  }
  mentions_.clear();
}

}  // namespace stopwalk::files
