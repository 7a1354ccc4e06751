#include "app/poster/shop.h"

#include <algorithm>

namespace stopwalk::poster {

Shop::Shop(const layout::Layout& layout, const layout::DeviceKinds& kinds, const audit::Profile& profile,
           std::string sha256)
    : layout_(layout),
      sha256_(std::move(sha256)),
      open_(layout, kinds, profile, floor::Hours::Open),
      after_(layout, kinds, profile, floor::Hours::After) {}

std::string Shop::whyNot(std::size_t room) const {
  if (open_.plan.rooms[room].empty()) return "its outline cannot be built; `stopwalk check` says why";
  if (!hasContent(open_, room)) return "there is no machine and no stop in it";
  return {};
}

Content Shop::content(std::size_t room, const std::optional<Viewer>& viewer) const {
  return contentOf(open_, after_, room, viewer ? *viewer : usualViewer(layout_, room).value_or(Viewer{}));
}

Poster Shop::poster(std::size_t room, const std::optional<Viewer>& viewer, const Wish& wish) const {
  Poster made = makePoster(content(room, viewer), about(), wish);
  if (const std::size_t faults = open_.plan.faults.size(); faults > 0)
    made.shortfalls.push_back(
        {QStringLiteral("drawing faults in the layout: %1; what is faulty may be missing here, and "
                        "`stopwalk check` names it")
             .arg(faults),
         false});
  return made;
}

}  // namespace stopwalk::poster
