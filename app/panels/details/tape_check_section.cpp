#include "app/edits/step_names.h"
#include "app/panels/details/sections.h"
#include "app/panels/details/thing_section.h"

namespace stopwalk::panels {

namespace {

class TapeCheckSection : public ThingSection<layout::TapeCheck> {
  Q_DECLARE_TR_FUNCTIONS(TapeCheckSection)

 public:
  TapeCheckSection(const Desk& desk, Ids ids, QWidget* parent) : ThingSection(desk, std::move(ids), parent) {
    addId();
    bind(
        new ChoiceField({tr("From"), tr("The station, device or phone where the tape begins.")}, places()),
        [](auto& t) -> auto& { return t.from; });
    bind(
        new ChoiceField({tr("To"), tr("The station, device or phone where the tape ends.")}, places()),
        [](auto& t) -> auto& { return t.to; });
    bind(
        new LengthField({tr("Taped"), tr("As measured along the floor with a tape.")}, Range::NotNegative,
                        Known::Always),
        [](auto& t) -> auto& { return t.taped; });
    bind(
        new DateField({tr("Day"), tr("When it was taped: year, month, day.")}),
        [](auto& t) -> auto& { return t.date; });
    bind(
        new TextField({tr("By"), tr("Who taped it.")}), [](auto& t) -> auto& { return t.by; });
  }

 private:
  std::vector<Option> places() const {
    std::vector<Option> options;
    for (const edits::Thing& thing : edits::allThings(layout())) {
      if (!edits::isOnMachine(thing) && thing.kind != edits::ThingKind::WallDevice &&
          thing.kind != edits::ThingKind::Phone)
        continue;
      options.push_back({edits::idOf(layout(), thing), edits::called(layout(), thing)});
    }
    return options;
  }
};

}  // namespace

Section* makeTapeCheckSection(const Desk& desk, Ids ids, QWidget* parent) {
  return new TapeCheckSection(desk, std::move(ids), parent);
}

}  // namespace stopwalk::panels
