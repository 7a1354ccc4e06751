#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

// What other programs make of a log when they save it. What it says can be read from that all the same; that
// it is what was written nobody knows any more.
namespace stopwalk::files {

// How many bytes at the beginning of the text a formatter of JSON laid over several lines, as one record,
// with the last line break unless the next record opens before it; 0: it begins with no such thing.
std::size_t laidOverLines(std::string_view text);

// A record, or one of a list, in the form that it was written in; none: it is in that form, blanks around it
// or not, or it is no whole record.
std::optional<std::string> unformatted(std::string_view record);

// Whether it was saved as UTF-16: each other byte is zero, as a rule.
bool isUtf16(std::string_view line);
// Whether the first byte of each two is the higher one: the first line of a text tells it of all.
bool isBigEndian(std::string_view first_line);
// What such a line says. Half a line break may stand at either end.
std::string fromUtf16(std::string_view whole, bool is_big_endian);

}  // namespace stopwalk::files
