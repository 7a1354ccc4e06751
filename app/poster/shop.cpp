#include "app/poster/shop.h"

#include <algorithm>

namespace stopwalk::poster {

Shop::Shop(const layout::Layout& layout, const layout::DeviceKinds& kinds, const audit::Profile& profile,
           std::string sha256, audit::Failed failed)
    : layout_(layout),
      sha256_(std::move(sha256)),
      open_(layout, kinds, profile, floor::Hours::Open, failed),
      after_(layout, kinds, profile, floor::Hours::After, failed) {}

About Shop::about() const {
  About about{layout_, sha256_, open_.plan.faults.size()};
  for (std::size_t d = 0; d < open_.devices.size(); ++d)
    if (open_.relation.isOutOfOrder(d)) about.out_of_order.push_back(open_.devices[d].id);
  return about;
}

QStringList Shop::failedOf(const std::vector<const Listed*>& listed) const {
  QStringList told;
  for (std::size_t d = 0; d < open_.devices.size(); ++d) {
    const audit::DeviceEntry& device = open_.devices[d];
    if (!open_.failures[d] || !device.kind->counts_as_stop ||
        std::ranges::find(listed, device.id, &Listed::id) == listed.end())
      continue;
    const QString text =
        open_.relation.isOutOfOrder(d)
            ? Told::tr(
                  "the check of %1 on %2 failed, and it has not passed since: it is shown as out of order; "
                  "when it has passed, print this anew")
            : Told::tr(
                  "the check of %1 on %2 failed, and it has not passed since: the profile counts it as a "
                  "stop all the same, and so it is shown as one");
    told.push_back(
        text.arg(QString::fromStdString(device.id), failedOnText(open_.failures[d]->on, Language("en"))));
  }
  return told;
}

QString Shop::whyNot(std::size_t room) const {
  if (open_.plan.rooms[room].empty())
    return Told::tr("its outline cannot be built; `stopwalk check` says why");
  if (!hasContent(open_, room)) return Told::tr("there is no machine and no stop in it");
  return {};
}

Content Shop::content(std::size_t room, const std::optional<Viewer>& viewer) const {
  return contentOf(open_, after_, room, viewer ? *viewer : usualViewer(layout_, room).value_or(Viewer{}));
}

Poster Shop::poster(std::size_t room, const std::optional<Viewer>& viewer, const Wish& wish) const {
  const Content shown = content(room, viewer);
  Poster made = makePoster(shown, about(), wish);
  if (made.document && !open_.walks.onFloor(shown.viewer.stands()))
    made.shortfalls.push_back(
        {Told::tr("something stands before the place where it hangs, so that nobody can stand there to read "
                  "it: choose another"),
         false});
  for (const QString& text : failedOf(listedIn(shown))) made.shortfalls.push_back({text, false});
  if (const std::size_t faults = open_.plan.faults.size(); faults > 0)
    made.shortfalls.push_back(
        {Told::tr("drawing faults in the layout: %1; what is faulty may be missing here, and "
                  "`stopwalk check` names it")
             .arg(faults),
         false});
  return made;
}

}  // namespace stopwalk::poster
