#include "app/edits/new_ids.h"

namespace stopwalk::edits {
namespace {

bool isDigit(char c) {
  return c >= '0' && c <= '9';
}

// `like` if it is free; else the first free with a higher number than the one it ends with, or with one
// behind `gap`.
std::string fresh(Ids& taken, const std::string& like, char gap, bool needs_gap) {
  if (taken.insert(like).second) return like;
  std::size_t end = like.size();
  while (end > 0 && isDigit(like[end - 1])) --end;
  const std::size_t digits = like.size() - end;
  const bool numbered = digits > 0 && digits < 9 && end > 0 && (!needs_gap || like[end - 1] == gap);
  const std::string stem = numbered ? like.substr(0, end) : like + gap;
  for (int number = numbered ? std::stoi(like.substr(end)) + 1 : 2;; ++number)
    if (const std::string id = stem + std::to_string(number); taken.insert(id).second) return id;
}

}  // namespace

Ids takenIds(const layout::Layout& layout) {
  Ids taken{layout::kAll, layout::kOutside};
  const auto add = [&](const auto& list) {
    for (const auto& thing : list) taken.insert(thing.id);
  };
  add(layout.rooms), add(layout.doors), add(layout.fixtures), add(layout.machines);
  add(layout.devices), add(layout.phones), add(layout.notes), add(layout.tape_checks);
  return taken;
}

Ids takenIds(const layout::Machine& machine) {
  Ids taken{layout::kAll, layout::kOutside};
  for (const auto& station : machine.stations) taken.insert(station.id);
  for (const auto& device : machine.devices) taken.insert(device.id);
  return taken;
}

std::string idFrom(std::string_view name, std::string_view otherwise) {
  std::string id;
  for (const char c : name) {
    if ((c >= 'a' && c <= 'z') || isDigit(c))
      id += c;
    else if (c >= 'A' && c <= 'Z')
      id += static_cast<char>(c - 'A' + 'a');
    else if (!id.empty() && id.back() != '-')
      id += '-';
  }
  while (!id.empty() && id.back() == '-') id.pop_back();
  return id.empty() ? std::string(otherwise) : id;
}

std::string freshId(Ids& taken, const std::string& like) {
  return fresh(taken, like, '-', false);
}

std::string freshName(Ids& taken, const std::string& like) {
  return like.empty() ? like : fresh(taken, like, ' ', true);
}

}  // namespace stopwalk::edits
