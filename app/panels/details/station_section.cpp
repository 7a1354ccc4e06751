#include "app/panels/details/sections.h"
#include "app/panels/details/thing_section.h"

namespace stopwalk::panels {

namespace {

class StationSection : public ThingSection<layout::Station> {
  Q_DECLARE_TR_FUNCTIONS(StationSection)

 public:
  StationSection(const Desk& desk, Ids ids, QWidget* parent) : ThingSection(desk, std::move(ids), parent) {
    bindChoice(
        new ChoiceField({tr("Role"), tr("Who stands here.")}, {{"operator", tr("operator")},
                                                               {"helper", tr("helper")},
                                                               {"setter", tr("setter")},
                                                               {"instructor", tr("instructor")}}),
        [](auto& s) -> auto& { return s.role; }, files::kRoles);
    addId();
    addPlace(
        {tr("To the right"), tr("From the middle of the machine, to the operator’s right.")},
        {tr("To the back"),
         tr("From the middle of the machine, away from the operator: the operator stands at less than 0.")},
        [](auto& s) -> auto& { return s.at; });
  }
};

}  // namespace

Section* makeStationSection(const Desk& desk, Ids ids, QWidget* parent) {
  return new StationSection(desk, std::move(ids), parent);
}

}  // namespace stopwalk::panels
