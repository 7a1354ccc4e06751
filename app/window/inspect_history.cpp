// The part of the place that shows the checks of a device and corrects them.
#include <algorithm>

#include "app/rounds/check_card.h"
#include "app/rounds/device_history.h"
#include "app/rounds/words.h"
#include "app/window/come_to.h"
#include "app/window/inspect_place.h"
#include "core/planning/round_plan.h"

namespace stopwalk::window {

std::string InspectPlace::picked() const {
  return selection_.ids().size() == 1 ? selection_.ids().front() : "";
}

// Of the device that is picked.
void InspectPlace::showHistory() {
  const std::string id = picked();
  const auto* device = found_ ? planning::findDevice(found_->devices, id) : nullptr;
  history_->setVisible(device && !source_.path.isEmpty());
  if (!device) return history_->forget();
  const AsOf& today = asOfToday();
  history_->show(id, rounds::nameOf(*found_->of.layout, *device), today.come_to->on_record.of(id),
                 today.states, source_.schedule, today.come_to->counting);
}

void InspectPlace::goToHistory() {
  if (round_.round()) emit goTo(QString::fromStdString(round_.device()));
  if (!history_->come())
    emit said(tr("Pick a stop device that was checked: its checks stand below the plan."));
}

bool InspectPlace::isThere(const std::string& device) const {
  return planning::findDevice(found_->devices, device) != nullptr;
}

// In the round in which it was checked last: where it is said of what is no longer on the plan what became of
// it.
void InspectPlace::goToCard(const std::string& device) {
  const std::vector<std::size_t> rounds = inspection::roundsOf(recordsNow());
  for (std::size_t i = rounds.size(); i-- > 0;) {
    const inspection::Round* round = recordsNow().findRound(rounds[i]);
    if (recordsNow().checks[i].device != device || !round ||
        std::ranges::find(round->devices, device) == round->devices.end())
      continue;
    round_.walk(round->number);
    return round_.goTo(device);
  }
  emit said(tr("No round lists that device: say on the command line that it was taken away."));
}

bool InspectPlace::isCorrecting() const {
  return correcting_ && round_.round() && correcting_->round == round_.round()->number &&
         correcting_->device == round_.device();
}

// Its card once more, with what it says but for the result.
void InspectPlace::correct(std::size_t number, const std::string& device) {
  const inspection::Check* check = recordsNow().findCheck(number, device);
  if (!check || writer_.isWriting()) return;
  const auto place = static_cast<std::size_t>(check - recordsNow().checks.data());
  const inspection::Round* round = recordsNow().findRound(inspection::roundsOf(recordsNow())[place]);
  if (!round || std::ranges::find(round->devices, check->device) == round->devices.end())
    return emit said(tr("That check is of no round that lists its device: correct it on the command line."));
  const inspection::Check old = *check;
  const Correcting now{number, round->number, old.device, whereNow()};
  if (now.from.round != now.round) round_.walk(now.round);
  round_.goTo(old.device);
  correcting_ = now;
  shown_ = keyNow();
  card_->inspector()->clear();  // who corrects need not be who walks
  card_->onPaper()->clear();    // and what is corrected keeps its own time
  showDraft(rounds::enteredOf(old));
  showCard();
  card_->showTop();
  card_->setFocus();
}

void InspectPlace::stopCorrecting() {
  if (!isCorrecting() || writer_.isWriting()) return;
  goBack(*std::exchange(correcting_, std::nullopt));
  takeKeyboard();
}

// One correction after another does not change where it all began.
InspectPlace::Correcting::From InspectPlace::whereNow() const {
  if (isCorrecting()) return correcting_->from;
  return {round_.round() ? round_.round()->number : 0, round_.device(), card_->onPaper()->text(),
          card_->inspector()->text(), visit_};
}

// To the round and the device where one was, or to what is due with the device that was corrected.
void InspectPlace::goBack(const Correcting& corrected) {
  const Correcting::From& from = corrected.from;
  if (from.round == 0) {
    round_.leave();
    return emit goTo(QString::fromStdString(corrected.device));
  }
  if (from.round != corrected.round) round_.walk(from.round);
  round_.goTo(from.device);
  roundChanged();  // it may be the card that one is at
  card_->onPaper()->setText(from.paper);
  card_->inspector()->setText(from.inspector);
  visit_ = from.visit;
  showDraft(anew());
  showCounts();  // under the name that stands there again
}

QString InspectPlace::correctsText() const {
  const QString text =
      tr("Corrects check %1. That one stays in the records as it was written. Escape leaves it uncorrected.")
          .arg(correcting_->check);
  const inspection::Check* check = recordsNow().findCheck(correcting_->check, correcting_->device);
  if (!check || check->result != inspection::Result::Fail) return text;
  return tr("%1 A correction undoes no failure: only a check of its own that passes does.").arg(text);
}

}  // namespace stopwalk::window
