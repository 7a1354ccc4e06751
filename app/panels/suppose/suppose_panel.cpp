#include "app/panels/suppose/suppose_panel.h"

#include <QCoreApplication>
#include <QScrollBar>
#include <QVBoxLayout>
#include <algorithm>
#include <unordered_set>
#include <utility>

#include "app/edits/things.h"
#include "app/panels/rows.h"
#include "app/panels/suppose/block_dialog.h"
#include "app/panels/things/station_words.h"
#include "core/audit/wording.h"
#include "core/layout/names.h"

namespace stopwalk::panels {
namespace {

constexpr int kIdRole = Qt::UserRole;
constexpr int kWait_ms = 50;                           // a drag changes the layout at every frame
constexpr layout::Rectangle kPallet_mm = {1200, 800};  // common practice: about what a delivery stands on

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Suppose)
};

// What people call it: "Foot bar of Engine lathe 1"; what hangs on a wall, and a door, by its id as well.
class Called {
 public:
  Called(const layout::Layout& layout, const layout::DeviceKinds& kinds)
      : layout_(layout), kinds_(kinds), machines_(layout.machines), phones_(layout.phones) {}

  QString of(const edits::Thing& thing) const {
    using enum edits::ThingKind;
    if (thing.kind == MachineDevice) return ofDevice(layout_.machines[thing.index], thing.part);
    if (thing.kind == Phone) return QString::fromStdString(phones_.of(layout_.phones[thing.index]));
    const QString id = QString::fromStdString(edits::idOf(layout_, thing));
    if (thing.kind == WallDevice) return Words::tr("%1 (%2)").arg(label(layout_.devices[thing.index]), id);
    if (thing.kind == Door) return Words::tr("Door %1").arg(id);
    return QString::fromStdString(edits::nameOf(layout_, thing));
  }
  QString of(const std::string& id) const {
    const auto thing = edits::findThing(layout_, id);
    return thing ? of(*thing) : QString::fromStdString(id);
  }

 private:
  QString label(const layout::Device& device) const {
    const layout::DeviceKind* kind = kinds_.find(device.kind);
    return QString::fromStdString(kind ? audit::withCapital(kind->label) : device.kind);
  }
  QString ofDevice(const layout::Machine& machine, std::size_t part) const {
    const layout::Device& device = machine.devices[part];
    const QString name =
        Words::tr("%1 of %2").arg(label(device), QString::fromStdString(machines_.of(machine)));
    const bool alone = std::ranges::count(machine.devices, device.kind, &layout::Device::kind) == 1;
    return alone ? name : Words::tr("%1 (%2)").arg(name, QString::fromStdString(device.id));
  }

  const layout::Layout& layout_;
  const layout::DeviceKinds& kinds_;
  layout::NamesApart machines_, phones_;
};

// What people count on: a stop that fails, or a phone. A guarded start stops nothing.
bool mayFail(const layout::Layout& layout, const layout::DeviceKinds& kinds, const edits::Thing& thing) {
  using enum edits::ThingKind;
  if (thing.kind == Phone) return true;
  if (thing.kind != MachineDevice && thing.kind != WallDevice) return false;
  const layout::Device& device = thing.kind == WallDevice ? layout.devices[thing.index]
                                                          : layout.machines[thing.index].devices[thing.part];
  const layout::DeviceKind* kind = kinds.find(device.kind);
  return kind && kind->counts_as_stop;
}

QString blockText(const layout::Fixture& block, layout::LengthUnit unit) {
  const auto& size = std::get<layout::Rectangle>(block.footprint);
  const auto text = [&](double mm) { return walkText(mm / 1000, unit); };
  return Words::tr("%1 by %2 at %3, %4")
      .arg(text(size.width), text(size.depth), text(block.at.x), text(block.at.y));
}

void setTicked(std::vector<std::string>& ids, const std::string& id, bool ticked) {
  std::erase(ids, id);
  if (ticked) ids.push_back(id);
}

}  // namespace

