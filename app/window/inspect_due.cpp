// The part of the place that shows what is due, here and on the plan, and asks for a new round.
#include <QStackedWidget>
#include <algorithm>

#include "app/rounds/due_page.h"
#include "app/rounds/on_plan.h"
#include "app/rounds/start_form.h"
#include "app/rounds/words.h"
#include "app/window/come_to.h"
#include "app/window/inspect_place.h"
#include "core/planning/round_plan.h"

namespace stopwalk::window {
namespace {

constexpr std::size_t kMostLive = 200;  // devices; of more the order takes seconds

std::vector<rounds::StartForm::Room> roomsOf(const layout::Layout& layout,
                                             std::span<const planning::InspectedDevice> devices) {
  std::vector<rounds::StartForm::Room> rooms;
  for (const layout::Room& room : layout.rooms)
    if (const auto count = std::ranges::count(devices, room.id, &planning::InspectedDevice::room))
      rooms.push_back({room.id, rounds::roomName(layout, room.id), static_cast<std::size_t>(count)});
  return rooms;
}

// Phones, then what is on machines, then what is on walls.
std::vector<rounds::StartForm::Place> placesOf(const layout::Layout& layout,
                                               std::span<const planning::InspectedDevice> devices) {
  std::vector<rounds::StartForm::Place> places;
  for (const layout::Phone& phone : layout.phones)
    places.push_back({phone.id, QString::fromStdString(phone.name.empty() ? phone.id : phone.name)});
  for (const layout::Machine& machine : layout.machines)
    for (const layout::Station& station : machine.stations)
      places.push_back({machine.id + "/" + station.id,
                        QStringLiteral("%1 (%2)").arg(rounds::machineName(layout, machine.id),
                                                      QString::fromStdString(station.id))});
  for (const planning::InspectedDevice& device : devices)
    places.push_back({device.id, rounds::nameOf(layout, device)});
  return places;
}

}  // namespace

// The plan shows what is due, or how far the round has come.
void InspectPlace::showOnPlan() {
  if (!is_here_ || !found_ || source_.path.isEmpty()) return emit onPlan(std::nullopt);
  const auto legs = round_.round() && isWayFound() ? std::span(found_->way.legs)
                                                   : std::span<const planning::InspectionLeg>();
  const AsOf& as_of = asOfToday();
  const rounds::ByRecords by{found_->devices, recordsNow(),     as_of.come_to->counting,
                             as_of.states,    source_.schedule, as_of.day};
  plan::InspectedOnPlan shown =
      round_.round() ? rounds::roundOnPlan(round_, legs, by) : rounds::dueOnPlan(by);
  if (is_of_before_) shown.title = tr("Of before", "signs on the plan");
  emit onPlan(shown);
}

// The way that was found is that of the round.
bool InspectPlace::isWayFound() const {
  return found_->of.order == round_.order() && found_->of.walk == round_.round()->walk;
}

void InspectPlace::showDue() {
  side_->setCurrentWidget(due_);
  fillDue();
}

void InspectPlace::fillDue() {
  if (!due_->told().isEmpty()) tellWhyNot(source_.path.isEmpty() ? QString() : whyNotYet());
  if (source_.path.isEmpty()) return due_->showNothing(whyNotYet(), true);
  if (!found_) return;
  const AsOf& as_of = asOfToday();
  const auto view = rounds::dueView(*found_->of.layout, found_->devices, recordsNow(), as_of.states,
                                    as_of.come_to->open_actions, source_.schedule, as_of.day);
  if (found_->devices.empty() && view.groups.empty())
    return due_->showNothing(
        tr("There is no stop device on the plan yet. Draw one (Alt+1): what is due stands here then."),
        false);
  std::vector<rounds::DuePage::OpenRound> open;
  for (const auto& [round, left] : as_of.come_to->unfinished)
    open.push_back(
        {round->number, tr("Round %1, %2, %3: %4 of %5 checked")
                            .arg(QString::number(round->number), rounds::shortMomentText(round->at),
                                 QString::fromStdString(round->by))
                            .arg(round->devices.size() - left)
                            .arg(round->devices.size())});
  due_->show(view, open, rounds::summaryOf(view, found_->devices.size()));
}

// Where one looks: the line at the foot is easily missed.
void InspectPlace::tellNotYet(const QString& why) {
  emit said(why);
  if (side_->currentWidget() != due_) showDue();
  if (source_.path.isEmpty()) return due_->saveButton()->setFocus();  // the page says why
  tellWhyNot(why);
  due_->goToSave();
}

// What saving would help with has a button for that.
void InspectPlace::tellWhyNot(const QString& why) {
  if (why != due_->told())
    due_->tell(why, !why.isEmpty() && read_->unreadable.empty() && source_.hash.empty());
}

// Saving may be left, or fail, which the window tells: then it is asked for again.
void InspectPlace::saveAndStart() {
  emit saveWanted();
  if (!source_.hash.empty() && !round_.round()) whenFound([this] { showStart(); });
}

void InspectPlace::showStart() {
  if (const QString why = whyNotYet(); !why.isEmpty()) return tellNotYet(why);
  due_->tell({}, false);
  const auto ids = planning::idsOf(found_->devices);
  const auto due =
      planning::dueAmong(found_->devices, recordsNow(), source_.schedule, records::momentNow(), failed());
  start_->show(due.size(), ids.size(), roomsOf(*source_.layout, found_->devices),
               placesOf(*source_.layout, found_->devices));
  if (due.empty()) start_->choose(rounds::StartForm::Over::All);
  start_->tell({});
  asked_anew_ = false;
  start_->onPaper()->clear();  // that was of another round
  side_->setCurrentWidget(start_);
  start_->name()->setFocus();
  start_->name()->selectAll();
  askOrder();
}

// Says on the form what its choices come to.
void InspectPlace::askOrder() {
  if (!found_ || side_->currentWidget() != start_) return;
  const LiveOrder::Question now{found_->of.layout, found_->of.kinds,
                                planning::devicesIn(start_->scope(), found_->devices, recordsNow(),
                                                    source_.schedule, records::momentNow(), failed()),
                                start_->walk()};
  if (now.ids.size() > kMostLive) {
    order_asked_.reset();
    return start_->showOrder(
        tr("Of so many devices the shortest walk is sought when the round is started, and that takes its "
           "time."));
  }
  start_->showOrder({});
  order_asked_ = now;
  order_.ask(now);
}

}  // namespace stopwalk::window
