#pragma once

#include <vector>

#include "app/poster/block.h"
#include "app/poster/content.h"
#include "app/poster/sizes.h"
#include "app/poster/words.h"

namespace stopwalk::poster {

// The table beside the plan as blocks of one width, in order: for each machine its stops by number and
// picture, how each stops, and what to do then; at the end what is no stop.
std::vector<Block> tableBlocks(const Content& content, const Languages& languages, const Lettering& letters,
                               double width, const Sizes& sizes);

// What is said of a device: how it stops, and what.
QStringList wordsOf(const Listed& listed, const Language& language);

}  // namespace stopwalk::poster
