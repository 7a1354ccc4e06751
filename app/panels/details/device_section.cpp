#include <algorithm>

#include "app/edits/change_things.h"
#include "app/panels/details/sections.h"
#include "app/panels/details/thing_section.h"
#include "app/panels/fields/each_seconds_field.h"
#include "app/panels/fields/tick_field.h"

namespace stopwalk::panels {

namespace {

using layout::Device;

QString nameOr(const std::string& name, const std::string& id) {
  return QString::fromStdString(name.empty() ? id : name);
}

Ticks ticksOf(const std::optional<layout::Stops>& stops) {
  if (!stops) return {};
  return {stops->all ? Ticks::Which::All : Ticks::Which::Listed, stops->ids};
}

std::optional<layout::Stops> stopsOf(const Ticks& ticks) {
  if (ticks.which == Ticks::Which::Usual) return std::nullopt;
  return layout::Stops{ticks.which == Ticks::Which::All, ticks.ids};
}

class DeviceSection : public ThingSection<Device> {
  Q_DECLARE_TR_FUNCTIONS(DeviceSection)

 public:
  DeviceSection(const Desk& desk, Ids ids, bool on_machine, QWidget* parent)
      : ThingSection(desk, std::move(ids), parent), on_machine_(on_machine) {
    addKind();
    addId();
    addWhere();
    addSizes();
    addStops();
    addRunDown();
    addManner();
    if (on_machine_) addHeldAt();
  }

 private:
  const layout::DeviceKind* kindOf(const Device& d) const { return desk().catalogue.kinds.find(d.kind); }

  void addKind() {
    std::vector<Option> options;
    for (const layout::DeviceKind& k : desk().catalogue.kinds.all())
      options.push_back({k.key, nameOr(k.label, k.key)});
    auto* field = add(
        new ChoiceField({tr("Kind"), tr("What it is, and so whether and how it stops.")}, options),
        [](const Device& d) { return d.kind; }, [](Device& d, const std::string& key) { d.kind = key; });
    const auto change_any = field->entered;
    field->entered = [this, change_any](const std::string& key) {
      const layout::DeviceKind* kind = desk().catalogue.kinds.find(key);
      kind ? apply(edits::setDeviceKind(layout(), ids(), *kind)) : change_any(key);
    };
  }

  void addWhere() {
    if (on_machine_)
      addPlace(
          {tr("To the right"), tr("From the middle of the machine, to the operator’s right.")},
          {tr("To the back"), tr("From the middle of the machine, away from the operator.")},
          [](auto& d) -> auto& { return d.at; });
    else
      addPlace();
    const QString what =
        on_machine_ ? tr("The direction from the device to the one who uses it, in degrees as the machine "
                         "stands: 270 is towards the operator.")
                    : tr("The direction from the device to the one who uses it, in degrees "
                         "counter-clockwise from the right.");
    bind(
        new NumberField({tr("Faces"), what}, angleKind(), Known::Always),
        [](auto& d) -> auto& { return d.faces; }, {}, tr("Turn %1"));
  }

  void addSizes() {
    const auto is_line = [this](const Device& d) {
      const layout::DeviceKind* kind = kindOf(d);
      return d.length || (kind && kind->shape == layout::Shape::Line);
    };
    // One that needs its length cannot do without it.
    add(
        new LengthField({tr("Length"), tr("Of a bar or cord, from end to end.")}, Range::Positive,
                        Known::Optional),
        [](const Device& d) { return d.length; },
        [this](Device& d, const std::optional<double>& mm) {
          const layout::DeviceKind* kind = kindOf(d);
          if (mm || !kind || kind->shape != layout::Shape::Line) d.length = mm;
        },
        is_line);
    addHeight(tr("From the floor to where it is pressed, stepped on or pulled."));
  }

  void addStops() {
    auto* field =
        new TickField({tr("Stops"), tr("Which machines it stops. A room stands for every machine in it.")},
                      {on_machine_ ? tr("the machine it is on") : tr("nothing yet"), tr("every machine"),
                       tr("those ticked")});
    add(
        field,
        [this, field](const Device& d) {
          field->setCandidates(machinesAndRooms());
          return ticksOf(d.stops);
        },
        [](Device& d, const Ticks& ticks) { d.stops = stopsOf(ticks); }, {}, {}, Width::Whole);
    // Each goes on stopping its own machine, whatever machines the others are on.
    field->list_chosen = [this, field] {
      changeEach(field, [](Device& d, const layout::Machine* on) {
        if (d.stops && !d.stops->all) return;
        d.stops = layout::Stops{};
        if (on) d.stops->ids = {on->id};
      });
    };
  }

  // `set(device, the machine it is on)` for each, as one step.
  template <class Set>
  void changeEach(const Field* field, Set set) {
    change(tr("Change what %1 does"), field->name(), [&](layout::Layout& after) {
      for (const edits::Thing& thing : things()) {
        if (thing.kind == edits::ThingKind::WallDevice) set(after.devices[thing.index], nullptr);
        if (thing.kind != edits::ThingKind::MachineDevice) continue;
        layout::Machine& on = after.machines[thing.index];
        set(on.devices[thing.part], &on);
      }
    });
  }

