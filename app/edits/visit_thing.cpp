#include "app/edits/visit_thing.h"

#include <unordered_map>
#include <unordered_set>

namespace stopwalk::edits {
namespace {

// Below this many, looking through the layout for each is quicker than making an index of it.
constexpr std::size_t kFew = 8;

std::vector<Thing> found(const layout::Layout& layout, const std::vector<std::string>& ids) {
  std::vector<Thing> things;
  if (ids.size() <= kFew) {
    for (const std::string& id : ids)
      if (const auto thing = findThing(layout, id)) things.push_back(*thing);
    return things;
  }
  std::unordered_map<std::string, Thing> by_id;
  for (const Thing& thing : allThings(layout)) by_id.emplace(idOf(layout, thing), thing);
  for (const std::string& id : ids)
    if (const auto thing = by_id.find(id); thing != by_id.end()) things.push_back(thing->second);
  return things;
}

}  // namespace

std::vector<Thing> knownThings(const layout::Layout& layout, const std::vector<std::string>& ids) {
  std::vector<Thing> things = found(layout, ids);
  std::unordered_set<std::string> seen;
  std::erase_if(things, [&](const Thing& thing) { return !seen.insert(idOf(layout, thing)).second; });
  return things;
}

std::vector<Thing> chosenThings(const layout::Layout& layout, const std::vector<std::string>& ids) {
  std::vector<Thing> things = knownThings(layout, ids);
  std::unordered_set<std::size_t> machines;
  for (const Thing& thing : things)
    if (thing.kind == ThingKind::Machine) machines.insert(thing.index);
  std::erase_if(things,
                [&](const Thing& thing) { return isOnMachine(thing) && machines.contains(thing.index); });
  return things;
}

}  // namespace stopwalk::edits
