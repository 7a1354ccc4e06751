#pragma once

#include <QCoreApplication>
#include <optional>

#include "app/edits/rename_id.h"
#include "app/edits/visit_thing.h"
#include "app/panels/details/section.h"
#include "app/panels/fields/check_field.h"
#include "app/panels/fields/choice_field.h"
#include "app/panels/fields/number_field.h"
#include "app/panels/fields/outline_field.h"
#include "app/panels/fields/text_field.h"
#include "core/files/layout_keys.h"

namespace stopwalk::panels {

// From the value of a field to the member of a thing.
template <class M>
void put(M& member, const M& value) {
  member = value;
}
inline void put(double& member, const std::optional<double>& value) {
  if (value) member = *value;
}
inline void put(int& member, const std::optional<double>& value) {
  if (value) member = static_cast<int>(*value);
}

// The fields of things of type T. Where several are selected, a field shows what they have in common, and
// sets it for all.
template <class T>
class ThingSection : public Section {
  Q_DECLARE_TR_FUNCTIONS(Details)

 public:
  using Section::Section;

 protected:
  using Applies = std::function<bool(const T&)>;

  // Calls `f(thing)` for each that is there.
  template <class F>
  void eachThing(F f) const {
    eachIn(layout(), f);
  }

  // The one there is, where there is one; else the first.
  const T* first() const {
    const T* found = nullptr;
    eachThing([&](const T& thing) { found = found ? found : &thing; });
    return found;
  }

  bool isSingle() const { return ids().size() == 1; }

  // A field whose value is got from a thing and set in it. It is shown where `applies` holds for any of them.
  // `name` of the step, if it is not "Change ... of ...".
  template <class F, class Get, class Set>
  F* add(F* field, Get get, Set set, Applies applies = {}, const QString& name = {},
         Width width = Width::BesideLabel) {
    addRow(
        field, [this, field, get] { show(field, get); },
        applies ? std::function<bool()>([this, applies] {
          bool any = false;
          eachThing([&](const T& thing) { any |= applies(thing); });
          return any;
        })
                : nullptr,
        width);
    const QString step =
        name.isEmpty() ? tr("Change the %2 of %1").arg("%1", inSentence(field->name())) : name;
    field->entered = [this, field, set, applies, step](const typename F::Value& value) {
      change(step, field->name(), [&](layout::Layout& after) {
        eachIn(after, [&](T& thing) {
          if (!applies || applies(thing)) set(thing, value);
        });
      });
    };
    return field;
  }

  // The same for a member of the thing: `ref(thing)` is it.
  template <class F, class Ref>
  F* bind(F* field, Ref ref, Applies applies = {}, const QString& name = {},
          Width width = Width::BesideLabel) {
    return add(
        field, [ref](const T& thing) { return typename F::Value(ref(thing)); },
        [ref](T& thing, const typename F::Value& value) { put(ref(thing), value); }, std::move(applies), name,
        width);
  }

  template <class Enum>
  static std::string keyOf(const files::Choices<Enum>& choices, const std::optional<Enum>& value) {
    for (const auto& [key, choice] : choices)
      if (value == choice) return std::string(key);
    return {};
  }
  template <class Enum>
  static std::optional<Enum> valueOf(const files::Choices<Enum>& choices, const std::string& key) {
    for (const auto& [word, choice] : choices)
      if (word == key) return choice;
    return std::nullopt;
  }

  // An enumerated member, or an optional one whose absence has the empty key.
  template <class Ref, class Enum>
  ChoiceField* bindChoice(ChoiceField* field, Ref ref, const files::Choices<Enum>& choices,
                          Applies applies = {}) {
    return add(
        field, [ref, &choices](const T& thing) { return keyOf(choices, std::optional<Enum>(ref(thing))); },
        [ref, &choices](T& thing, const std::string& key) {
          auto& member = ref(thing);
          const std::optional<Enum> value = valueOf(choices, key);
          if constexpr (std::is_same_v<std::remove_reference_t<decltype(member)>, std::optional<Enum>>)
            member = value;
          else if (value)
            member = *value;
        },
        std::move(applies));
  }

  void addId() {
    if (!isSingle()) return;
    const auto why = [this](const std::string& id) {
      return edits::whyNotRename(layout(), ids().front(), id);
    };
    auto* field = new TextField(
        {tr("Id"), tr("The short name by which other things of the file speak of this one.")}, why);
    add(
        field, [](const T& thing) { return thing.id; }, [](T&, const std::string&) {});
    field->entered = [this](const std::string& id) { rename(id); };
  }

