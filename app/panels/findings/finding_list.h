#pragma once

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QSet>
#include <QTreeWidget>
#include <memory>

#include "app/panels/actions/verb.h"
#include "app/panels/findings/finding_groups.h"
#include "app/panels/moment_ago.h"
#include "app/panels/search_line.h"

namespace stopwalk::panels {

// All that the audit found, worst first unless another order is chosen, in groups: each a sentence.
class FindingList : public QWidget {
  Q_OBJECT

 public:
  explicit FindingList(QWidget* parent = nullptr);

  // `before`: the report of the layout as it is, while something else is supposed; what is new is marked.
  void setReport(std::shared_ptr<const audit::Report> report, std::shared_ptr<const layout::Layout> layout,
                 std::shared_ptr<const audit::Report> before = nullptr);
  // What is not asked for, or not as it should be, and so cannot be among the findings: "2 rules are off".
  // `supposed`: what is, in a sentence for what is copied.
  void setCircumstances(const QStringList& said, const QString& supposed);
  void setAge(Age age);
  const audit::Finding* current() const;
  // Nothing is looked at any more.
  void leave() { tree_->setCurrentItem(nullptr); }
  // Likewise of what accepts something that is found no more.
  const layout::AcceptedFinding* currentIdle() const;

  QTreeWidget* tree() const { return tree_; }
  SearchLine* search() const { return search_; }
  QComboBox* groupBy() const { return group_by_; }
  QComboBox* orderBy() const { return order_by_; }
  QCheckBox* shows(audit::Severity severity) const { return shows_[static_cast<int>(severity)]; }
  QString summary() const { return summary_->text(); }
  Verb& copyVerb() const { return *copy_; }
  Verb& exportVerb() const { return *export_; }
  // How they are listed: grouped, in which order, and which of them.
  void fillMenu(QMenu& menu, const std::function<void()>& before);
  // All that is shown, a line a finding under its group's; above it of what, by what and how much of it.
  QString asText() const;

 signals:
  // What is looked at, whenever it is another or there are others about it; none: nullptr.
  void looked(const stopwalk::audit::Finding* finding);
  // Instead of a finding: what accepts one that is there no more.
  void lookedIdle(const stopwalk::layout::AcceptedFinding& idle);
  // Somebody has come to it, or points at it again, rather than that it is found anew.
  void picked(const stopwalk::audit::Finding& finding);
  // It is to be brought into sight on the plan.
  void goTo(const QString& id);
  void exportWanted();

 private:
  QWidget* orderLine();
  QWidget* filterLine();
  QWidget* buttonLine();
  void build();
  void addHeading(const QString& title, const QString& text, const QList<QTreeWidgetItem*>& below);
  void openGroups();
  void addGroup(const FindingGroup& group, const std::vector<bool>& is_new);
  void addIdle();
  void choose(const QString& rule, const QString& subject, const QString& which);
  void showCounts();
  QString counted() const;
  QString untold() const;  // a sentence, or nothing
  QString howMany() const;
  void look();

  SearchLine* search_;
  QComboBox *group_by_, *order_by_;
  Verb *copy_, *export_;
  QCheckBox* shows_[3] = {};
  QWidget* filter_line_;
  QLabel* summary_;
  QTreeWidget* tree_;
  std::shared_ptr<const audit::Report> report_, before_;
  std::shared_ptr<const layout::Layout> layout_;
  std::vector<layout::AcceptedFinding> idle_;
  qsizetype shown_ = 0;   // findings
  QSet<QString> closed_;  // titles of groups
  QStringList said_;
  QString supposed_;
  Age age_ = Age::Current;
  bool building_ = false;
};

}  // namespace stopwalk::panels