SupposePanel::SupposePanel(const Desk& desk, QWidget* parent) : QWidget(parent), desk_(desk) {
  auto* says =
      new QLabel(tr("Tick what might be otherwise, and see what it changes for whom. Nothing of it is "
                    "saved."),
                 this);
  says->setWordWrap(true);
  makeVerbs();
  after_hours_ = new QCheckBox(this);
  is_after_hours_->showOn(*after_hours_);
  tree_ = new QTreeWidget(this);
  tree_->setHeaderHidden(true);
  tree_->setAccessibleName(tr("What might be otherwise"));
  tree_->setWhatsThis(
      tr("Space ticks: a device out of order, a door shut. Enter opens the numbers of "
         "something in the way."));
  tree_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  tree_->setTextElideMode(Qt::ElideNone);
  Rows::give(*tree_);
  search_ = new SearchLine(tr("Search devices, phones and doors"), tree_, this);
  summary_ = new QLabel(this);
  summary_->setWordWrap(true);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(4, 4, 4, 4);
  for (QWidget* widget :
       {static_cast<QWidget*>(says), static_cast<QWidget*>(after_hours_), static_cast<QWidget*>(search_)})
    column->addWidget(widget);
  column->addWidget(tree_, 1);
  column->addWidget(buttons());
  column->addWidget(summary_);
  clear_ = new QPushButton(this);
  back_->showOn(*clear_);
  column->addWidget(clear_);
  connect(tree_, &QTreeWidget::itemChanged, this, &SupposePanel::take);
  connect(tree_, &QTreeWidget::itemActivated, this,
          [this](QTreeWidgetItem* item) { edit(item->data(0, kIdRole).toString().toStdString()); });
  connect(search_, &QLineEdit::textChanged, this, &SupposePanel::filter);
  connect(tree_, &QTreeWidget::currentItemChanged, this, &SupposePanel::allow);
  connect(&desk_.selection, &edits::Selection::changed, this, &SupposePanel::allow);
  later_.setSingleShot(true);
  later_.setInterval(kWait_ms);
  connect(&later_, &QTimer::timeout, this, &SupposePanel::build);
  connect(&desk_.edited, &edits::EditedLayout::changed, this, [this] {
    is_behind_ = true;
    if (!later_.isActive()) later_.start();
  });
  build();
}

SupposePanel::Ids SupposePanel::pickedDevices() const {
  return picked([this](const edits::Thing& thing) {
    return mayFail(desk_.edited.layout(), desk_.catalogue.kinds, thing);
  });
}

// As the layout is now, however lately it was changed.
void SupposePanel::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  if (is_behind_) build();
}

void SupposePanel::set(planning::Suppositions suppositions) {
  if (suppositions == suppositions_) return;
  suppositions_ = std::move(suppositions);
  showSupposed();
}

void SupposePanel::tell(planning::Suppositions suppositions) {
  suppositions_ = std::move(suppositions);
  if (!building_) showSupposed();
  emit changed(suppositions_);
}

// Anew only where something of what is listed came, went or is called otherwise.
void SupposePanel::build() {
  later_.stop();
  is_behind_ = false;
  const layout::Layout& layout = desk_.edited.layout();
  const layout::DeviceKinds& kinds = desk_.catalogue.kinds;
  const Called called(layout, kinds);
  Lines devices, doors;
  for (const edits::Thing& thing : edits::allThings(layout)) {
    const bool is_door = thing.kind == edits::ThingKind::Door;
    if (!is_door && !mayFail(layout, kinds, thing)) continue;
    (is_door ? doors : devices).emplace_back(edits::idOf(layout, thing), called.of(thing));
  }
  if (devices != devices_ || doors != doors_) {
    devices_ = std::move(devices), doors_ = std::move(doors);
    rebuild();
  }
  showSupposed();
}

