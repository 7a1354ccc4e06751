#include "core/files/layout_reader.h"

#include "core/files/thing_reader.h"

namespace stopwalk::files {

Result<layout::Layout> readLayout(std::string_view text, const std::string& file,
                                  const layout::DeviceKinds& kinds) {
  Problems problems(text, file);
  layout::Layout plan;
  if (const auto tree = parseTree(text, problems)) {
    Reading reading(problems, kinds);
    readThing(reading, tree->root(), plan, "", {.is_file = true, .below = tree->endOfDocument()});
    reading.references.check();
    if (!tree->hasEndMarker())
      problems.warn(tree->endOfDocument(),
                    "the file does not end with the end marker `...`: it may have been cut short");
  }
  return problems.result(std::move(plan));
}

}  // namespace stopwalk::files