  std::vector<Option> machinesAndRooms() const {
    std::vector<Option> options;
    for (const layout::Room& r : layout().rooms)
      options.push_back({r.id, tr("Room: %1").arg(nameOr(r.name, r.id))});
    for (const layout::Machine& m : layout().machines) options.push_back({m.id, nameOr(m.name, m.id)});
    return options;
  }

  void addRunDown() {
    auto* run_down =
        new NumberField({tr("Run-down"), tr("Seconds from this stop until the machine stands still.")},
                        secondsKind(), Known::Optional);
    run_down->setEmptyText(tr("as the machine has it"));
    bind(
        run_down, [](auto& d) -> auto& { return d.run_down; });
    auto* each =
        new EachSecondsField({tr("Run-down of each machine"),
                              tr("Where this stop takes longer or shorter for one machine than another.")});
    bind(
        each, [ this, each ](auto& d) -> auto& {
          each->setCandidates(namedMachines(d));
          return d.run_down_each;
        },
        [this](const Device& d) { return !d.run_down_each.empty() || namedMachines(d).size() > 1; }, {},
        Width::Whole);
  }

  // That the device names as stopped by it.
  std::vector<Option> namedMachines(const Device& d) const {
    std::vector<Option> options;
    for (const layout::Machine& m : layout().machines) {
      const bool named =
          d.stops && (d.stops->all || std::ranges::find(d.stops->ids, m.id) != d.stops->ids.end());
      const bool given = std::ranges::find(d.run_down_each, m.id, &std::pair<std::string, double>::first) !=
                         d.run_down_each.end();
      if (named || given) options.push_back({m.id, nameOr(m.name, m.id)});
    }
    return options;
  }

  void addManner() {
    auto* instruction = new TextField(
        {tr("Instruction"), tr("What the poster tells a novice to do. Empty: as usual for its kind.")});
    add(
        instruction,
        [this, instruction](const Device& d) {
          const layout::DeviceKind* kind = kindOf(d);
          instruction->setEmptyText(kind ? QString::fromStdString(kind->instruction) : QString());
          return d.instruction;
        },
        [](Device& d, const std::string& text) { d.instruction = text; });
    add(
        new ChoiceField({tr("Emergency stop"), tr("Whether it counts as one.")},
                        {{"", tr("as usual for its kind")}, {"yes", tr("yes")}, {"no", tr("no")}}),
        [](const Device& d) {
          return std::string(!d.emergency ? "" : *d.emergency ? "yes" : "no");
        },
        [](Device& d, const std::string& key) {
          d.emergency = key.empty() ? std::nullopt : std::optional(key == "yes");
        });
    bindChoice(
        new ChoiceField({tr("Thrown to the"), tr("Which way a switch is thrown to stop.")},
                        {{"", tr("not given")},
                         {"left", tr("left")},
                         {"right", tr("right")},
                         {"up", tr("top")},
                         {"down", tr("bottom")}}),
        [](auto& d) -> auto& { return d.direction; }, files::kDirections,
        [](const Device& d) { return d.direction || d.kind == "horizontal-switch"; });
    bindChoice(
        new ChoiceField({tr("Pin"), tr("Whether the pin that guards the start is there.")},
                        {{"", tr("not known")}, {"fitted", tr("fitted")}, {"missing", tr("missing")}}),
        [](auto& d) -> auto& { return d.pin; }, files::kPins,
        [](const Device& d) { return d.pin || d.kind == "guarded-start"; });
  }

  void addHeldAt() {
    auto* field = new TickField({tr("Held at"), tr("The stations whose operator has the trigger in hand.")},
                                {tr("the machine’s first station"), {}, tr("those ticked")});
    add(
        field,
        [this, field](const Device& d) {
          field->setCandidates(stations());
          return d.held_at ? Ticks{Ticks::Which::Listed, *d.held_at} : Ticks{};
        },
        [](Device& d, const Ticks& ticks) {
          d.held_at = ticks.which == Ticks::Which::Listed ? std::optional(ticks.ids) : std::nullopt;
        },
        [this](const Device& d) {
          const layout::DeviceKind* kind = kindOf(d);
          return d.held_at || (kind && kind->held);
        },
        {}, Width::Whole);
    // Each goes on being held where it is.
    field->list_chosen = [this, field] {
      changeEach(field, [](Device& d, const layout::Machine* on) {
        if (d.held_at) return;
        d.held_at.emplace();
        if (on && !on->stations.empty()) d.held_at->push_back(on->stations.front().id);
      });
    };
  }

  // That every machine has which one of the devices is on.
  std::vector<Option> stations() const {
    std::optional<std::vector<Option>> options;
    for (const edits::Thing& thing : things()) {
      if (thing.kind != edits::ThingKind::MachineDevice) continue;
      std::vector<Option> own;
      for (const layout::Station& s : layout().machines[thing.index].stations)
        if (!options || std::ranges::find(*options, s.id, &Option::key) != options->end())
          own.push_back({s.id, QString::fromStdString(s.id)});
      options = std::move(own);
    }
    return options.value_or(std::vector<Option>{});
  }

  bool on_machine_;
};

}  // namespace

Section* makeDeviceSection(const Desk& desk, Ids ids, bool on_machine, QWidget* parent) {
  return new DeviceSection(desk, std::move(ids), on_machine, parent);
}

}  // namespace stopwalk::panels
