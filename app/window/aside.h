#pragma once

#include <QThreadPool>
#include <functional>

namespace stopwalk::window {

class Asker;

// Work that would hold the window up, done on a thread of its own: the window is painted meanwhile, and
// nothing more happens in it until the work is done. What it throws is thrown here.
class Aside {
 public:
  Aside() { worker_.setMaxThreadCount(1); }
  void operator()(const std::function<void()>& work);

 private:
  QThreadPool worker_;
};

// Does what a person asked for, and tells what is thrown on the way, such as for want of memory: nobody else
// would catch it, and it would end the program. Whether it was done.
bool doOrTell(Asker& asker, const std::function<void()>& action);

}  // namespace stopwalk::window
