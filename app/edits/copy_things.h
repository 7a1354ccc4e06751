#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "app/edits/edit.h"
#include "core/layout/device_kind.h"

namespace stopwalk::edits {

inline constexpr const char* kClipType = "application/x-stopwalk-layout+yaml";

// Things that were copied: a small layout of them and of what they speak of.
struct Clip {
  layout::Layout things;
  std::vector<std::string> ids;  // of those that were copied
  bool empty() const { return ids.empty(); }
  bool operator==(const Clip&) const = default;
};

// All but the underlay can be copied. A machine takes along what is on it.
Clip copyThings(const layout::Layout& layout, const std::vector<std::string>& ids);

struct Pasted {
  Edit edit;
  std::vector<std::string> ids;  // of the new things
};

// Puts the things in under new ids, moved by `by`; what is on a machine that was not copied goes onto that
// machine. Where a thing speaks of another that was copied with it, the copy speaks of the other's copy.
// Where it speaks of one that was not, it still does if the layout has that one under the same id and name;
// else it no longer speaks of any: a device comes to stop nothing that it was not said to stop.
Pasted paste(const layout::Layout& layout, const Clip& clip, geometry::Point by);
// Both in one step, whatever has been copied before.
Pasted duplicateThings(const layout::Layout& layout, const std::vector<std::string>& ids, geometry::Point by);

// For the clipboard: a layout file with one key more.
std::string clipText(const Clip& clip);
// None: it is not the text of one.
std::optional<Clip> readClip(std::string_view text, const layout::DeviceKinds& kinds);

}  // namespace stopwalk::edits
