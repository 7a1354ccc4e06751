#pragma once

#include <QElapsedTimer>
#include <QLabel>
#include <QPushButton>
#include <QTimer>
#include <QWidget>
#include <vector>

class QGridLayout;

namespace stopwalk::rounds {

// A braked run-down is the average of ten runs in the European standards for woodworking machines (the
// annexes for surface planing). Fewer are recorded as they are.
inline constexpr std::size_t kRuns = 10;

// Times how long a machine runs on: started when the stop is worked, stopped when all is at rest. Its runs
// can be dropped one by one.
class RunDownTimer : public QWidget {
  Q_OBJECT

 public:
  explicit RunDownTimer(QWidget* parent = nullptr);

  const std::vector<double>& runs() const { return runs_; }  // seconds
  void show(std::vector<double> runs);                       // a run under way is not counted
  bool isRunning() const { return clock_.isValid(); }
  void startOrStop();
  void drop(std::size_t run);

  QPushButton* button() const { return button_; }
  QString said() const { return mean_->text(); }  // "3 of 10, mean 2.45 s"

 signals:
  void changed();

 private:
  void tell();
  void showRuns();

  std::vector<double> runs_;
  QElapsedTimer clock_;  // valid while it runs
  QTimer ticker_;
  QPushButton* button_;
  QLabel *time_, *mean_;
  QGridLayout* list_;
};

}  // namespace stopwalk::rounds
