#pragma once

#include <QObject>
#include <QSettings>
#include <optional>
#include <utility>

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

  // As a person reads them, a line and its place each.
  static QString linesOf(const std::vector<files::Diagnostic>& diagnostics);

  // What is being typed or dragged is taken as it stands: before anything of the layout goes out.
  void endTyping() { emit typingEnds(); }
  // True when it ends up on the disk.
  bool save();
  bool saveAs();
  // Whether what is in the window may be closed: it is saved, or is let go knowingly.
  bool mayClose();

  // What was left by a crash; empty when nothing was.
  std::vector<documents::Found> found() { return store_.found(kindsFor); }
  // Bundled, with those of the shop's own file beside the layout.
  static layout::DeviceKinds kindsFor(const QString& layout_path);
  // The shop's own files as they are now, and why the layout cannot go on with them.
  std::pair<plan::Catalogue, QString> readAgain() const;
  void recover(const documents::Found& found);
  void discard(const documents::Found& found);  // asks, unless the work is in its file

  std::vector<documents::RecentLayout> recent() const { return recent_.list(); }
  void forgetRecent() { recent_.forgetAll(); }

 signals:
  void recentChanged();
  // Under another name than before: what stands beside the file `was`, such as its records, is not there.
  void savedElsewhere(const QString& was);
  void said(const QString& sentence);  // what was done, for the bottom line
  void typingEnds();                   // what is being typed is to be entered now, or it is lost

 private:
  enum class Answer { Yes, OtherName, No };

  // For a layout there: with the shop's own kinds and machines beside it; and what is wrong with those.
  static std::pair<plan::Catalogue, QString> catalogueFor(const QString& path);

  // Whether what is in the window may go. It goes only when what takes its place is there.
  bool mayLeave();
  void openNow(const QString& path);
  Document::Lock lockToOpen(const QString& path);  // none: do not open it
  Answer lockToSave(Document::Target& target);
  Answer folderToSave(Document::Target& target);
  void throwAway(const documents::Found& found);
  void tell(const documents::Trouble& trouble, const QString& title, const QString& details = {});
  bool saveTo(const QString& path, bool overwrite);
  bool judge(const documents::SaveResult& result);

  Document& document_;
  documents::RecoveryStore& store_;
  Asker& asker_;
  documents::RecentLayouts recent_;
};

}  // namespace stopwalk::window
