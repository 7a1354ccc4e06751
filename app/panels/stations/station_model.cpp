#include "app/panels/stations/station_model.h"

#include <QStringList>
#include <algorithm>
#include <limits>

#include "app/panels/findings/let_stand.h"
#include "app/panels/things/station_words.h"
#include "app/plan/day.h"
#include "app/plan/turn_sign.h"
#include "core/audit/accepted.h"
#include "core/audit/wording.h"
#include "core/floor/walks.h"

namespace stopwalk::panels {
namespace {

using audit::Nearest;
using audit::StationReport;
using audit::Status;

constexpr double kUnknown = std::numeric_limits<double>::infinity();  // sorts last
const QString kDash = QStringLiteral("–");

// In words where there is no number, since the reason matters more than the dash.
QString walkWords(const Nearest& nearest, layout::LengthUnit unit) {
  if (nearest.status == Status::AtHand) return StationModel::tr("at hand");
  if (nearest.status == Status::Unreachable) return StationModel::tr("no way");
  if (nearest.status == Status::None) return StationModel::tr("none");
  if (nearest.status == Status::Unmeasured) return StationModel::tr("not measured");
  if (!nearest.walk_m) return kDash;
  const QString walk = walkText(*nearest.walk_m, unit);
  return nearest.status == Status::Narrow ? StationModel::tr("%1, narrow").arg(walk) : walk;
}

std::optional<double> clearWidth(const StationReport& station) {
  if (!station.stop.clear_width_m) return station.phone.clear_width_m;
  if (!station.phone.clear_width_m) return station.stop.clear_width_m;
  return std::min(*station.stop.clear_width_m, *station.phone.clear_width_m);
}

// A walk at the measuring clearance is that wide all along, and may be wider; a narrow one is told from it.
QString widthWords(const StationReport& station, layout::LengthUnit unit) {
  const auto width = clearWidth(station);
  if (!width) return kDash;
  const bool is_narrow = station.stop.status == Status::Narrow || station.phone.status == Status::Narrow;
  const QString text = walkText(*width, unit);
  if (!is_narrow) return StationModel::tr("%1 or more").arg(text);
  const double measuring_m = 2 * floor::kMeasuringClearance_mm / 1000;
  return text == walkText(measuring_m, unit)
             ? QString::fromStdString(audit::lengthText(*width, measuring_m, unit))
             : text;
}

QString nameOr(const Nearest& nearest) {
  return nearest.name.empty() ? kDash : QString::fromStdString(audit::withCapital(nearest.name));
}

// Without the name, which stands in its own column.
QString changeText(const plan::StationChange& change, const std::string& name) {
  const QString before = QString::fromStdString(name) + ": ";
  return signOf(change.turn) +
         (change.text.startsWith(before) ? change.text.mid(before.size()) : change.text);
}

}  // namespace

void StationModel::setReport(std::shared_ptr<const audit::Report> report, const layout::Layout& layout,
                             const layout::DeviceKinds& kinds,
                             const std::vector<plan::StationChange>& changes) {
  beginResetModel();
  report_ = std::move(report);
  how_.clear();
  const auto add = [&](const std::string& id, const layout::Device& device) {
    const layout::DeviceKind* kind = kinds.find(device.kind);
    const std::string& own = device.instruction;
    how_[id] = QString::fromStdString(own.empty() && kind ? kind->instruction : own);
  };
  for (const auto& machine : layout.machines)
    for (const auto& device : machine.devices) add(machine.id + "/" + device.id, device);
  for (const auto& device : layout.devices) add(device.id, device);
  takeAcceptances();
  changes_.clear();
  for (const auto& change : changes) changes_.emplace(change.station, change);
  endResetModel();
}

void StationModel::takeAcceptances() {
  accepted_.clear();
  acceptances_.clear();
  if (!report_) return;
  const QDate today = QDate::currentDate();
  accepted_ = audit::acceptedStations(*report_, plan::dateOf(today));
  for (const audit::Finding& f : report_->findings)
    if (f.accepted)
      acceptances_[f.subject] << QString::fromStdString(f.text) + "\n" +
                                     letStandText(f, today, report_->unit);
}

int StationModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() || !report_ ? 0 : static_cast<int>(report_->stations.size());
}

int StationModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : kColumns;
}

QString StationModel::textAt(std::size_t row, int column) const {
  const StationReport& s = report_->stations[row];
  const layout::LengthUnit unit = report_->unit;
  const auto seconds = [](std::optional<double> value) {
    return value ? QString::number(*value, 'f', 1) + tr(" s") : kDash;
  };
  switch (column) {
    case Name:
      return QString::fromStdString(s.name);
    case State:
      return verdictWord(s.verdict, accepted_[row]);
    case Stop:
      return nameOr(s.stop);
    case How: {
      const auto how = how_.find(s.stop.device);
      return how == how_.end() || how->second.isEmpty() ? kDash : how->second;
    }
    case Walk:
      return walkWords(s.stop, unit);
    case Seconds:
      return s.stop.seconds && !s.stop.run_down_s ? seconds(s.stop.seconds) + " +" : seconds(s.stop.seconds);
    case Phone:
      return nameOr(s.phone);
    case PhoneWalk:
      return walkWords(s.phone, unit);
    case ClearWidth:
      return widthWords(s, unit);
    case Change: {
      const auto change = changes_.find(s.id);
      return change == changes_.end() ? QString() : changeText(change->second, s.name);
    }
  }
  return {};
}

QVariant StationModel::sortKey(std::size_t row, int column) const {
  const StationReport& s = report_->stations[row];
  switch (column) {
    case State:
      return -2 * static_cast<int>(s.verdict) + (accepted_[row] ? 1 : 0);
    case Walk:
      return s.stop.walk_m.value_or(kUnknown);
    case Seconds:
      return s.stop.seconds.value_or(kUnknown);
    case PhoneWalk:
      return s.phone.walk_m.value_or(kUnknown);
    case ClearWidth:
      return clearWidth(s).value_or(kUnknown);
    case Change: {
      const auto change = changes_.find(s.id);
      if (change == changes_.end()) return 3;
      return change->second.turn == plan::Turn::Worse ? 0 : change->second.turn == plan::Turn::Better ? 2 : 1;
    }
    default:
      return textAt(row, column);
  }
}

QVariant StationModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  const auto row = static_cast<std::size_t>(index.row());
  const StationReport& station = report_->stations[row];
  switch (role) {
    case Qt::DisplayRole:
      return textAt(row, index.column());
    case Qt::ToolTipRole:
      if (index.column() == Seconds && station.stop.seconds && !station.stop.run_down_s)
        return tr("Without the run-down, which is not recorded.");
      if (const auto found = acceptances_.find(station.id);
          index.column() == State && found != acceptances_.end())
        return found->second.join("\n\n");
      return textAt(row, index.column());
    case Qt::TextAlignmentRole: {
      const bool is_number = index.column() == Walk || index.column() == Seconds ||
                             index.column() == PhoneWalk || index.column() == ClearWidth;
      return static_cast<int>((is_number ? Qt::AlignTrailing : Qt::AlignLeading) | Qt::AlignVCenter);
    }
    case kSortRole:
      return sortKey(row, index.column());
    case kIdRole:
      return QString::fromStdString(station.id);
    case kMachineRole:
      return QString::fromStdString(station.machine);
    default:
      return {};
  }
}

QVariant StationModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal) return {};
  if (role == Qt::ToolTipRole && section == Seconds)
    return tr(
        "From the first sign of trouble to rest: reaction, walk and run-down. A plus: the run-down is "
        "not recorded.");
  if (role != Qt::DisplayRole) return {};
  switch (section) {
    case Name:
      return tr("Station");
    case State:
      return tr("State");
    case Stop:
      return tr("Nearest stop");
    case How:
      return tr("How it works");
    case Walk:
      return tr("Walk");
    case Seconds:
      return tr("Time");
    case Phone:
      return tr("Phone");
    case PhoneWalk:
      return tr("Walk to phone");
    case ClearWidth:
      return tr("Clear width");
    case Change:
      return tr("What changes");
  }
  return {};
}

}  // namespace stopwalk::panels
