#include "app/panels/details/sections.h"
#include "app/panels/details/thing_section.h"

namespace stopwalk::panels {

namespace {

class UnderlaySection : public ThingSection<layout::Underlay> {
  Q_DECLARE_TR_FUNCTIONS(UnderlaySection)

 public:
  UnderlaySection(const Desk& desk, Ids ids, QWidget* parent) : ThingSection(desk, std::move(ids), parent) {
    bind(
        new TextField({tr("Picture"), tr("The file of the scan or photo, beside the layout.")}, notEmpty()),
        [](auto& u) -> auto& { return u.image; });
    addPlace();
    addTurn();
    NumberKind scale;
    scale.least = 0;
    scale.above_least = true;
    scale.step = 0.1;
    scale.large_step = 1;
    bind(
        new NumberField(
            {tr("Millimetres a pixel"), tr("How much of the floor a pixel of the picture covers.")}, scale,
            Known::Always),
        [](auto& u) -> auto& { return u.mm_per_pixel; });
    NumberKind share;
    share.least = 0;
    share.most = 1;
    share.step = 0.05;
    share.large_step = 0.1;
    bind(
        new NumberField({tr("Strength"), tr("From 0, not to be seen, to 1, as the picture is.")}, share,
                        Known::Always),
        [](auto& u) -> auto& { return u.opacity; });
  }
};

}  // namespace

Section* makeUnderlaySection(const Desk& desk, Ids ids, QWidget* parent) {
  return new UnderlaySection(desk, std::move(ids), parent);
}

}  // namespace stopwalk::panels
