#pragma once

#include <QThreadPool>
#include <functional>

namespace stopwalk::window {

// Work that would hold the window up, done on a thread of its own: the window is painted meanwhile, and
// nothing more happens in it until the work is done.
class Aside {
 public:
  Aside() { worker_.setMaxThreadCount(1); }
  void operator()(const std::function<void()>& work);

 private:
  QThreadPool worker_;
};

}  // namespace stopwalk::window
