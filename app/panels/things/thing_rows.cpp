#include "app/panels/things/thing_rows.h"

#include <QCoreApplication>
#include <algorithm>
#include <map>

#include "app/edits/step_names.h"
#include "app/edits/visit_thing.h"
#include "app/panels/things/station_words.h"
#include "app/plan/day.h"
#include "core/audit/accepted.h"
#include "core/floor/faults.h"
#include "core/geometry/indexed_polygon.h"

namespace stopwalk::panels {

namespace {

using edits::Thing;
using edits::ThingKind;
using layout::Layout;

constexpr const char* kNoRoom = "(no room)";
constexpr const char* kTapeChecks = "(tape checks)";

QString nameOr(const std::string& name, const std::string& id) {
  return QString::fromStdString(name.empty() ? id : name);
}

class Rows {
  Q_DECLARE_TR_FUNCTIONS(ThingRows)

 public:
  Rows(const Layout& layout, const layout::DeviceKinds& kinds, const audit::Report* report)
      : layout_(layout), kinds_(kinds) {
    for (const layout::Room& r : layout.rooms) rooms_.emplace_back(r.outline);
    if (!report) return;
    const std::vector<bool> accepted = audit::acceptedStations(*report, plan::dateOf(QDate::currentDate()));
    for (std::size_t i = 0; i < accepted.size(); ++i)
      stations_.emplace(report->stations[i].id, Stands{&report->stations[i], accepted[i]});
  }

  std::vector<ThingRow> make() {
    std::map<std::string, std::vector<Thing>> in;  // by the line they stand below
    for (const Thing& thing : edits::allThings(layout_)) {
      if (thing.kind == ThingKind::Room || edits::isOnMachine(thing)) continue;
      in[thing.kind == ThingKind::TapeCheck ? kTapeChecks : roomOf(thing)].push_back(thing);
    }
    for (const layout::Room& r : layout_.rooms) {
      add(r.id, "", withKind(nameOr(r.name, r.id), tr("room")));
      for (const Thing& thing : in[r.id]) addThing(thing, r.id);
    }
    addGroup(in[kNoRoom], kNoRoom, tr("In no room"));
    addGroup(in[kTapeChecks], kTapeChecks, tr("Tape checks"));
    return std::move(rows_);
  }

 private:
  void add(std::string id, std::string parent, QString text, QString brief = {}) {
    rows_.push_back({std::move(id), std::move(parent), std::move(text), std::move(brief)});
  }

  // What is on a machine: its name stands on the line above.
  void addPart(const Thing& thing, const layout::Machine& m) {
    const std::string id = edits::idOf(layout_, thing);
    const QString brief = textOf(thing, id);
    add(id, m.id, tr("%1, %2").arg(nameOr(m.name, m.id), brief), brief);
  }

  // A name that does not say itself what it is of, with the word for it.
  static QString withKind(const QString& name, const QString& word) {
    return name.contains(word, Qt::CaseInsensitive) ? name : tr("%1, %2").arg(name, word);
  }

  void addGroup(const std::vector<Thing>& things, const char* id, const QString& text) {
    if (things.empty()) return;
    add(id, "", text);
    for (const Thing& thing : things) addThing(thing, id);
  }

  // The id of the room that something stands in, or hangs in.
  std::string roomOf(const Thing& thing) const {
    if (thing.kind == ThingKind::Door) return layout_.doors[thing.index].first;
    if (thing.kind == ThingKind::Underlay) return kNoRoom;
    const auto at = edits::placeOf(layout_, thing);
    const bool on_wall = thing.kind == ThingKind::WallDevice || thing.kind == ThingKind::Phone;
    for (std::size_t i = 0; at && i < rooms_.size(); ++i)
      if (!rooms_[i].empty() && rooms_[i].holds(*at, on_wall ? floor::kFromRoom_mm : geometry::kOnOutline_mm))
        return layout_.rooms[i].id;
    return kNoRoom;
  }

  void addThing(const Thing& thing, const std::string& parent) {
    const std::string id = edits::idOf(layout_, thing);
    add(id, parent, textOf(thing, id));
    if (thing.kind != ThingKind::Machine) return;
    const layout::Machine& m = layout_.machines[thing.index];
    for (std::size_t s = 0; s < m.stations.size(); ++s) addPart({ThingKind::Station, thing.index, s}, m);
    for (std::size_t d = 0; d < m.devices.size(); ++d) addPart({ThingKind::MachineDevice, thing.index, d}, m);
  }

