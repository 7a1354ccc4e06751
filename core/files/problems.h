#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/files/diagnostic.h"

namespace stopwalk::files {

// Collects what is wrong with one text, by byte; gives it back in the order of the text, with lines and
// columns. The text must outlive it. Holds on to the first ten thousand problems only, and counts the rest.
class Problems {
 public:
  Problems(std::string_view text, std::string file) : text_(text), file_(std::move(file)) {}

  void error(std::size_t byte, std::string what) { add(Severity::Error, byte, std::move(what)); }
  // Ends with `; the first is on line N`, the line of `first`.
  void again(std::size_t byte, std::string what, std::size_t first) {
    add(Severity::Error, byte, std::move(what), first);
  }
  void warn(std::size_t byte, std::string what) { add(Severity::Warning, byte, std::move(what)); }
  bool hasErrors() const { return errors_ > 0; }

  std::vector<Diagnostic> take();
  // `value` unless there was an error.
  template <class T>
  Result<T> result(T value) {
    Result<T> result;
    if (!hasErrors()) result.value = std::move(value);
    result.diagnostics = take();
    return result;
  }

 private:
  struct Problem {
    Severity severity;
    std::size_t byte;
    std::string what;
    std::optional<std::size_t> first;
  };
  void add(Severity severity, std::size_t byte, std::string what,
           std::optional<std::size_t> first = std::nullopt);

  std::string_view text_;
  std::string file_;
  std::vector<Problem> problems_;
  std::size_t errors_ = 0;
  std::size_t left_out_ = 0;
};

// A piece of the text as a message may show it: in quotes, shortened, without control characters.
std::string quoted(std::string_view piece);
// The length in bytes of the line break at `byte`, or 0: what YAML takes for one.
std::size_t breakAt(std::string_view text, std::size_t byte);

}  // namespace stopwalk::files