void SupposePanel::rebuild() {
  const std::string current = currentId();
  const int scrolled = tree_->verticalScrollBar()->value();
  building_ = true;
  tree_->clear();
  blocks_.clear();
  in_the_way_ = nullptr;
  out_of_order_ = addHeading(tr("Out of order"), devices_);
  shut_ = addHeading(tr("Shut"), doors_);
  showBlocks();
  if (QTreeWidgetItem* item = itemOf(current)) tree_->setCurrentItem(item);
  tree_->verticalScrollBar()->setValue(scrolled);
  building_ = false;
  filter();
}

// With all its lines at once, which a tree takes faster; none: nullptr.
QTreeWidgetItem* SupposePanel::addHeading(const QString& title, const Lines& lines) {
  if (lines.empty()) return nullptr;
  auto* heading = new QTreeWidgetItem(QStringList{title});
  QList<QTreeWidgetItem*> items;
  for (const auto& [id, name] : lines) {
    auto* item = new QTreeWidgetItem(QStringList{name});
    item->setCheckState(0, Qt::Unchecked);
    item->setData(0, kIdRole, QString::fromStdString(id));
    item->setToolTip(0, QStringLiteral("%1\n%2").arg(name, QString::fromStdString(id)));
    items << item;
  }
  heading->addChildren(items);
  tree_->addTopLevelItem(heading);
  heading->setExpanded(true);
  return heading;
}

// In the list as it stands: while a block is dragged this follows each step.
void SupposePanel::showSupposed() {
  building_ = true;
  const auto tick = [](QTreeWidgetItem* heading, const std::vector<std::string>& ids) {
    const std::unordered_set<std::string> ticked(ids.begin(), ids.end());
    for (int i = 0; heading && i < heading->childCount(); ++i) {
      QTreeWidgetItem* item = heading->child(i);
      const bool is_ticked = ticked.contains(item->data(0, kIdRole).toString().toStdString());
      item->setCheckState(0, is_ticked ? Qt::Checked : Qt::Unchecked);
    }
  };
  tick(out_of_order_, suppositions_.out_of_order);
  tick(shut_, suppositions_.shut);
  showBlocks();
  building_ = false;
  if (!search_->text().isEmpty()) filter();
  allow();
}

void SupposePanel::showBlocks() {
  const layout::LengthUnit unit = desk_.edited.layout().unit;
  std::vector<std::string> blocks;
  for (const layout::Fixture& block : suppositions_.in_the_way) blocks.push_back(block.id);
  if (blocks != blocks_) {
    const std::string current = currentId();
    blocks_ = std::move(blocks);
    delete std::exchange(in_the_way_, nullptr);
    if (!blocks_.empty()) {
      in_the_way_ = new QTreeWidgetItem(QStringList{tr("In the way")});
      for (const std::string& id : blocks_)
        (new QTreeWidgetItem(in_the_way_))->setData(0, kIdRole, QString::fromStdString(id));
      tree_->insertTopLevelItem(0, in_the_way_);
      in_the_way_->setExpanded(true);
    }
    if (QTreeWidgetItem* item = itemOf(current)) tree_->setCurrentItem(item);
  }
  for (std::size_t i = 0; i < blocks_.size(); ++i)
    in_the_way_->child(static_cast<int>(i))->setText(0, blockText(suppositions_.in_the_way[i], unit));
}

void SupposePanel::filter() {
  for (int g = 0; g < tree_->topLevelItemCount(); ++g) {
    bool any = false;
    QTreeWidgetItem* heading = tree_->topLevelItem(g);
    for (int i = 0; i < heading->childCount(); ++i) {
      QTreeWidgetItem* item = heading->child(i);
      const bool shown = matches(item->text(0) + " " + item->data(0, kIdRole).toString(), search_->text());
      item->setHidden(!shown);
      any |= shown;
    }
    heading->setHidden(!any);
  }
  if (!building_) allow();
}

void SupposePanel::choose(const std::string& id) {
  QTreeWidgetItem* item = itemOf(id);
  if (item && item->isHidden()) search_->clear();
  if (item) tree_->setCurrentItem(item);
}

