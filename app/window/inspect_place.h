#pragma once

#include <QObject>
#include <QSettings>
#include <QTimer>
#include <memory>

#include "app/edits/selection.h"
#include "app/plan/inspection_layer.h"
#include "app/records/records_file.h"
#include "app/rounds/counting.h"
#include "app/rounds/counts_for.h"
#include "app/rounds/drafts.h"
#include "app/rounds/record_writer.h"
#include "app/rounds/round_under_way.h"
#include "app/window/live_devices.h"
#include "app/window/live_order.h"
#include "core/inspection/schedule.h"
#include "core/planning/round_plan.h"

class QStackedWidget;
class QWidget;

namespace stopwalk::rounds {
class CheckCard;
class DeviceHistory;
class DuePage;
class StartForm;
}  // namespace stopwalk::rounds

namespace stopwalk::window {

class MenuMaker;
class RecordsBeside;
struct ComeTo;

// What is inspected.
struct InspectSource {
  std::shared_ptr<const layout::Layout> layout;
  std::shared_ptr<const layout::DeviceKinds> kinds;
  inspection::Schedule schedule;
  QString path;      // of the layout's file; empty: it has none, and no records
  std::string hash;  // of the file that holds this very layout; empty: it does not
  bool operator==(const InspectSource&) const = default;
};

// What stands round the plan where devices are inspected: what is due, a round to start or to go on with, and
// the card of one device after another. All that is recorded is in the records beside the layout.
class InspectPlace : public QObject {
  Q_OBJECT

 public:
  InspectPlace(edits::Selection& selection, QSettings& settings, QObject* parent = nullptr);
  ~InspectPlace() override;

  QWidget* side() const;                     // beside the plan
  QWidget* under() const { return under_; }  // below it
  rounds::DuePage& due() const { return *due_; }
  rounds::StartForm& start() const { return *start_; }
  rounds::CheckCard& card() const { return *card_; }
  rounds::DeviceHistory& history() const { return *history_; }
  // The round that is walked, its devices in their order and the one that is at: for who shows it.
  rounds::RoundUnderWay& round() { return round_; }
  bool isWriting() const { return writer_.isWriting(); }

  void follow(InspectSource source);
  // As they are now. What failed by records that are missed is still failed here.
  void setRecords(RecordsBeside& beside);
  // They are being read again: what is shown is of a moment ago, and says so if it takes longer.
  void recordsAreRead();
  // The form that a round is started from, and a sheet is asked for.
  void showStart();
  void come();
  void leave();
  void fillMenu(MenuMaker& menu, const std::function<void()>& come_here);

 signals:
  void goTo(const QString& id);
  // To be shown on the plan in the place of how stations stand; none: nothing.
  void onPlan(const std::optional<stopwalk::plan::InspectedOnPlan>& inspected);
  void sheetWanted(const stopwalk::planning::RoundScope& scope, const stopwalk::inspection::RoundWalk& walk);
  void lookWanted();           // at the records, before something is added to them
  void recorded();             // the records have grown
  void written(bool on_disk);  // what was to be recorded, or not
  void begunAnew();            // a round is on the disk that does not ask for what is missed
  void said(const QString& sentence);
  void saveWanted();
  void cautionWanted();

