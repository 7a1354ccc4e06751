// The part of the place that shows the card of one device after another.
#include <QStackedWidget>
#include <QUuid>
#include <algorithm>

#include "app/rounds/card_text.h"
#include "app/rounds/on_paper.h"
#include "app/rounds/open_failure.h"
#include "app/rounds/order_text.h"
#include "app/rounds/run_down_timer.h"
#include "app/rounds/words.h"
#include "app/window/come_to.h"
#include "app/window/inspect_place.h"

namespace stopwalk::window {

rounds::CardKey InspectPlace::keyNow() const {
  const inspection::Round& round = *round_.round();
  return {recordsFile(), round.number, inspection::momentText(round.at), round_.device(),
          isCorrecting() ? correcting_->check : 0};
}

void InspectPlace::roundChanged() {
  if (correcting_ && !isCorrecting()) {  // left for another card
    const Correcting::From from = std::exchange(correcting_, std::nullopt)->from;
    card_->inspector()->setText(from.inspector);
    card_->onPaper()->setText(from.paper);
  }
  askDevices();
  showOnPlan();
  card_->setWhyNot(round_.round() ? QString() : tr("Start a round, or continue one, first."));
  if (!round_.round()) {
    shown_.reset();
    typed_.reset();
    card_->onPaper()->clear();
    card_->inspector()->clear();
    second_.clear();
    return showDue();
  }
  const bool other = shown_ != keyNow();
  if (other) asked_once_.reset();
  if (other) {
    const bool same_round =
        shown_ && shown_->records_file == recordsFile() && shown_->round == round_.round()->number;
    if (!same_round) beginCards();
    if (card_->onPaper()->text().isEmpty()) showPaper();  // it was cleared for one device
    shown_ = keyNow();
    if (card_->timer().isRunning()) emit said(tr("The clock was still running: that run is not kept."));
    showDraft(anew());
  }
  showCard();
  if (!other) return;
  card_->showTop();
  emit goTo(QString::fromStdString(round_.device()));
  card_->setFocus();
}

// Who goes on with a round is not known: it need not be who began it.
void InspectPlace::beginCards() {
  visit_ = QUuid::createUuid().toString();
  card_->inspector()->clear();
  showPaper();
}

// A round that was entered from paper has the time of its paper, whenever one goes on with it.
void InspectPlace::showPaper() {
  const inspection::Round& round = *round_.round();
  card_->onPaper()->setText(round.entered ? rounds::typedFor(round.at) : QString());
}

rounds::Entered InspectPlace::anew() const {
  rounds::Entered entered;
  entered.second = second_;
  return entered;
}

// What was entered on the card before; `anew`: nothing was.
void InspectPlace::showDraft(const rounds::Entered& anew) {
  if (!shown_) return;
  const auto draft = drafts_.read(*shown_);
  is_restored_ = draft && !draft->typed.by.isEmpty();
  typed_ = draft ? std::optional(draft->typed) : std::nullopt;
  known_ = draft ? draft->typed.known : read_->log.lines;
  card_->showEntered(draft ? draft->entered : anew);
  card_->showNotRecorded({});
  dropOfAnother(draft ? draft->entered : anew);  // whatever kind the card before was of
}

// A record says who tried something, and when: what another tried, or what was tried on another day, is told
// and chosen anew. It is kept as it was until something is.
void InspectPlace::dropOfAnother(const rounds::Entered& old) {
  if (!typed_ || rounds::mayBeOf(*typed_, is_restored_ ? card_->inspector()->text().simplified() : QString(),
                                 records::momentNow().date, visit_))
    return;
  rounds::Entered lines = rounds::linesOf(old);
  lines.second = second_;
  card_->showEntered(lines);
  card_->showNotRecorded(rounds::notRecordedText({old, *typed_}));
  typed_.reset();
  known_ = read_->log.lines;  // all is tried anew
  is_restored_ = false;
}

// A draft that was restored stays its first one's until it is known who goes on with it.
void InspectPlace::keepDraft() {
  if (!shown_) return;
  if (!typed_) typed_ = rounds::Typed{{}, records::momentNow().date, visit_, known_};
  if (!is_restored_) typed_->by = card_->inspector()->text().simplified();
  drafts_.keep(*shown_, {card_->entered(), *typed_});
  QMetaObject::invokeMethod(this, &InspectPlace::tellNotKept, Qt::QueuedConnection);  // once it was tried
}

void InspectPlace::tellNotKept() {
  if (!drafts_.areKept())
    emit said(
        tr("The settings of this computer cannot be written: what is entered here is lost if it is not "
           "recorded before the program ends."));
}

void InspectPlace::nameTyped() {
  dropOfAnother(card_->entered());
  if (typed_) keepDraft();
  showCounts();
}

void InspectPlace::showCard() {
  if (found_) {
    rounds::CardText text = rounds::cardText(round_, *found_->of.layout, *found_->of.kinds, found_->devices,
                                             counting(), plan::Theme::of(card_->palette()));
    const auto* state = inspection::findState(states(), round_.device());
    if (state && state->failed) text.failed = rounds::openFailureText(*state->failed, source_.schedule);
    if (isWayFound() &&
        std::ranges::find(found_->way.not_reached, round_.device()) != found_->way.not_reached.end())
      text.where =
          tr("%1. %2", "where; no way leads there").arg(text.where, rounds::noWayText(round_.round()->walk));
    if (isCorrecting()) text.already = correctsText();
    card_->showText(text);
  }
  showCounts();
  card_->setWriting(writing_ && writing_ == shown_);
  side_->setCurrentWidget(card_);
}

// None: the plan does not have it.
std::optional<rounds::DeviceOn> InspectPlace::deviceOn(const std::string& id) {
  const auto* device = found_ ? planning::findDevice(found_->devices, id) : nullptr;
  if (!device) return std::nullopt;
  return rounds::DeviceOn{*device, inspection::findState(states(), id), source_.schedule,
                          records::momentNow().date};
}

// As far as it can be said yet; none: the time that is typed cannot be read.
std::optional<inspection::Check> InspectPlace::wouldBe(const rounds::Entered& entered,
                                                       const planning::InspectedDevice& device) const {
  const inspection::Moment now = records::momentNow();
  const rounds::OnPaper paper = rounds::onPaper(*card_->onPaper(), &*round_.round(), now);
  if (!paper.why.isEmpty()) return std::nullopt;
  inspection::Check check = planning::beginCheck(*round_.round(), device, paper.at.value_or(now), {});
  if (paper.at) check.entered = now;
  check.tested = entered.tested;
  check.result = entered.result.value_or(inspection::Result::NotTested);
  check.inspector = rounds::personTyped(card_->inspector()->text()).toStdString();
  if (isCorrecting()) check.corrects = correcting_->check;
  return check;
}

// Before it is recorded, as a record stays for good.
void InspectPlace::showCounts() {
  rounds::WillCount will;
  const rounds::Entered entered = card_->entered();
  const auto* device =
      round_.round() && found_ ? planning::findDevice(found_->devices, round_.device()) : nullptr;
  if (const auto check = device ? wouldBe(entered, *device) : std::nullopt) {
    const auto on_record = asOfToday().come_to;  // kept, whatever the next line asks anew
    will = rounds::willCountFor(entered, *check, on_record->on_record.ifRecorded(*check),
                                *deviceOn(device->id), *found_->of.layout);
  }
  card_->showCounts(will.text, will.is_short);
}

void InspectPlace::cardChanged() {
  keepDraft();
  showCounts();
}

}  // namespace stopwalk::window
