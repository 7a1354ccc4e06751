#pragma once

#include <QString>
#include <QTemporaryDir>
#include <functional>
#include <string>

#include "core/layout/layout.h"

namespace stopwalk::documents {

// A folder of its own for a test.
class Folder {
 public:
  Folder();

  QString path(const QString& name) const { return dir_.filePath(name); }
  QString path() const { return dir_.path(); }
  QStringList names() const;  // of everything in it, hidden files too, sorted

 private:
  QTemporaryDir dir_;
};

std::string textOf(const QString& path);
void put(const QString& path, const std::string& text);

// An invented workshop of one room; `name` tells one version from another.
layout::Layout workshop(const std::string& name);
std::string textOf(const layout::Layout& layout);

// Lets events happen until `done`, at the longest for 10 s; whether it came to be.
bool waitUntil(const std::function<bool()>& done);
void waitFor(int ms);

// Runs in a child process without the rights of the administrator; the child's exit status, -1 if it was
// killed.
int asAnybody(const std::function<int()>& run);

// Runs in a child process that is then killed, with no time for an orderly end.
void thenKilled(const std::function<void()>& run);

}  // namespace stopwalk::documents
