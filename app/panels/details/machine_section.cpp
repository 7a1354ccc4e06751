#include "app/panels/details/sections.h"
#include "app/panels/details/thing_section.h"

namespace stopwalk::panels {

namespace {

class MachineSection : public ThingSection<layout::Machine> {
  Q_DECLARE_TR_FUNCTIONS(MachineSection)

 public:
  MachineSection(const Desk& desk, Ids ids, QWidget* parent) : ThingSection(desk, std::move(ids), parent) {
    addName(tr("As people call it: Engine lathe 1."));
    addId();
    bind(
        new ChoiceField({tr("Kind"), tr("What sort of machine it is.")}, templates(desk.catalogue.templates)),
        [](auto& m) -> auto& { return m.kind; });
    addPlace();
    addTurn();
    addFootprint();
    addHeight(tr("From the floor to its top."));
    bind(
        new NumberField({tr("Run-down"), tr("Seconds from the stop until it stands still, as timed at the "
                                            "machine. Empty: not known.")},
                        secondsKind(), Known::Optional),
        [](auto& m) -> auto& { return m.run_down; });
    bind(
        new CheckField({tr("Hand-held"), tr("Held or guided by hand: only its trigger counts.")}),
        [](auto& m) -> auto& { return m.hand_held; });
    bind(
        new TextField({tr("After the stop"), tr("What to do once it stands still: Back the tool off before "
                                                "you release the stop.")}),
        [](auto& m) -> auto& { return m.after_stop; });
    addHazard();
  }

 private:
  static std::vector<Option> templates(const layout::MachineTemplates& templates) {
    std::vector<Option> options = {{"", tr("not given")}};
    for (const layout::MachineTemplate& t : templates.all())
      options.push_back({t.key, QString::fromStdString(t.label.empty() ? t.key : t.label)});
    return options;
  }

  void addHazard() {
    auto* field =
        new OutlineField({tr("Hazard outline"), tr("Nobody may reach across it. Measured from the middle of "
                                                   "the machine: to the right, and to the back.")},
                         Known::Optional);
    field->setUsual({{-200, -200}, {200, -200}, {200, 200}, {-200, 200}});
    bind(
        field, [](auto& m) -> auto& { return m.hazard; }, {}, {}, Width::Whole);
  }
};

}  // namespace

Section* makeMachineSection(const Desk& desk, Ids ids, QWidget* parent) {
  return new MachineSection(desk, std::move(ids), parent);
}

}  // namespace stopwalk::panels
