#pragma once

#include <QObject>
#include <QUndoStack>
#include <memory>

#include "app/edits/edit.h"

namespace stopwalk::edits {

// The layout that is being worked on, and the history of what was done to it.
class EditedLayout : public QObject {
  Q_OBJECT

 public:
  explicit EditedLayout(QObject* parent = nullptr);

  const layout::Layout& layout() const { return *layout_; }
  // The same as a value that stays as it is: for a worker.
  std::shared_ptr<const layout::Layout> snapshot() const { return layout_; }
  QUndoStack& history() { return history_; }

  // Carries out an edit that was made from layout() as one step of the history. An edit that changes nothing
  // makes no step, nor does one that is refused: false.
  bool apply(Edit edit);
  // For looking only: whatever would change it is refused.
  void setReadOnly(bool read_only);
  bool isReadOnly() const { return read_only_; }
  // Another layout altogether, with an empty history.
  void reset(layout::Layout layout);
  // Steps from here on are not merged with those before.
  void pause() { ++pauses_; }

 signals:
  void changed();
  void readOnlyChanged();
  void refused(const QString& why);  // a sentence

 private:
  class Step;

  void replace(std::shared_ptr<const layout::Layout> layout);

  std::shared_ptr<const layout::Layout> layout_;
  QUndoStack history_;
  int pauses_ = 0;
  bool read_only_ = false;
};

}  // namespace stopwalk::edits
