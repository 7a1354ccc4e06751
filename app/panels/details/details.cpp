#include "app/panels/details/details.h"

#include <QStyle>
#include <utility>

#include "app/edits/step_names.h"
#include "app/panels/details/sections.h"
#include "app/panels/sentence_label.h"

namespace stopwalk::panels {

using edits::ThingKind;

namespace {

constexpr std::size_t kMostProblems = 40;  // more are not read; the list of problems has them all
constexpr std::size_t kFew = 8;            // selected: each is looked up by itself

}  // namespace

Details::Details(const Desk& desk, QWidget* parent) : QScrollArea(parent), desk_(desk) {
  setWidgetResizable(true);
  setFrameShape(QFrame::NoFrame);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setFocusPolicy(Qt::NoFocus);
  setAccessibleName(tr("Details"));
  auto* all = new QWidget(this);
  column_ = new QVBoxLayout(all);
  column_->setContentsMargins(8, 8, 8, 8);
  column_->setSpacing(8);
  title_ = new QLabel(all);
  title_->setWordWrap(true);
  title_->setTextFormat(Qt::PlainText);
  problems_box_ = new QWidget(all);
  (new QVBoxLayout(problems_box_))->setContentsMargins(0, 0, 0, 0);
  column_->addWidget(title_);
  column_->addWidget(problems_box_);
  column_->addStretch(1);
  setWidget(all);
  connect(&desk_.edited, &edits::EditedLayout::changed, this, &Details::follow);
  connect(&desk_.edited, &edits::EditedLayout::readOnlyChanged, this, &Details::rebuild);
  connect(&desk_.selection, &edits::Selection::changed, this, [this] {
    applyPending();
    follow();
  });
  rebuild();
}

void Details::setProblems(std::vector<Problem> problems) {
  problems_ = std::move(problems);
  showProblems();
}

// What was entered is current at once; the problems that were found are not.
void Details::setAge(Age age) {
  if (age == age_) return;
  const Age was = std::exchange(age_, age);
  if (was == Age::BeingComputed || age == Age::BeingComputed)
    showPale(*problems_box_, age == Age::BeingComputed);
  if (was == Age::MomentAgo || age == Age::MomentAgo) showPale(*widget(), age == Age::MomentAgo);
  showTitle();
}

void Details::applyPending() {
  if (section_) section_->applyPending();
}

void Details::follow() {
  if (!isCurrent()) return scheduleRebuild();
  section_->refresh();
  showTitle();
  showProblems();  // found while something else was picked for a moment
}

// Whether its fields are those of what is selected: another file may have the same ids for something else.
bool Details::isCurrent() const {
  return section_ && section_->ids() == present() && section_kinds_ == kinds();
}

// Not at once: a field of the section may be at work.
void Details::scheduleRebuild() {
  if (rebuild_waits_) return;
  rebuild_waits_ = true;
  QMetaObject::invokeMethod(
      this,
      [this] {
        rebuild_waits_ = false;
        isCurrent() ? follow() : rebuild();
      },
      Qt::QueuedConnection);
}

void Details::rebuild() {
  if (section_) {
    section_->hide();
    section_->deleteLater();
  }
  section_ = makeSection();
  section_kinds_ = kinds();
  column_->insertWidget(2, section_);
  section_->show();
  section_->refresh();
  showTitle();
  shown_problems_.clear();
  showProblems();
}

// Once through the layout where much is selected.
std::unordered_map<std::string, ThingKind> Details::kindsOfSelected() const {
  std::unordered_map<std::string, ThingKind> kinds;
  const layout::Layout& layout = desk_.edited.layout();
  if (desk_.selection.ids().size() <= kFew) {
    for (const std::string& id : desk_.selection.ids())
      if (const auto thing = edits::findThing(layout, id)) kinds.emplace(id, thing->kind);
    return kinds;
  }
  for (const edits::Thing& thing : edits::allThings(layout))
    if (std::string id = edits::idOf(layout, thing); desk_.selection.contains(id))
      kinds.emplace(std::move(id), thing.kind);
  return kinds;
}

std::vector<std::string> Details::present() const {
  const auto kinds = kindsOfSelected();
  std::vector<std::string> ids;
  for (const std::string& id : desk_.selection.ids())
    if (kinds.contains(id)) ids.push_back(id);
  return ids;
}

std::set<ThingKind> Details::kinds() const {
  std::set<ThingKind> kinds;
  for (const auto& [id, kind] : kindsOfSelected()) kinds.insert(kind);
  return kinds;
}

Section* Details::makeSection() {
  const auto kinds = this->kinds();
  if (kinds.empty()) return makeWorkshopSection(desk_, widget());
  if (kinds.size() > 1) return makeMixedSection(desk_, present(), widget());
  switch (*kinds.begin()) {
    case ThingKind::Underlay:
      return makeUnderlaySection(desk_, present(), widget());
    case ThingKind::Room:
      return makeRoomSection(desk_, present(), widget());
    case ThingKind::Door:
      return makeDoorSection(desk_, present(), widget());
    case ThingKind::Fixture:
      return makeFixtureSection(desk_, present(), widget());
    case ThingKind::Machine:
      return makeMachineSection(desk_, present(), widget());
    case ThingKind::Station:
      return makeStationSection(desk_, present(), widget());
    case ThingKind::MachineDevice:
      return makeDeviceSection(desk_, present(), true, widget());
    case ThingKind::WallDevice:
      return makeDeviceSection(desk_, present(), false, widget());
    case ThingKind::Phone:
      return makePhoneSection(desk_, present(), widget());
    case ThingKind::Note:
      return makeNoteSection(desk_, present(), widget());
    case ThingKind::TapeCheck:
      return makeTapeCheckSection(desk_, present(), widget());
  }
  return makeWorkshopSection(desk_, widget());
}

void Details::showTitle() {
  const auto ids = present();
  QString title = tr("The workshop");
  if (ids.size() == 1) {
    const auto& layout = desk_.edited.layout();
    title = edits::called(layout, *edits::findThing(layout, ids.front()));
    title[0] = title[0].toUpper();
  } else if (ids.size() > 1) {
    title = tr("%1 things").arg(ids.size());
  }
  title_->setText(age_ == Age::MomentAgo ? tr("%1, a moment ago").arg(title) : title);
  QFont bold = font();
  bold.setBold(true);
  bold.setPointSizeF(bold.pointSizeF() * 1.2);
  title_->setFont(bold);
}

// Of what is selected, or what is on it; the first of them, and how many more there are.
void Details::showProblems() {
  const auto present = kindsOfSelected();
  const auto isAboutSelected = [&](const Problem& p) {
    return present.contains(p.id) || present.contains(p.id.substr(0, p.id.find('/')));
  };
  std::vector<Problem> shown;
  std::size_t more = 0;
  for (const Problem& p : problems_)
    if (isAboutSelected(p)) shown.size() < kMostProblems ? shown.push_back(p) : void(++more);
  if (shown == shown_problems_ && more == more_problems_) return problems_box_->setVisible(!shown.empty());
  shown_problems_ = shown;
  more_problems_ = more;
  qDeleteAll(problems_box_->findChildren<QWidget*>(Qt::FindDirectChildrenOnly));
  for (const Problem& p : shown) problems_box_->layout()->addWidget(new SentenceLabel(p, problems_box_));
  if (more > 0) problems_box_->layout()->addWidget(new QLabel(tr("and %1 more").arg(more), problems_box_));
  problems_box_->setVisible(!shown.empty());
}

}  // namespace stopwalk::panels
