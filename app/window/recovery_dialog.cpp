#include "app/window/recovery_dialog.h"

#include <QDialogButtonBox>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/documents/layout_file.h"
#include "app/plan/picture_preview.h"

namespace stopwalk::window {
namespace {

QString timeText(const QDateTime& time) {
  return QLocale().toString(time.toLocalTime(), QLocale::ShortFormat);
}

// How the saved file stands to what was kept, and what that means for the person.
QString standing(const documents::Found& found) {
  const QString name = QFileInfo(found.layout_path).fileName();
  switch (found.saved) {
    case documents::SavedFile::NeverSaved:
      return {};
    case documents::SavedFile::AsBefore:
      return RecoveryDialog::tr("%1 is as it was when this work began: what was kept is newer.").arg(name);
    case documents::SavedFile::HoldsThis:
      return RecoveryDialog::tr("%1 holds this work already. Nothing is lost if it is thrown away.")
          .arg(name);
    case documents::SavedFile::WasChanged:
      return RecoveryDialog::tr(
                 "%1 was changed by somebody else since. If you go on with what was kept, you are asked "
                 "before it "
                 "is saved over theirs.")
          .arg(name);
    case documents::SavedFile::IsMissing:
      return RecoveryDialog::tr("%1 is no longer on the disk. What was kept is all there is.").arg(name);
  }
  return {};
}

// One of the two: its name and time over its picture, or why there is none.
QWidget* version(const QString& name, const QDateTime& time, const layout::Layout* layout,
                 const layout::DeviceKinds& kinds, const QString& otherwise) {
  auto* box = new QWidget;
  auto* column = new QVBoxLayout(box);
  auto* title = new QLabel(time.isValid() ? name + "\n" + timeText(time) : name);
  column->addWidget(title);
  if (layout) {
    auto* preview = new plan::PicturePreview(*layout, kinds);
    preview->setAccessibleName(name);
    column->addWidget(preview, 1);
  } else {
    auto* text = new QLabel(otherwise);
    text->setWordWrap(true);
    column->addWidget(text, 1);
  }
  return box;
}

}  // namespace

RecoveryDialog::RecoveryDialog(const documents::Found& found, const layout::DeviceKinds& kinds,
                               QWidget* parent)
    : QDialog(parent) {
  setWindowTitle(tr("Work that was not saved"));
  auto* column = new QVBoxLayout(this);
  const QString file =
      found.layout_path.isEmpty() ? tr("a new layout") : QFileInfo(found.layout_path).fileName();
  auto* text =
      new QLabel(found.elsewhere ? tr("Work is kept here by a program on another computer.")
                                 : tr("Stopwalk stopped before %1 was saved. The work was kept.").arg(file) +
                                       " " + standing(found));
  text->setWordWrap(true);
  column->addWidget(text);

  documents::OpenResult saved;
  if (!found.layout_path.isEmpty()) saved = documents::openLayout(found.layout_path, kinds);
  auto* versions = new QHBoxLayout;
  versions->addWidget(version(tr("What was kept"), found.stored, found.layout ? &*found.layout : nullptr,
                              kinds, found.trouble ? found.trouble->text() : QString()));
  versions->addWidget(version(tr("The file as it is saved"),
                              saved.read.value ? QFileInfo(found.layout_path).lastModified() : QDateTime(),
                              saved.read.value ? &*saved.read.value : nullptr, kinds,
                              found.layout_path.isEmpty() ? tr("It was never saved.")
                              : saved.trouble             ? saved.trouble->text()
                                                          : QString()));
  column->addLayout(versions, 1);

  auto* buttons = new QDialogButtonBox;
  const auto add = [&](const QString& name, Answer answer) {
    QPushButton* button = buttons->addButton(name, QDialogButtonBox::ActionRole);
    connect(button, &QPushButton::clicked, this, [this, answer] {
      answer_ = answer;
      accept();
    });
    return button;
  };
  if (found.layout) add(tr("Go on with what was kept"), Answer::GoOn)->setDefault(true);
  if (!found.elsewhere) add(tr("Throw the kept work away"), Answer::Discard);
  add(tr("Decide later"), Answer::Later);
  column->addWidget(buttons);
}

}  // namespace stopwalk::window
