// What is left of the records when each single call to the system fails, or the program or the computer stops
// at it.
#include <gtest/gtest.h>
#include <sys/mman.h>

#include <algorithm>
#include <cerrno>
#include <filesystem>
#include <fstream>

#include "app/records/append_record.h"
#include "tests/app/documents/faults.h"
#include "tests/app/documents/folder.h"
#include "tests/app/records/written_records.h"

namespace stopwalk::records {
namespace {

using documents::FaultCase;
using documents::Manner;

constexpr std::size_t kBefore = 3;
constexpr int kThen = 3, kMostCalls = 200;

// Seen by the process that is stopped and by the one that looks.
struct Told {
  bool confirmed[kThen];
  bool unsure[kThen];
};

std::vector<std::string> linesIn(const std::string& file) {
  std::vector<std::string> lines;
  std::ifstream in(file, std::ios::binary);
  for (std::string line; std::getline(in, line);) lines.push_back(line);
  return lines;
}

class RecordFaults : public testing::TestWithParam<FaultCase> {
 protected:
  RecordFaults()
      : told_(static_cast<Told*>(
            ::mmap(nullptr, sizeof(Told), PROT_READ | PROT_WRITE, MAP_SHARED | MAP_ANONYMOUS, -1, 0))) {}
  ~RecordFaults() override { ::munmap(told_, sizeof(Told)); }

  // False: that many calls are not made.
  bool writeAndLook(int at, bool starts_torn);

  Told* told_;
  int confirmed_ = 0, refused_ = 0, torn_ = 0;
};

bool RecordFaults::writeAndLook(int at, bool starts_torn) {
  const documents::Folder folder;
  const std::string work = folder.path("w").toStdString(), log = work + "/shop.inspections.jsonl";
  std::filesystem::create_directory(work);
  std::vector<std::string> sure;
  std::string text, head = files::kNoLineBefore;
  for (std::size_t i = 0; i < kBefore; ++i) {
    sure.push_back("before " + std::to_string(i));
    text += files::recordLine(checkNoted(sure.back()), i + 1, head);
    head = files::endOfLog(text).head;
  }
  std::ofstream(log, std::ios::binary) << text;
  if (starts_torn) std::filesystem::resize_file(log, std::filesystem::file_size(log) - 40), sure.pop_back();
  *told_ = {};
  const documents::FaultyRun run = runWithFault(folder.path("w"), GetParam().at(at), [&] {
    for (int i = 0; i < kThen; ++i) {
      const Appended done =
          appendRecord(log, checkNoted("then " + std::to_string(i)), std::chrono::milliseconds(50));
      told_->confirmed[i] = done.written == Written::Yes;
      told_->unsure[i] = done.written == Written::Unsure;
      if (done.written != Written::Yes && done.why.empty()) return 1;
    }
    return 0;
  });
  const std::string where = "call " + std::to_string(at) + " (" + run.call + ")";
  EXPECT_TRUE(run.status == 0 || run.status == documents::kStopped) << where << ": refused without a word";
  const bool stopped = run.status == documents::kStopped;

  const files::InspectionLog left = readRecords(work + "/shop.layout.yaml").log;
  EXPECT_TRUE(left.bad.empty()) << where << ": " << left.bad.front().line << " " << left.bad.front().why;
  bool may_be_torn = stopped || starts_torn;
  std::vector<std::string> notes = notesIn(left);
  for (int i = 0; i < kThen; ++i) {
    const std::string note = "then " + std::to_string(i);
    may_be_torn = may_be_torn || told_->unsure[i];
    const bool there = std::ranges::find(notes, note) != notes.end();
    if (told_->confirmed[i]) sure.push_back(note), ++confirmed_;
    if (!told_->confirmed[i] && !told_->unsure[i] && !stopped) {
      EXPECT_FALSE(there) << where << " " << note;
      ++refused_;
    }
    if (there && !told_->confirmed[i]) std::erase(notes, note);  // it was never promised
  }
  EXPECT_EQ(notes, sure) << where;
  EXPECT_TRUE(left.torn.empty() || may_be_torn) << where << ": " << left.torn;
  torn_ += left.torn.empty() ? 0 : 1;

  const std::size_t lines = left.lines;
  const Appended after = appendRecord(log, checkNoted("after"));
  EXPECT_EQ(after.written, Written::Yes) << where << " " << after.why;
  EXPECT_EQ(after.number, lines + 1) << where;
  EXPECT_EQ(after.set_aside.empty(), left.torn.empty()) << where;
  EXPECT_EQ(files::verifyLog(readRecords(work + "/shop.layout.yaml").log).line, 0u) << where;
  std::vector<std::string> pieces = linesIn(tornFileOf(log));
  std::ranges::sort(pieces);
  EXPECT_EQ(std::ranges::adjacent_find(pieces), pieces.end()) << where << ": put aside twice";
  return run.reached;
}

TEST_P(RecordFaults, NothingConfirmedIsLost) {
  for (const bool starts_torn : {false, true}) {
    int at = 1;
    while (at < kMostCalls && writeAndLook(at, starts_torn)) ++at;
    EXPECT_GT(at, 10);
    EXPECT_LT(at, kMostCalls);
  }
  EXPECT_GT(confirmed_, 0);
  RecordProperty("confirmed", confirmed_);
  RecordProperty("refused", refused_);
  RecordProperty("torn", torn_);
}

INSTANTIATE_TEST_SUITE_P(Kinds, RecordFaults,
                         testing::Values(FaultCase{"NoSpaceOnce", Manner::FailOnce, ENOSPC, false},
                                         FaultCase{"NoSpaceEverAfter", Manner::FailEverAfter, ENOSPC, false},
                                         FaultCase{"BadDiskOnce", Manner::FailOnce, EIO, false},
                                         FaultCase{"BadDiskEverAfter", Manner::FailEverAfter, EIO, false},
                                         FaultCase{"ShortWrite", Manner::WriteShort, 0, false},
                                         FaultCase{"Stopped", Manner::Stop, 0, false},
                                         FaultCase{"PowerCutKept", Manner::PowerCutKept, 0, false},
                                         FaultCase{"PowerCutUndone", Manner::PowerCutUndone, 0, false}),
                         [](const auto& param) { return std::string(param.param.name); });

}  // namespace
}  // namespace stopwalk::records
