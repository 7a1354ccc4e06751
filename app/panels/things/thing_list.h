#pragma once

#include <QAction>
#include <QLabel>
#include <QTimer>
#include <QTreeWidget>
#include <map>
#include <memory>

#include "app/panels/details/desk.h"
#include "app/panels/moment_ago.h"
#include "app/panels/search_line.h"
#include "app/panels/things/thing_rows.h"

namespace stopwalk::panels {

// Everything on the plan as a list that does all that the plan does, for the keyboard and the screen reader.
class ThingList : public QWidget {
  Q_OBJECT

 public:
  explicit ThingList(const Desk& desk, QWidget* parent = nullptr);

  // How the stations fare; none: it is not known.
  void setReport(std::shared_ptr<const audit::Report> report);
  // Of how the stations fare.
  void setAge(Age age);
  bool isMomentAgo() const { return age_ == Age::MomentAgo; }
  // Shows the layout now, instead of shortly after.
  void refresh();

  QTreeWidget* tree() const { return tree_; }
  SearchLine* search() const { return search_; }
  const QList<QAction*>& verbs() const { return verbs_; }

 public slots:
  void removeSelected();
  void duplicateSelected();
  void renameSelected();
  void moveSelected();
  void goToSelected();

 signals:
  // The thing is to be brought into view on the plan.
  void goTo(const QString& id);

 private:
  void addVerb(const QString& text, const QKeySequence& key, void (ThingList::*slot)());
  void build();
  void filter();
  void takeSelection();
  void showSelection();
  void openMenu(const QPoint& at);
  QTreeWidgetItem* itemOf(const std::string& id) const;

  Desk desk_;
  QTreeWidget* tree_;
  SearchLine* search_;
  QLabel *none_, *moment_ago_;
  QTimer later_;
  QList<QAction*> verbs_;
  std::shared_ptr<const audit::Report> report_;
  std::vector<ThingRow> rows_;
  std::map<std::string, QTreeWidgetItem*> items_;
  Age age_ = Age::Current;
  bool is_filtered_ = false;  // some lines may be hidden
  bool showing_ = false;      // the tree's selection follows, and does not lead
};

}  // namespace stopwalk::panels
