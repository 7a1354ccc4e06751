// A save of which the last step fails: the new file is in place, but it might not survive a power cut.
#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QDir>
#include <QSettings>
#include <cerrno>

#include "app/window/file_flow.h"
#include "tests/app/documents/faults.h"
#include "tests/app/documents/folder.h"

namespace stopwalk::window {
namespace {

using documents::SaveOutcome;

// Says yes to saving, and closes what else is asked.
class Saves : public Asker {
 public:
  explicit Saves(const QString& file) : file_(file) {}
  int ask(const Question& question) override { return static_cast<int>(question.answers.indexOf("Save")); }
  QString fileToOpen(const QString&) override { return {}; }
  QString fileToSave(const QString&) override { return file_; }
  QString pictureToOpen(const QString&) override { return {}; }
  QString tableToSave(const QString&) override { return {}; }
  QString profileToSave(const QString&) override { return {}; }
  QString profileToOpen(const QString&) override { return {}; }
  QString posterToSave(const QString&) override { return {}; }
  QString paperToSave(const QString&, const QString&, const QStringList&) override { return {}; }
  std::optional<QStringList> fill(const Form&) override { return std::nullopt; }
  bool choosePrinter(QPrinter&) override { return false; }

 private:
  QString file_;
};

constexpr int kSaved = 1, kUnsure = 2, kOther = 3, kLostUnasked = 4;

// Closes a window with unsaved work, where the answer is to save it.
int closeAndSave(const documents::Folder& folder) {
  int argc = 0;
  QCoreApplication application(argc, nullptr);
  QSettings settings(folder.path("settings.ini"), QSettings::IniFormat);
  documents::RecoveryStore store(folder.path("state"));
  QThreadPool worker;
  Saves asker(folder.path("w/shed.layout.yaml"));
  Document document(store, worker);
  FileFlow flow(document, store, asker, settings);
  document.edited().apply({"Draw", documents::workshop("Unsaved work")});
  SaveOutcome outcome = SaveOutcome::Failed;
  QObject::connect(&document, &Document::saved, &document, [&](const auto& r) { outcome = r.outcome; });
  const bool closes = flow.mayClose();
  const bool is_sure = outcome == SaveOutcome::Saved;
  if (closes != is_sure || document.isSaved() != is_sure) return kLostUnasked;
  return is_sure ? kSaved : outcome == SaveOutcome::Unsure ? kUnsure : kOther;
}

TEST(UnsureSave, LeavesTheWorkInTheWindowAndTheWindowOpen) {
  int unsure = 0;
  for (int call = 1;; ++call) {
    ASSERT_LT(call, 500);
    const documents::Folder folder;
    QDir(folder.path()).mkdir("w");
    const documents::Fault fault{call, documents::Manner::FailOnce, EIO, false};
    const auto run = documents::runWithFault(folder.path("w"), fault, [&] { return closeAndSave(folder); });
    EXPECT_TRUE(run.status >= kSaved && run.status <= kOther)
        << "call " << call << ", " << run.call << ": " << run.status;
    if (run.status == kUnsure) ++unsure;
    if (!run.reached) break;
  }
  EXPECT_GT(unsure, 0);
}

}  // namespace
}  // namespace stopwalk::window
