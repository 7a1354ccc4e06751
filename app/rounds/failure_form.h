#pragma once

#include <QLabel>
#include <QLineEdit>
#include <QWidget>

#include "app/rounds/entered.h"

namespace stopwalk::rounds {

// What a failure asks, and may be said of what could not be tested: who tagged the machine out until when,
// what else was done at once, and what is still to be done by whom.
class FailureForm : public QWidget {
  Q_OBJECT

 public:
  explicit FailureForm(QWidget* parent = nullptr);

  void show(const Entered& entered);
  // That the device stays failed is said with a failure.
  void setOfFailure(bool is_failure) { stays_failed_->setVisible(is_failure); }
  void putInto(Entered& entered) const;

  QLineEdit* action() const { return action_; }
  QLineEdit* taggedBy() const { return tagged_by_; }
  QLineEdit* taggedUntil() const { return tagged_until_; }
  QLineEdit* todo() const { return todo_; }
  QLineEdit* owner() const { return owner_; }
  QLineEdit* until() const { return until_; }

 signals:
  void changed();

 private:
  QLabel* stays_failed_;
  QLineEdit *tagged_by_, *tagged_until_, *action_, *todo_, *owner_, *until_;
};

}  // namespace stopwalk::rounds
