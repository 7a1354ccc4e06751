#pragma once

#include <QDialog>

#include "app/documents/recovery_store.h"
#include "core/layout/device_kind.h"

namespace stopwalk::window {

// Shows work that was found after a crash beside the file it belongs to, and asks which to go on with.
class RecoveryDialog : public QDialog {
  Q_OBJECT

 public:
  enum class Answer { Later, GoOn, Discard };

  RecoveryDialog(const documents::Found& found, const layout::DeviceKinds& kinds, QWidget* parent = nullptr);
  Answer answer() const { return answer_; }

 private:
  Answer answer_ = Answer::Later;
};

}  // namespace stopwalk::window
