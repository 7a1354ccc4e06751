#include "app/panels/actions/own_key.h"

#include <QKeyEvent>
#include <QWidget>
#include <utility>

namespace stopwalk::panels {
namespace {

class OwnKey : public QObject {
 public:
  OwnKey(QWidget& widget, QKeySequence::StandardKey key, std::function<void()> run)
      : QObject(&widget), key_(key), run_(std::move(run)) {
    widget.installEventFilter(this);
  }

 protected:
  bool eventFilter(QObject*, QEvent* event) override {
    const bool is_claim = event->type() == QEvent::ShortcutOverride;
    if (!is_claim && event->type() != QEvent::KeyPress) return false;
    if (!static_cast<QKeyEvent*>(event)->matches(key_)) return false;
    if (!is_claim) run_();
    event->accept();
    return true;
  }

 private:
  QKeySequence::StandardKey key_;
  std::function<void()> run_;
};

}  // namespace

void giveOwnKey(QWidget& widget, QKeySequence::StandardKey key, std::function<void()> run) {
  new OwnKey(widget, key, std::move(run));
}

}  // namespace stopwalk::panels
