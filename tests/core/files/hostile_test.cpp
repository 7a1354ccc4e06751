#include <gtest/gtest.h>
#include <sys/resource.h>

#include <ctime>
#include <random>

#include "core/files/device_kinds_reader.h"
#include "core/files/layout_reader.h"
#include "core/files/layout_writer.h"
#include "tests/core/files/texts.h"

// Files made to harm or cut to pieces: each is read or refused within bounds of time and memory.
namespace stopwalk::files {
namespace {

#if defined(__SANITIZE_ADDRESS__)
constexpr bool kSanitized = true;
#else
constexpr bool kSanitized = false;
#endif

const std::string kHead = "stopwalk_layout: 1\nunits: mm\nsite: {name: S}\n";

std::string repeated(const std::string& piece, std::size_t times) {
  std::string text;
  text.reserve(piece.size() * times);
  for (std::size_t i = 0; i < times; ++i) text += piece;
  return text;
}

// What any text must come out of unharmed.
Result<layout::Layout> survive(const std::string& text) {
  auto read = readLayout(text, "f", bundledDeviceKinds());
  bool has_error = false;
  for (const Diagnostic& d : read.diagnostics) {
    has_error = has_error || d.severity == Severity::Error;
    EXPECT_GE(d.line, 1);
    EXPECT_GE(d.column, 1);
    EXPECT_LT(d.excerpt.size() + d.text.size(), 5000U);
    EXPECT_FALSE(format(d).empty());
  }
  EXPECT_NE(read.value.has_value(), has_error);
  return read;
}

double processorSeconds() {
  return static_cast<double>(std::clock()) / CLOCKS_PER_SEC;
}

// Within bounds that careless reading of such files breaks many times over.
Result<layout::Layout> surviveFast(const std::string& text) {
  const double start = processorSeconds();
  auto read = survive(text);
  rusage usage{};
  getrusage(RUSAGE_SELF, &usage);
  if (!kSanitized) {
    EXPECT_LT(processorSeconds() - start, 4);
    EXPECT_LT(usage.ru_maxrss, 900 * 1024);
  }
  return read;
}

TEST(Hostile, FilesOfTheFolderAreRefusedOrReadAsTheirNamesSay) {
  int count = 0;
  for (const auto& entry :
       std::filesystem::directory_iterator(STOPWALK_SOURCE_DIR "/tests/core/files/hostile")) {
    if (entry.path().extension() != ".yaml") continue;
    const auto read = survive(textOf(entry.path()));
    EXPECT_EQ(read.value.has_value(), entry.path().filename().string().starts_with("read-"))
        << entry.path() << "\n"
        << all(read.diagnostics);
    ++count;
  }
  EXPECT_GE(count, 20);
}

TEST(Hostile, DeepNestingOfEveryKindIsRefusedAtOnce) {
  constexpr std::size_t kMany = 1'000'000;
  for (const char* before : {"", "a: ", "a:\n  ", "- ", "? "})
    for (const char* piece : {"[",   "{",  "- ", "? ", "[[", "{a: ", "[{a: ", ": ", "- - ", "!a ", "&a ",
                              "*a ", "\"", "'",  "|",  ">",  "%",    "@",     "#",  "[,",   "{?",  "--- "})
      EXPECT_FALSE(surviveFast(before + repeated(piece, kMany)).value) << before << piece;
}

TEST(Hostile, DeepIndentIsRefusedAtOnce) {
  std::string text;
  for (std::size_t i = 0; i < 2000; ++i) text += std::string(i, ' ') + "a:\n";
  EXPECT_FALSE(surviveFast(text).value);
}

TEST(Hostile, SixtyFourMebibytes) {
  constexpr std::size_t kLimit = std::size_t{64} << 20;
  EXPECT_NE(all(surviveFast(std::string(kLimit + 1, ' ')).diagnostics).find("over 64 MiB"),
            std::string::npos);
  if (kSanitized) return;
  for (const char* text : {"\n", "- a\n", "x: 1\n", "x: [a,", "x: [[],", "\xC3\xA4"}) {
    const std::string before = std::string_view(text).starts_with("x: [") ? "x: [" : "";
    const std::string piece = text + before.size();
    const double start = processorSeconds();
    EXPECT_FALSE(survive(before + repeated(piece, (kLimit - before.size()) / piece.size())).value) << text;
    EXPECT_LT(processorSeconds() - start, 40) << text;
  }
  rusage usage{};
  getrusage(RUSAGE_SELF, &usage);
  EXPECT_LT(usage.ru_maxrss, 1200 * 1024);
}

TEST(Hostile, AHundredThousandKeysInOneMap) {
  std::string text = kHead, again = kHead;
  for (int i = 0; i < 100'000; ++i) text += "k" + std::to_string(i) + ": 1\n";
  for (int i = 100'000; i-- > 0;) again += "k" + std::to_string(i) + ": 1\n";
  const auto read = surviveFast(text + "...\n");
  EXPECT_TRUE(read.value);
  EXPECT_NE(all(read.diagnostics).find("and 90000 more problems"), std::string::npos);
  EXPECT_NE(writeLayout(*read.value).find("k99999: 1\n"), std::string::npos);
  EXPECT_FALSE(surviveFast(text + again.substr(kHead.size())).value);
}

TEST(Hostile, TwentyThousandIdsThatDoNotExist) {
  std::string text = kHead + "rooms:\n";
  for (int i = 0; i < 20'000; ++i)
    text += "  - {id: room-number-" + std::to_string(i) + ", outline: [[0, 0], [9, 0], [9, 9]]}\n";
  text += "devices:\n";
  for (int i = 0; i < 20'000; ++i)
    text += "  - {id: d" + std::to_string(i) + ", kind: paddle, at: [0, 0], faces: 0, stops: [room-nunber-" +
            std::to_string(i) + "]}\n";
  const auto read = surviveFast(text);
  EXPECT_FALSE(read.value);
  EXPECT_NE(all(read.diagnostics).find("did you mean `room-number-0`?"), std::string::npos);
}

TEST(Hostile, EverythingOnOneLine) {
  std::string text = "{stopwalk_layout: 1, units: mm, site: {name: S}, rooms: [";
  for (int i = 0; i < 40'000; ++i)
    text += "{id: r" + std::to_string(i) + ", outline: [[0, 0], [9, 0], [9, 9]]}, ";
  EXPECT_TRUE(surviveFast(text + "]}\n...\n").value);
  std::string wrong = "{stopwalk_layout: 1, units: mm, site: {name: S}, rooms: [";
  for (int i = 0; i < 40'000; ++i) wrong += "{id: R" + std::to_string(i) + ", outline: []}, ";
  EXPECT_FALSE(surviveFast(wrong + "]}\n...\n").value);
}

TEST(Hostile, LongScalars) {
  const std::string digits(1'000'000, '1');
  EXPECT_FALSE(surviveFast(kHead + "notes: [{id: a, at: [0, " + digits + "], text: t}]\n...\n").value);
  EXPECT_FALSE(surviveFast(kHead + "notes: [{id: a, at: [0, 0." + digits + "x], text: t}]\n...\n").value);
  EXPECT_TRUE(
      surviveFast(kHead + "notes: [{id: a, at: [0, 0." + digits + "], text: " + digits + "}]\n...\n").value);
  EXPECT_FALSE(surviveFast("stopwalk_layout: 1\nunits: ft\nsite: {name: S}\nnotes: [{id: a, at: [0, 1e" +
                           digits + "], text: t}]\n...\n")
                   .value);
  EXPECT_TRUE(surviveFast("stopwalk_layout: 1\nunits: ft\nsite: {name: S}\nnotes: [{id: a, at: [0, 0." +
                          digits + "], text: t}]\n...\n")
                  .value);
  EXPECT_FALSE(surviveFast(kHead + digits + ": 1\n").value);
}

TEST(Hostile, AFileCutAnywhereIsNeverTakenForWhole) {
  const std::string text = textOf(STOPWALK_SOURCE_DIR "/sample-layouts/scene-shop.layout.yaml");
  const auto whole = survive(text);
  for (std::size_t size = 0; size + 1 < text.size(); ++size) {
    const auto read = survive(text.substr(0, size));
    EXPECT_FALSE(read.diagnostics.empty()) << size;
  }
  EXPECT_TRUE(survive(text.substr(0, text.size() - 1)).diagnostics.empty());
}

// A changed byte may give another layout that is just as readable; what is read must then be written and read
// as the same.
TEST(Hostile, FlippedBitsAreReadWholeOrRefused) {
  const std::string text = textOf(STOPWALK_SOURCE_DIR "/sample-layouts/scene-shop.layout.yaml");
  std::mt19937_64 random(7);
  int read_count = 0;
  for (int i = 0; i < 6000; ++i) {
    std::string changed = text;
    for (std::uint64_t flips = 1 + random() % 3; flips > 0; --flips)
      changed[random() % changed.size()] ^= static_cast<char>(1U << (random() % 8));
    const auto read = survive(changed);
    if (!read.value) continue;
    ++read_count;
    const auto again = survive(writeLayout(*read.value));
    ASSERT_TRUE(again.value) << changed << all(again.diagnostics);
    ASSERT_TRUE(*again.value == *read.value) << "round " << i << "\n" << writeLayout(*read.value);
  }
  EXPECT_GT(read_count, 100);
}

}  // namespace
}  // namespace stopwalk::files
