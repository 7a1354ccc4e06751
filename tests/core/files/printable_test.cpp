#include "core/files/printable.h"

#include <gtest/gtest.h>

namespace stopwalk::files {
namespace {

TEST(Printable, KeepsLettersOfEachAlphabet) {
  for (const char* text : {"plain", "Grüße", "\u0E01\u0E49", "\uD55C", "検査", "\U0001F600", "\U0010FFFF"}) {
    EXPECT_EQ(printable(text), text);
    EXPECT_EQ(printableJson(text), text);
  }
}

// A form too long, half of a pair, beyond the last character, cut short.
TEST(Printable, ReplacesEachByteThatIsNoUtf8) {
  for (const char* bytes :
       {"\xC0\x80", "\xC1\xBF", "\xE0\x98\x81", "\xE0\x9F\xBF", "\xF0\x8F\xBF\xBF", "\xED\xA0\x80",
        "\xED\xB5\x9C", "\xED\xBF\xBF", "\xF4\x90\x80\x80", "\xF5\x80\x80\x80", "\xE6\xA4", "\x80", "\xFF"}) {
    std::string marks, escapes;
    for (std::size_t i = 0; i < std::string_view(bytes).size(); ++i) marks += "\uFFFD", escapes += "\\ufffd";
    EXPECT_EQ(printable("a" + std::string(bytes) + "b"), "a" + marks + "b");
    EXPECT_EQ(printableJson("a" + std::string(bytes) + "b"), "a" + escapes + "b");
  }
}

}  // namespace
}  // namespace stopwalk::files
