#include "app/edits/rename_id.h"

#include <QCoreApplication>

#include "app/edits/new_ids.h"
#include "app/edits/references.h"
#include "app/edits/step_names.h"
#include "app/edits/visit_thing.h"
#include "core/files/value_reader.h"

namespace stopwalk::edits {
namespace {

using layout::Layout;

std::string scopeOf(const std::string& id) {
  const auto slash = id.find('/');
  return slash == std::string::npos ? "" : id.substr(0, slash + 1);
}

}  // namespace

QString whyNotRename(const Layout& layout, const std::string& id, const std::string& new_id) {
  const auto thing = findThing(layout, id);
  if (!thing || thing->kind == ThingKind::Underlay)
    return QCoreApplication::translate("edits", "There is nothing with the id %1.").arg(text(id));
  if (!files::isId(new_id))
    return QCoreApplication::translate("edits",
                                       "An id has lower-case letters, digits and hyphens only: lathe-1.");
  if (new_id == layout::kAll || new_id == layout::kOutside)
    return QCoreApplication::translate("edits", "The id %1 has a meaning of its own; choose another.")
        .arg(text(new_id));
  const std::string full = scopeOf(id) + new_id;
  if (full != id && findThing(layout, full))
    return QCoreApplication::translate("edits", "There is something with the id %1 already; choose another.")
        .arg(text(full));
  return {};
}

Edit renameId(const Layout& layout, const std::string& id, const std::string& new_id) {
  if (!whyNotRename(layout, id, new_id).isEmpty()) return noStep(layout);
  const Thing thing = *findThing(layout, id);
  const std::string full = scopeOf(id) + new_id;
  Layout after = layout;
  followIds(after, [&](const std::string& mentioned) -> std::optional<std::string> {
    if (mentioned == id) return full;
    return mentioned.starts_with(id + "/") ? full + mentioned.substr(id.size()) : mentioned;
  });
  visitThing(after, thing, [&](auto& value) {
    if constexpr (requires { value.id; }) value.id = new_id;
  });
  return step(layout, QCoreApplication::translate("edits", "Change the id of %1").arg(called(layout, thing)),
              std::move(after));
}

}  // namespace stopwalk::edits
