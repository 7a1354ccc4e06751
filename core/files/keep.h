#pragma once

#include <vector>

#include "core/files/field_texts.h"
#include "core/files/source_tree.h"
#include "core/layout/kept.h"

namespace stopwalk::files {

// Where a thing stands in its file.
struct Standing {
  std::size_t above = 0;  // the start of the line from which comments belong to it: below what came before
  bool is_item =
      false;  // of a list, so that comments above and behind it are its own; else they are its key's
  bool is_file = false;   // the whole file
  std::size_t below = 0;  // of the whole file: where it ends
};

// The start of the line below the end of what `node` holds.
std::size_t lineBelow(Node node);
std::size_t lineBelow(std::string_view text, std::size_t byte);

// What `map`, read into the thing that `fields` come from, says beyond them. Nothing, where it is written
// just as the program would: `block` tells whether over several lines.
layout::Kept keep(Node map, const std::vector<Field>& fields, bool block, layout::LengthUnit unit,
                  const Standing& standing);

}  // namespace stopwalk::files
