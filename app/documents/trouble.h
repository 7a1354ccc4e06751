#pragma once

#include <QString>

namespace stopwalk::documents {

// What went wrong with a file, for the person who wanted something of it.
struct Trouble {
  QString path;
  QString what;    // a sentence
  QString why;     // the system's words, or ours; may be empty
  QString advice;  // what to do about it

  // One paragraph: path, what, why, what to do.
  QString text() const;
  bool operator==(const Trouble&) const = default;
};

}  // namespace stopwalk::documents
