#include "app/window/asker.h"

#include <QDialog>
#include <QDialogButtonBox>
#include <QFileDialog>
#include <QFileInfo>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QMessageBox>
#include <QPrintDialog>
#include <QPrinter>
#include <QPushButton>
#include <QTextDocument>

namespace stopwalk::window {
namespace {

constexpr const char* kEnding = ".layout.yaml";

QString layoutFilter() {
  return DialogAsker::tr("Workshop layouts (*%1)").arg(kEnding) + ";;" + DialogAsker::tr("All files (*)");
}

}  // namespace

int DialogAsker::ask(const Question& question) {
  QMessageBox box(parent_);
  box.setWindowTitle("Stopwalk");
  box.setText("<b>" + question.title.toHtmlEscaped() + "</b>");
  box.setInformativeText(Qt::convertFromPlainText(question.text));  // names of files may look like markup
  box.setDetailedText(question.details);
  QList<QAbstractButton*> buttons;
  for (const QString& answer : question.answers) buttons << box.addButton(answer, QMessageBox::ActionRole);
  if (!buttons.isEmpty()) box.setDefaultButton(qobject_cast<QPushButton*>(buttons.first()));
  QPushButton* closed = box.addButton(QMessageBox::Cancel);
  closed->setVisible(false);  // so that Escape and the window's cross close it
  box.setEscapeButton(closed);
  box.exec();
  return static_cast<int>(buttons.indexOf(box.clickedButton()));
}

std::optional<QStringList> DialogAsker::fill(const Form& form) {
  QDialog dialog(parent_);
  dialog.setWindowTitle(form.title);
  auto* rows = new QFormLayout(&dialog);
  auto* text = new QLabel(form.text, &dialog);
  text->setTextFormat(Qt::PlainText);
  text->setWordWrap(true);
  rows->addRow(text);
  QList<QLineEdit*> lines;
  for (qsizetype i = 0; i < form.names.size(); ++i) {
    lines << new QLineEdit(form.values.value(i), &dialog);
    lines.last()->setAccessibleName(form.names[i]);
    rows->addRow(form.names[i], lines.last());
  }
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, &dialog);
  buttons->addButton(form.done, QDialogButtonBox::AcceptRole);
  rows->addRow(buttons);
  QObject::connect(buttons, &QDialogButtonBox::accepted, &dialog, &QDialog::accept);
  QObject::connect(buttons, &QDialogButtonBox::rejected, &dialog, &QDialog::reject);
  if (dialog.exec() != QDialog::Accepted) return std::nullopt;
  QStringList filled;
  for (const QLineEdit* line : lines) filled << line->text().simplified();
  return filled;
}

QString DialogAsker::fileToOpen(const QString& folder) {
  return QFileDialog::getOpenFileName(parent_, tr("Open a layout"), folder, layoutFilter());
}

QString DialogAsker::fileToSave(const QString& suggestion) {
  QFileDialog dialog(parent_, tr("Save the layout as"), suggestion, layoutFilter());
  dialog.setAcceptMode(QFileDialog::AcceptSave);
  dialog.setOption(QFileDialog::DontConfirmOverwrite);  // asked where it is known what is there
  dialog.selectFile(suggestion);
  if (dialog.exec() != QDialog::Accepted || dialog.selectedFiles().isEmpty()) return "";
  return withEnding(dialog.selectedFiles().first());
}

QString DialogAsker::withEnding(const QString& path) {
  return path.endsWith(".yaml", Qt::CaseInsensitive) ? path : path + kEnding;
}

QString DialogAsker::tableToSave(const QString& suggestion) {
  return QFileDialog::getSaveFileName(parent_, tr("Export the table as"), suggestion,
                                      tr("Tables (*.csv);;All files (*)"));
}

QString DialogAsker::profileToSave(const QString& suggestion) {
  return pathToSave(tr("Save the rules as"), suggestion, {"yaml"});
}

QString DialogAsker::profileToOpen(const QString& folder) {
  return QFileDialog::getOpenFileName(parent_, tr("Choose a profile of rules"), folder,
                                      tr("Profiles (*.yaml);;All files (*)"));
}

QString DialogAsker::posterToSave(const QString& suggestion) {
  return pathToSave(tr("Save the poster as"), suggestion, {QFileInfo(suggestion).suffix()});
}

QString DialogAsker::paperToSave(const QString& title, const QString& suggestion,
                                 const QStringList& endings) {
  return pathToSave(title, suggestion, endings);
}

QString DialogAsker::pathToSave(const QString& title, const QString& suggestion, const QStringList& endings) {
  QStringList filters;
  for (const QString& ending : endings) filters << ending.toUpper() + QString(" (*.%1)").arg(ending);
  QFileDialog dialog(parent_, title, suggestion, (filters + QStringList(tr("All files (*)"))).join(";;"));
  dialog.setAcceptMode(QFileDialog::AcceptSave);
  dialog.setDefaultSuffix(endings.first());
  QObject::connect(&dialog, &QFileDialog::filterSelected, &dialog, [&](const QString& filter) {
    if (const qsizetype at = filters.indexOf(filter); at >= 0) dialog.setDefaultSuffix(endings[at]);
  });
  dialog.selectFile(suggestion);
  if (dialog.exec() != QDialog::Accepted || dialog.selectedFiles().isEmpty()) return "";
  return dialog.selectedFiles().first();
}

bool DialogAsker::choosePrinter(QPrinter& printer) {
  QPrintDialog dialog(&printer, parent_);
  dialog.setWindowTitle(tr("Print the poster"));
  return dialog.exec() == QDialog::Accepted;
}

QString DialogAsker::pictureToOpen(const QString& folder) {
  return QFileDialog::getOpenFileName(parent_, tr("Choose a picture to draw over"), folder,
                                      tr("Pictures (*.png *.jpg *.jpeg *.bmp *.gif *.webp *.svg)"));
}

}  // namespace stopwalk::window
