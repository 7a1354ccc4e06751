#include "app/command_line/table_rows.h"

#include <algorithm>

#include "app/command_line/text_columns.h"
#include "core/audit/wording.h"

namespace stopwalk::app {

Ink inkOf(audit::Verdict v) {
  return v == audit::Verdict::Fails ? Ink::Fail : v == audit::Verdict::Warns ? Ink::Warn : Ink::Plain;
}
Ink inkOf(audit::Severity s) {
  return s == audit::Severity::Fail ? Ink::Fail : s == audit::Severity::Warn ? Ink::Warn : Ink::Plain;
}

std::string inked(const std::string& text, Ink ink, const TableStyle& style) {
  if (!style.colour || ink == Ink::Plain) return text;
  const char* code = ink == Ink::Fail ? "\033[1;31m" : ink == Ink::Warn ? "\033[33m" : "\033[1m";
  return code + text + "\033[0m";
}

std::string row(const std::vector<Column>& columns, const std::vector<std::string>& cells, Ink ink,
                const TableStyle& style) {
  std::vector<std::vector<std::string>> lines;
  std::size_t height = 0;
  for (std::size_t i = 0; i < cells.size(); ++i) {
    lines.push_back(wrapped(cells[i], columns[i].columns));
    height = std::max(height, lines.back().size());
  }
  std::string text;
  for (std::size_t l = 0; l < height; ++l) {
    std::string line;
    for (std::size_t i = 0; i < lines.size(); ++i) {
      const std::string cell =
          padded(l < lines[i].size() ? lines[i][l] : "", columns[i].columns, columns[i].to_right);
      line += std::string(i > 0 ? columns[i].gap : 0, ' ') + (i == 0 ? inked(cell, ink, style) : cell);
    }
    line.erase(line.find_last_not_of(' ') + 1);
    text += line + "\n";
  }
  return text;
}

std::string headRow(const std::vector<Column>& columns, const TableStyle& style) {
  std::vector<std::string> heads;
  for (const Column& c : columns) heads.push_back(c.head);
  return row(columns, heads, Ink::Plain, style);
}

std::string paragraph(const std::string& text, std::size_t indent, const TableStyle& style) {
  std::string out;
  for (const std::string& line : wrapped(printable(text), style.columns - indent))
    out += std::string(indent, ' ') + line + "\n";
  return out;
}

std::string limitsText(const std::vector<std::string>& limits) {
  return "Limits set for this audit: " + audit::joined(limits);
}

}  // namespace stopwalk::app
