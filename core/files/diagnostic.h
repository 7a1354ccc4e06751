#pragma once

#include <optional>
#include <string>
#include <vector>

namespace stopwalk::files {

enum class Severity { Error, Warning, Fault };  // a fault: readable, but it cannot be built

// One problem of an input text. Line and column count from 1; column in characters.
struct Diagnostic {
  Severity severity = Severity::Error;
  std::string file;  // as the user named it; `-` for standard input
  int line = 0;
  int column = 0;
  std::string text;     // what is wrong, and what would be accepted
  std::string excerpt;  // the offending line, without its end; a long one cut to what stands round the column
  int caret = 0;        // the column within the excerpt, from 1
  bool operator==(const Diagnostic&) const = default;
};

// A value, or the reasons why there is none. Warnings may accompany a value.
template <class T>
struct Result {
  std::optional<T> value;
  std::vector<Diagnostic> diagnostics;
};

// `file:line:column: error: text`, the excerpt, and a caret under the column; ends with a line break.
std::string format(const Diagnostic& diagnostic);

}  // namespace stopwalk::files
