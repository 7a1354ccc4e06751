#pragma once

#include <QMainWindow>
#include <QSettings>
#include <functional>
#include <memory>

#include "app/documents/recovery_store.h"
#include "app/edits/selection.h"
#include "app/edits/things.h"
#include "app/plan/choice.h"
#include "app/window/aside.h"
#include "app/window/asker.h"
#include "app/window/day_change.h"
#include "app/window/document.h"
#include "app/window/file_flow.h"
#include "app/window/freshness.h"
#include "app/window/in_turn.h"
#include "app/window/live_audit.h"
#include "app/window/live_reach.h"

class QLabel;
class QStackedWidget;
class QTabBar;
class QMenu;
class QSplitter;

namespace stopwalk::documents {
struct WriteResult;
}
namespace stopwalk::files {
struct FiledReport;
}
namespace stopwalk::plan {
class PlanView;
}
namespace stopwalk::panels {
class Details;
class Gallery;
class ProblemList;
class ThingList;
}  // namespace stopwalk::panels

namespace stopwalk::window {

class AuditPlace;
class FilesBeside;
class FirstMinutes;
class InspectPlace;
class NoticeBar;
class PosterPlace;
class RecordsBeside;
class RoundPapers;
struct PosterSource;
struct ProfileFor;

// What the work is at the moment; the plan is the same in all but the last, where the page takes its place.
enum class WorkPlace { Draw, Audit, Inspect, Poster };

// The one window: assembles the plan, what lies round it, and the menus.
class MainWindow : public QMainWindow {
  Q_OBJECT

 public:
  // `asker` answers in the place of dialogs, for tests; none: dialogs.
  MainWindow(documents::RecoveryStore& store, QSettings& settings, Asker* asker = nullptr);
  ~MainWindow() override;

  void openPath(const QString& path) { files_->openPath(path); }
  // Offers what a crash left behind, then opens the layout, if there is one and it is not gone on with
  // already.
  void begin(const QString& path);
  // Offers what a crash left behind.
  void offerFound();

  Document& document() { return *document_; }
  edits::Selection& selection() { return selection_; }
  plan::PlanView& plan() { return *plan_; }
  FileFlow& files() { return *files_; }
  NoticeBar& notices() { return *notices_; }
  QString sentence() const;  // of the bottom line
  panels::Details& details() { return *details_; }
  AuditPlace& auditPlace() { return *audit_place_; }
  InspectPlace& inspectPlace() { return *inspect_place_; }
  PosterPlace& posterPlace() { return *poster_place_; }
  RecordsBeside& records() { return *records_; }
  FilesBeside& filesBeside() { return *files_beside_; }
  DayChange& dayChange() { return day_change_; }
  WorkPlace workPlace() const;
  void goToPlace(WorkPlace place);
  // Where the layout is audited it is audited as supposed, until something else is.
  void suppose(const planning::Suppositions& suppositions);

 protected:
  void closeEvent(QCloseEvent* event) override;
  void showEvent(QShowEvent* event) override;
  void dragEnterEvent(QDragEnterEvent* event) override;
  void dropEvent(QDropEvent* event) override;

 private:
  void layOut();
  void makePlaces();
  QWidget* middle();
  QWidget* leftSide();
  QWidget* rightSide();
  void connectParts();
  void connectPanels();
  void makeFileMenu();
  void makeEditMenu();
  void makeArrangeMenu();
  void makeDrawMenu();
  void makeViewMenu();
  void makeAuditMenu();
  void makeInspectMenu();
  void makePosterMenu();
  void makeHelpMenu();

