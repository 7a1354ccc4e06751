#include "app/command_line/progress.h"

namespace stopwalk::app {

void Progress::show(std::size_t done) {
  if (!session_.console.progress || all_ < 2) return;
  session_.terminal << "\r\033[Kaudited " << done << " of " << all_ << " layouts" << std::flush;
  shown_ = true;
}

void Progress::hide() {
  if (shown_) session_.terminal << "\r\033[K" << std::flush;
  shown_ = false;
}

}  // namespace stopwalk::app
