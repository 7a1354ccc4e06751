#include "app/window/inspect_place.h"

#include <QFile>
#include <QLabel>
#include <QStackedWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "app/panels/actions/verb.h"
#include "app/panels/moment_ago.h"
#include "app/rounds/check_card.h"
#include "app/rounds/device_history.h"
#include "app/rounds/due_page.h"
#include "app/rounds/missed_failures.h"
#include "app/rounds/order_text.h"
#include "app/rounds/start_form.h"
#include "app/window/commands.h"
#include "app/window/records_beside.h"

namespace stopwalk::window {
namespace {

constexpr int kSide_px = 430;
constexpr int kLate_ms = 100;  // sooner than this records are read as good as at once

// Asks for its width only while it is seen.
class Side : public QStackedWidget {
 public:
  QSize minimumSizeHint() const override {
    return QStackedWidget::minimumSizeHint().expandedTo({kSide_px, 0});
  }
};

}  // namespace

InspectPlace::InspectPlace(edits::Selection& selection, QSettings& settings, QObject* parent)
    : QObject(parent), selection_(selection), settings_(settings), drafts_(settings) {
  due_ = new rounds::DuePage;
  start_ = new rounds::StartForm;
  card_ = new rounds::CheckCard;
  side_ = new Side;
  for (QWidget* page :
       {static_cast<QWidget*>(due_), static_cast<QWidget*>(start_), static_cast<QWidget*>(card_)})
    side_->addWidget(page);
  side_->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);  // until it is seen
  under_ = below();
  start_->setName(settings_.value(kByKey).toString());
  drafts_.forgetBefore(inspection::monthsAfter(records::momentNow().date, -kDraftMonths));
  late_.setSingleShot(true);
  late_.setInterval(kLate_ms);
  connect(&late_, &QTimer::timeout, this, [this] { showOfBefore(true); });
  connectPages();
  roundChanged();
}

InspectPlace::~InspectPlace() = default;

QWidget* InspectPlace::side() const {
  return side_;
}

QWidget* InspectPlace::below() {
  auto* under = new QWidget;
  auto* column = new QVBoxLayout(under);
  column->setContentsMargins(0, 0, 0, 0);
  history_ = new rounds::DeviceHistory;
  history_->hide();
  column->addWidget(history_);
  connect(history_, &rounds::DeviceHistory::correctWanted, this, &InspectPlace::correct);
  connect(history_, &rounds::DeviceHistory::left, this, &InspectPlace::takeKeyboard);
  auto* caution = new QLabel(tr(
      "Test a stop only as its maker and the shop's procedure say, with the work clear. A record certifies "
      "nothing. Local codes, the maker and licensed people come first. <a href=\"#\">More</a>"));
  caution->setWordWrap(true);
  caution->setMargin(4);
  caution->setTextInteractionFlags(Qt::TextBrowserInteraction);
  connect(caution, &QLabel::linkActivated, this, &InspectPlace::cautionWanted);
  column->addWidget(caution);
  return under;
}

void InspectPlace::connectPages() {
  connect(due_, &rounds::DuePage::picked, this, &InspectPlace::goTo);
  connect(due_, &rounds::DuePage::historyWanted, this, [this](const QString& device) {
    if (!found_ || isThere(device.toStdString())) return goToHistory();
    goToCard(device.toStdString());
  });
  connect(card_, &rounds::CheckCard::historyWanted, this, &InspectPlace::goToHistory);
  connect(card_, &rounds::CheckCard::escaped, this, &InspectPlace::stopCorrecting);
  connect(due_, &rounds::DuePage::startWanted, this, &InspectPlace::showStart);
  connect(due_, &rounds::DuePage::continueWanted, &round_, &rounds::RoundUnderWay::walk);
  connect(due_, &rounds::DuePage::saveWanted, this, &InspectPlace::saveWanted);
  connect(due_, &rounds::DuePage::saveAndStartWanted, this, &InspectPlace::saveAndStart);
  connect(start_, &rounds::StartForm::startWanted, this, &InspectPlace::startRound);
  connect(start_, &rounds::StartForm::changed, this, &InspectPlace::askOrder);
  connect(start_, &rounds::StartForm::sheetWanted, this,
          [this] { emit sheetWanted(start_->scope(), start_->walk()); });
  connect(&order_, &LiveOrder::answered, this, [this](std::shared_ptr<const LiveOrder::Answer> answer) {
    if (order_asked_ == answer->of)
      start_->showOrder(
          rounds::orderText(*answer->of.layout, answer->order, answer->of.walk, answer->devices));
  });
  connect(&order_, &LiveOrder::failed, this, [this](const QString& why) {
    order_asked_.reset();
    start_->showOrder(tr("The walk could not be computed: %1.").arg(why));
  });
  connect(start_, &rounds::StartForm::left, this, &InspectPlace::showDue);
  connect(card_, &rounds::CheckCard::changed, this, &InspectPlace::cardChanged);
  connect(card_->inspector(), &QLineEdit::editingFinished, this, &InspectPlace::nameTyped);
  connect(card_->inspector(), &QLineEdit::textEdited, this, &InspectPlace::showCounts);
  connect(card_->onPaper(), &QLineEdit::textChanged, this, &InspectPlace::showCounts);
  connect(card_, &rounds::CheckCard::recordWanted, this, &InspectPlace::record);
  connect(card_, &rounds::CheckCard::moveWanted, this, &InspectPlace::goBy);
  connect(card_, &rounds::CheckCard::leaveWanted, this, &InspectPlace::leaveRound);
  connect(&round_, &rounds::RoundUnderWay::changed, this, &InspectPlace::roundChanged);
  connect(&writer_, &rounds::RecordWriter::written, this, &InspectPlace::finish);
  connect(&live_, &LiveDevices::answered, this, [this](std::shared_ptr<const LiveDevices::Answer> answer) {
    if (asked_ != answer->of) return;
    found_ = std::move(answer);
    as_of_.reset();
    refresh();
    if (const auto act = std::exchange(waiting_, {})) act();
  });
  connect(&live_, &LiveDevices::failed, this, [this](const QString& why) {
    asked_.reset();
    waiting_ = {};
    emit said(tr("The devices to inspect could not be computed: %1.").arg(why));
  });
  connect(&selection_, &edits::Selection::changed, this, &InspectPlace::selected);
}

