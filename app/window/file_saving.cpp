// Saving, and the questions that it asks.
#include <QDir>
#include <QEventLoop>
#include <QFileInfo>

#include "app/window/file_flow.h"
#include "app/window/profile_for.h"
#include "core/files/layout_reader.h"
#include "core/files/layout_writer.h"

namespace stopwalk::window {
namespace {

// Why the layout, once written, could not be read with these kinds; empty: it could.
QString errorBy(const layout::DeviceKinds& kinds, const layout::Layout& layout) {
  const auto read = files::readLayout(files::writeLayout(layout), "", kinds);
  if (read.value) return {};
  return read.diagnostics.empty() ? FileFlow::tr("unknown")
                                  : QString::fromStdString(read.diagnostics.front().text);
}

// What the layout names that lies beside its file now, and not beside `path`.
QStringList missingBeside(const QString& path, const Document& document) {
  const layout::Layout& layout = document.edited().layout();
  QStringList missing;
  if (profileFor(layout, document.path()).trouble.isEmpty() && !profileFor(layout, path).trouble.isEmpty())
    missing << FileFlow::tr("the profile %1").arg(QString::fromStdString(layout.profile));
  if (!layout.underlay) return missing;
  const QString picture = QString::fromStdString(layout.underlay->image);
  const QDir here(document.folder()), there(QFileInfo(path).absolutePath());
  if (here.exists(picture) && !there.exists(picture)) missing << FileFlow::tr("the picture %1").arg(picture);
  return missing;
}

// Another name for a layout that is not to be written over: `shed.layout.yaml` becomes
// `shed-copy.layout.yaml`.
QString nameOfCopy(const QString& name) {
  return FileFlow::tr("%1-copy").arg(name.section('.', 0, 0)) + ".layout.yaml";
}

}  // namespace

bool FileFlow::save() {
  if (document_.path().isEmpty() || document_.isReadOnly()) return saveAs();
  return saveTo(document_.path(), false);
}

bool FileFlow::saveAs() {
  const QString suggestion =
      document_.path().isEmpty() ? QDir(document_.folder()).filePath("workshop.layout.yaml")
      : document_.isReadOnly()   ? QDir(document_.folder()).filePath(nameOfCopy(document_.name()))
                                 : document_.path();
  const QString path = asker_.fileToSave(suggestion);
  return !path.isEmpty() && saveTo(path, false);
}

FileFlow::Answer FileFlow::lockToSave(Document::Target& target) {
  const QString name = QFileInfo(target.path).fileName();
  const bool is_own = document_.isAt(target.path);
  if (is_own && document_.isReadOnly())
    return asker_.ask({tr("%1 is open for looking only").arg(name),
                       document_.lock().trouble()->text(),
                       {tr("Save under another name"), tr("Keep working")}}) == 0
               ? Answer::OtherName
               : Answer::No;
  target.lock = document_.lockFor(target.path);
  while (target.lock->state() == documents::LockState::Others) {
    const documents::Holder holder = *target.lock->holder();
    const int answer = asker_.ask(
        {is_own ? tr("%1 was taken over by somebody else").arg(name) : tr("%1 is open elsewhere").arg(name),
         tr("It is being worked on by %1. Two people who save over each other lose "
            "work. Ask there before you take it over.")
             .arg(holder.text()),
         {tr("Save under another name"), tr("Take it over"), tr("Keep working")}});
    if (answer == 0) return Answer::OtherName;
    if (answer != 1) return Answer::No;
    target.lock->breakAndTake(holder);  // where somebody else came meanwhile, that is asked anew
  }
  return Answer::Yes;
}

std::pair<plan::Catalogue, QString> FileFlow::readAgain() const {
  auto [catalogue, trouble] = catalogueFor(document_.path());
  if (trouble.isEmpty()) trouble = errorBy(catalogue.kinds, document_.edited().layout());
  return {std::move(catalogue), trouble};
}

// Another folder has other files of the shop: what the layout needs of those beside it now may not be there.
FileFlow::Answer FileFlow::folderToSave(Document::Target& target) {
  auto [catalogue, trouble] = catalogueFor(target.path);
  const QString error = errorBy(catalogue.kinds, document_.edited().layout());
  if (!error.isEmpty() && errorBy(document_.catalogue().kinds, document_.edited().layout()).isEmpty())
    return asker_.ask(
               {tr("The layout could not be opened in that folder"),
                tr("It uses the shop's own kinds of device (%1). Copy device-kinds.yaml there first, or save "
                   "in another folder.")
                    .arg(error),
                {tr("Save under another name"), tr("Keep working")},
                trouble}) == 0
               ? Answer::OtherName
               : Answer::No;
  target.catalogue = std::move(catalogue);
  QStringList missing = missingBeside(target.path, document_);
  if (!trouble.isEmpty()) missing << tr("the shop's own kinds and machines, which cannot be read there");
  if (missing.isEmpty()) return Answer::Yes;
  const int answer = asker_.ask(
      {tr("Not everything that the layout uses is in that folder"),
       tr("Missing there: %1. Copy it there as well, or the layout is shown and audited without it.")
           .arg(missing.join(", ")),
       {tr("Save under another name"), tr("Save it there all the same"), tr("Keep working")},
       trouble});
  return answer == 0 ? Answer::OtherName : answer == 1 ? Answer::Yes : Answer::No;
}

bool FileFlow::saveTo(const QString& path, bool overwrite) {
  emit typingEnds();
  if (document_.isSaving()) document_.waitForSave();
  const QString was = document_.path();
  Document::Target target{path, {}, document_.catalogue(), overwrite};
  Answer ready = lockToSave(target);
  if (ready == Answer::Yes && !document_.isAt(path)) ready = folderToSave(target);
  switch (ready) {
    case Answer::OtherName:
      return saveAs();
    case Answer::No:
      return false;
    case Answer::Yes:
      break;
  }
  documents::SaveResult result;
  QEventLoop until_saved;  // the window stays alive while the disk is slow
  const auto ended = connect(&document_, &Document::saved, this, [&](const documents::SaveResult& r) {
    result = r;
    until_saved.quit();
  });
  document_.save(std::move(target));
  until_saved.exec(QEventLoop::ExcludeUserInputEvents);
  disconnect(ended);
  const bool good = judge(result);
  if (result.outcome == documents::SaveOutcome::Saved && !was.isEmpty() && !document_.isAt(was))
    emit savedElsewhere(was);
  return good;
}

bool FileFlow::judge(const documents::SaveResult& result) {
  using enum documents::SaveOutcome;
  const QString name = QFileInfo(result.path).fileName();
  const QString text = result.trouble ? result.trouble->text() : QString();
  switch (result.outcome) {
    case Saved:
      recent_.add(result.path);
      emit recentChanged();
      emit said(tr("Saved %1").arg(name));
      return true;
    case Unsure:
      asker_.ask({tr("Saved, but perhaps not for good"), text, {tr("OK")}});
      return false;  // the work in the window, and what is kept of it, is the one sure copy
    case ChangedOnDisk:
    case AlreadyThere: {
      const bool changed = result.outcome == ChangedOnDisk;
      const int answer = asker_.ask(
          {changed ? tr("%1 was changed by someone else").arg(name) : tr("%1 is there already").arg(name),
           text,
           {tr("Save under another name"), tr("Replace what is there")}});
      if (answer == 0) return saveAs();
      return answer == 1 && saveTo(result.path, true);
    }
    case WriteProtected:
    case NotALayout:
    case Failed: {
      const QString title =
          result.outcome == WriteProtected ? tr("%1 is write-protected") : tr("%1 was not saved");
      return asker_.ask({title.arg(name), text, {tr("Save under another name"), tr("Keep working")}}) == 0 &&
             saveAs();
    }
    case Unwritable:
      asker_.ask({tr("%1 was not saved").arg(name), text, {tr("OK")}});
      return false;
  }
  return false;
}

}  // namespace stopwalk::window
