#include "app/panels/things/thing_list.h"

#include <QContextMenuEvent>
#include <QMenu>
#include <QVBoxLayout>
#include <algorithm>

#include "app/edits/copy_things.h"
#include "app/edits/remove_things.h"
#include "app/panels/actions/own_key.h"
#include "app/panels/rows.h"
#include "app/panels/things/move_dialog.h"
#include "app/panels/things/rename_dialog.h"

namespace stopwalk::panels {

namespace {

constexpr int kIdRole = Qt::UserRole;
constexpr int kWait_ms = 50;  // a drag changes the layout at every frame
constexpr layout::Point kCopyBy_mm = {500, -500};

void say(QTreeWidgetItem& item, const ThingRow& row) {
  item.setText(0, row.brief.isEmpty() ? row.text : row.brief);
  item.setData(0, Qt::AccessibleTextRole, row.text);
}

std::string idOf(const QTreeWidgetItem& item) {
  return item.data(0, kIdRole).toString().toStdString();
}

}  // namespace

ThingList::ThingList(const Desk& desk, QWidget* parent) : QWidget(parent), desk_(desk) {
  tree_ = new QTreeWidget(this);
  tree_->setHeaderHidden(true);
  Rows::give(*tree_);
  tree_->setAccessibleName(tr("Things on the plan"));
  tree_->setWhatsThis(tr("Everything on the plan. Enter goes there on the plan; the menu key has the rest."));
  tree_->setSelectionMode(QAbstractItemView::ExtendedSelection);
  tree_->setContextMenuPolicy(Qt::CustomContextMenu);
  tree_->setEditTriggers(QAbstractItemView::NoEditTriggers);
  tree_->setExpandsOnDoubleClick(false);
  search_ = new SearchLine(tr("Search things by name or id"), tree_, this);
  none_ = new QLabel(this);
  none_->setWordWrap(true);
  moment_ago_ = new QLabel(this);
  moment_ago_->hide();
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(4, 4, 4, 4);
  column->addWidget(search_);
  column->addWidget(none_);
  column->addWidget(tree_, 1);
  column->addWidget(moment_ago_);  // below, so that nothing jumps
  setFocusProxy(search_);
  // Behind the search line, and so asked before it: keys that do something are not typed.
  addVerb(tr("Go to on plan"), {}, &ThingList::goToSelected);
  addVerb(tr("Rename..."), Qt::Key_F2, &ThingList::renameSelected);
  addVerb(tr("Move or turn by numbers..."), Qt::CTRL | Qt::Key_M, &ThingList::moveSelected);
  addVerb(tr("Duplicate"), Qt::CTRL | Qt::Key_D, &ThingList::duplicateSelected);
  addVerb(tr("Remove"), Qt::Key_Delete, &ThingList::removeSelected);
  later_.setSingleShot(true);
  later_.setInterval(kWait_ms);
  connect(&later_, &QTimer::timeout, this, &ThingList::refresh);
  connect(&desk_.edited, &edits::EditedLayout::changed, this, [this] {
    if (!later_.isActive()) later_.start();
  });
  connect(&desk_.selection, &edits::Selection::changed, this, &ThingList::showSelection);
  connect(search_, &QLineEdit::textChanged, this, &ThingList::filter);
  connect(search_, &SearchLine::chosen, this, &ThingList::goToSelected);
  connect(tree_, &QTreeWidget::itemSelectionChanged, this, &ThingList::takeSelection);
  connect(tree_, &QTreeWidget::itemDoubleClicked, this, &ThingList::goToSelected);
  connect(tree_, &QTreeWidget::customContextMenuRequested, this, &ThingList::openMenu);
  refresh();
}

void ThingList::setReport(std::shared_ptr<const audit::Report> report) {
  report_ = std::move(report);
  if (!later_.isActive()) later_.start();
}

void ThingList::setAge(Age age) {
  if (isPale(age) != isPale(age_)) showPale(*tree_, isPale(age));
  age_ = age;
  moment_ago_->setText(isMomentAgo() ? tr("Of a moment ago") : QString());
  moment_ago_->setVisible(isMomentAgo());
}

void ThingList::addVerb(const QString& text, const QKeySequence& key, void (ThingList::*slot)()) {
  auto* verb = new QAction(text, this);
  // Only told by the menu: the window may have the same key for the plan.
  verb->setShortcut(key);
  verb->setShortcutContext(Qt::WidgetShortcut);
  verb->setShortcutVisibleInContextMenu(true);
  connect(verb, &QAction::triggered, this, slot);
  if (!key.isEmpty()) giveOwnKey(*tree_, key, [verb] { verb->trigger(); });
  verbs_ << verb;
}

void ThingList::refresh() {
  later_.stop();
  auto rows = thingRows(desk_.edited.layout(), desk_.catalogue.kinds, report_.get());
  if (rows == rows_ && !rows.empty()) return;
  const auto same_place = [](const ThingRow& a, const ThingRow& b) {
    return a.id == b.id && a.parent == b.parent;
  };
  const bool same = std::ranges::equal(rows, rows_, same_place);
  rows_.swap(rows);
  if (same) {
    for (std::size_t i = 0; i < rows_.size(); ++i)
      if (rows_[i] != rows[i]) say(*items_[rows_[i].id], rows_[i]);
  } else {
    build();
  }
  filter();
  showSelection();
}

void ThingList::build() {
  std::vector<std::string> closed;
  for (const auto& [id, item] : items_)
    if (item->childCount() > 0 && !item->isExpanded()) closed.push_back(id);
  showing_ = true;
  tree_->clear();
  items_.clear();
  is_filtered_ = false;
  QList<QTreeWidgetItem*> top;  // all at once: a tree takes its time for each line that comes to it
  for (const ThingRow& row : rows_) {
    auto* item = row.parent.empty() ? new QTreeWidgetItem : new QTreeWidgetItem(items_[row.parent]);
    if (row.parent.empty()) top << item;
    item->setData(0, kIdRole, QString::fromStdString(row.id));
    say(*item, row);
    items_[row.id] = item;
  }
  tree_->addTopLevelItems(top);
  tree_->expandAll();
  for (const std::string& id : closed)
    if (QTreeWidgetItem* item = itemOf(id)) item->setExpanded(false);
  showing_ = false;
}

void ThingList::filter() {
  const QString search = search_->text();
  bool any = search.isEmpty() && !rows_.empty();
  if (any && !is_filtered_) return none_->hide();
  is_filtered_ = !search.isEmpty();
  // From the end, where the children stand: a parent is shown with any of them.
  std::map<std::string, bool> holds;
  for (auto row = rows_.rbegin(); row != rows_.rend(); ++row) {
    const bool shown = holds[row->id] || matches(row->text + " " + QString::fromStdString(row->id), search);
    if (shown && !row->parent.empty()) holds[row->parent] = true;
    items_[row->id]->setHidden(!shown);
    if (shown && !search.isEmpty()) items_[row->id]->setExpanded(true);
    any |= shown;
  }
  none_->setText(rows_.empty()
                     ? tr("Nothing is drawn yet. Choose a room in the gallery, and drag it on the plan.")
                     : tr("Nothing on the plan is called that."));
  none_->setVisible(!any);
}

void ThingList::takeSelection() {
  if (showing_) return;
  std::vector<std::string> now;
  for (const QTreeWidgetItem* item : tree_->selectedItems())
    if (edits::findThing(desk_.edited.layout(), idOf(*item))) now.push_back(idOf(*item));
  // In the order of selecting.
  std::vector<std::string> ids;
  for (const std::string& id : desk_.selection.ids())
    if (std::erase(now, id) > 0) ids.push_back(id);
  ids.insert(ids.end(), now.begin(), now.end());
  desk_.selection.set(std::move(ids));
}

void ThingList::showSelection() {
  if (showing_) return;
  showing_ = true;
  const QTreeWidgetItem* last = nullptr;
  for (QTreeWidgetItem* item : tree_->selectedItems())
    if (!desk_.selection.contains(idOf(*item))) item->setSelected(false);
  for (const std::string& id : desk_.selection.ids())
    if (QTreeWidgetItem* item = itemOf(id); item && !item->isSelected()) item->setSelected(true);
  if (!desk_.selection.empty()) last = itemOf(desk_.selection.ids().back());
  if (last) {
    auto* item = const_cast<QTreeWidgetItem*>(last);
    if (tree_->currentItem() != item)
      tree_->selectionModel()->setCurrentIndex(tree_->indexFromItem(item), QItemSelectionModel::NoUpdate);
    tree_->scrollToItem(item);
  }
  showing_ = false;
}

QTreeWidgetItem* ThingList::itemOf(const std::string& id) const {
  const auto found = items_.find(id);
  return found == items_.end() ? nullptr : found->second;
}

void ThingList::openMenu(const QPoint& at) {
  if (desk_.selection.empty()) return;
  QMenu menu(this);
  menu.addActions(verbs_);
  menu.exec(tree_->viewport()->mapToGlobal(at));
}

void ThingList::removeSelected() {
  const auto& ids = desk_.selection.ids();
  if (!desk_.edited.apply(edits::removeThings(desk_.edited.layout(), ids, desk_.catalogue.kinds))) return;
  desk_.selection.clear();
  refresh();
}

void ThingList::duplicateSelected() {
  auto copied = edits::duplicateThings(desk_.edited.layout(), desk_.selection.ids(), kCopyBy_mm);
  if (!desk_.edited.apply(std::move(copied.edit))) return;
  refresh();
  desk_.selection.set(copied.ids);
}

void ThingList::renameSelected() {
  if (desk_.selection.empty()) return;
  RenameDialog dialog(desk_, desk_.selection.ids().back(), this);
  dialog.exec();
  refresh();
}

void ThingList::moveSelected() {
  if (desk_.selection.empty()) return;
  MoveDialog dialog(desk_, this);
  dialog.exec();
  refresh();
}

void ThingList::goToSelected() {
  if (const QTreeWidgetItem* item = tree_->currentItem()) emit goTo(QString::fromStdString(idOf(*item)));
}

}  // namespace stopwalk::panels
