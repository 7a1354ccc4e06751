#include "app/panels/reach/reach_chooser.h"

#include <QAbstractItemView>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include "core/layout/names.h"

namespace stopwalk::panels {

using What = audit::ReachTarget::What;

ReachChooser::ReachChooser(const edits::EditedLayout& edited, QWidget* parent)
    : QWidget(parent), edited_(edited), what_(new QuietBox(this)), machine_(new ElidedBox(this)) {
  what_->setAccessibleName(tr("What the floor's colours show"));
  machine_->setAccessibleName(tr("Machine whose stop is walked to"));
  machine_->view()->setAccessibleName(machine_->accessibleName());
  machine_->setPlaceholderText(tr("Choose a machine"));
  what_->addItem(tr("No colours"));
  what_->addItem(tr("Walk to the phone"), static_cast<int>(What::Phone));
  what_->addItem(tr("Walk to any stop"), static_cast<int>(What::AnyStop));
  what_->addItem(tr("Walk to a cut-off"), static_cast<int>(What::CutOff));
  what_->addItem(tr("Walk to the stop of one machine"), static_cast<int>(What::MachineStop));
  auto* label = new QLabel(tr("Co&lour the floor by"), this);
  label->setBuddy(what_);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->addWidget(label);
  column->addWidget(what_);
  column->addWidget(machine_);
  readMachines();
  tell();
  connect(what_, &QComboBox::currentIndexChanged, this, &ReachChooser::tell);
  connect(machine_, &QComboBox::currentIndexChanged, this, &ReachChooser::tell);
  connect(&edited_, &edits::EditedLayout::changed, this, &ReachChooser::readMachines);
}

std::optional<audit::ReachTarget> ReachChooser::target() const {
  if (!what_->currentData().isValid()) return std::nullopt;
  const What what = static_cast<What>(what_->currentData().toInt());
  if (what != What::MachineStop) return audit::ReachTarget{what, {}};
  if (machine_->currentIndex() < 0) return std::nullopt;
  return audit::ReachTarget{what, machine_->currentData().toString().toStdString()};
}

void ReachChooser::setMachine(const std::string& id) {
  if (const int index = machine_->findData(QString::fromStdString(id)); index >= 0)
    machine_->setCurrentIndex(index);
}

// The machine chosen stays chosen as long as it is there, and is again when it comes back.
void ReachChooser::readMachines() {
  {
    const QSignalBlocker quiet(machine_);
    machine_->clear();
    const std::vector<layout::Machine>& machines = edited_.layout().machines;
    const layout::NamesApart names(machines);
    for (const layout::Machine& m : machines) {
      const QString name = QString::fromStdString(names.of(m));
      machine_->addItem(name, QString::fromStdString(m.id));
      machine_->setItemData(machine_->count() - 1, name, Qt::ToolTipRole);
    }
    const int first = machine_->count() > 0 ? 0 : -1;
    machine_->setCurrentIndex(wanted_.isEmpty() ? first : machine_->findData(wanted_));
  }
  tell();
}

void ReachChooser::tell() {
  const bool one =
      what_->currentData().isValid() && what_->currentData().toInt() == static_cast<int>(What::MachineStop);
  machine_->setVisible(one);
  machine_->setToolTip(machine_->currentText());
  if (one && machine_->currentIndex() >= 0) wanted_ = machine_->currentData().toString();
  if (target() == told_) return;
  told_ = target();
  emit chosen(told_);
}

}  // namespace stopwalk::panels
