#pragma once

#include <QString>
#include <string>
#include <vector>

#include "app/edits/edit.h"
#include "app/edits/things.h"

// What steps of the history are called.
namespace stopwalk::edits {

inline QString text(const std::string& utf8) {
  return QString::fromStdString(utf8);
}

// What kind of thing it is: `door`, `tape check`.
QString kindWord(ThingKind kind);
// What a sentence calls it: its name, or what it is with its id: `Engine lathe 1`, `door d1`,
// `bar of Engine lathe 1`.
QString called(const layout::Layout& layout, const Thing& thing);
// One thing as it is called, several as `3 things`.
QString called(const layout::Layout& layout, const std::vector<Thing>& things);

// For steps that become one: what is done, and to what.
QString mergeKey(const QString& what, const layout::Layout& layout, const std::vector<Thing>& things);

// The edit from `before` to `after`; one that is refused where `after` could not be read again when written,
// such as with a thing moved beyond 10 km.
Edit step(const layout::Layout& before, const QString& name, layout::Layout after,
          const QString& merge_key = {});
// An edit that changes nothing.
Edit noStep(const layout::Layout& layout);

}  // namespace stopwalk::edits
