#include "core/files/references.h"

#include <algorithm>

#include "core/files/nearest.h"
#include "core/layout/layout.h"

namespace stopwalk::files {

bool References::define(const std::string& full, Names what, std::size_t byte) {
  const std::string_view id = std::string_view(full).substr(full.find('/') + 1);
  if (id == layout::kAll || id == layout::kOutside) {
    problems_.error(byte, "the id " + quoted(id) + " is reserved; choose another");
    return false;
  }
  const auto [place, is_new] = defined_.try_emplace(full, Definition{what, byte});
  if (!is_new) {
    problems_.again(byte, "the id " + quoted(full) + " is given twice", place->second.byte);
    return false;
  }
  order_.emplace_back(place->first, what);
  return true;
}

void References::mention(std::string full, std::vector<Names> wanted, std::string described, std::size_t byte,
                         std::size_t hidden) {
  mentions_.push_back({std::move(full), std::move(wanted), std::move(described), byte, hidden});
}

std::string References::suggestion(const Mention& mention) {
  if (comparisons_left_ < order_.size()) return "";
  comparisons_left_ -= order_.size();
  std::vector<std::string_view> known;
  const std::string_view scope = std::string_view(mention.full).substr(0, mention.hidden);
  for (const auto& [id, what] : order_) {
    const bool wanted = std::find(mention.wanted.begin(), mention.wanted.end(), what) != mention.wanted.end();
    if (wanted && id.starts_with(scope)) known.push_back(id.substr(mention.hidden));
  }
  return didYouMean(std::string_view(mention.full).substr(mention.hidden), known);
}

void References::check() {
  for (const Mention& m : mentions_) {
    const auto found = defined_.find(m.full);
    if (found != defined_.end() &&
        std::find(m.wanted.begin(), m.wanted.end(), found->second.what) != m.wanted.end())
      continue;
    const std::string shown = quoted(std::string_view(m.full).substr(m.hidden));
    const std::string wrong = found == defined_.end() ? "there is no " + m.described + " with the id " + shown
                                                      : shown + " is no " + m.described;
    problems_.error(m.byte, wrong + suggestion(m));
  }
  mentions_.clear();
}

}  // namespace stopwalk::files
