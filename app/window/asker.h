#pragma once

#include <QCoreApplication>
#include <QString>
#include <QStringList>
#include <optional>

class QPrinter;
class QWidget;

namespace stopwalk::window {

// A question to the person, with its answers; the first answer is the safe one.
struct Question {
  QString title;  // what is asked, in a sentence
  QString text;   // what each answer means
  QStringList answers;
  QString details = {};
};

// Lines to be filled in.
struct Form {
  QString title;
  QString text;
  QStringList names;   // of the lines
  QStringList values;  // what stands there at first
  QString done;        // what the button says
};

// Whoever answers: dialogs in the window, a script in a test.
class Asker {
 public:
  virtual ~Asker() = default;
  // The index of the answer; -1 when the question was closed.
  virtual int ask(const Question& question) = 0;
  // What stands in the lines; none: the form was closed.
  virtual std::optional<QStringList> fill(const Form& form) = 0;
  // Empty: none was chosen.
  virtual QString fileToOpen(const QString& folder) = 0;
  virtual QString fileToSave(const QString& suggestion) = 0;
  virtual QString pictureToOpen(const QString& folder) = 0;
  virtual QString tableToSave(const QString& suggestion) = 0;  // one that may be written over, if it is there
  virtual QString profileToSave(const QString& suggestion) = 0;  // likewise
  virtual QString profileToOpen(const QString& folder) = 0;
  // Where a poster goes, likewise; its ending says as what.
  virtual QString posterToSave(const QString& suggestion) = 0;
  // Where a paper of something else goes; `title` says of what. Its ending, one of these, says as what.
  virtual QString paperToSave(const QString& title, const QString& suggestion,
                              const QStringList& endings) = 0;
  // False: it is not to be printed.
  virtual bool choosePrinter(QPrinter& printer) = 0;
};

class DialogAsker : public Asker {
  Q_DECLARE_TR_FUNCTIONS(DialogAsker)

 public:
  explicit DialogAsker(QWidget* parent) : parent_(parent) {}
  int ask(const Question& question) override;
  std::optional<QStringList> fill(const Form& form) override;
  QString fileToOpen(const QString& folder) override;
  QString fileToSave(const QString& suggestion) override;
  QString pictureToOpen(const QString& folder) override;
  QString tableToSave(const QString& suggestion) override;
  QString profileToSave(const QString& suggestion) override;
  QString profileToOpen(const QString& folder) override;
  QString posterToSave(const QString& suggestion) override;
  QString paperToSave(const QString& title, const QString& suggestion, const QStringList& endings) override;
  bool choosePrinter(QPrinter& printer) override;

  // The ending of a layout, unless a name ends as YAML does.
  static QString withEnding(const QString& path);

 private:
  QString pathToSave(const QString& title, const QString& suggestion, const QStringList& endings);

  QWidget* parent_;
};

}  // namespace stopwalk::window
