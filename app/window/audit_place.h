#pragma once

#include <QKeySequence>
#include <QObject>
#include <functional>
#include <memory>
#include <vector>

#include "app/panels/details/desk.h"
#include "app/panels/moment_ago.h"
#include "app/window/live_audit.h"

class QMenu;
class QTabWidget;
class QWidget;

namespace stopwalk::panels {
class Accepting;
class FindingList;
class ReachChooser;
class RulesPanel;
class StationTable;
class SupposePanel;
class Why;
}  // namespace stopwalk::panels

namespace stopwalk::window {

class MenuMaker;
class RecordsBeside;

// What stands round the plan where it is audited: the findings and why they are some, what if, and all
// stations as a table.
class AuditPlace : public QObject {
  Q_OBJECT

 public:
  explicit AuditPlace(const panels::Desk& desk, QObject* parent = nullptr);

  QWidget* side() const;   // beside the plan
  QWidget* under() const;  // below it
  panels::FindingList& findings() const { return *findings_; }
  panels::StationTable& stations() const { return *stations_; }
  panels::SupposePanel& suppose() const { return *suppose_; }
  panels::ReachChooser& reach() const { return *reach_; }
  panels::RulesPanel& rules() const { return *rules_; }
  panels::Accepting& accepting() const { return *accepting_; }
  QTabWidget& tabs() const { return *tabs_; }

  // The finding of which the plan shows what was measured: the one looked at, until something else is picked.
  const audit::Finding* drawn() const;

  // Shows an answer once all of these are done, one after the other; each takes a while where much is found.
  std::vector<std::function<void()>> showing(std::shared_ptr<const LiveAudit::Answer> answer,
                                             std::shared_ptr<const layout::DeviceKinds> kinds);
  // Another layout, that is not audited yet: what was said of the old one goes.
  void forget();
  // The rules that are audited by; `trouble`: why they are not those that the layout names, else empty.
  void setProfile(const audit::Profile& profile, const QString& trouble);
  // The inspection records that are audited by: what is wrong with them stands beside the findings.
  void setRecords(const RecordsBeside& records);
  void setAge(panels::Age age);
  // Does a thing, `what` by its name, when what is shown is current.
  using OnceAudited = std::function<void(const QString& what, const std::function<void()>& then)>;
  // All that can be done here; `come_here` is called before.
  void fillMenu(MenuMaker& menu, const std::function<void()>& come_here, const OnceAudited& once_audited);

 signals:
  // Of which the plan is to show what was measured, or what has become of it; none: nullptr.
  void looked(const stopwalk::audit::Finding* finding);
  void goTo(const QString& id);
  void supposed(const stopwalk::planning::Suppositions& suppositions);
  void exportWanted();  // of the table
  void exportFindingsWanted();
  void profileFileWanted();
  void profileSaveWanted();
  void cautionWanted();

 private:
  void showFindings(const LiveAudit::Answer& answer, const layout::DeviceKinds& kinds);
  void showStations(const LiveAudit::Answer& answer, const layout::DeviceKinds& kinds);
  QWidget* findingsPage();
  void takePicked(const audit::Finding& finding);
  void takeSelection();
  QWidget* caution();
  void showCircumstances();
  void showSummary();
  void turnTo(QWidget& page, QWidget& list);
  void fillReachMenu(QMenu& menu, const std::function<void()>& come_here);

  panels::Desk desk_;
  QWidget *side_, *under_;
  QTabWidget* tabs_;
  panels::ReachChooser* reach_;
  panels::FindingList* findings_;
  panels::Why* why_;
  panels::Accepting* accepting_;
  panels::SupposePanel* suppose_;
  panels::RulesPanel* rules_;
  panels::StationTable* stations_;
  QString profile_trouble_, records_trouble_, summary_, supposed_;
  int rules_off_ = 0;
  bool is_drawn_ = false;
  panels::Age age_ = panels::Age::Current;
  layout::LengthUnit unit_ = layout::LengthUnit::Millimetre;
};

}  // namespace stopwalk::window
