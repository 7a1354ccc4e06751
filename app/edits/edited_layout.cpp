#include "app/edits/edited_layout.h"

#include <QDeadlineTimer>
#include <QUndoCommand>

#include "app/edits/layout_difference.h"

namespace stopwalk::edits {

namespace {
constexpr int kPause_ms = 2000;  // what follows later is a step of its own
constexpr int kMergeableId = 1;
}  // namespace

class EditedLayout::Step : public QUndoCommand {
 public:
  Step(EditedLayout& edited, const QString& name, LayoutDifference difference, QString merge_key)
      : QUndoCommand(name),
        edited_(edited),
        difference_(std::move(difference)),
        merge_key_(std::move(merge_key)),
        pauses_(edited.pauses_) {}

  void redo() override { change(&LayoutDifference::redo); }
  void undo() override {
    edited_.pause();
    change(&LayoutDifference::undo);
  }
  int id() const override { return merge_key_.isEmpty() ? -1 : kMergeableId; }

  bool mergeWith(const QUndoCommand* other) override {
    const auto& next = static_cast<const Step&>(*other);
    if (next.merge_key_ != merge_key_ || next.pauses_ != pauses_ || open_.hasExpired()) return false;
    layout::Layout before = edited_.layout();
    next.difference_.undo(before);
    difference_.undo(before);
    difference_ = LayoutDifference(before, edited_.layout());
    open_.setRemainingTime(kPause_ms);
    setText(next.text());
    setObsolete(difference_.empty());
    return true;
  }

 private:
  void change(void (LayoutDifference::*how)(layout::Layout&) const) {
    auto layout = std::make_shared<layout::Layout>(edited_.layout());
    (difference_.*how)(*layout);
    edited_.replace(std::move(layout));
  }

  EditedLayout& edited_;
  LayoutDifference difference_;
  QString merge_key_;
  int pauses_;
  QDeadlineTimer open_{kPause_ms};
};

EditedLayout::EditedLayout(QObject* parent) : QObject(parent), layout_(std::make_shared<layout::Layout>()) {}

bool EditedLayout::apply(Edit edit) {
  LayoutDifference difference(layout(), edit.after);
  if (read_only_ && !difference.empty())
    edit.refused = tr("Nothing was changed: this layout is open for looking only.");
  if (!edit.refused.isEmpty()) emit refused(edit.refused);
  if (!edit.refused.isEmpty() || difference.empty()) return false;
  history_.push(new Step(*this, edit.name, std::move(difference), edit.merge_key));
  return true;
}

void EditedLayout::setReadOnly(bool read_only) {
  if (read_only == read_only_) return;
  read_only_ = read_only;
  emit readOnlyChanged();
}

void EditedLayout::reset(layout::Layout layout) {
  history_.clear();
  replace(std::make_shared<layout::Layout>(std::move(layout)));
}

void EditedLayout::replace(std::shared_ptr<const layout::Layout> layout) {
  layout_ = std::move(layout);
  emit changed();
}

}  // namespace stopwalk::edits
