#pragma once

#include <QObject>
#include <QThreadPool>
#include <memory>
#include <optional>

#include "app/documents/autosave.h"
#include "app/documents/disk_watch.h"
#include "app/documents/layout_file.h"
#include "app/documents/layout_lock.h"
#include "app/documents/recovery_store.h"
#include "app/edits/edited_layout.h"
#include "app/plan/catalogue.h"

namespace stopwalk::window {

// The layout in the window and the file that it belongs to: what is saved, what is kept in case of a crash,
// who else has it. Asks nothing; FileFlow does.
class Document : public QObject {
  Q_OBJECT

 public:
  using Lock = std::shared_ptr<documents::LayoutLock>;
  // A file to save in, with all that it takes to go on there.
  struct Target {
    QString path;
    Lock lock;
    plan::Catalogue catalogue;  // of its folder
    bool overwrite = false;     // whatever layout stands there now
  };

  Document(documents::RecoveryStore& store, QThreadPool& recovery_worker, QObject* parent = nullptr);
  ~Document() override;

  edits::EditedLayout& edited() { return edited_; }
  const edits::EditedLayout& edited() const { return edited_; }
  const plan::Catalogue& catalogue() const { return catalogue_; }

  const QString& path() const { return path_; }  // empty: never saved
  QString folder() const;                        // of the file, or where one would expect to save
  QString name() const;                          // for the title
  bool isReadOnly() const { return read_only_; }
  bool isSaved() const;  // nothing would be lost
  // Of the file, where it holds this very layout; empty where it does not.
  std::string fileHash() const;
  bool isSaving() const { return saving_; }
  bool isUntouched() const { return path_.isEmpty() && isSaved(); }
  const documents::LayoutLock& lock() const { return *lock_; }
  // What the layout is made with: its file, the picture under it, its profile and the shop's own files.
  QStringList readFrom() const;
  bool isAt(const QString& path) const;  // whatever way the path names the file
  documents::DiskState diskState() const { return watch_.state(); }
  // What the reader had to say about the file as it was opened.
  const std::vector<files::Diagnostic>& diagnostics() const { return diagnostics_; }

  // Nothing drawn yet, and a name to be changed.
  static layout::Layout emptyLayout();
  // An empty plan without a file, or with one's content that has no file of its own, such as a sample.
  void start(layout::Layout layout = emptyLayout(), plan::Catalogue catalogue = plan::bundledCatalogue());
  // The lock of a file, which was tried for: the one that is held already, or another, which becomes the
  // document's with `take`, `recover` or a save, and until then stands beside its own.
  Lock lockFor(const QString& path);
  // Takes over what was opened; for looking only, where the lock is not held.
  void take(documents::OpenResult opened_layout, plan::Catalogue catalogue, Lock lock);
  // Work that was found after a crash: the file it belongs to, but not as it stands there. A new layout has
  // no lock.
  void recover(const documents::Found& found, plan::Catalogue catalogue, Lock lock);

  // The shop's own files beside the layout say other things now.
  void setCatalogue(plan::Catalogue catalogue);

  // On a thread of its own; `saved` tells how it ended. One at a time.
  void save(Target target);
  void waitForSave();
  std::optional<documents::Trouble> keepNow() { return autosave_.flush(); }
  // The person let the unsaved work go, and closes the window. What takes its place lets it go as well.
  void letGo();

 signals:
  void stateChanged();    // path, saved, read-only
  void sourcesChanged();  // another catalogue or folder; before the layout changes
  void opened();          // another layout than before
  void saved(const stopwalk::documents::SaveResult& result);
  void onDisk(stopwalk::documents::DiskState state);
  void notKept(const stopwalk::documents::Trouble& trouble);
  void kept();  // in case of a crash

 private:
  void setFile(const QString& path, const std::string& sha256, Lock lock);
  void finishSave(const documents::SaveResult& result, std::shared_ptr<const layout::Layout> what,
                  const Target& target);

  edits::EditedLayout edited_;
  plan::Catalogue catalogue_ = plan::bundledCatalogue();
  QString path_;
  std::string sha256_;
  bool read_only_ = false;
  std::shared_ptr<const layout::Layout> saved_;  // as the file has it
  std::vector<files::Diagnostic> diagnostics_;
  Lock lock_ = std::make_shared<documents::LayoutLock>();
  documents::DiskWatch watch_;
  documents::Autosave autosave_;
  QThreadPool saver_;
  bool saving_ = false;
};

}  // namespace stopwalk::window