  void addName(const QString& what) {
    bind(
        new TextField({tr("Name"), what}), [](auto& t) -> auto& { return t.name; }, {}, tr("Rename %1"));
  }

  // A place, as two fields.
  template <class Ref>
  void addPlace(FieldText x, FieldText y, Ref ref) {
    bind(
        new LengthField(std::move(x), Range::Any, Known::Always),
        [ref](auto& t) -> auto& { return ref(t).x; }, {}, tr("Move %1"));
    bind(
        new LengthField(std::move(y), Range::Any, Known::Always),
        [ref](auto& t) -> auto& { return ref(t).y; }, {}, tr("Move %1"));
  }

  void addPlace() {
    addPlace(
        {tr("At x"), tr("How far to the right on the plan, from its origin.")},
        {tr("At y"), tr("How far up on the plan, from its origin.")}, [](auto& t) -> auto& { return t.at; });
  }

  void addTurn() {
    bind(
        new NumberField({tr("Turn"), tr("Degrees counter-clockwise.")}, angleKind(), Known::Always),
        [](auto& t) -> auto& { return t.turn; }, {}, tr("Turn %1"));
  }

  // From the top of the thing to the floor.
  void addHeight(const QString& what) {
    bind(
        new LengthField({tr("Height"), what}, Range::Positive, Known::Optional),
        [](auto& t) -> auto& { return t.height; });
  }

  void addFootprint();

 private:
  // A name within a sentence: its first letter small.
  static QString inSentence(const QString& name) {
    return name.size() > 1 && name[1].isLower() ? name[0].toLower() + name.mid(1) : name;
  }

  template <class Layout, class F>
  void eachIn(Layout& in, F f) const {
    if constexpr (std::is_same_v<T, layout::Layout>) {
      f(in);
    } else {
      for (const std::string& id : ids())
        if (const auto thing = edits::findThing(in, id))
          edits::visitThing(in, *thing, [&](auto& t) {
            if constexpr (std::is_same_v<std::remove_const_t<std::remove_reference_t<decltype(t)>>, T>) f(t);
          });
    }
  }

  template <class F, class Get>
  void show(F* field, Get get) const {
    std::optional<typename F::Value> common;
    bool differ = false;
    eachThing([&](const T& thing) {
      const auto value = get(thing);
      if (!common)
        common = value;
      else
        differ |= !(*common == value);
    });
    if (differ)
      field->showDiffering();
    else if (common)
      field->show(*common);
  }
};

// A footprint is a rectangle, or has corners.
template <class T>
void ThingSection<T>::addFootprint() {
  using layout::Rectangle;
  const Applies is_rectangle = [](const T& t) { return std::holds_alternative<Rectangle>(t.footprint); };
  const Applies has_corners = [](const T& t) { return !std::holds_alternative<Rectangle>(t.footprint); };
  add(
      new ChoiceField({tr("Footprint"), tr("What it covers of the floor, seen from above.")},
                      {{"rectangle", tr("Rectangle")}, {"outline", tr("By corners")}}),
      [](const T& t) {
        return std::string(std::holds_alternative<Rectangle>(t.footprint) ? "rectangle" : "outline");
      },
      [](T& t, const std::string& key) { t.footprint = inShape(t.footprint, key == "rectangle"); });
  const auto side = [&](FieldText text, double Rectangle::*member) {
    add(
        new LengthField(std::move(text), Range::Positive, Known::Always),
        [member](const T& t) {
          const auto* r = std::get_if<Rectangle>(&t.footprint);
          return r ? std::optional(r->*member) : std::nullopt;
        },
        [member](T& t, const std::optional<double>& mm) {
          if (auto* r = std::get_if<Rectangle>(&t.footprint); r && mm) r->*member = *mm;
        },
        is_rectangle);
  };
  side({tr("Width"), tr("Along the side where the operator stands.")}, &Rectangle::width);
  side({tr("Depth"), tr("From the operator's side to the back.")}, &Rectangle::depth);
  add(
      new OutlineField(
          {tr("Footprint corners"), tr("Measured from the middle: to the right, and to the back.")},
          Known::Always),
      [](const T& t) {
        const auto* corners = std::get_if<geometry::Polygon>(&t.footprint);
        return corners ? *corners : geometry::Polygon{};
      },
      [](T& t, const geometry::Polygon& corners) { t.footprint = corners; }, has_corners, {}, Width::Whole);
}

}  // namespace stopwalk::panels
