#pragma once

#include <QLabel>
#include <QPushButton>
#include <QTreeWidget>
#include <QWidget>
#include <span>

#include "app/rounds/counting.h"
#include "core/inspection/record.h"
#include "core/inspection/schedule.h"

namespace stopwalk::panels {
class Verb;
}

namespace stopwalk::rounds {

// All checks of one device by the time that each gives, the newest first; what was corrected is marked as
// such. Enter corrects the one picked, Escape goes back to where one was.
class DeviceHistory : public QWidget {
  Q_OBJECT

 public:
  enum Column { What, When, By, RunDown, Found };

  explicit DeviceHistory(QWidget* parent = nullptr);

  // `name`: of the device, as people call it.
  void show(const std::string& device, const QString& name, const inspection::Chains& checks,
            std::span<const inspection::DeviceState> states, const inspection::Schedule& schedule,
            const Counting& counting);
  // By keyboard, at the check that is picked, or at the newest; false: there is none.
  bool come();
  // No device is picked.
  void forget();
  std::size_t current() const;  // the number of the check that is picked; 0: none

  QTreeWidget* list() const { return list_; }
  panels::Verb& correctVerb() const { return *correct_verb_; }
  QPushButton* correctButton() const { return correct_; }
  QString title() const { return title_->text(); }

 signals:
  void correctWanted(std::size_t check, const std::string& device);
  void left();  // by Escape

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  void add(const inspection::Check& check, const inspection::Check& dated, std::size_t corrected_by,
           const Counting& counting);

  std::string device_;  // empty: none
  QLabel* title_;
  QTreeWidget* list_;
  void showVerb();

  QPushButton* correct_;
  panels::Verb* correct_verb_;
};

// That it failed, since when, and what would close it; empty: it did not, or it passed since.
QString failedText(const std::string& device, std::span<const inspection::DeviceState> states,
                   const inspection::Schedule& schedule);
// What was noted, done, is still to be done, and was tried: what people wrote comes first.
QString foundText(const inspection::Check& check);

}  // namespace stopwalk::rounds
