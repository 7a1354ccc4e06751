#pragma once

#include <QObject>
#include <QTimer>

#include "app/panels/moment_ago.h"

namespace stopwalk::window {

// How old what stands beside the plan is. What is answered within a frame is never marked but in what is
// copied; what became pale is current again with the answer. Where one change follows the other, as while a
// key is held down, it stays pale until nothing was changed for a moment, so that nothing flickers.
class Freshness : public QObject {
  Q_OBJECT

 public:
  explicit Freshness(QObject* parent = nullptr);

  // Something was changed, and is being computed.
  void changed();
  // Something is held, such as in a drag: nothing beside the plan follows it.
  void held();
  // What was changed last is shown.
  void answered();
  // What is there is looked at now: if nothing is awaited it is current, however lately it came.
  void look();
  panels::Age age() const { return age_; }

 signals:
  void aged(stopwalk::panels::Age age);

 private:
  void become(panels::Age age);

  QTimer frame_, late_, still_;
  bool is_awaited_ = false;
  bool is_going_on_ = false;  // the last change came soon after another
  panels::Age age_ = panels::Age::Current;
};

}  // namespace stopwalk::window
