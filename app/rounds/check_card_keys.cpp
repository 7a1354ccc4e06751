// The keys of the card, and what can be done on it for its menu.
#include <QKeyEvent>
#include <QPushButton>

#include "app/panels/actions/verb.h"
#include "app/rounds/check_card.h"
#include "app/rounds/run_down_timer.h"
#include "app/rounds/what_was_tried.h"

namespace stopwalk::rounds {

// Their keys are the card's own: elsewhere in the window the same letters are typed.
void CheckCard::makeVerbs() {
  const auto make = [this](const panels::Verb::Text& text, const QKeySequence& key,
                           std::function<void()> run) {
    auto* verb = new panels::Verb(text, std::move(run), this);
    verb->setShortcut(key);
    verb->setShortcutContext(Qt::WidgetShortcut);
    return verb;
  };
  const auto ofButton = [&](BigButton& button, const QString& key) {
    auto* verb = make({button.text()}, QKeySequence(key), [&button] { button.click(); });
    verb->setCheckable(true);
    return verb;
  };
  for (const inspection::Tried test : inspection::kTried)
    tried_verbs_.push_back(ofButton(*tried_->box(test), WhatWasTried::keyOf(test)));
  for (const inspection::Result result : inspection::kResults)
    result_verbs_.push_back(ofButton(*result_->button(result), ResultChoice::keyOf(result)));
  clock_verb_ =
      make({tr("T&ime the run-down")}, QKeySequence(Qt::Key_Space), [this] { timer_->startOrStop(); });
  paper_verb_ = make({tr("&Give the time on paper"), tr("When it was done, if it is entered from paper.")},
                     QKeySequence(paperKey()), [this] { goToPaper(); });
  connect(timer_, &RunDownTimer::turned, this, &CheckCard::showVerbs);
}

void CheckCard::setWhyNot(const QString& why) {
  why_not_ = why;
  showVerbs();
}

QString CheckCard::whyNotNow() const {
  if (!why_not_.isEmpty()) return why_not_;
  if (writing_) return tr("The check is being written.");
  return is_there_ ? QString() : tr("The device is no longer on the plan.");
}

// As the buttons are.
void CheckCard::showVerbs() {
  const QString why = whyNotNow();
  const auto show = [](panels::Verb& verb, const BigButton& button, const QString& why_not) {
    verb.setWhyNot(why_not);
    verb.setText(button.accessibleName());
    verb.setChecked(button.answer() == true);
  };
  for (const inspection::Tried test : inspection::kTried) {
    const BigButton& box = *tried_->box(test);
    const QString not_of_it = is_stop_ ? tr("A stop is asked for each of that by itself.")
                                       : tr("It stops nothing: it is only looked at.");
    show(*tried_verbs_[static_cast<std::size_t>(test)], box,
         why.isEmpty() && box.isHidden() ? not_of_it : why);
  }
  for (const inspection::Result result : inspection::kResults)
    show(*result_verbs_[static_cast<std::size_t>(result)], *result_->button(result), why);
  const bool is_full = timer_->fields().isFull() && !timer_->isRunning();
  clock_verb_->setText(timer_->isRunning() ? tr("At rest: stop th&e clock") : tr("T&ime the run-down"));
  clock_verb_->setWhyNot(!why.isEmpty() ? why
                         : !is_stop_    ? tr("It stops nothing: it is only looked at.")
                         : is_full      ? tr("All runs are timed.")
                                        : QString());
  paper_verb_->setWhyNot(why);
}

// The first that can be done: a key may be of one thing at a stop and of another at what is none.
bool CheckCard::doByKey(const QKeyEvent& event) {
  // Seen last: of an older check it stands beside what it says in one, and has the key of the first of that.
  std::vector<panels::Verb*> verbs(tried_verbs_.rbegin(), tried_verbs_.rend());
  verbs.insert(verbs.end(), result_verbs_.begin(), result_verbs_.end());
  verbs.push_back(clock_verb_);
  verbs.push_back(paper_verb_);
  for (panels::Verb* verb : verbs)
    if (verb->isEnabled() && verb->shortcut() == QKeySequence(event.key())) {
      if (!event.isAutoRepeat() || verb != clock_verb_) verb->trigger();
      return true;
    }
  return false;
}

// Keys that what has the keyboard has no use for.
void CheckCard::keyPressEvent(QKeyEvent* event) {
  const bool plain = (event->modifiers() & ~(Qt::ShiftModifier | Qt::KeypadModifier)) == Qt::NoModifier;
  if (!plain || writing_) return QWidget::keyPressEvent(event);
  if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
    if (event->isAutoRepeat()) return;
    if (auto* button = qobject_cast<QPushButton*>(focusWidget())) return button->click();
    emit recordWanted();
  } else if (event->key() == Qt::Key_Escape) {
    if (hasFocus()) return emit escaped();
    setFocus();
  } else if (event->text().compare(tr("H", "the key for: all checks of this device"), Qt::CaseInsensitive) ==
             0) {
    emit historyWanted();
  } else if (!doByKey(*event)) {
    QWidget::keyPressEvent(event);
  }
}

}  // namespace stopwalk::rounds
