#include "app/panels/details/sections.h"
#include "app/panels/details/thing_section.h"

namespace stopwalk::panels {

namespace {

class FixtureSection : public ThingSection<layout::Fixture> {
  Q_DECLARE_TR_FUNCTIONS(FixtureSection)

 public:
  FixtureSection(const Desk& desk, Ids ids, QWidget* parent) : ThingSection(desk, std::move(ids), parent) {
    addName(tr("A bench, a column, a rack: solid, and no machine."));
    addId();
    addPlace();
    addTurn();
    addFootprint();
    addHeight(tr("From the floor to its top: a stop behind it can be seen or reached over it, or not."));
  }
};

}  // namespace

Section* makeFixtureSection(const Desk& desk, Ids ids, QWidget* parent) {
  return new FixtureSection(desk, std::move(ids), parent);
}

}  // namespace stopwalk::panels
