#pragma once

#include <QLabel>
#include <QSortFilterProxyModel>
#include <QTableView>

#include "app/edits/selection.h"
#include "app/panels/actions/verb.h"
#include "app/panels/moment_ago.h"
#include "app/panels/search_line.h"
#include "app/panels/stations/station_model.h"

namespace stopwalk::panels {

// All stations with their nearest stop and phone: sorted by any column, searched, copied, exported.
class StationTable : public QWidget {
  Q_OBJECT

 public:
  explicit StationTable(edits::Selection& selection, QWidget* parent = nullptr);

  void setReport(std::shared_ptr<const audit::Report> report, const layout::Layout& layout,
                 const layout::DeviceKinds& kinds, const std::vector<plan::StationChange>& changes);
  // What stands above what is copied: what is not asked for or not as it should be, "2 rules are off", and
  // what is supposed, in a sentence.
  void setCircumstances(const QStringList& said, const QString& supposed) {
    said_ = said;
    supposed_ = supposed;
  }
  void setAge(Age age);
  bool isMomentAgo() const { return age_ == Age::MomentAgo; }
  QTableView* view() const { return view_; }
  SearchLine* search() const { return search_; }
  Verb& copyVerb() const { return *copy_; }
  Verb& exportVerb() const { return *export_; }
  // The rows selected, or all that are shown where none is: columns parted by tabs under a line of their
  // names; above it what they hang on, below what they are worth.
  QString asText() const;

 signals:
  void goTo(const QString& id);
  void exportWanted();

 private:
  QWidget* topLine();
  void giveWidths();
  void showCount();
  void takeSelection();
  void showSelection();
  QModelIndex markSelected();
  void allow(bool is_audited);

  edits::Selection& selection_;
  StationModel* model_;
  QSortFilterProxyModel* sorted_;
  QTableView* view_;
  SearchLine* search_;
  QLabel* count_;
  QLabel* moment_ago_;
  Verb *copy_, *export_;
  QStringList said_;
  QString supposed_;
  Age age_ = Age::Current;
  bool has_width_[StationModel::kColumns] = {};  // from what stands in it
  bool showing_ = false;                         // the table's selection follows, and does not lead
};

}  // namespace stopwalk::panels
