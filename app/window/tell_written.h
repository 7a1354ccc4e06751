#pragma once

#include <functional>

#include "app/documents/safe_write.h"
#include "app/window/asker.h"

namespace stopwalk::window {

// Tells the person how the writing of a file went, whatever it holds: `say` puts a sentence where it stays in
// sight, and trouble is to be answered. `done`: the sentence if the file stands there. True: all is well.
bool tellWritten(Asker& asker, const QString& path, const documents::WriteResult& result, const QString& done,
                 const std::function<void(const QString&)>& say);

}  // namespace stopwalk::window
