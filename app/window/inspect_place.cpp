#include "app/window/inspect_place.h"

#include <QFile>
#include <QLabel>
#include <QStackedWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "app/rounds/card_text.h"
#include "app/rounds/device_history.h"
#include "app/rounds/due_page.h"
#include "app/rounds/on_paper.h"
#include "app/rounds/on_plan.h"
#include "app/rounds/outcome.h"
#include "app/rounds/run_down_timer.h"
#include "app/rounds/start_form.h"
#include "app/rounds/words.h"
#include "app/window/commands.h"
#include "core/inspection/check_rules.h"
#include "core/inspection/round_progress.h"
#include "core/planning/round_plan.h"

namespace stopwalk::window {
namespace {

constexpr int kSide_px = 430;
constexpr const char* kByKey = "inspect/by";

// Asks for its width only while it is seen.
class Side : public QStackedWidget {
 public:
  QSize minimumSizeHint() const override {
    return QStackedWidget::minimumSizeHint().expandedTo({kSide_px, 0});
  }
};

inspection::Date today() {
  return records::momentNow().date;
}

std::vector<rounds::StartForm::Room> roomsOf(const layout::Layout& layout,
                                             std::span<const planning::InspectedDevice> devices) {
  std::vector<rounds::StartForm::Room> rooms;
  for (const layout::Room& room : layout.rooms)
    if (const auto count = std::ranges::count(devices, room.id, &planning::InspectedDevice::room))
      rooms.push_back({room.id, rounds::roomName(layout, room.id), static_cast<std::size_t>(count)});
  return rooms;
}

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
  connectPages();
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
  connect(due_, &rounds::DuePage::historyWanted, this, &InspectPlace::goToHistory);
  connect(card_, &rounds::CheckCard::historyWanted, this, &InspectPlace::goToHistory);
  connect(card_, &rounds::CheckCard::escaped, this, &InspectPlace::stopCorrecting);
  connect(due_, &rounds::DuePage::startWanted, this, &InspectPlace::showStart);
  connect(due_, &rounds::DuePage::continueWanted, &round_, &rounds::RoundUnderWay::walk);
  connect(due_, &rounds::DuePage::saveWanted, this, &InspectPlace::saveWanted);
  connect(start_, &rounds::StartForm::startWanted, this, &InspectPlace::startRound);
  connect(start_, &rounds::StartForm::left, this, &InspectPlace::showDue);
  connect(card_, &rounds::CheckCard::changed, this, &InspectPlace::cardChanged);
  connect(card_, &rounds::CheckCard::recordWanted, this, &InspectPlace::record);
  connect(card_, &rounds::CheckCard::moveWanted, &round_, &rounds::RoundUnderWay::goBy);
  connect(card_, &rounds::CheckCard::leaveWanted, &round_, &rounds::RoundUnderWay::leave);
  connect(&round_, &rounds::RoundUnderWay::changed, this, &InspectPlace::roundChanged);
  connect(&writer_, &rounds::RecordWriter::written, this, &InspectPlace::finish);
  connect(&live_, &LiveDevices::answered, this, [this](std::shared_ptr<const LiveDevices::Answer> answer) {
    found_ = std::move(answer);
    refresh();
  });
  connect(&selection_, &edits::Selection::changed, this, &InspectPlace::selected);
}

void InspectPlace::follow(InspectSource source) {
  if (source == source_) return;
  source_ = std::move(source);
  if (!is_here_) return;
  askDevices();
  refresh();
}

void InspectPlace::askDevices() {
  const LiveDevices::Question now{source_.layout, source_.kinds, round_.order()};
  if (source_.layout && (!found_ || found_->of != now)) live_.ask(now);
}

void InspectPlace::refresh() {
  if (round_.round())
    showCard();
  else
    fillDue();
  showOnPlan();
  showHistory();
}

// Of the device that is picked.
void InspectPlace::showHistory() {
  const std::string id = selection_.ids().size() == 1 ? selection_.ids().front() : "";
  const auto* device = found_ ? planning::findDevice(found_->devices, id) : nullptr;
  history_->setVisible(device && !source_.path.isEmpty());
  if (device)
    history_->show(id, rounds::nameOf(*found_->of.layout, *device), read_.log.records, source_.schedule);
}

void InspectPlace::goToHistory() {
  if (round_.round()) emit goTo(QString::fromStdString(round_.device()));
  if (!history_->come())
    emit said(tr("Pick a stop device that was checked: its checks stand below the plan."));
}

// Back to the card that the round has for the device.
void InspectPlace::stopCorrecting() {
  if (!isCorrecting() || writer_.isWriting()) return;
  correcting_.reset();
  roundChanged();
}

bool InspectPlace::isCorrecting() const {
  return correcting_ && round_.round() && correcting_->round == round_.round()->number &&
         correcting_->device == round_.device();
}

// Its card once more, with what it says but for the result.
void InspectPlace::correct(std::size_t number) {
  const inspection::Check* check = read_.log.records.findCheck(number);
  if (!check || writer_.isWriting()) return;
  const inspection::Round* round = read_.log.records.findRound(check->round);
  if (!round || std::ranges::find(round->devices, check->device) == round->devices.end())
    return emit said(tr("That check is of no round that lists its device: correct it on the command line."));
  const inspection::Check old = *check;
  round_.walk(old.round);
  round_.goTo(old.device);
  correcting_ = Correcting{number, old.round, old.device};
  shown_ = keyNow();
  card_->showEntered(drafts_.read(*shown_).value_or(rounds::enteredOf(old)));
  showCard();
  card_->setFocus();
}

// The plan shows what is due, or how far the round has come.
void InspectPlace::showOnPlan() {
  if (!is_here_ || !found_ || source_.path.isEmpty()) return emit onPlan(std::nullopt);
  if (!round_.round())
    return emit onPlan(rounds::dueOnPlan(found_->devices, read_.log.records, source_.schedule, today()));
  const bool walked = found_->of.order == round_.order();
  emit onPlan(rounds::roundOnPlan(
      round_, walked ? std::span(found_->legs) : std::span<const planning::InspectionLeg>()));
}

std::string InspectPlace::recordsFile() const {
  return records::recordsFileOf(QFile::encodeName(source_.path).toStdString());
}

void InspectPlace::setRecords(const records::ReadRecords& read) {
  read_ = read;
  round_.setRecords(read_.log.records);
  if (!round_.round()) fillDue();
  showOnPlan();
  showHistory();
}

// Why nothing can be recorded here yet; empty: it can.
QString InspectPlace::whyNotYet() const {
  if (source_.path.isEmpty()) return tr("Save the layout first: inspection records stand beside its file.");
  if (!read_.unreadable.empty())
    return tr("The inspection records cannot be read, and nothing is added to them: %1.")
        .arg(QString::fromStdString(read_.unreadable));
  if (source_.hash.empty())
    return tr(
        "The layout is not in its file as it is here. Save it first (Ctrl+S): a check names the layout that "
        "it "
        "was made by.");
  if (!found_ || found_->of.layout != source_.layout || found_->of.kinds != source_.kinds)
    return tr("The plan is just being read. Try again.");
  return {};
}

void InspectPlace::showDue() {
  side_->setCurrentWidget(due_);
  fillDue();
}

void InspectPlace::fillDue() {
  if (source_.path.isEmpty()) return due_->showNothing(whyNotYet(), true);
  if (!found_) return;
  if (found_->devices.empty())
    return due_->showNothing(
        tr("There is no stop device on the plan yet. Draw one (Alt+1): what is due stands here then."),
        false);
  const auto view =
      rounds::dueView(*found_->of.layout, found_->devices, read_.log.records, source_.schedule, today());
  QString summary;
  if (view.devices > 0)
    summary = tr("%1 of %2 devices are due, %3 of them overdue.")
                  .arg(view.devices)
                  .arg(found_->devices.size())
                  .arg(view.overdue);
  else
    summary =
        view.next ? tr("Nothing is due until %1.").arg(rounds::dayText(*view.next)) : tr("Nothing is due.");
  std::vector<rounds::DuePage::OpenRound> open;
  for (const inspection::Round* round : inspection::unfinishedRounds(read_.log.records))
    open.push_back(
        {round->number, tr("%1, %2: %3 of %4 still to check")
                            .arg(rounds::dayText(round->at.date), QString::fromStdString(round->by))
                            .arg(inspection::stillToCheck(*round, read_.log.records).size())
                            .arg(round->devices.size())});
  due_->show(view, open, summary);
}

void InspectPlace::showStart() {
  if (const QString why = whyNotYet(); !why.isEmpty()) return emit said(why);
  const auto ids = planning::idsOf(found_->devices);
  const auto due = planning::dueAmong(ids, read_.log.records, source_.schedule, today());
  start_->show(due.size(), ids.size(), roomsOf(*source_.layout, found_->devices));
  if (due.empty()) start_->choose(rounds::StartForm::Over::All);
  start_->tell({});
  side_->setCurrentWidget(start_);
  start_->name()->setFocus();
  start_->name()->selectAll();
}

void InspectPlace::startRound() {
  if (const QString why = whyNotYet(); !why.isEmpty()) return start_->tell(why);
  if (writer_.isWriting()) return;
  const QString by = start_->by();
  if (by.isEmpty()) {
    start_->name()->setFocus();
    return start_->tell(tr("Type who walks the round: it stands on every check."));
  }
  const inspection::Moment now = records::momentNow();
  const rounds::OnPaper paper = rounds::onPaper(start_->onPaper()->text(), std::nullopt, now);
  if (!paper.why.isEmpty()) return start_->tell(paper.why);
  const planning::RoundScope scope = start_->scope();
  const auto ids = planning::devicesIn(scope, found_->devices, read_.log.records, source_.schedule,
                                       paper.at.value_or(now).date);
  if (ids.empty()) return start_->tell(tr("There is no device that is due."));
  settings_.setValue(kByKey, by);
  start_->setWriting(true);
  const auto make = [found = found_, ids, scope, by = by.toStdString(), hash = source_.hash,
                     at = paper.at.value_or(now)]() -> inspection::Record {
    const layout::Layout& layout = *found->of.layout;
    return inspection::Round{0,
                             at,
                             by,
                             planning::wordOf(scope),
                             planning::asWalked(ids, found->devices, layout),
                             planning::layoutThen(layout, hash)};
  };
  writer_.write(recordsFile(), make);
}

rounds::CardKey InspectPlace::keyNow() const {
  return {recordsFile(), round_.round()->number, round_.device(), isCorrecting() ? correcting_->check : 0};
}

void InspectPlace::roundChanged() {
  if (!isCorrecting()) correcting_.reset();
  askDevices();
  showOnPlan();
  if (!round_.round()) {
    shown_.reset();
    card_->onPaper()->clear();
    second_.clear();
    return showDue();
  }
  const bool other = shown_ != keyNow();
  if (other) {
    shown_ = keyNow();
    if (card_->timer().isRunning()) emit said(tr("The clock was still running: that run is not kept."));
    rounds::Entered anew;
    anew.second = second_;
    card_->showEntered(drafts_.read(*shown_).value_or(anew));
  }
  showCard();
  if (!other) return;
  emit goTo(QString::fromStdString(round_.device()));
  card_->setFocus();
}

QString InspectPlace::correctsText() const {
  const QString text =
      tr("Corrects check %1. That one stays in the records as it was written. Escape leaves it uncorrected.")
          .arg(correcting_->check);
  const inspection::Check* check = read_.log.records.findCheck(correcting_->check);
  if (!check || check->result != inspection::Result::Fail) return text;
  return tr("%1 A correction undoes no failure: only a check of its own that passes does.").arg(text);
}

void InspectPlace::showCard() {
  if (found_) {
    rounds::CardText text = rounds::cardText(round_, *found_->of.layout, *found_->of.kinds, found_->devices,
                                             plan::Theme::of(card_->palette()));
    if (isCorrecting()) text.already = correctsText();
    card_->showText(text);
  }
  card_->setWriting(writing_ && writing_ == shown_);
  side_->setCurrentWidget(card_);
}

void InspectPlace::cardChanged() {
  if (shown_) drafts_.keep(*shown_, card_->entered());
}

void InspectPlace::record() {
  if (!round_.round() || writer_.isWriting()) return;
  const rounds::Entered entered = card_->entered();
  QString why = whyNotYet();
  if (why.isEmpty() && card_->timer().isRunning())
    why = tr("The clock is still running: stop it (Space) once all is at rest. A wrong run can be dropped.");
  if (why.isEmpty()) why = rounds::whatIsMissing(entered);
  const auto* device = why.isEmpty() ? planning::findDevice(found_->devices, round_.device()) : nullptr;
  if (!device) return card_->tell(why.isEmpty() ? tr("The device is no longer on the plan.") : why, true);
  const inspection::Moment now = records::momentNow();
  const rounds::OnPaper paper = rounds::onPaper(card_->onPaper()->text(), round_.round()->at, now);
  if (!paper.why.isEmpty()) return card_->tell(paper.why, true);
  inspection::Check check = planning::beginCheck(*round_.round(), *device, paper.at.value_or(now),
                                                 planning::layoutThen(*source_.layout, source_.hash));
  if (paper.at) check.entered = now;
  put(entered, check);
  if (isCorrecting()) {
    if (inspection::correctionFault(read_.log.records, correcting_->check, check.device))
      return card_->tell(tr("That check was corrected already, by another record: correct that one."), true);
    check.corrects = correcting_->check;
  }
  drafts_.keep(*shown_, entered);
  writing_ = shown_;
  card_->setWriting(true);
  writer_.write(recordsFile(), [check]() -> inspection::Record { return check; });
}

void InspectPlace::finish(const records::Appended& appended, const inspection::Record& record) {
  if (const QString aside = rounds::setAside(appended); !aside.isEmpty()) emit said(aside);
  if (const auto* round = std::get_if<inspection::Round>(&record)) return roundWritten(appended, *round);
  checkWritten(appended, std::get<inspection::Check>(record));
}

void InspectPlace::roundWritten(const records::Appended& appended, const inspection::Round& round) {
  start_->setWriting(false);
  if (appended.written != records::Written::Yes)
    return start_->tell(rounds::whyNotRecorded(appended, QString::fromStdString(recordsFile())));
  emit recorded();
  card_->onPaper()->setText(start_->onPaper()->text());
  start_->onPaper()->clear();
  round_.walk(round.number);
}

// Only what is on the disk is called recorded; all else stays on its card.
void InspectPlace::checkWritten(const records::Appended& appended, const inspection::Check& check) {
  const auto written = std::exchange(writing_, std::nullopt);
  const bool is_shown = written && shown_ == written;
  card_->setWriting(false);
  if (appended.written != records::Written::Yes) {
    const QString why = rounds::whyNotRecorded(appended, QString::fromStdString(recordsFile()));
    card_->setFocus();
    if (appended.written == records::Written::Unsure) emit recorded();
    if (is_shown) card_->tell(why, true);
    return emit said(why);
  }
  drafts_.forget(*written);
  second_ = QString::fromStdString(check.second);
  correcting_.reset();
  if (is_shown) card_->showEntered({});
  emit recorded();
  const auto* device = planning::findDevice(found_->devices, check.device);
  const QString name =
      device ? rounds::nameOf(*found_->of.layout, *device) : QString::fromStdString(check.device);
  const QString done =
      tr("Recorded as %1: %2, %3.").arg(check.number).arg(name, rounds::wordOf(check.result).toLower());
  emit said(done);
  if (!is_shown) return;
  round_.goOn();
  card_->setFocus();
  card_->tell(round_.isFinished() ? tr("%1 All devices of this round are checked.").arg(done) : done, false);
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

void InspectPlace::takeKeyboard() {
  if (round_.round())
    card_->setFocus();
  else
    due_->tree()->setFocus();
}

void InspectPlace::leave() {
  is_here_ = false;
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
    round_.leave();
    showDue();
  });
  add(tr("&Start a round…"), QKeySequence(tr("Ctrl+Shift+I")), [this] {
    round_.leave();
    showStart();
  });
  add(tr("&Continue the round"), QKeySequence(tr("Ctrl+Shift+C")), [this] {
    if (!round_.round()) round_.walk(due_->openRound());
  });
  add(tr("C&hecks of the device"), QKeySequence(tr("Ctrl+Shift+H")), [this] { goToHistory(); });
  menu.addSeparator();
  add(tr("&Next device"), QKeySequence(tr("Ctrl+PgDown")), [this] { round_.goBy(1); });
  add(tr("&Previous device"), QKeySequence(tr("Ctrl+PgUp")), [this] { round_.goBy(-1); });
  add(tr("&Record the check"), QKeySequence(tr("Ctrl+Return")), [this] { record(); });
}

}  // namespace stopwalk::window