  QString textOf(const Thing& thing, const std::string& id) const {
    switch (thing.kind) {
      case ThingKind::Station:
        return stationText(layout_.machines[thing.index], thing.part, id);
      case ThingKind::MachineDevice: {
        const layout::Machine& m = layout_.machines[thing.index];
        return tr("%1: %2").arg(QString::fromStdString(m.devices[thing.part].id),
                                kindText(m.devices[thing.part]));
      }
      case ThingKind::WallDevice:
        return tr("%1: %2").arg(QString::fromStdString(id), kindText(layout_.devices[thing.index]));
      case ThingKind::Machine:
        return machineText(layout_.machines[thing.index]);
      case ThingKind::Door:
        return doorText(layout_.doors[thing.index]);
      case ThingKind::Note:
        return tr("Note: %1").arg(QString::fromStdString(layout_.notes[thing.index].text));
      case ThingKind::TapeCheck: {
        const layout::TapeCheck& t = layout_.tape_checks[thing.index];
        return tr("Tape check %1: %2 to %3, %4")
            .arg(QString::fromStdString(t.id), QString::fromStdString(t.from), QString::fromStdString(t.to),
                 walkText(t.taped / 1000, layout_.unit));
      }
      case ThingKind::Underlay:
        return tr("Underlay");
      default:
        return withKind(QString::fromStdString(edits::nameOf(layout_, thing)), edits::kindWord(thing.kind));
    }
  }

  QString kindText(const layout::Device& d) const {
    const layout::DeviceKind* kind = kinds_.find(d.kind);
    return kind ? nameOr(kind->label, d.kind).toLower() : QString::fromStdString(d.kind);
  }

  QString stationText(const layout::Machine& m, std::size_t part, const std::string& id) const {
    const QString name = QString::fromStdString(m.stations[part].id);
    const auto report = stations_.find(id);
    if (report == stations_.end()) return name;
    return tr("%1: %2").arg(name,
                            stationWords(*report->second.station, report->second.accepted, layout_.unit));
  }

  // A machine fares as its worst station.
  QString machineText(const layout::Machine& m) const {
    std::optional<audit::Verdict> worst;
    bool accepted = true;  // all that does not meet
    for (const layout::Station& s : m.stations) {
      const auto report = stations_.find(m.id + "/" + s.id);
      if (report == stations_.end()) continue;
      const audit::Verdict verdict = report->second.station->verdict;
      worst = std::max(worst.value_or(audit::Verdict::Meets), verdict);
      accepted = accepted && (report->second.accepted || verdict == audit::Verdict::Meets);
    }
    const QString name = nameOr(m.name, m.id);
    if (!worst) return tr("%1, machine").arg(name);
    return tr("%1, machine: %2").arg(name, verdictWord(*worst, accepted && *worst != audit::Verdict::Meets));
  }

  QString doorText(const layout::Door& d) const {
    const auto room = std::ranges::find(layout_.rooms, d.second, &layout::Room::id);
    const QString to =
        room == layout_.rooms.end() ? QString::fromStdString(d.second) : nameOr(room->name, room->id);
    const QString text = tr("Door %1 to %2, %3 wide")
                             .arg(QString::fromStdString(d.id), to, walkText(d.width / 1000, layout_.unit));
    switch (d.locked) {
      case layout::Locked::Never:
        return text;
      case layout::Locked::AfterHours:
        return tr("%1, locked after hours").arg(text);
      case layout::Locked::Always:
        return tr("%1, always locked").arg(text);
    }
    return text;
  }

  const Layout& layout_;
  const layout::DeviceKinds& kinds_;
  std::vector<geometry::IndexedPolygon> rooms_;
  struct Stands {
    const audit::StationReport* station = nullptr;
    bool accepted = false;
  };
  std::map<std::string, Stands> stations_;  // by id
  std::vector<ThingRow> rows_;
};

}  // namespace

std::vector<ThingRow> thingRows(const Layout& layout, const layout::DeviceKinds& kinds,
                                const audit::Report* report) {
  return Rows(layout, kinds, report).make();
}

}  // namespace stopwalk::panels
