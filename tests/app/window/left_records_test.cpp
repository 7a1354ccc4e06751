// Saving a layout under another name does not make its failed devices work silently.
#include <QPushButton>

#include "app/window/notice_bar.h"
#include "app/window/records_beside.h"
#include "tests/app/window/inspecting.h"

namespace stopwalk::window {
namespace {

class LeftRecords : public Inspecting {
 protected:
  // A round with one check, failed; then saved under another name.
  void failOneAndSaveAs() {
    openAndCome();
    startRound();
    device = round().device();
    type("3f");
    enter();
    ASSERT_EQ(window->records().failed({}).size(), 1u);
    asker.file = other;
    ASSERT_TRUE(window->files().saveAs());
    settle();
  }
  QString told() { return window->notices().text(); }
  void answer(const QString& text) {
    for (auto* button : window->notices().findChildren<QPushButton*>())
      if (button->isVisible() && button->text() == text) return button->click();
    ADD_FAILURE() << text.toStdString();
  }
  QByteArray bytesOf(const QString& file_path) {
    QFile log(file_path);
    return log.open(QFile::ReadOnly) ? log.readAll() : QByteArray();
  }

  const QString other = pathOf("other.layout.yaml"), other_log = pathOf("other.inspections.jsonl");
  std::string device;
};

TEST_F(LeftRecords, AreToldWithWhatFailedAndCopiedAlong) {
  failOneAndSaveAs();
  EXPECT_TRUE(told().contains("shop.layout.yaml stay with it")) << told().toStdString();
  EXPECT_TRUE(told().contains("not known here: 1 ")) << told().toStdString();
  EXPECT_TRUE(window->records().failed({}).empty());
  answer("Copy the records");
  EXPECT_EQ(bytesOf(other_log), bytesOf(QString::fromStdString(file)));
  ASSERT_EQ(window->records().failed({}).size(), 1u);
  EXPECT_EQ(window->records().failed({})[0].device, device);
  EXPECT_FALSE(told().contains("stay with it")) << told().toStdString();
}

// shop.layout.yaml and shop.yaml have one and the same log.
TEST_F(LeftRecords, ThatTwoLayoutsShareAreTold) {
  openAndCome();
  startRound();
  asker.file = pathOf("shop.yaml");
  ASSERT_TRUE(window->files().saveAs());
  settle();
  EXPECT_TRUE(told().contains("shop.inspections.jsonl are the inspection records of shop.layout.yaml too"))
      << told().toStdString();
}

TEST_F(LeftRecords, AreLeftWhereThatIsWanted) {
  failOneAndSaveAs();
  answer("Begin without them");
  EXPECT_EQ(told(), "");
  EXPECT_FALSE(QFile::exists(other_log));
}

TEST_F(LeftRecords, AreNotPutOverThoseThatCameMeanwhile) {
  failOneAndSaveAs();
  inspection::Round theirs{0, records::momentNow(), "Bo Example", "all", {}, {}};
  theirs.devices = {device};
  ASSERT_EQ(records::appendRecord(other_log.toStdString(), theirs).written, records::Written::Yes);
  const QByteArray bytes = bytesOf(other_log);
  answer("Copy the records");
  EXPECT_EQ(bytesOf(other_log), bytes);
  EXPECT_EQ(asker.asked.back(), "The records were not copied");
  EXPECT_TRUE(told().contains("has records of its own")) << told().toStdString();
}

TEST_F(LeftRecords, OfNoneNothingIsTold) {
  openAndCome();
  asker.file = other;
  ASSERT_TRUE(window->files().saveAs());
  settle();
  EXPECT_EQ(told(), "");
}

}  // namespace
}  // namespace stopwalk::window
