#include "app/panels/actions/own_key.h"

#include <QKeyEvent>
#include <QWidget>
#include <utility>

namespace stopwalk::panels {
namespace {

class OwnKey : public QObject {
 public:
  OwnKey(QWidget& widget, const QKeySequence& key, std::function<void()> run)
      : QObject(&widget), key_(key), run_(std::move(run)) {
    widget.installEventFilter(this);
  }

 protected:
  bool eventFilter(QObject*, QEvent* event) override {
    const bool is_claim = event->type() == QEvent::ShortcutOverride;
    if (!is_claim && event->type() != QEvent::KeyPress) return false;
    if (pressed(*static_cast<QKeyEvent*>(event)) != key_) return false;
    if (!is_claim) run_();
    event->accept();
    return true;
  }

 private:
  // The same on the keypad.
  static QKeySequence pressed(const QKeyEvent& event) {
    return QKeyCombination(event.modifiers() & ~(Qt::KeypadModifier | Qt::GroupSwitchModifier),
                           Qt::Key(event.key()));
  }

  QKeySequence key_;
  std::function<void()> run_;
};

}  // namespace

void giveOwnKey(QWidget& widget, const QKeySequence& key, std::function<void()> run) {
  new OwnKey(widget, key, std::move(run));
}

void giveOwnKey(QWidget& widget, QKeySequence::StandardKey key, const std::function<void()>& run) {
  for (const QKeySequence& each : QKeySequence::keyBindings(key)) giveOwnKey(widget, each, run);
}

}  // namespace stopwalk::panels
