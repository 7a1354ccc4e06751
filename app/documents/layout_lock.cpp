#include "app/documents/layout_lock.h"

#include <QCoreApplication>
#include <QFile>
#include <QLockFile>
#include <QSysInfo>
#include <vector>

#include "app/documents/file_bytes.h"
#include "app/documents/words.h"

namespace stopwalk::documents {

LayoutLock::LayoutLock() = default;

LayoutLock::~LayoutLock() {
  giveBack();
}

LockState LayoutLock::take(const QString& layout_path) {
  const QString layout = targetOf(layout_path);
  if (layout == layout_ && state_ == LockState::Held && isStillHeld()) return state_;
  giveBack();
  layout_ = layout;
  file_ = layout + ".lock";
  return tryToTake();
}

bool LayoutLock::isFor(const QString& layout_path) const {
  return !layout_.isEmpty() && layout_ == targetOf(layout_path);
}

LockState LayoutLock::tryToTake() {
  holder_.reset();
  lock_ = std::make_unique<QLockFile>(file_);
  lock_->setStaleLockTime(0);  // a person who thinks for an hour still holds it
  if (lock_->tryLock()) return state_ = LockState::Held;
  const QLockFile::LockError error = lock_->error();
  lock_.reset();
  if (error == QLockFile::PermissionError) return state_ = LockState::ReadOnly;
  if (error != QLockFile::LockFailedError) return state_ = LockState::Failed;
  holder_ = holderOf(file_);
  // Given back between the two looks: it is free.
  if (!holder_) return state_ = LockState::Failed;
  return state_ = LockState::Others;
}

LockState LayoutLock::breakAndTake(const Holder& shown) {
  if (state_ != LockState::Others) return state_;
  if (holderOf(file_) == shown) QFile::remove(file_);
  return tryToTake();
}

void LayoutLock::giveBack() {
  if (state_ == LockState::Held && isStillHeld()) lock_->unlock();
  lock_.reset();
  holder_.reset();
  state_ = LockState::None;
}

bool LayoutLock::isStillHeld() {
  if (state_ != LockState::Held) return false;
  const std::optional<Holder> holder = holderOf(file_);
  if (holder && holder->this_host && holder->process == QCoreApplication::applicationPid()) return true;
  forgetLost();
  holder_ = holder;
  state_ = holder ? LockState::Others : LockState::None;
  return false;
}

// A QLockFile removes its file when it ends, even if that is another's by now. A lost one is therefore kept
// to the end of the process.
void LayoutLock::forgetLost() {
  static auto* const lost = new std::vector<QLockFile*>;
  lost->push_back(lock_.release());
}

std::optional<Trouble> LayoutLock::trouble() const {
  switch (state_) {
    case LockState::Held:
      return std::nullopt;
    case LockState::Others: {
      const QString what = Words::tr("Open to look only: another holds this layout");
      if (!holder_->readable)
        return Trouble{layout_, what, Words::tr("its lock is damaged; made by %1").arg(holder_->text()),
                       Words::tr("If you are sure that nobody works on it, take it over.")};
      return Trouble{
          layout_, what, holder_->text(),
          holder_->this_host
              ? Words::tr("Close it there, or save your work under another name.")
              : Words::tr("Ask there first. If you are sure that nobody works on it, take it over.")};
    }
    case LockState::ReadOnly:
      return Trouble{
          layout_,
          Words::tr("Open to look only: nothing can be written in this folder"),
          {},
          Words::tr("Save under another name in a folder of yours, or have the permissions changed.")};
    case LockState::None:
    case LockState::Failed:
      break;
  }
  return Trouble{layout_,
                 Words::tr("Open without a lock: another could write the file at the same time"),
                 {},
                 Words::tr("Try again, or save under another name.")};
}

}  // namespace stopwalk::documents