void InspectPlace::follow(InspectSource source) {
  if (source == source_) return;
  if (source.path != source_.path) {  // what was found is of another file's plan
    found_.reset();
    as_of_.reset();
    asked_.reset();
    waiting_ = {};
  }
  if (source.schedule != source_.schedule) as_of_.reset();
  source_ = std::move(source);
  if (!is_here_) return;
  askDevices();
  refresh();
}

void InspectPlace::askDevices() {
  const LiveDevices::Question now{source_.layout, source_.kinds, round_.order(),
                                  round_.round() ? round_.round()->walk : inspection::RoundWalk()};
  if (!source_.layout || asked_ == now) return;
  asked_ = now;
  live_.ask(now);
}

bool InspectPlace::isFound() const {
  return found_ && found_->of.layout == source_.layout && found_->of.kinds == source_.kinds;
}

// Whoever comes here by what they want done is not sent away while the devices are being found.
void InspectPlace::whenFound(std::function<void()> act) {
  waiting_ = {};
  if (isFound() || !source_.layout) return act();
  waiting_ = std::move(act);
}

void InspectPlace::refresh() {
  if (round_.round())
    showCard();
  else
    fillDue();
  showOnPlan();
  showHistory();
}

std::string InspectPlace::recordsFile() const {
  return records::recordsFileOf(QFile::encodeName(source_.path).toStdString());
}

inspection::AsOf InspectPlace::asOfLayout() const {
  const inspection::Now now = records::momentNow();
  return found_ ? planning::asOf(found_->devices, now) : inspection::AsOf{now};
}

const InspectPlace::AsOf& InspectPlace::asOfToday() {
  const inspection::Date today = records::momentNow().date;
  if (as_of_ && as_of_->day == today) return *as_of_;
  static const auto kNone =
      std::make_shared<const ComeTo>(std::make_shared<inspection::Records>(), HeldAgainst{});
  as_of_.emplace(AsOf{today, {}, beside_ ? beside_->comeTo(source_.schedule) : kNone});
  as_of_->states = as_of_->come_to->states;
  rounds::addMissedFailures(as_of_->states, failed());
  return *as_of_;
}

const rounds::Counting& InspectPlace::counting() {
  return asOfToday().come_to->counting;
}

const std::vector<inspection::FailedDevice>& InspectPlace::failed() const {
  static const std::vector<inspection::FailedDevice> kNone;
  return beside_ ? beside_->failed(source_.schedule) : kNone;
}

void InspectPlace::setRecords(RecordsBeside& beside) {
  beside_ = &beside;
  if (!beside.isReading()) {
    late_.stop();
    showOfBefore(false);
  }
  read_ = beside.read();
  if (are_missed_ != beside.areMissed()) asked_anew_ = false;
  are_missed_ = beside.areMissed();
  as_of_.reset();
  round_.setRecords({read_, &read_->log.records});
  if (!round_.round()) fillDue();
  showOnPlan();
  showHistory();
}

void InspectPlace::recordsAreRead() {
  late_.start();
}

// What is shown of them, pale and in words.
void InspectPlace::showOfBefore(bool is_of_before) {
  if (is_of_before == is_of_before_) return;
  is_of_before_ = is_of_before;
  for (QWidget* part : {static_cast<QWidget*>(due_), static_cast<QWidget*>(history_)})
    panels::showPale(*part, is_of_before);
  if (is_of_before) emit said(tr("The records are being read again: what is shown of them is of before."));
  showOnPlan();
}

