#include "app/edits/step_names.h"

#include "app/edits/visit_thing.h"
#include "app/edits/words.h"
#include "core/files/readable.h"
#include "core/layout/names.h"

namespace stopwalk::edits {
namespace {

// The fields and the tools see to all else that a file cannot hold.
Edit refusal(const layout::Layout& before) {
  Edit edit = noStep(before);
  edit.refused = Words::tr(
      "Nothing was changed: a layout holds places and lengths within 10 km only, and sizes above 0.");
  return edit;
}

QString partOf(const layout::Machine& machine, const std::string& part) {
  return Words::tr("%1 of %2").arg(text(part), text(layout::nameOf(machine)));
}

}  // namespace

QString kindWord(ThingKind kind) {
  switch (kind) {
    case ThingKind::Underlay:
      return Words::tr("underlay");
    case ThingKind::Room:
      return Words::tr("room");
    case ThingKind::Door:
      return Words::tr("door");
    case ThingKind::Fixture:
      return Words::tr("fixture");
    case ThingKind::Machine:
      return Words::tr("machine");
    case ThingKind::Station:
      return Words::tr("station");
    case ThingKind::MachineDevice:
    case ThingKind::WallDevice:
      return Words::tr("device");
    case ThingKind::Phone:
      return Words::tr("phone");
    case ThingKind::Note:
      return Words::tr("note");
    case ThingKind::TapeCheck:
      return Words::tr("tape check");
  }
  return {};
}

QString called(const layout::Layout& layout, const Thing& thing) {
  if (thing.kind == ThingKind::Underlay) return kindWord(thing.kind);
  const std::string id = idOf(layout, thing), name = nameOf(layout, thing);
  if (isOnMachine(thing)) return partOf(layout.machines[thing.index], id.substr(id.find('/') + 1));
  const QString word = kindWord(thing.kind);
  // `door-2` says what it is; `d1` does not.
  const QString start = QString(word).replace(' ', '-');
  return name != id || text(id).startsWith(start) ? text(name) : Words::tr("%1 %2").arg(word, text(id));
}

QString called(const layout::Layout& layout, const std::vector<Thing>& things) {
  if (things.size() == 1) return called(layout, things.front());
  return Words::tr("%n things", nullptr, static_cast<int>(things.size()));
}

QString mergeKey(const QString& what, const layout::Layout& layout, const std::vector<Thing>& things) {
  QString key = what + " of";
  for (const Thing& thing : things) key += " " + text(idOf(layout, thing));
  return key;
}

Edit step(const layout::Layout& before, const QString& name, layout::Layout after, const QString& merge_key) {
  if (!files::isReadable(after)) return refusal(before);
  return {name, std::move(after), merge_key};
}

Edit noStep(const layout::Layout& layout) {
  return {{}, layout, {}};
}

}  // namespace stopwalk::edits