void SupposePanel::take(QTreeWidgetItem* item) {
  if (building_ || !item->parent()) return;
  planning::Suppositions next = suppositions_;
  const std::string id = item->data(0, kIdRole).toString().toStdString();
  const bool ticked = item->checkState(0) == Qt::Checked;
  if (item->parent() == shut_)
    setTicked(next.shut, id, ticked);
  else
    setTicked(next.out_of_order, id, ticked);
  // The tree is still at work on this item: it is not built anew under its hands.
  suppositions_ = std::move(next);
  allow();
  emit changed(suppositions_);
}

void SupposePanel::putInTheWay() {
  planning::Suppositions next = suppositions_;
  layout::Fixture block;
  int number = 1;
  const auto taken = [&](const std::string& id) {
    return edits::findThing(desk_.edited.layout(), id) ||
           std::ranges::find(next.in_the_way, id, &layout::Fixture::id) != next.in_the_way.end();
  };
  while (taken(block.id = "in-the-way-" + std::to_string(number))) ++number;
  block.at = middle_ ? middle_() : geometry::Point{};
  block.footprint = kPallet_mm;
  next.in_the_way.push_back(block);
  tell(std::move(next));
  if (QTreeWidgetItem* item = itemOf(block.id)) tree_->setCurrentItem(item);
}

void SupposePanel::edit(const std::string& block) {
  const auto found = std::ranges::find(suppositions_.in_the_way, block, &layout::Fixture::id);
  if (found == suppositions_.in_the_way.end()) return;
  const auto index = found - suppositions_.in_the_way.begin();
  BlockDialog dialog(desk_, *found, this);
  if (dialog.exec() != QDialog::Accepted) return;
  planning::Suppositions next = suppositions_;
  next.in_the_way[static_cast<std::size_t>(index)] = dialog.block();
  tell(std::move(next));
}

void SupposePanel::remove() {
  planning::Suppositions next = suppositions_;
  std::erase_if(next.in_the_way, [id = blockMeant()](const layout::Fixture& f) { return f.id == id; });
  tell(std::move(next));
}

std::string SupposePanel::currentId() const {
  const QTreeWidgetItem* item = tree_->currentItem();
  return item ? item->data(0, kIdRole).toString().toStdString() : std::string();
}

QTreeWidgetItem* SupposePanel::itemOf(const std::string& id) const {
  if (id.empty()) return nullptr;
  for (int g = 0; g < tree_->topLevelItemCount(); ++g)
    for (int i = 0; i < tree_->topLevelItem(g)->childCount(); ++i)
      if (tree_->topLevelItem(g)->child(i)->data(0, kIdRole).toString().toStdString() == id)
        return tree_->topLevelItem(g)->child(i);
  return nullptr;
}

QString sentenceOf(const planning::Suppositions& suppositions, const layout::Layout& layout,
                   const layout::DeviceKinds& kinds, Several several) {
  if (suppositions.empty()) return {};
  const Called called(layout, kinds);
  QStringList parts;
  const bool each = several == Several::Named;
  const auto add = [&](const std::vector<std::string>& ids, const QString& one, const QString& many) {
    if (ids.size() > 1 && !each) parts << many.arg(ids.size());
    if (ids.size() == 1 || each)
      for (const std::string& id : ids) parts << one.arg(called.of(id));
  };
  add(suppositions.out_of_order, Words::tr("%1 is out of order"), Words::tr("%1 devices are out of order"));
  add(suppositions.shut, Words::tr("%1 is shut"), Words::tr("%1 doors are shut"));
  const auto blocks = suppositions.in_the_way.size();
  if (each)
    for (const layout::Fixture& block : suppositions.in_the_way)
      parts << Words::tr("in the way: %1").arg(blockText(block, layout.unit));
  else if (blocks == 1)
    parts << Words::tr("something stands in the way");
  else if (blocks > 1)
    parts << Words::tr("%1 things stand in the way").arg(blocks);
  if (suppositions.hours == floor::Hours::After) parts << Words::tr("it is after hours");
  return parts.join(Words::tr(", "));
}

}  // namespace stopwalk::panels
