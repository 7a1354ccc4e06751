#pragma once

namespace stopwalk::layout {

// What the file said of one thing beyond the values the program uses: unknown keys, the order of its keys,
// comments. Carried by the thing itself, so that copying, moving or renaming it loses nothing on save.
struct Kept {
  bool operator==(const Kept&) const = default;
};

}  // namespace stopwalk::layout