 private:
  void fillCardMenu(MenuMaker& menu, const std::function<void()>& come_here);
  QWidget* below();
  void connectPages();
  void askDevices();
  bool isFound() const;  // which devices there are, of the plan as it is
  void whenFound(std::function<void()> act);
  void refresh();
  void showOnPlan();
  void showOfBefore(bool is_of_before);
  void fillDue();
  bool isWayFound() const;
  void showDue();
  void tellWhyNot(const QString& why);
  void tellNotYet(const QString& why);
  void saveAndStart();
  void askOrder();
  void beginCards();
  void showPaper();
  rounds::Entered anew() const;
  void showDraft(const rounds::Entered& anew);
  void keepDraft();
  void tellNotKept();
  void nameTyped();
  void dropOfAnother(const rounds::Entered& old);
  void showCard();
  std::optional<inspection::Check> wouldBe(const rounds::Entered& entered,
                                           const planning::InspectedDevice& device) const;
  void showCounts();
  std::optional<rounds::DeviceOn> deviceOn(const std::string& id);
  void roundChanged();
  void cardChanged();
  std::string picked() const;  // a device; empty: none
  void showHistory();
  void goToHistory();
  void goToCard(const std::string& device);
  void takeKeyboard();
  void goBy(int steps);
  void leaveRound();
  void stopCorrecting();
  QString correctsText() const;
  void correct(std::size_t check, const std::string& device);
  bool isCorrecting() const;
  void startRound();
  bool canBeginAt(const inspection::RoundWalk& walk) const;
  void record();
  void recordTakenAway(const rounds::Entered& entered);
  QString whatIsTakenAway(const rounds::Entered& entered, const rounds::Entered& kept) const;
  void write(inspection::Check check);
  bool isThere(const std::string& device) const;
  QString whyStillFailed(const inspection::Check& check) const;
  void refuse(const QString& why);
  void finish(const records::Appended& appended, const inspection::Record& record);
  void roundNotWritten(const QString& why);
  void roundWritten(const records::Appended& appended, const inspection::Round& round);
  void checkWritten(const records::Appended& appended, const inspection::Check& check);
  void showFailedMeanwhile(const rounds::CardKey& card);
  QString calledHere(const std::string& device) const;
  void selected();
  std::string recordsFile() const;
  const inspection::Records& recordsNow() const { return read_->log.records; }
  const std::vector<inspection::FailedDevice>& failed() const;
  const std::vector<inspection::DeviceState>& states() { return asOfToday().states; }
  const rounds::Counting& counting();
  QString whyNotYet() const;
  QString whatIsMissed() const;
  QString whatIsForgotten() const;
  rounds::CardKey keyNow() const;

  static constexpr const char* kByKey = "inspect/by";  // who walked last, in the settings
  static constexpr int kDraftMonths = 12;              // House rule: what is older is of no round any more.

  edits::Selection& selection_;
  QSettings& settings_;
  rounds::Drafts drafts_;
  rounds::RoundUnderWay round_;
  rounds::RecordWriter writer_;
  LiveDevices live_;
  LiveOrder order_;
  InspectSource source_;
  std::optional<LiveDevices::Question> asked_;      // last
  std::optional<LiveOrder::Question> order_asked_;  // last
  std::shared_ptr<const LiveDevices::Answer> found_;
  std::function<void()> waiting_;  // what is to be done once they are found
  std::shared_ptr<const records::ReadRecords> read_ = std::make_shared<records::ReadRecords>();
  RecordsBeside* beside_ = nullptr;
  bool are_missed_ = false;  // records of before
  bool asked_anew_ = false;  // whether a round is started without them
  // What they come to by the devices and the schedule, once asked for.
  struct AsOf {
    inspection::Date day{};
    std::vector<inspection::DeviceState> states;  // with what is missed
    std::shared_ptr<const ComeTo> come_to;
  };
  inspection::AsOf asOfLayout() const;
  const AsOf& asOfToday();
  std::optional<AsOf> as_of_;
  bool is_here_ = false;
  QTimer late_;  // while the records are being read
  bool is_of_before_ = false;
  std::optional<rounds::CardKey> shown_;       // the card that is on the screen
  std::optional<rounds::Typed> typed_;         // what stands on it; none: nothing was entered there
  bool is_restored_ = false;                   // that was entered when the card was shown before
  std::size_t known_ = 0;                      // lines of the records, when the card was begun
  std::optional<rounds::CardKey> asked_once_;  // whether its device was taken away
  QString visit_;                              // of the round: another one with each time that it is opened
  QString second_;                             // person, of the last check of the round
  std::string writing_to_;                     // the records file of the round that is being written
  std::optional<rounds::CardKey> writing_;     // the card whose check is being written

  // The check that is corrected, as long as its card is on the screen.
  struct Correcting {
    std::size_t check = 0, round = 0;
    std::string device;
    // Where one was before: the round (0: in none), its device, the time of the paper and who inspected.
    struct From {
      std::size_t round = 0;
      std::string device;
      QString paper, inspector, visit;
    } from;
  };
  Correcting::From whereNow() const;
  void goBack(const Correcting& corrected);
  std::optional<Correcting> correcting_;

  QStackedWidget* side_;
  QWidget* under_;
  rounds::DuePage* due_;
  rounds::StartForm* start_;
  rounds::CheckCard* card_;
  rounds::DeviceHistory* history_;
};

}  // namespace stopwalk::window
