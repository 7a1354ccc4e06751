#include "app/edits/visit_thing.h"
#include "app/panels/details/sections.h"
#include "app/panels/fields/number_field.h"

namespace stopwalk::panels {

namespace {

using layout::Layout;
using Common = std::optional<double>;

template <class T>
concept StandsOnPlan = requires(T t) {
  t.at.x;
};
template <class T>
concept Turns = requires(T t) {
  t.turn;
};

// Calls `f(double&)` with a number of each thing that has it.
template <class L, class Pick, class F>
void eachNumber(L& layout, const Ids& ids, Pick pick, F f) {
  for (const std::string& id : ids)
    if (const auto thing = edits::findThing(layout, id))
      edits::visitThing(layout, *thing, [&](auto& t) { pick(t, f); });
}

class MixedSection : public Section {
  Q_DECLARE_TR_FUNCTIONS(MixedSection)

 public:
  MixedSection(const Desk& desk, Ids ids, QWidget* parent) : Section(desk, std::move(ids), parent) {
    if (!anyOnMachine()) {
      add(new LengthField({tr("At x"), tr("How far to the right on the plan, from its origin.")}, Range::Any,
                          Known::Always),
          tr("Move %1"), [](auto& t, auto f) {
            if constexpr (StandsOnPlan<decltype(t)>) f(t.at.x);
          });
      add(new LengthField({tr("At y"), tr("How far up on the plan, from its origin.")}, Range::Any,
                          Known::Always),
          tr("Move %1"), [](auto& t, auto f) {
            if constexpr (StandsOnPlan<decltype(t)>) f(t.at.y);
          });
    }
    add(new NumberField({tr("Turn"), tr("Degrees counter-clockwise.")}, angleKind(), Known::Always),
        tr("Turn %1"), [](auto& t, auto f) {
          if constexpr (Turns<decltype(t)>) f(t.turn);
        });
  }

 private:
  // Their places are measured from the machine, and not to be put beside those of the plan.
  bool anyOnMachine() const {
    for (const edits::Thing& thing : things())
      if (edits::isOnMachine(thing)) return true;
    return false;
  }

  template <class F, class Pick>
  void add(F* field, const QString& step, Pick pick) {
    const auto count = [this, pick] {
      int found = 0;
      eachNumber(layout(), ids(), pick, [&](double) { ++found; });
      return found;
    };
    addRow(
        field,
        [this, field, pick] {
          Common common;
          bool differ = false;
          eachNumber(layout(), ids(), pick, [&](double number) {
            differ |= common && *common != number;
            common = number;
          });
          differ ? field->showDiffering() : field->show(common);
        },
        [count] { return count() > 1; });
    field->entered = [this, field, step, pick](const Common& value) {
      change(step, field->name(), [&](Layout& after) {
        eachNumber(after, ids(), pick, [&](double& number) { number = value.value_or(number); });
      });
    };
  }
};

}  // namespace

Section* makeMixedSection(const Desk& desk, Ids ids, QWidget* parent) {
  return new MixedSection(desk, std::move(ids), parent);
}

}  // namespace stopwalk::panels
