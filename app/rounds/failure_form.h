#pragma once

#include <QLineEdit>
#include <QWidget>

#include "app/rounds/entered.h"

namespace stopwalk::rounds {

// What a failure asks: what was done at once, and what is still to be done by whom.
class FailureForm : public QWidget {
  Q_OBJECT

 public:
  explicit FailureForm(QWidget* parent = nullptr);

  void show(const Entered& entered);
  void putInto(Entered& entered) const;

  QLineEdit* action() const { return action_; }
  QLineEdit* taggedBy() const { return tagged_by_; }
  QLineEdit* todo() const { return todo_; }
  QLineEdit* owner() const { return owner_; }
  QLineEdit* until() const { return until_; }

 signals:
  void changed();

 private:
  QLineEdit *action_, *tagged_by_, *todo_, *owner_, *until_;
};

}  // namespace stopwalk::rounds
