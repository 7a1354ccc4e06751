#include "app/panels/details/sections.h"
#include "app/panels/details/thing_section.h"

namespace stopwalk::panels {

namespace {

class PhoneSection : public ThingSection<layout::Phone> {
  Q_DECLARE_TR_FUNCTIONS(PhoneSection)

 public:
  PhoneSection(const Desk& desk, Ids ids, QWidget* parent) : ThingSection(desk, std::move(ids), parent) {
    addName(tr("As people call it: Yard phone."));
    addId();
    addPlace();
    bind(
        new NumberField({tr("Faces"), tr("The direction from the phone to the one who uses it, in degrees "
                                         "counter-clockwise from the right.")},
                        angleKind(), Known::Always),
        [](auto& p) -> auto& { return p.faces; }, {}, tr("Turn %1"));
    addHeight(tr("From the floor."));
  }
};

}  // namespace

Section* makePhoneSection(const Desk& desk, Ids ids, QWidget* parent) {
  return new PhoneSection(desk, std::move(ids), parent);
}

}  // namespace stopwalk::panels
