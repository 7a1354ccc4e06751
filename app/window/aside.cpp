#include "app/window/aside.h"

#include <QEventLoop>
#include <exception>

#include "app/window/asker.h"

namespace stopwalk::window {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Aside)
};

}  // namespace

void Aside::operator()(const std::function<void()>& work) {
  QEventLoop until_done;
  std::exception_ptr thrown;
  worker_.start([&] {
    try {
      work();
    } catch (...) {
      thrown = std::current_exception();
    }
    QMetaObject::invokeMethod(&until_done, &QEventLoop::quit, Qt::QueuedConnection);
  });
  until_done.exec(QEventLoop::ExcludeUserInputEvents);
  worker_.waitForDone();
  if (thrown) std::rethrow_exception(thrown);
}

bool doOrTell(Asker& asker, const std::function<void()>& action) {
  try {
    action();
    return true;
  } catch (const std::exception& e) {
    asker.ask({Words::tr("That could not be done"),
               Words::tr("It failed on the way: %1. Close other programs if memory is short, and try again.")
                   .arg(QString::fromLocal8Bit(e.what())),
               {Words::tr("OK")}});
    return false;
  }
}

}  // namespace stopwalk::window
