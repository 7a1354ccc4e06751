#pragma once

#include <QIcon>
#include <QLabel>
#include <QLineEdit>
#include <QProgressBar>
#include <QPushButton>
#include <QWidget>

#include "app/rounds/entered.h"

class QScrollArea;
class QVBoxLayout;

namespace stopwalk::panels {
class Verb;
}

namespace stopwalk::rounds {

class FailureForm;
class ResultChoice;
class RunDownTimer;
class WhatWasTried;

// What a card says of its device.
struct CardText {
  std::size_t place = 0, of = 0, checked = 0;  // devices of the round; place from 1
  std::size_t round = 0;                       // its number
  QString by;                                  // who began it
  std::optional<inspection::Round> paper;      // it, if it was entered from paper
  QIcon symbol;                                // of the device
  QString name;
  QString where;         // the room, and on what
  QString stops;         // which machines
  QString how;           // to try it, and what to watch
  QString failed;        // since when, and until when; empty: it is not
  QString already;       // what this round says of it; empty: nothing yet
  bool is_there = true;  // false: it is no longer in the layout; that may be recorded
  bool is_stop = true;   // false: it is only looked at, and nothing is timed
};

// One device of a round, large: what it is and where, what was tried, what came of it. By touch, or by keys:
// digits tick, letters choose the result, Space times, Enter records, Escape leaves a line.
class CheckCard : public QWidget {
  Q_OBJECT

 public:
  explicit CheckCard(QWidget* parent = nullptr);

  void showText(const CardText& text);
  void showEntered(const Entered& entered);
  Entered entered() const;
  // What was entered here before and is not on the card; empty: nothing.
  void showNotRecorded(const QString& sentence);
  QString notRecorded() const;
  // What a pass will and will not count for as it is entered; empty: it is none.
  void showCounts(const QString& sentence, bool is_short);
  QString counts() const { return counts_->text(); }
  // While it is being written nothing can be changed.
  void setWriting(bool writing);
  // A sentence above the buttons: what is missing, or how the writing went.
  void tell(const QString& sentence, bool is_trouble);
  // As another card begins.
  void showTop();
  QString told() const { return told_->text(); }
  QString failedText() const;

  WhatWasTried& tried() const { return *tried_; }
  ResultChoice& result() const { return *result_; }
  RunDownTimer& timer() const { return *timer_; }
  FailureForm& failure() const { return *failure_; }
  QLineEdit* note() const { return note_; }
  // Whose name the check will bear; stays from card to card.
  QLineEdit* inspector() const { return inspector_; }
  QLineEdit* second() const { return second_; }
  // Stays from card to card, as a paper has one for all.
  QLineEdit* onPaper() const { return on_paper_; }
  // All that is chosen or timed here, for menus: what was tried, what came of it, the clock, and the line for
  // the time on paper. Each is done by its key too, while the card has the keyboard.
  const std::vector<panels::Verb*>& triedVerbs() const { return tried_verbs_; }
  const std::vector<panels::Verb*>& resultVerbs() const { return result_verbs_; }
  panels::Verb& clockVerb() const { return *clock_verb_; }
  panels::Verb& paperVerb() const { return *paper_verb_; }
  // Why nothing can be done here; empty: it can.
  void setWhyNot(const QString& why);

  QPushButton* recordButton() const { return record_; }
  QPushButton* previousButton() const { return previous_; }
  QPushButton* nextButton() const { return next_; }
  QPushButton* leaveButton() const { return leave_; }

 signals:
  void changed();  // what is entered
  void recordWanted();
  void moveWanted(int steps);
  void leaveWanted();
  void historyWanted();
  void escaped();  // from the card itself

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  QFont bold(double times = 1) const;
  QWidget* head();
  QWidget* body();
  QWidget* foot();
  QWidget* people();
  QString paperTime() const;
  void makeVerbs();
  void showVerbs();
  QString whyNotNow() const;
  bool doByKey(const QKeyEvent& event);
  void goToPaper();
  static QString paperKey() { return tr("T", "the key for: the time on paper"); }
  void placePaper();
  void enteredChanged();
  void showFailureForm();
  void showQuestions();
  void paperTyped();

  static constexpr double kLarge = 1.4;

  QLabel *place_, *symbol_, *name_, *where_, *stops_, *how_, *failed_, *already_, *not_recorded_, *counts_,
      *told_;
  QProgressBar* progress_;
  QPushButton *previous_, *next_, *leave_, *record_;
  QScrollArea* scroll_;
  QVBoxLayout* body_;
  WhatWasTried* tried_;
  ResultChoice* result_;
  RunDownTimer* timer_;
  FailureForm* failure_;
  QWidget *people_, *paper_;
  QLineEdit *note_, *inspector_, *second_, *on_paper_;
  std::vector<panels::Verb*> tried_verbs_, result_verbs_;
  panels::Verb *clock_verb_, *paper_verb_;
  QString why_not_;
  bool writing_ = false;
  bool is_there_ = true;
  std::optional<inspection::Round> paper_round_;
  bool is_stop_ = true;
};

}  // namespace stopwalk::rounds
