#pragma once

#include <QObject>
#include <QSettings>
#include <optional>

#include "app/documents/recent_layouts.h"
#include "app/window/asker.h"
#include "app/window/document.h"

namespace stopwalk::window {

// Opening, saving and leaving, with the questions that they ask. Nothing unsaved is let go without an answer.
class FileFlow : public QObject {
  Q_OBJECT

 public:
  FileFlow(Document& document, documents::RecoveryStore& store, Asker& asker, QSettings& settings,
           QObject* parent = nullptr);

  void startNew();
  void open();  // asks which
  void openPath(const QString& path);
  void openSample(const QString& name);
  static QStringList samples();  // their names
  void revert();

  // True when it ends up on the disk.
  bool save();
  bool saveAs();
  // Whether what is in the window may be closed: it is saved, or was let go knowingly.
  bool mayLeave();

  // What was left by a crash; empty when nothing was.
  std::vector<documents::Found> found() { return store_.found(); }
  void recover(const documents::Found& found);
  void discard(const documents::Found& found) { store_.discard(found); }

  std::vector<documents::RecentLayout> recent() const { return recent_.list(); }
  void forgetRecent() { recent_.forgetAll(); }

 signals:
  void recentChanged();
  void said(const QString& sentence);  // what was done, for the bottom line

 private:
  enum class Access { Write, Look, No };

  Access accessTo(const QString& path);
  void tell(const documents::Trouble& trouble, const QString& title, const QString& details = {});
  bool saveTo(const QString& path, bool overwrite);
  bool judge(const documents::SaveResult& result);

  Document& document_;
  documents::RecoveryStore& store_;
  Asker& asker_;
  documents::RecentLayouts recent_;
};

}  // namespace stopwalk::window
