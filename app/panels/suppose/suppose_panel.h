#pragma once

#include <QCheckBox>
#include <QLabel>
#include <QPushButton>
#include <QTimer>
#include <QTreeWidget>
#include <functional>

#include "app/edits/things.h"
#include "app/panels/actions/verb.h"
#include "app/panels/details/desk.h"
#include "app/panels/search_line.h"
#include "core/planning/suppositions.h"

namespace stopwalk::panels {

// What if: devices out of order, doors shut, something in the way, after hours. Nothing of it is saved.
class SupposePanel : public QWidget {
  Q_OBJECT

 public:
  explicit SupposePanel(const Desk& desk, QWidget* parent = nullptr);

  const planning::Suppositions& suppositions() const { return suppositions_; }
  void set(planning::Suppositions suppositions);
  // What was taken hold of on the plan is what is meant in the list.
  void choose(const std::string& id);
  // Where something goes that is put in the way: into the middle of what is seen.
  void setMiddle(std::function<geometry::Point()> middle) { middle_ = std::move(middle); }
  // What it comes to, in a sentence: "2 stations are worse off".
  void setSummary(const QString& text) { summary_->setText(text); }
  QLabel& summaryLine() const { return *summary_; }
  QString summary() const { return summary_->text(); }

  QTreeWidget* tree() const { return tree_; }
  SearchLine* search() const { return search_; }
  QCheckBox* afterHours() const { return after_hours_; }
  QPushButton* put() const { return put_; }
  QPushButton* clear() const { return clear_; }
  QTreeWidgetItem* itemOf(const std::string& id) const;
  // All that can be done here, in the order of a menu.
  QList<Verb*> verbs() const;

 signals:
  void changed(const stopwalk::planning::Suppositions& suppositions);

 protected:
  void showEvent(QShowEvent* event) override;

 private:
  using Lines = std::vector<std::pair<std::string, QString>>;  // ids and names

  void makeVerbs();
  QWidget* buttons();
  void build();
  void rebuild();
  QTreeWidgetItem* addHeading(const QString& title, const Lines& lines);
  void showSupposed();
  void showBlocks();
  void filter();
  void take(QTreeWidgetItem* item);
  using Ids = std::vector<std::string>;
  // What is picked on the plan, of that sort.
  Ids picked(const std::function<bool(const edits::Thing&)>& is_meant) const;
  Ids pickedDevices() const;
  Ids pickedDoors() const;
  // All of them become so; where all are so already, none.
  void toggle(Ids planning::Suppositions::*which, const Ids& ids);
  void allow();
  std::string currentId() const;
  // The one of the list, or the only one; none: empty.
  std::string blockMeant() const;
  void putInTheWay();
  void edit(const std::string& block);
  void remove();
  void tell(planning::Suppositions suppositions);

  Desk desk_;
  planning::Suppositions suppositions_;
  std::function<geometry::Point()> middle_;
  QCheckBox* after_hours_;
  SearchLine* search_;
  QTreeWidget* tree_;
  QPushButton *put_, *remove_, *clear_;
  Verb *is_out_of_order_, *is_shut_, *put_in_the_way_, *edit_, *take_away_, *is_after_hours_, *back_;
  QLabel* summary_;
  QTimer later_;
  bool is_behind_ = false;  // the layout was changed since the list was built
  bool building_ = false;
  Lines devices_, doors_;            // that are listed
  std::vector<std::string> blocks_;  // ids of those listed
  // Headings; none where nothing stands under it.
  QTreeWidgetItem *in_the_way_ = nullptr, *out_of_order_ = nullptr, *shut_ = nullptr;
};

// What is supposed, in a sentence; empty where nothing is. Several of a sort by their number, or each by its
// name.
enum class Several { Counted, Named };
QString sentenceOf(const planning::Suppositions& suppositions, const layout::Layout& layout,
                   const layout::DeviceKinds& kinds, Several several = Several::Counted);

}  // namespace stopwalk::panels
