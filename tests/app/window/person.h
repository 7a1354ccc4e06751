#pragma once

#include <gtest/gtest.h>

#include <QLineEdit>
#include <QPrinter>
#include <QTemporaryDir>
#include <QTest>
#include <deque>
#include <functional>

#include "app/plan/plan_view.h"
#include "app/window/main_window.h"

// The window with somebody at it.
namespace stopwalk::window {

// Answers as it was told to, and remembers what it was asked. What it was not told is closed without an
// answer.
class ToldAsker : public Asker {
 public:
  int ask(const Question& question) override {
    asked << question.title;
    said << question.text + question.details;
    if (answers.empty()) return -1;
    const QString answer = answers.front();
    answers.pop_front();
    return static_cast<int>(question.answers.indexOf(answer));
  }
  QString fileToOpen(const QString&) override { return std::exchange(file, {}); }
  QString fileToSave(const QString& suggestion) override {
    suggested = suggestion;
    return std::exchange(file, {});
  }
  QString pictureToOpen(const QString&) override { return std::exchange(file, {}); }
  QString tableToSave(const QString&) override {
    if (meanwhile) meanwhile();
    return std::exchange(file, {});
  }
  QString profileToSave(const QString& suggestion) override { return posterToSave(suggestion); }
  QString profileToOpen(const QString&) override { return std::exchange(file, {}); }
  QString posterToSave(const QString& suggestion) override {
    suggested = suggestion;
    if (meanwhile) meanwhile();
    return std::exchange(file, {});
  }
  QString paperToSave(const QString&, const QString& suggestion, const QStringList&) override {
    return posterToSave(suggestion);
  }
  std::optional<QStringList> fill(const Form& form) override {
    asked << form.title;
    said << form.text;
    offered = form.values;
    if (filled.empty()) return std::nullopt;
    const QStringList lines = filled.front();
    filled.pop_front();
    return lines;
  }
  // Onto a file; none: it is not printed.
  bool choosePrinter(QPrinter& printer) override {
    printer.setOutputFormat(QPrinter::PdfFormat);
    printer.setOutputFileName(std::exchange(file, {}));
    return !printer.outputFileName().isEmpty();
  }

  std::deque<QString> answers;
  QString file;
  std::function<void()> meanwhile = {};  // what happens while a name for a table or a poster is chosen
  QStringList asked;
  QStringList said;                // what stood under each
  QString suggested;               // to save as
  std::deque<QStringList> filled;  // into forms
  QStringList offered;             // what stood there at first
};

class AtTheWindow : public testing::Test {
 protected:
  AtTheWindow() { open(); }

  // As if the program were started.
  void open() {
    window = std::make_unique<MainWindow>(store, settings, &asker);
    window->resize(1280, 800);
    window->show();
    window->activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(window.get()));
  }

  const layout::Layout& layout() { return window->document().edited().layout(); }
  QUndoStack& history() { return window->document().edited().history(); }
  plan::PlanView& plan() { return window->plan(); }
  QString pathOf(const QString& name) { return folder.filePath(name); }

  QPoint pixel(geometry::Point mm) { return plan().transform().toPixels(mm).toPoint(); }
  void move(geometry::Point mm) {
    QTest::mouseMove(&plan(), pixel(mm));
    QApplication::processEvents();
  }
  void click(geometry::Point mm, Qt::KeyboardModifiers modifiers = {}) {
    move(mm);
    QTest::mouseClick(&plan(), Qt::LeftButton, modifiers, pixel(mm));
    settle();
  }
  void drag(geometry::Point from, geometry::Point to, Qt::KeyboardModifiers modifiers = {}) {
    move(from);
    QTest::mousePress(&plan(), Qt::LeftButton, modifiers, pixel(from));
    for (int step = 1; step <= 4; ++step) drive(from + (step / 4.0) * (to - from), modifiers);
    QTest::mouseRelease(&plan(), Qt::LeftButton, modifiers, pixel(to));
    settle();
  }
  // The mouse with its button down.
  void drive(geometry::Point mm, Qt::KeyboardModifiers modifiers) {
    const QPointF at = plan().transform().toPixels(mm);
    QMouseEvent event(QEvent::MouseMove, at, plan().mapToGlobal(at), Qt::NoButton, Qt::LeftButton, modifiers);
    QApplication::sendEvent(&plan(), &event);
  }
  // Keys, wherever the keyboard is.
  void key(Qt::Key which, Qt::KeyboardModifiers modifiers = {}) {
    QTest::keyClick(QApplication::focusWidget(), which, modifiers);
    settle();
  }
  void type(const QString& text) {
    for (const QChar c : text) QTest::keyClick(QApplication::focusWidget(), c.toLatin1());
  }
  // "5000, 2000" typed into the fields beside the plan, and accepted.
  void typeNumbers(const QStringList& numbers) {
    for (qsizetype i = 0; i < numbers.size(); ++i) {
      type(numbers[i]);
      if (i + 1 < numbers.size()) QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    }
    key(Qt::Key_Return);
  }
  void settle() { QTest::qWait(1); }
  void choose(const plan::Choice& choice) {
    plan().choose(choice);
    plan().setFocus();
  }

  QTemporaryDir folder;
  QSettings settings{folder.filePath("settings.ini"), QSettings::IniFormat};
  documents::RecoveryStore store{folder.filePath("state")};
  ToldAsker asker;
  std::unique_ptr<MainWindow> window;
};

}  // namespace stopwalk::window
