#include "app/window/tell_written.h"

#include <QFileInfo>

namespace stopwalk::window {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(stopwalk::window::TellWritten)
};

}  // namespace

bool tellWritten(Asker& asker, const QString& path, const documents::WriteResult& result, const QString& done,
                 const std::function<void(const QString&)>& say) {
  const bool is_there = result.written != documents::Written::No;
  const QString title = is_there ? Words::tr("Written, but perhaps not for good")
                                 : Words::tr("%1 was not written").arg(QFileInfo(path).fileName());
  say(is_there ? done : title + ".");
  if (result.written == documents::Written::Yes) return true;
  asker.ask({title, result.why, {Words::tr("OK")}});
  return false;
}

}  // namespace stopwalk::window
