#pragma once

#include <QComboBox>
#include <QLabel>
#include <QWidget>
#include <optional>

#include "app/edits/edited_layout.h"
#include "app/panels/elided_box.h"
#include "core/audit/reach.h"

namespace stopwalk::panels {

// What the reach map is to show: a choice, and for the stop of one machine a list of the machines, which
// follows the layout. Where the machine is gone, or its id another, there is no map until one is chosen: that
// of another machine's stop would look the same.
class ReachChooser : public QWidget {
  Q_OBJECT

 public:
  explicit ReachChooser(const edits::EditedLayout& edited, QWidget* parent = nullptr);

  // None: no map.
  std::optional<audit::ReachTarget> target() const;

  QComboBox* whatBox() const { return what_; }
  ElidedBox* machineBox() const { return machine_; }
  // Of that machine, if it is one, the stop is walked to when that is chosen.
  void setMachine(const std::string& id);

 signals:
  void chosen(std::optional<stopwalk::audit::ReachTarget> target);

 private:
  void readMachines();
  void tell();

  const edits::EditedLayout& edited_;
  QComboBox* what_;
  ElidedBox* machine_;
  QString wanted_;  // the id of the machine shown last; it may be gone
  std::optional<audit::ReachTarget> told_;
};

}  // namespace stopwalk::panels
