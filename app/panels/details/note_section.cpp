#include "app/panels/details/sections.h"
#include "app/panels/details/thing_section.h"

namespace stopwalk::panels {

namespace {

class NoteSection : public ThingSection<layout::Note> {
  Q_DECLARE_TR_FUNCTIONS(NoteSection)

 public:
  NoteSection(const Desk& desk, Ids ids, QWidget* parent) : ThingSection(desk, std::move(ids), parent) {
    bind(
        new TextField({tr("Text"), tr("The words on the plan.")}, notEmpty()),
        [](auto& n) -> auto& { return n.text; });
    addId();
    addPlace();
    add(
        new CheckField({tr("Points to something"), tr("A line leads from the words to a place.")}),
        [](const layout::Note& n) { return n.points_to.has_value(); },
        [](layout::Note& n, bool points) {
          n.points_to = points ? std::optional(n.at + layout::Point{500, 500}) : std::nullopt;
        });
    addPointer({tr("Points to x"), tr("The place that the line leads to.")}, &layout::Point::x);
    addPointer({tr("Points to y"), tr("The place that the line leads to.")}, &layout::Point::y);
  }

 private:
  void addPointer(FieldText text, double layout::Point::*axis) {
    add(
        new LengthField(std::move(text), Range::Any, Known::Always),
        [axis](const layout::Note& n) {
          return n.points_to ? std::optional((*n.points_to).*axis) : std::nullopt;
        },
        [axis](layout::Note& n, const std::optional<double>& mm) {
          if (n.points_to && mm) (*n.points_to).*axis = *mm;
        },
        [](const layout::Note& n) { return n.points_to.has_value(); });
  }
};

}  // namespace

Section* makeNoteSection(const Desk& desk, Ids ids, QWidget* parent) {
  return new NoteSection(desk, std::move(ids), parent);
}

}  // namespace stopwalk::panels