  void layoutChanged();
  void audit();
  void askReach();
  void showReach();
  void showInspection();
  PosterSource posterSource() const;
  void showPoster();
  void recordsChanged();
  void showFailed();
  void takeProfile(ProfileFor found);
  QStringList shopFilesThere() const;
  void followFilesBeside();
  void filesBesideChanged(const QStringList& paths);
  void readShopFilesAgain(const QStringList& paths);
  void readProfileAgain(const QStringList& paths);
  void showFirstMinutes();
  static constexpr const char *kNotAudited = "not audited", *kOnDisk = "disk";  // notices
  void showAge(panels::Age age);
  void showAnswer(std::shared_ptr<const LiveAudit::Answer> answer);
  bool isAnswered() const;
  void showBeside();
  void onceAudited(const QString& what, std::function<void()> then);
  void leaveOnceAudited(const QString& why);
  bool mayExport();
  using TableOf = std::string (*)(const files::FiledReport&);
  void exportTable(const QString& what, const QString& name, TableOf table, const QString& said);
  void writeTable(const QString& path, TableOf table, const QString& said);
  // How it went with what was written for others; `said`: where all is well.
  void tellWritten(const QString& path, const documents::WriteResult& result, const QString& said);
  void exportStations();
  void exportFindings();
  void saveProfile();
  void chooseProfileFile();
  void showTitle();
  void showNotices();
  void showWarnings();
  void showLeftRecords(const QString& was);
  void copyRecords(const QString& was);
  void showDiskState(documents::DiskState state);
  void fillRecent();
  void choose(const plan::Choice& choice);
  void allowChanges();
  void chooseUnderlay();
  void sourcesChanged();

  bool apply(edits::Edit edit);
  void copy();
  void paste();
  void duplicate();
  void remove();
  void goTo(const std::string& id);
  void selectAll(std::optional<edits::ThingKind> kind);  // of one kind, or of all that stands by itself
  void showCaution();
  void showMenu(const QPoint& global);
  void findAction();

  QSettings& settings_;
  std::unique_ptr<DialogAsker> dialogs_;
  Asker& asker_;
  QThreadPool recovery_worker_;
  Aside aside_;
  std::unique_ptr<Document> document_;
  edits::Selection selection_;
  std::unique_ptr<FileFlow> files_;
  LiveAudit live_audit_{this};
  LiveReach live_reach_{this};
  std::shared_ptr<const plan::ReachLayer> reach_;  // the last map, while one is wanted
  std::shared_ptr<const layout::Layout>
      shown_;  // what is on the plan: the layout, or what it would be after a drag
  std::shared_ptr<const LiveAudit::Answer> answer_;
  InTurn beside_;  // the answer is shown beside the plan
  struct OnceAudited {
    QString what;  // by its name
    std::function<void()> then;
  };
  std::optional<OnceAudited> once_audited_;  // is to be done then
  Freshness freshness_{this};
  DayChange day_change_;
  planning::Suppositions suppositions_;  // hold where the layout is audited, not where it is drawn
  std::shared_ptr<const layout::DeviceKinds> kinds_;
  std::optional<std::pair<std::string, QString>>
      profile_of_;  // the name and file that `profile_` was read for
  audit::Profile profile_;
  QStringList shop_files_;       // that were beside the layout when they were read
  QStringList profile_files_;    // that it was read from, or looked for in
  bool profile_is_own_ = false;  // it is the one that the layout names

  plan::PlanView* plan_ = nullptr;
  NoticeBar* notices_ = nullptr;
  FirstMinutes* first_minutes_ = nullptr;
  RecordsBeside* records_ = nullptr;
  FilesBeside* files_beside_ = nullptr;
  AuditPlace* audit_place_ = nullptr;
  InspectPlace* inspect_place_ = nullptr;
  PosterPlace* poster_place_ = nullptr;
  RoundPapers* round_papers_ = nullptr;
  QStackedWidget* page_or_plan_ = nullptr;
  QTabBar* places_ = nullptr;
  QStackedWidget* left_ = nullptr;
  panels::Gallery* gallery_ = nullptr;
  panels::ThingList* things_ = nullptr;
  panels::Details* details_ = nullptr;
  panels::ProblemList* problems_ = nullptr;
  QLabel* sentence_ = nullptr;
  bool closes_when_written_ = false;  // a record, that is being written
  QList<int> before_inspection_;      // how wide the sides were: a card is wider
  QSplitter *split_ = nullptr, *plan_and_details_ = nullptr;
  QMenu* recent_menu_ = nullptr;
};

}  // namespace stopwalk::window
