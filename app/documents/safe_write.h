#pragma once

#include <QStringList>
#include <functional>
#include <string_view>

namespace stopwalk::documents {

enum class Written {
  No,      // the old file stands as it was
  Unsure,  // the new file stands in place, but might not survive a power cut
  Yes      // the new file is on the disk
};

struct WriteResult {
  Written written = Written::No;
  QString why;  // unless Yes; empty if it was called off
};

// Puts a whole file in the place of `target`, or leaves what is there: writes beside it, syncs, renames,
// syncs the folder. Keeps the permissions of the old file, and its group where it may. `last_look` is asked
// just before the rename and may call it off.
WriteResult writeWhole(
    const QString& target, std::string_view bytes,
    const std::function<bool()>& last_look = [] { return true; });

// What is made from a layout, put down as writeWhole() does. Only under a name that ends as such files do,
// and never through a link onto another: no layout, profile or record is written over with a picture of it.
// Nor is any of `read_from`, what it is made from, such as the picture under the plan.
WriteResult writeExport(const QString& target, std::string_view bytes, const QStringList& read_from);

// A profile of rules, likewise: only under a name that ends as profiles do and layouts do not, and over
// nothing but another profile.
WriteResult writeProfile(const QString& target, std::string_view bytes, const QStringList& read_from);

// A file that nobody may write to is one that somebody wanted kept as it is, though it could be replaced:
// `writeWhole` does not ask.
bool isWriteProtected(const QString& target);

// Makes what was created, renamed or removed in a folder survive a power cut. Empty, or why it could not. A
// file system that has no such thing for folders is taken at its word.
QString syncFolder(const QString& folder);

}  // namespace stopwalk::documents
