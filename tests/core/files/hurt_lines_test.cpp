// One byte of a failing check's line changed, taken out or put in, whichever and wherever: its device is told
// as failed all the same. What cannot be told is listed in docs/inspection.md.
#include <gtest/gtest.h>

#include <chrono>
#include <numeric>
#include <set>
#include <thread>

#include "core/files/inspection_log.h"
#include "tests/core/files/inspection_texts.h"

namespace stopwalk::files {
namespace {

using inspection::Check;
using inspection::Result;

const std::string kFailing = "lathe-1/bar";

inspection::Moment moment() {
  return *inspection::parseMoment("2026-03-02T09:15:00+01:00");
}

Check checkOf(const std::string& device, Result result) {
  Check c;
  c.device = device, c.machines = {"lathe-1"}, c.round = 1, c.inspector = "Ada";
  c.at = moment(), c.result = result;
  return c;
}

// All that a check may say, in letters of several alphabets, with quotes and with words of the records.
Check fullCheck() {
  Check c = checkOf(kFailing, Result::Fail);
  c.inspector = "Gr\u00FCn \u0E01\u0E49", c.second = "\uD55C \u691C", c.room = "metal";
  c.tested = {{inspection::Tried::Pressed, true}, {inspection::Tried::Latches, false}};
  c.run_down_s = {1.5, 2}, c.note = "pass", c.action = "a \"result\":\"pass\" \\";
  c.corrective = inspection::Corrective{"result", "\U0001F600", moment().date};
  c.tagged_out = inspection::TagOut{"Bo", moment().date};
  c.entered = moment();
  return c;
}

// A failing check between a round, which names all devices, and a pass.
struct HurtLine {
  explicit HurtLine(const Check& check) {
    inspection::Round round;
    round.by = "Ada", round.of = "all", round.at = moment();
    round.devices = {kFailing, "saw/stop", "lathe-2/bar"};
    lines = linesOf(logOf({round, check, checkOf("saw/stop", Result::Pass)}));
    const std::size_t key = lines[1].find("\"device\"");
    id = key + std::string_view("\"device\":").size();
  }
  InspectionLog with(const std::string& line) const { return readInspectionLog(lines[0] + line + lines[2]); }
  // Whether a byte at that place is of the id or of its quotes.
  bool isOfId(std::size_t at) const { return at >= id && at < id + kFailing.size() + 2; }
  std::vector<std::string> lines;
  std::size_t id = 0;
};

// What is told of a log in which one byte of the line was hurt; empty: the failure.
std::string lostBy(const InspectionLog& log, bool is_id_hurt) {
  std::set<std::string> failed;
  for (const Check& c : log.records.checks)
    if (c.result == Result::Fail) failed.insert(c.device);
  if (log.records.unsure_to == 0) return "that nothing is hurt";
  if (failed.contains(kFailing) && failed.size() == 1) return {};
  if (is_id_hurt && (!failed.empty() || !unreadText(log).empty())) return {};
  std::string told = "failures of";
  for (const std::string& device : failed) told += " " + device;
  return told;
}

// Every byte there is.
std::vector<int> allBytes() {
  std::vector<int> bytes(256);
  std::iota(bytes.begin(), bytes.end(), 0);
  return bytes;
}

enum class How { Changed, PutIn };

// Each such hurt by one of the bytes at the places that `part` of `parts` has.
void hurtAll(const HurtLine& hurt, How how, const std::vector<int>& bytes, std::size_t part,
             std::size_t parts, std::vector<std::string>& lost) {
  const std::string& line = hurt.lines[1];
  const auto tell = [&](const std::string& hurt_line, std::size_t at, const std::string& what, bool of_id) {
    if (const std::string told = lostBy(hurt.with(hurt_line), of_id); !told.empty())
      lost.push_back(what + " at " + std::to_string(at) + ": " + told + "\n" + hurt_line);
  };
  for (std::size_t at = part; at < line.size(); at += parts) {
    if (how == How::Changed) tell(std::string(line).erase(at, 1), at, "taken out", hurt.isOfId(at));
    for (const int value : bytes) {
      std::string other = line;
      if (how == How::Changed)
        other[at] = static_cast<char>(value);
      else
        other.insert(at, 1, static_cast<char>(value));
      const bool is_of_id = hurt.isOfId(at) && (how == How::Changed || at > hurt.id);
      if (other != line) tell(other, at, std::to_string(value), is_of_id);
    }
  }
}

void expectNoneLost(const Check& check, How how, const std::vector<int>& bytes) {
  const HurtLine hurt(check);
  const std::size_t parts = std::max(2u, std::thread::hardware_concurrency());
  std::vector<std::vector<std::string>> lost(parts);
  {
    std::vector<std::jthread> threads;
    for (std::size_t part = 0; part < parts; ++part)
      threads.emplace_back([&, part] { hurtAll(hurt, how, bytes, part, parts, lost[part]); });
  }
  std::size_t count = 0;
  for (const auto& of_part : lost)
    for (const std::string& one : of_part)
      if (++count <= 5) ADD_FAILURE() << one;
  EXPECT_EQ(count, 0u);
}

TEST(HurtLines, OfAFailureTellItWhicheverByteIsAnother) {
  expectNoneLost(checkOf(kFailing, Result::Fail), How::Changed, allBytes());
}

TEST(HurtLines, OfAFailureTellItWhateverByteIsPutIn) {
  expectNoneLost(checkOf(kFailing, Result::Fail), How::PutIn, allBytes());
}

TEST(HurtLines, OfAFailureOfWhichMuchIsSaidTellItToo) {
  std::vector<int> bytes = {0, 1, 0x80, 0x98, 0xE0, 0xED, 0xFF};
  for (const char c : std::string_view("\n\r ,:;[]{}\"\\/x0-")) bytes.push_back(c);
  for (const How how : {How::Changed, How::PutIn}) expectNoneLost(fullCheck(), how, bytes);
}

// Whatever stands behind the device, and wherever the line is broken.
TEST(HurtLines, BrokenInThreeAreOne) {
  const HurtLine hurt(fullCheck());
  const std::string& line = hurt.lines[1];
  for (std::size_t first = 30; first + 1 < line.size(); first += 7)
    for (std::size_t second = first + 2; second + 2 < line.size(); second += 41) {
      std::string broken = line;
      broken.insert(second, 1, '\n').insert(first, 1, '\n');
      const InspectionLog log = hurt.with(broken);
      ASSERT_EQ(log.lines, 3u) << broken;
      ASSERT_EQ(log.bad.at(0).line, 2u) << broken;
      EXPECT_EQ(lostBy(log, hurt.isOfId(first) || hurt.isOfId(second)), "") << broken;
    }
}

TEST(HurtLines, OfManyResultsAreReadAtOnce) {
  std::string fails, devices, records;
  for (int i = 0; i < 60'000; ++i) fails += R"("k":"fail","result":)", devices += R"("device":"a/b",)";
  for (int i = 0; i < 20'000; ++i) records += R"({"stopwalk_inspections":1,"k":"a"},)";
  const auto begun = std::chrono::steady_clock::now();
  for (const std::string& text : {fails + "\n", devices + "\n", records + "\n"}) readInspectionLog(text);
  EXPECT_LT(std::chrono::steady_clock::now() - begun, std::chrono::seconds(60)) << "hours, by the square";
}

}  // namespace
}  // namespace stopwalk::files
