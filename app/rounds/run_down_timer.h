#pragma once

#include <QElapsedTimer>
#include <QLabel>
#include <QPushButton>
#include <QTimer>
#include <QWidget>

#include "app/rounds/run_down_fields.h"

class QVBoxLayout;

namespace stopwalk::rounds {

// How long a machine runs on: timed by a clock that is started when the stop is worked and stopped when all
// is at rest, or typed.
class RunDownTimer : public QWidget {
  Q_OBJECT

 public:
  explicit RunDownTimer(QWidget* parent = nullptr);

  QStringList typed() const { return fields_->typed(); }
  std::vector<double> runs() const { return fields_->runs(); }  // seconds
  void show(const QStringList& runs);                           // a run under way is not counted
  // From paper they are typed, as a rule: the fields come before the clock, which says what its runs bear.
  void setTypedFirst(bool typed_first);
  bool isRunning() const { return clock_.isValid(); }
  void startOrStop();

  QPushButton* button() const { return button_; }
  RunDownFields& fields() const { return *fields_; }
  QString said() const { return fields_->said(); }  // "3 of 10, mean 2.45 s"

 signals:
  void changed();
  void turned();  // the clock, on or off

 private:
  void tell();

  QElapsedTimer clock_;  // valid while it runs
  QTimer ticker_;
  QVBoxLayout* column_;
  QWidget* timing_;
  QPushButton* button_;
  QLabel* time_;
  RunDownFields* fields_;
  bool typed_first_ = false;
};

}  // namespace stopwalk::rounds
