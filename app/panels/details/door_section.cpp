#include "app/panels/details/sections.h"
#include "app/panels/details/thing_section.h"
#include "core/layout/names.h"

namespace stopwalk::panels {

namespace {

class DoorSection : public ThingSection<layout::Door> {
  Q_DECLARE_TR_FUNCTIONS(DoorSection)

 public:
  DoorSection(const Desk& desk, Ids ids, QWidget* parent) : ThingSection(desk, std::move(ids), parent) {
    addId();
    bind(
        new ChoiceField({tr("In the wall of"), tr("The room whose wall carries the door.")}, rooms(false)),
        [](auto& d) -> auto& { return d.first; });
    bind(
        new ChoiceField({tr("Leads to"), tr("The room on the other side, or outside.")}, rooms(true)),
        [](auto& d) -> auto& { return d.second; });
    addPlace();
    bind(
        new LengthField({tr("Clear width"), tr("Between the door’s frame or leaf, where people go through.")},
                        Range::Positive, Known::Always),
        [](auto& d) -> auto& { return d.width; });
    bindChoice(
        new ChoiceField(
            {tr("Locked"), tr("A locked door is no way to a stop or a phone.")},
            {{"never", tr("never")}, {"after-hours", tr("after hours")}, {"always", tr("always")}}),
        [](auto& d) -> auto& { return d.locked; }, files::kLocked);
  }

 private:
  std::vector<Option> rooms(bool outside) const {
    std::vector<Option> options;
    for (const layout::Room& r : layout().rooms)
      options.push_back({r.id, QString::fromStdString(layout::nameOf(r))});
    if (outside) options.push_back({layout::kOutside, tr("outside")});
    return options;
  }
};

}  // namespace

Section* makeDoorSection(const Desk& desk, Ids ids, QWidget* parent) {
  return new DoorSection(desk, std::move(ids), parent);
}

}  // namespace stopwalk::panels
