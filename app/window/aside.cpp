#include "app/window/aside.h"

#include <QEventLoop>

namespace stopwalk::window {

void Aside::operator()(const std::function<void()>& work) {
  QEventLoop until_done;
  worker_.start([&] {
    work();
    QMetaObject::invokeMethod(&until_done, &QEventLoop::quit, Qt::QueuedConnection);
  });
  until_done.exec(QEventLoop::ExcludeUserInputEvents);
  worker_.waitForDone();
}

}  // namespace stopwalk::window