// Why nothing can be recorded here yet; empty: it can.
QString InspectPlace::whyNotYet() const {
  if (source_.path.isEmpty()) return tr("Save the layout first: inspection records stand beside its file.");
  if (!read_->unreadable.empty())
    return tr("The inspection records cannot be read, and nothing is added to them: %1.")
        .arg(QString::fromStdString(read_->unreadable));
  if (source_.hash.empty())
    return tr(
        "The layout is not in its file as it is here. Save it first (Ctrl+S): a check names the layout that "
        "it "
        "was made by.");
  if (!isFound()) return tr("The plan is just being read. Try again.");
  return {};
}

QString InspectPlace::whatIsMissed() const {
  if (!are_missed_) return {};
  return tr(
      "Inspection records that were read here are no longer there as they were: nothing is added to their "
      "rounds. Put them back, or start a round anew.");
}

// By a round that is started without them.
QString InspectPlace::whatIsForgotten() const {
  const auto known = inspection::failedDevices(recordsNow(), source_.schedule, asOfLayout());
  QStringList names;
  for (const inspection::FailedDevice& f : failed())
    if (std::ranges::find(known, f.device, &inspection::FailedDevice::device) == known.end())
      names << QString::fromStdString(f.device);
  const QString missed =
      tr("Inspection records that were read here are no longer there as they were: put them back. Enter once "
         "more starts a round without them.");
  if (names.isEmpty()) return missed;
  return tr("%1 Failed only by them: %2. That is then forgotten once the layout is closed, unless it is "
            "checked in this round.")
      .arg(missed, names.join(tr(", ")));
}

void InspectPlace::selected() {
  showHistory();
  if (selection_.ids().size() != 1 || !is_here_) return;
  const std::string id = selection_.ids().front();
  if (round_.round())
    round_.goTo(id);
  else
    due_->pick(id);
}

void InspectPlace::come() {
  is_here_ = true;
  askDevices();
  refresh();
  takeKeyboard();
}

// The name that is being typed is of the card that is left.
void InspectPlace::goBy(int steps) {
  if (round_.round()) nameTyped();
  round_.goBy(steps);
}

void InspectPlace::leaveRound() {
  if (round_.round()) nameTyped();
  round_.leave();
}

void InspectPlace::takeKeyboard() {
  if (round_.round())
    card_->setFocus();
  else
    due_->tree()->setFocus();
}

void InspectPlace::leave() {
  is_here_ = false;
  waiting_ = {};
  showOnPlan();
}

void InspectPlace::fillMenu(MenuMaker& menu, const std::function<void()>& come_here) {
  const auto add = [&](const QString& text, const QKeySequence& key, std::function<void()> run) {
    menu.add(text, key, [come_here, run] {
      come_here();
      run();
    });
  };
  add(tr("&What is due"), {}, [this] {
    leaveRound();
    showDue();
  });
  add(tr("&Start a round…"), QKeySequence(tr("Ctrl+Shift+I")), [this] {
    leaveRound();
    whenFound([this] { showStart(); });
  });
  add(tr("&Continue the round"), QKeySequence(tr("Ctrl+Shift+C")), [this] {
    whenFound([this] {
      emit lookWanted();
      if (!round_.round()) round_.walk(due_->openRound());
    });
  });
  add(tr("C&hecks of the device"), QKeySequence(tr("Ctrl+Shift+H")), [this] { goToHistory(); });
  menu.addSeparator();
  add(tr("&Next device"), QKeySequence(tr("Ctrl+PgDown")), [this] { goBy(1); });
  add(tr("&Previous device"), QKeySequence(tr("Ctrl+PgUp")), [this] { goBy(-1); });
  menu.add(tr("&Record the check"), QKeySequence(tr("Ctrl+Return")), [this, come_here] {
    if (is_here_) return record();
    come_here();  // nothing is recorded out of sight
  });
  fillCardMenu(menu, come_here);
}

void InspectPlace::fillCardMenu(MenuMaker& menu, const std::function<void()>& come_here) {
  const auto give = [&](QMenu& to, panels::Verb& verb) {
    verb.setLead([come_here](const auto& run) {
      come_here();
      run();
    });
    to.addAction(&verb);
  };
  menu.menu()->setToolTipsVisible(true);  // that say why something cannot be done
  QMenu *tried = menu.addMenu(tr("What was &tried")), *result = menu.addMenu(tr("What came &of it"));
  for (QMenu* below : {tried, result}) below->setToolTipsVisible(true);
  for (panels::Verb* verb : card_->triedVerbs()) give(*tried, *verb);
  for (panels::Verb* verb : card_->resultVerbs()) give(*result, *verb);
  for (panels::Verb* verb : {&card_->clockVerb(), &card_->paperVerb(), &history_->correctVerb()})
    give(*menu.menu(), *verb);
}

}  // namespace stopwalk::window
