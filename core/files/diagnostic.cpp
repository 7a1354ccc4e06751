#include "core/files/diagnostic.h"

#include "core/files/printable.h"

namespace stopwalk::files {
namespace {

// As wide as what stands before the caret: a tab stays a tab, a character becomes one space.
std::string indentTo(const Diagnostic& d) {
  std::string indent;
  int column = 1;
  for (const char c : d.excerpt) {
    if ((static_cast<unsigned char>(c) & 0xC0) == 0x80) continue;
    if (column++ >= d.caret) break;
    indent += c == '\t' ? '\t' : ' ';
  }
  for (; column < d.caret; ++column) indent += ' ';
  return indent;
}

}  // namespace

std::string format(const Diagnostic& d) {
  std::string text = printable(d.file) + ":" + std::to_string(d.line) + ":" + std::to_string(d.column) + ": ";
  text += d.severity == Severity::Error     ? "error: "
          : d.severity == Severity::Warning ? "warning: "
                                            : "fault: ";
  text += printable(d.text) + "\n";
  if (d.caret > 0) text += d.excerpt + "\n" + indentTo(d) + "^\n";
  return text;
}

}  // namespace stopwalk::files
