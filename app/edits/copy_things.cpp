#include "app/edits/copy_things.h"

#include <memory>
#include <unordered_set>

#include "app/edits/only_things.h"
#include "app/edits/references.h"
#include "app/edits/visit_thing.h"
#include "core/files/layout_reader.h"
#include "core/files/layout_writer.h"

namespace stopwalk::edits {
namespace {

using layout::Layout;

constexpr const char* kCopied = "copied";  // the key that names what was

void forget(layout::Device& device) {
  device.stops.reset();
  device.run_down_each.clear();
  device.held_at.reset();
}

// What is there only because it is spoken of does not itself speak of others.
void forgetOthers(Layout& things, const Ids& copied) {
  for (layout::Machine& machine : things.machines)
    for (layout::Device& device : machine.devices)
      if (!copied.contains(machine.id) && !copied.contains(machine.id + "/" + device.id)) forget(device);
  for (layout::Device& device : things.devices)
    if (!copied.contains(device.id)) forget(device);
}

std::vector<std::string> words(const std::string& text) {
  std::vector<std::string> found;
  for (std::size_t from = 0; (from = text.find_first_not_of(' ', from)) != std::string::npos;) {
    const std::size_t end = std::min(text.find(' ', from), text.size());
    found.push_back(text.substr(from, end - from));
    from = end;
  }
  return found;
}

}  // namespace

Clip copyThings(const Layout& layout, const std::vector<std::string>& ids) {
  Clip clip;
  for (const Thing& thing : chosenThings(layout, ids))
    if (thing.kind != ThingKind::Underlay) clip.ids.push_back(idOf(layout, thing));
  const Ids copied(clip.ids.begin(), clip.ids.end());
  Ids wanted = copied;
  Layout alone = onlyThings(layout, copied);
  followIds(alone, [&](const std::string& id) {
    wanted.insert(id);
    return std::optional<std::string>(id);
  });
  clip.things = onlyThings(layout, wanted);
  forgetOthers(clip.things, copied);
  return clip;
}

std::string clipText(const Clip& clip) {
  layout::KeptEntry copied;
  copied.key = kCopied;
  copied.known = false;
  for (const std::string& id : clip.ids) copied.source += " " + id;
  layout::KeptText head;
  head.unit = static_cast<int>(clip.things.unit);
  head.entries.push_back(std::move(copied));
  Layout file = clip.things;
  file.kept.text = std::make_shared<const layout::KeptText>(std::move(head));
  return files::writeLayout(file);
}

std::optional<Clip> readClip(std::string_view text, const layout::DeviceKinds& kinds) {
  auto read = files::readLayout(text, "clipboard", kinds);
  if (!read.value || !read.value->kept.text) return std::nullopt;
  Clip clip;
  for (const layout::KeptEntry& entry : read.value->kept.text->entries)
    if (entry.key == kCopied) clip.ids = words(entry.source);
  if (clip.empty()) return std::nullopt;
  clip.things = std::move(*read.value);
  clip.things.kept = {};
  for (const std::string& id : clip.ids)
    if (id == kUnderlayId || !findThing(clip.things, id)) return std::nullopt;
  return clip;
}

}  // namespace stopwalk::edits
