#pragma once

#include <QString>
#include <memory>
#include <optional>

#include "app/documents/lock_holder.h"
#include "app/documents/trouble.h"

class QLockFile;

namespace stopwalk::documents {

enum class LockState {
  None,      // not asked for, or given back
  Held,      // ours
  Others,    // another holds it: see `holder`
  ReadOnly,  // nothing can be written in the folder, so that no lock can either
  Failed     // it could not be made, see `trouble`
};

// Keeps a second writer from one layout: a file beside it, named as the layout with `.lock` behind. Opening
// to look needs none. What a dead process of this computer left is taken over by itself; what another
// computer left is not, as nobody here can tell whether it still runs.
class LayoutLock {
 public:
  LayoutLock();
  ~LayoutLock();  // gives the lock back
  LayoutLock(const LayoutLock&) = delete;
  LayoutLock& operator=(const LayoutLock&) = delete;

  // Gives back the lock of another layout first. Asking again for the same one tries again.
  LockState take(const QString& layout_path);
  // Takes the lock away from `shown`, which a person was shown and decided on. If another holds it by now, it
  // is left and shown instead.
  LockState breakAndTake(const Holder& shown);
  void giveBack();
  bool isFor(const QString& layout_path) const;  // held or not

  LockState state() const { return state_; }
  const std::optional<Holder>& holder() const { return holder_; }
  // Whenever the lock is not held: what that means for the person.
  std::optional<Trouble> trouble() const;
  // Looks at the disk: false after somebody broke our lock. To be asked before each save.
  bool isStillHeld();
  QString lockFile() const { return file_; }

 private:
  LockState tryToTake();
  void forgetLost();

  QString layout_;
  QString file_;
  std::unique_ptr<QLockFile> lock_;
  LockState state_ = LockState::None;
  std::optional<Holder> holder_;
};

}  // namespace stopwalk::documents
