#include "app/rounds/record_writer.h"

#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QElapsedTimer>
#include <QTemporaryDir>
#include <optional>
#include <stdexcept>

namespace stopwalk::rounds {
namespace {

TEST(RecordWriter, SaysThatItIsUnsureWhereMakingTheRecordFailsAndGoesOn) {
  int argc = 1;
  char name[] = "test";
  char* argv[] = {name, nullptr};
  const QCoreApplication app(argc, argv);
  RecordWriter writer;
  std::optional<records::Appended> told;
  QObject::connect(&writer, &RecordWriter::written,
                   [&](const records::Appended& appended, const inspection::Record&) { told = appended; });
  for (const char* why : {"no memory is left", "nor now"}) {
    told.reset();
    writer.write("/nowhere/at/all/records", 0,
                 [why]() -> inspection::Record { throw std::runtime_error(why); });
    QElapsedTimer clock;
    clock.start();
    while (!told && clock.elapsed() < 10000) QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
    ASSERT_TRUE(told.has_value());
    EXPECT_EQ(told->written, records::Written::Unsure);
    EXPECT_EQ(told->why, why);
    EXPECT_FALSE(writer.isWriting());
  }
}

// Such as one that was put in the place of the log.
TEST(RecordWriter, AddsNothingToALogOfAnotherHead) {
  int argc = 1;
  char name[] = "test";
  char* argv[] = {name, nullptr};
  const QCoreApplication app(argc, argv);
  const QTemporaryDir folder;
  const std::string log = folder.filePath("shop.inspections.jsonl").toStdString();
  ASSERT_EQ(records::appendRecord(log, inspection::Round{}).written, records::Written::Yes);
  RecordWriter writer;
  std::optional<records::Appended> told;
  QObject::connect(&writer, &RecordWriter::written,
                   [&](const records::Appended& appended, const inspection::Record&) { told = appended; });
  writer.write(log, {1, std::string(64, 'a')}, []() -> inspection::Record { return inspection::Round{}; });
  QElapsedTimer clock;
  clock.start();
  while (!told && clock.elapsed() < 10000) QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
  ASSERT_TRUE(told.has_value());
  EXPECT_EQ(told->written, records::Written::No);
  EXPECT_NE(told->why.find("it is not the log that was read"), std::string::npos) << told->why;
}

}  // namespace
}  // namespace stopwalk::rounds
