#pragma once

#include <QAbstractTableModel>
#include <map>
#include <memory>
#include <unordered_map>

#include "app/plan/changes.h"
#include "core/audit/report.h"
#include "core/layout/device_kind.h"
#include "core/layout/layout.h"

namespace stopwalk::panels {

// Every station of a report as a row: how it stands, its nearest stop and phone. What is not known is a dash
// and sorts last.
class StationModel : public QAbstractTableModel {
  Q_OBJECT

 public:
  enum Column { Name, State, Change, Walk, Seconds, PhoneWalk, ClearWidth, Stop, How, Phone, kColumns };
  static constexpr int kSortRole = Qt::UserRole;    // a number or a text
  static constexpr int kIdRole = Qt::UserRole + 1;  // of the station
  static constexpr int kMachineRole = Qt::UserRole + 2;

  using QAbstractTableModel::QAbstractTableModel;

  // `changes`: to how it would be; empty: nothing is supposed.
  void setReport(std::shared_ptr<const audit::Report> report, const layout::Layout& layout,
                 const layout::DeviceKinds& kinds, const std::vector<plan::StationChange>& changes);

  const audit::Report* report() const { return report_.get(); }

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

 private:
  QString textAt(std::size_t row, int column) const;
  QVariant sortKey(std::size_t row, int column) const;

  void takeAcceptances();

  std::shared_ptr<const audit::Report> report_;
  std::vector<bool> accepted_;                      // of each station: all that it warns or fails for
  std::map<std::string, QStringList> acceptances_;  // by what they are about, in words
  std::unordered_map<std::string, QString> how_;    // by the id of the device
  std::map<std::string, plan::StationChange> changes_;
};

}  // namespace stopwalk::panels
