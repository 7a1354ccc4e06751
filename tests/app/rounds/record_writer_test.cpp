#include "app/rounds/record_writer.h"

#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QElapsedTimer>
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

}  // namespace
}  // namespace stopwalk::rounds
