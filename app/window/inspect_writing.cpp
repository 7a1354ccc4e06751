// The part of the place that writes rounds and checks.
#include "app/rounds/check_card.h"
#include "app/rounds/on_paper.h"
#include "app/rounds/open_failure.h"
#include "app/rounds/outcome.h"
#include "app/rounds/run_down_timer.h"
#include "app/rounds/start_form.h"
#include "app/rounds/words.h"
#include "app/window/inspect_place.h"
#include "core/inspection/check_rules.h"
#include "core/planning/round_plan.h"
#include "core/planning/walk_start.h"

namespace stopwalk::window {

void InspectPlace::startRound() {
  emit lookWanted();
  if (const QString why = whyNotYet(); !why.isEmpty()) return start_->tell(why);
  if (writer_.isWriting()) return start_->tell(tr("A check is still being written. Try again."));
  const QString by = rounds::personTyped(start_->by());
  if (by.isEmpty()) {
    start_->name()->setFocus();
    return start_->tell(tr("Type who walks the round: it stands on every check."));
  }
  const inspection::Moment now = records::momentNow();
  const rounds::OnPaper paper = rounds::onPaper(*start_->onPaper(), nullptr, now);
  if (!paper.why.isEmpty()) return start_->tell(paper.why);
  const planning::RoundScope scope = start_->scope();
  const auto ids = planning::devicesIn(scope, found_->devices, recordsNow(), source_.schedule,
                                       paper.at.value_or(now), failed());
  if (ids.empty())
    return start_->tell(scope.due ? tr("There is no device that is due.")
                                  : tr("There is no device to inspect."));
  const inspection::RoundWalk walk = start_->walk();
  if (!walk.start.empty() && !canBeginAt(walk))
    return start_->tell(tr("Nobody can stand where the walk is to begin: choose another place."));
  if (are_missed_ && !std::exchange(asked_anew_, true)) return start_->tell(whatIsForgotten());
  settings_.setValue(kByKey, by);
  start_->setWriting(true);
  const auto make = [found = found_, ids, scope, walk, by = by.toStdString(), hash = source_.hash,
                     at = paper.at.value_or(now),
                     entered = paper.at ? std::optional(now) : std::nullopt]() -> inspection::Record {
    const layout::Layout& layout = *found->of.layout;
    return inspection::Round{0,
                             at,
                             by,
                             planning::wordOf(scope),
                             planning::asWalked(ids, walk, layout, *found->of.kinds).devices,
                             planning::layoutThen(layout, hash),
                             entered,
                             walk};
  };
  writing_to_ = recordsFile();
  writer_.write(writing_to_, {read_->log.lines, read_->log.head()}, make);
}

bool InspectPlace::canBeginAt(const inspection::RoundWalk& walk) const {
  const layout::Layout& layout = *found_->of.layout;
  const floor::Plan plan = floor::buildPlan(layout, planning::hoursOf(walk));
  return planning::findStart(walk.start, layout, *found_->of.kinds, plan).start.has_value();
}

void InspectPlace::record() {
  if (!round_.round()) return;
  if (writer_.isWriting())
    return refuse(tr("A check is still being written. What is entered here is kept; try again."));
  emit lookWanted();
  if (!round_.round()) return emit said(whatIsMissed());  // its records went away
  dropOfAnother(card_->entered());
  const rounds::Entered entered = card_->entered();
  QString why = whyNotYet();
  if (why.isEmpty()) why = whatIsMissed();
  if (why.isEmpty() && card_->timer().isRunning())
    why = tr("The clock is still running: stop it (Space) once all is at rest. A wrong run can be dropped.");
  const auto* device = why.isEmpty() ? planning::findDevice(found_->devices, round_.device()) : nullptr;
  if (why.isEmpty() && !device) return recordTakenAway(entered);
  if (why.isEmpty()) why = rounds::whatIsMissing(entered, device->latches);
  if (!why.isEmpty()) return refuse(why);
  inspection::Check check =
      planning::beginCheck(*round_.round(), *device, {}, planning::layoutThen(*source_.layout, source_.hash));
  put(entered, check);
  write(std::move(check));
}

// Asked for twice, as Enter goes from card to card.
void InspectPlace::recordTakenAway(const rounds::Entered& entered) {
  if (isCorrecting()) return refuse(tr("The device is no longer on the plan."));
  if (inspection::removedDevices(recordsNow(), records::momentNow()).contains(round_.device()))
    return refuse(tr("That it was taken away is recorded already."));
  rounds::Entered kept;
  kept.result = inspection::Result::NotTested;
  kept.note = entered.note;
  kept.second = entered.second;
  if (const QString why = rounds::whatIsMissing(kept, true); !why.isEmpty()) return refuse(why);
  if (std::exchange(asked_once_, shown_) != shown_) return refuse(whatIsTakenAway(entered, kept));
  auto gone = planning::lastKnown(round_.device(), recordsNow()).value_or(planning::InspectedDevice());
  gone.id = round_.device();
  inspection::Check check =
      planning::beginCheck(*round_.round(), gone, {}, planning::layoutThen(*source_.layout, source_.hash));
  put(kept, check);
  check.removed = true;
  write(std::move(check));
}

// Of what was entered before it was gone the note goes with it: nothing else is said of what is not there.
QString InspectPlace::whatIsTakenAway(const rounds::Entered& entered, const rounds::Entered& kept) const {
  const QString once_more =
      tr("If it was taken away, press Enter once more. What it failed, and what is still to be "
         "done at it, is then no longer asked for. If it only has another id now, leave it.");
  rounds::Entered as_kept = entered;
  as_kept.result = kept.result;
  if (as_kept == kept && entered.result.value_or(*kept.result) == *kept.result) return once_more;
  return tr("%1 Of what was entered here before, only the note and the second person are recorded with it.")
      .arg(once_more);
}

// Who made it is asked for all alike, and when, but of what was taken away: that is of now.
void InspectPlace::write(inspection::Check check) {
  const QString by = rounds::personTyped(card_->inspector()->text());
  if (by.isEmpty()) {
    card_->inspector()->setFocus();
    return card_->tell(tr("Type in \"Inspected by\" who made this check: it bears that name for good."),
                       true);
  }
  const inspection::Moment now = records::momentNow();
  const rounds::OnPaper paper =
      check.removed ? rounds::OnPaper() : rounds::onPaper(*card_->onPaper(), &*round_.round(), now);
  if (!paper.why.isEmpty()) return refuse(paper.why);
  check.at = paper.at.value_or(now);
  if (paper.at) check.entered = now;
  check.inspector = by.toStdString();
  if (isCorrecting()) {
    if (const auto fault =
            inspection::correctionFault(recordsNow(), correcting_->check, check.device, check.round))
      return refuse(rounds::whyNotCorrected(*fault, correcting_->check));
    check.corrects = correcting_->check;
  }
  if (const auto over = inspection::overBeforeItBegan(check, recordsNow()))
    return refuse(tr("%1 is before the check: the last day of what is tagged out or to be done is expected.")
                      .arg(QString::fromStdString(inspection::dateText(*over))));
  keepDraft();
  writing_ = shown_;
  card_->setWriting(true);
  writer_.write(recordsFile(), {read_->log.lines, read_->log.head(), known_},
                [check]() -> inspection::Record { return check; });
}

// What is typed next is an answer to that, and no name.
void InspectPlace::refuse(const QString& why) {
  for (const QLineEdit* line : {card_->inspector(), card_->second(), card_->onPaper()})
    if (line->hasFocus()) card_->setFocus();
  card_->tell(why, true);
}

void InspectPlace::finish(const records::Appended& appended, const inspection::Record& record) {
  if (const QString aside = rounds::setAside(appended); !aside.isEmpty()) emit said(aside);
  if (const auto* round = std::get_if<inspection::Round>(&record))
    roundWritten(appended, *round);
  else
    checkWritten(appended, std::get<inspection::Check>(record));
  emit written(appended.written == records::Written::Yes);
}

void InspectPlace::roundWritten(const records::Appended& appended, const inspection::Round& round) {
  start_->setWriting(false);
  if (appended.written != records::Written::Yes)
    return roundNotWritten(rounds::whyNotRecorded(appended, QString::fromStdString(writing_to_)));
  emit recorded();
  if (are_missed_ && writing_to_ == recordsFile()) emit begunAnew();
  if (writing_to_ != recordsFile()) return;  // another file was opened in between
  start_->onPaper()->clear();
  const inspection::Round* found = recordsNow().findRound(round.number);
  if (!found || *found != round) return;
  round_.walk(round.number);
  card_->inspector()->setText(QString::fromStdString(round.by));
}

void InspectPlace::roundNotWritten(const QString& why) {
  if (writing_to_ == recordsFile()) return start_->tell(why);
  emit said(why);
}

// Only what is on the disk is called recorded; all else stays on its card.
void InspectPlace::checkWritten(const records::Appended& appended, const inspection::Check& check) {
  const auto written = std::exchange(writing_, std::nullopt);
  const bool is_shown = written && shown_ == written;
  card_->setWriting(false);
  if (appended.written != records::Written::Yes) {
    const QString why = rounds::whyNotRecorded(appended, QString::fromStdString(written->records_file));
    if (is_shown) card_->setFocus();
    if (appended.written == records::Written::Unsure) emit recorded();
    if (appended.failed_by != 0) showFailedMeanwhile(*written);
    const QString told = is_shown ? why : tr("%1: %2").arg(calledHere(check.device), why);
    card_->tell(told, true);
    return emit said(told);
  }
  asked_once_.reset();
  drafts_.forget(*written);
  second_ = QString::fromStdString(check.second);
  const auto corrected = std::exchange(correcting_, std::nullopt);
  if (is_shown) {
    card_->showEntered({});
    card_->showNotRecorded({});
    typed_.reset();
    known_ = appended.number;
  }
  emit recorded();
  const QString still = whyStillFailed(check);
  QString word = check.removed ? tr("taken away") : rounds::wordOf(check.result).toLower();
  if (const QString but = counting().but(check); !but.isEmpty() && still.isEmpty())
    word = tr("%1, %2").arg(word, but);
  QString done = tr("Recorded as %1: %2, %3.").arg(check.number).arg(calledHere(check.device), word);
  const auto device = deviceOn(check.device);
  if (const QString due = device ? rounds::stillDueText(check, *device) : QString(); !due.isEmpty())
    done = tr("%1 Still due: %2.").arg(done, due);
  if (!still.isEmpty()) done = tr("%1 %2").arg(done, still);
  emit said(done);
  if (!is_shown) return card_->tell(done, !still.isEmpty());
  if (corrected)
    goBack(*corrected);
  else
    round_.goOn();
  takeKeyboard();
  card_->tell(round_.isFinished() ? tr("%1 All devices of this round are checked.").arg(done) : done,
              !still.isEmpty());
}

// On the card, before anybody records a pass all the same.
void InspectPlace::showFailedMeanwhile(const rounds::CardKey& card) {
  emit lookWanted();
  if (auto draft = drafts_.read(card)) {
    draft->typed.known = read_->log.lines;
    drafts_.keep(card, *draft);
  }
  if (shown_ != card) return;
  known_ = read_->log.lines;
  if (typed_) typed_->known = known_;
}

QString InspectPlace::whyStillFailed(const inspection::Check& check) const {
  if (!check.removed) {
    const QString why = rounds::whyStillFailed(check, recordsNow(), source_.schedule, asOfLayout());
    if (!why.isEmpty() || check.result != inspection::Result::Pass) return why;
  }
  const auto open = std::ranges::find(failed(), check.device, &inspection::FailedDevice::device);
  return open == failed().end() || open->removed ? QString() : rounds::whyStillAsked(*open);
}

// As people call it.
QString InspectPlace::calledHere(const std::string& device) const {
  const auto* found = found_ ? planning::findDevice(found_->devices, device) : nullptr;
  return found ? rounds::nameOf(*found_->of.layout, *found) : QString::fromStdString(device);
}

}  // namespace stopwalk::window
