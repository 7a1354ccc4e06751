#include "app/window/asker.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>
#include <QPrintDialog>
#include <QPrinter>
#include <QPushButton>

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
  box.setInformativeText(question.text);
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

QString DialogAsker::posterToSave(const QString& suggestion) {
  return pathToSave(tr("Save the poster as"), suggestion);
}

QString DialogAsker::pdfToSave(const QString& title, const QString& suggestion) {
  return pathToSave(title, suggestion);
}

// By the ending of the suggestion.
QString DialogAsker::pathToSave(const QString& title, const QString& suggestion) {
  const QString ending = QFileInfo(suggestion).suffix();
  QFileDialog dialog(parent_, title, suggestion,
                     ending.toUpper() + QString(" (*.%1);;").arg(ending) + tr("All files (*)"));
  dialog.setAcceptMode(QFileDialog::AcceptSave);
  dialog.setDefaultSuffix(ending);
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
