// What can be done in the panel of what if, when it can, and the keys for it.
#include <QHBoxLayout>
#include <QPushButton>
#include <algorithm>

#include "app/panels/suppose/suppose_panel.h"

namespace stopwalk::panels {
namespace {

bool areAllIn(const std::vector<std::string>& ids, const std::vector<std::string>& of) {
  return !ids.empty() &&
         std::ranges::all_of(ids, [&](const auto& id) { return std::ranges::find(of, id) != of.end(); });
}

}  // namespace

void SupposePanel::makeVerbs() {
  is_out_of_order_ = new Verb(
      {tr("What is picked is out of &order"), tr("The stops and phones picked on the plan, all at once")},
      [this] { toggle(&planning::Suppositions::out_of_order, pickedDevices()); }, this);
  is_shut_ = new Verb(
      {tr("The door that is picked is s&hut"), tr("All doors picked on the plan, at once")},
      [this] { toggle(&planning::Suppositions::shut, pickedDoors()); }, this);
  put_in_the_way_ = new Verb(
      {tr("&Put something in the way"), tr("A block on the floor: drag it on the plan, or type its numbers"),
       tr("Put in the &way")},
      [this] { putInTheWay(); }, this);
  edit_ = new Verb(
      {tr("Its place and size by &numbers…"), tr("Of what stands in the way")},
      [this] { edit(blockMeant()); }, this);
  take_away_ = new Verb(
      {tr("Take it &away"), tr("What stands in the way"), tr("Ta&ke away")}, [this] { remove(); }, this);
  is_after_hours_ = new Verb(
      {tr("After ho&urs"), tr("The doors that are locked then are shut"), tr("After hou&rs")},
      [this] {
        planning::Suppositions next = suppositions_;
        next.hours = is_after_hours_->isChecked() ? floor::Hours::After : floor::Hours::Open;
        tell(std::move(next));
      },
      this);
  back_ = new Verb(
      {tr("&Back to how it is"), {}, tr("&Back to how it is")}, [this] { tell({}); }, this);
  for (Verb* tick : {is_out_of_order_, is_shut_, is_after_hours_}) tick->setCheckable(true);
  is_out_of_order_->setShortcut(QKeySequence(tr("Ctrl+Shift+O")));
  is_shut_->setShortcut(QKeySequence(tr("Ctrl+Shift+D")));
  put_in_the_way_->setShortcut(QKeySequence(tr("Ctrl+Shift+B")));
  is_after_hours_->setShortcut(QKeySequence(tr("Ctrl+Shift+L")));
  back_->setShortcut(QKeySequence(tr("Ctrl+Shift+K")));
}

QList<Verb*> SupposePanel::verbs() const {
  return {is_out_of_order_, is_shut_, put_in_the_way_, edit_, take_away_, is_after_hours_, back_};
}

QWidget* SupposePanel::buttons() {
  auto* line = new QWidget(this);
  auto* row = new QHBoxLayout(line);
  row->setContentsMargins(0, 0, 0, 0);
  put_ = new QPushButton(line);
  remove_ = new QPushButton(line);
  put_in_the_way_->showOn(*put_);
  take_away_->showOn(*remove_);
  row->addWidget(put_);
  row->addWidget(remove_);
  return line;
}

SupposePanel::Ids SupposePanel::picked(const std::function<bool(const edits::Thing&)>& is_meant) const {
  Ids ids;
  if (desk_.selection.empty()) return ids;
  const layout::Layout& layout = desk_.edited.layout();
  for (const edits::Thing& thing : edits::allThings(layout))
    if (std::string id = edits::idOf(layout, thing); is_meant(thing) && desk_.selection.contains(id))
      ids.push_back(std::move(id));
  return ids;
}

SupposePanel::Ids SupposePanel::pickedDoors() const {
  return picked([](const edits::Thing& thing) { return thing.kind == edits::ThingKind::Door; });
}

void SupposePanel::toggle(Ids planning::Suppositions::*which, const Ids& ids) {
  planning::Suppositions next = suppositions_;
  const bool are_so = areAllIn(ids, next.*which);
  for (const std::string& id : ids) {
    std::erase(next.*which, id);
    if (!are_so) (next.*which).push_back(id);
  }
  tell(std::move(next));
}

std::string SupposePanel::blockMeant() const {
  const auto& blocks = suppositions_.in_the_way;
  const QTreeWidgetItem* item = tree_->currentItem();
  const std::string id = item && !item->isHidden() ? currentId() : std::string();
  if (std::ranges::find(blocks, id, &layout::Fixture::id) != blocks.end()) return id;
  return blocks.size() == 1 ? blocks.front().id : std::string();
}

// Says of each why it cannot be done now, and whether what is picked is supposed so already.
void SupposePanel::allow() {
  const auto say = [](Verb* verb, bool can, const QString& else_why) {
    verb->setWhyNot(can ? QString() : else_why);
  };
  const Ids devices = pickedDevices(), doors = pickedDoors();
  say(is_out_of_order_, !devices.empty(), tr("Pick a stop or a phone on the plan first."));
  say(is_shut_, !doors.empty(), tr("Pick a door on the plan first."));
  is_out_of_order_->setChecked(areAllIn(devices, suppositions_.out_of_order));
  is_shut_->setChecked(areAllIn(doors, suppositions_.shut));
  const QString no_block = suppositions_.in_the_way.empty()
                               ? tr("Nothing is put in the way.")
                               : tr("Choose one of those in the way in the list first.");
  for (Verb* verb : {edit_, take_away_}) say(verb, !blockMeant().empty(), no_block);
  is_after_hours_->setChecked(suppositions_.hours == floor::Hours::After);
  say(back_, !suppositions_.empty(), tr("Nothing is supposed."));
}

}  // namespace stopwalk::panels
