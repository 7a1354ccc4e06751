#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "core/audit/counted.h"
#include "core/audit/report.h"

// What the tables for people are put together from.
namespace stopwalk::app {

// Longer lines are hard to read; a table may be wider.
inline constexpr std::size_t kWidestText = 100;

struct TableStyle {
  std::size_t columns = 100;
  bool colour = false;  // besides the words, never alone
};

enum class Ink { Plain, Fail, Warn, Strong };

Ink inkOf(audit::Verdict verdict);
Ink inkOf(audit::Severity severity);
std::string inked(const std::string& text, Ink ink, const TableStyle& style);

struct Column {
  std::string head;
  std::size_t columns = 0;
  bool to_right = false;
  std::size_t gap = 2;  // before it
};

// A row whose cells may take several lines; the ink is that of the first cell.
std::string row(const std::vector<Column>& columns, const std::vector<std::string>& cells, Ink ink,
                const TableStyle& style);
std::string headRow(const std::vector<Column>& columns, const TableStyle& style);

std::string paragraph(const std::string& text, std::size_t indent, const TableStyle& style);

// "Limits set for this audit: stop-too-far=4, phone-too-far=20"
std::string limitsText(const std::vector<std::string>& limits);

using audit::counted;

}  // namespace stopwalk::app
