#include "core/inspection/person.h"

#include <utf8proc.h>

#include <utility>
#include <vector>

namespace stopwalk::inspection {
namespace {

// What a record holds in place of bytes that were no UTF-8.
constexpr utf8proc_int32_t kNoCharacter = 0xFFFD;

bool isLetterOrDigit(utf8proc_int32_t character) {
  const utf8proc_category_t of = utf8proc_category(character);
  return (of >= UTF8PROC_CATEGORY_LU && of <= UTF8PROC_CATEGORY_LO) ||
         (of >= UTF8PROC_CATEGORY_ND && of <= UTF8PROC_CATEGORY_NO);
}

bool isBlank(utf8proc_int32_t character) {
  const utf8proc_category_t of = utf8proc_category(character);
  constexpr utf8proc_int32_t kZeroWidth = 0x200B, kByteOrder = 0xFEFF;
  return of == UTF8PROC_CATEGORY_CC || (of >= UTF8PROC_CATEGORY_ZS && of <= UTF8PROC_CATEGORY_ZP) ||
         character == kZeroWidth || character == kByteOrder;
}

// Its letters and digits; empty: there are none, or it cannot be read.
std::u32string lettersOf(const std::string& name) {
  constexpr auto kFold =
      static_cast<utf8proc_option_t>(UTF8PROC_COMPAT | UTF8PROC_DECOMPOSE | UTF8PROC_STABLE |
                                     UTF8PROC_CASEFOLD | UTF8PROC_IGNORE | UTF8PROC_STRIPMARK);
  const auto* bytes = reinterpret_cast<const utf8proc_uint8_t*>(name.data());
  const auto size = static_cast<utf8proc_ssize_t>(name.size());
  const utf8proc_ssize_t room = utf8proc_decompose(bytes, size, nullptr, 0, kFold);
  std::u32string letters;
  if (room <= 0) return letters;
  std::vector<utf8proc_int32_t> folded(static_cast<std::size_t>(room));
  utf8proc_decompose(bytes, size, folded.data(), room, kFold);
  for (const utf8proc_int32_t character : folded)
    if (character == kNoCharacter)
      return {};
    else if (isLetterOrDigit(character))
      letters += static_cast<char32_t>(character);
  return letters;
}

}  // namespace

std::string nameOf(const std::string& typed) {
  std::string name;
  if (lettersOf(typed).empty()) return name;
  bool is_behind_blank = false;
  for (std::size_t at = 0; at < typed.size();) {
    utf8proc_int32_t character = 0;
    const auto* bytes = reinterpret_cast<const utf8proc_uint8_t*>(typed.data()) + at;
    const auto size = static_cast<std::size_t>(
        utf8proc_iterate(bytes, static_cast<utf8proc_ssize_t>(typed.size() - at), &character));
    if (isBlank(character)) {
      is_behind_blank = !name.empty();
    } else {
      if (std::exchange(is_behind_blank, false)) name += ' ';
      name.append(typed, at, size);
    }
    at += size;
  }
  return name;
}

bool maybeSamePerson(const std::string& a, const std::string& b) {
  const std::u32string first = lettersOf(a), second = lettersOf(b);
  return first.empty() || second.empty() || first == second;
}

}  // namespace stopwalk::inspection
