#pragma once

#include <QString>
#include <string>
#include <type_traits>
#include <utility>
#include <vector>

#include "app/edits/edit.h"
#include "app/edits/visit_thing.h"
#include "core/layout/device_kind.h"

// Setting values, for the panel of details:
//
//   change(layout, ids, tr("height"), [=](layout::Machine& m) { m.height = mm; });
//   change(layout, ids, tr("height"), [=](auto& t) requires requires { t.height = mm; } { t.height = mm; });
//
// `field` is what the step's name says was changed: "Change the height of Engine lathe 1". Changes of one
// field of the same things that follow one another become one step. What is typed is looked at before: a
// value that no file can hold (files::isReadable) changes nothing.
namespace stopwalk::edits {

Edit changeStep(const layout::Layout& before, const QString& field, layout::Layout after,
                const std::vector<Thing>& changed);
Edit changeSiteStep(const layout::Layout& before, const QString& field, layout::Layout after);
Edit changeRevisionStep(const layout::Layout& before, const QString& field, layout::Layout after);

// Calls `set` with each of the things that it takes; the others stay as they are. Ids stay: see renameId.
template <class Set>
Edit change(const layout::Layout& layout, const std::vector<std::string>& ids, const QString& field,
            Set set) {
  layout::Layout after = layout;
  std::vector<Thing> changed;
  for (const Thing& thing : knownThings(layout, ids))
    visitThing(after, thing, [&](auto& value) {
      if constexpr (std::is_invocable_v<Set&, decltype(value)>) {
        const auto before = value;
        set(value);
        if constexpr (requires { value.id; }) value.id = before.id;
        changed.push_back(thing);
      }
    });
  return changeStep(layout, field, std::move(after), changed);
}

template <class Set>
Edit changeSite(const layout::Layout& layout, const QString& field, Set set) {
  layout::Layout after = layout;
  set(after.site);
  return changeSiteStep(layout, field, std::move(after));
}

// A layout without a revision gets one.
template <class Set>
Edit changeRevision(const layout::Layout& layout, const QString& field, Set set) {
  layout::Layout after = layout;
  if (!after.revision) after.revision.emplace();
  set(*after.revision);
  return changeRevisionStep(layout, field, std::move(after));
}

// Empty: the usual one.
Edit setProfile(const layout::Layout& layout, const std::string& profile);
// Every length stays as long as it is.
Edit setUnit(const layout::Layout& layout, layout::LengthUnit unit);
// Makes devices another kind. One that becomes a bar or cord gets a length: its machine's width, or on a wall
// a metre; one that becomes neither has none.
Edit setDeviceKind(const layout::Layout& layout, const std::vector<std::string>& ids,
                   const layout::DeviceKind& kind);

}  // namespace stopwalk::edits
