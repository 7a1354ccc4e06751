// The part of the place that shows the card of one device after another.
#include <QStackedWidget>

#include "app/rounds/card_text.h"
#include "app/rounds/open_failure.h"
#include "app/rounds/run_down_timer.h"
#include "app/window/inspect_place.h"

namespace stopwalk::window {

rounds::CardKey InspectPlace::keyNow() const {
  const inspection::Round& round = *round_.round();
  return {recordsFile(), round.number, inspection::momentText(round.at), round_.device(),
          isCorrecting() ? correcting_->check : 0};
}

void InspectPlace::roundChanged() {
  if (correcting_ && !isCorrecting())  // left for another card
    card_->inspector()->setText(std::exchange(correcting_, std::nullopt)->from.inspector);
  askDevices();
  showOnPlan();
  if (!round_.round()) {
    shown_.reset();
    card_->onPaper()->clear();
    card_->inspector()->clear();
    second_.clear();
    return showDue();
  }
  const bool other = shown_ != keyNow();
  if (other) {
    const bool same_round =
        shown_ && shown_->records_file == recordsFile() && shown_->round == round_.round()->number;
    if (!same_round) beginCards();
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

// A round that was entered from paper has the time of its paper, whenever one goes on with it. Who goes on
// with it is not known: it need not be who began it.
void InspectPlace::beginCards() {
  const inspection::Round& round = *round_.round();
  card_->inspector()->clear();
  card_->onPaper()->setText(round.entered ? QString::fromStdString(inspection::momentText(round.at))
                                          : QString());
}

void InspectPlace::showCard() {
  if (found_) {
    rounds::CardText text = rounds::cardText(round_, *found_->of.layout, *found_->of.kinds, found_->devices,
                                             plan::Theme::of(card_->palette()));
    const auto* state = inspection::findState(states(), round_.device());
    if (state && state->failed) text.failed = rounds::openFailureText(*state->failed, source_.schedule);
    if (isCorrecting()) text.already = correctsText();
    card_->showText(text);
  }
  card_->setWriting(writing_ && writing_ == shown_);
  side_->setCurrentWidget(card_);
}

void InspectPlace::cardChanged() {
  if (shown_) drafts_.keep(*shown_, card_->entered());
}

}  // namespace stopwalk::window
