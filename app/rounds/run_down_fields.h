#pragma once

#include <QLabel>
#include <QLineEdit>
#include <QStringList>
#include <QWidget>
#include <vector>

class QGridLayout;

namespace stopwalk::rounds {

// A braked run-down is the average of ten runs in the European standards for woodworking machines (the
// annexes for surface planing). Fewer are recorded as they are.
inline constexpr std::size_t kRuns = 10;

// The run-down times as the paper has them: a field a run, those with something in it and the next.
class RunDownFields : public QWidget {
  Q_OBJECT

 public:
  explicit RunDownFields(QWidget* parent = nullptr);

  // What is typed, as it is typed.
  QStringList typed() const;
  void show(const QStringList& runs);
  // Into the first field that is empty. Only where not all are filled.
  void add(double run_s);
  bool isFull() const;
  std::vector<double> runs() const;  // those that can be read

  QLineEdit* field(std::size_t run) const { return fields_[run]; }
  QLabel* trouble() const { return trouble_; }  // of what cannot be read; hidden: all can be
  QString said() const { return mean_->text(); }

 signals:
  void changed();

 private:
  void need(std::size_t fields);
  void tell();
  void tellTrouble();

  std::vector<QLineEdit*> fields_;
  QGridLayout* grid_;
  QLabel *mean_, *trouble_;
};

}  // namespace stopwalk::rounds
