// What is printed of inspections, saved from the window.
#include "app/window/round_papers.h"

#include <QAction>
#include <QFile>

#include "app/poster/lettering.h"
#include "app/records/append_record.h"
#include "tests/app/poster/pdf_words.h"
#include "tests/app/window/files.h"
#include "tests/app/window/inspecting.h"

namespace stopwalk::window {
namespace {

class OnPaper : public Files {
 protected:
  OnPaper() {
    QFile::copy(":/sample-layouts/scene-shop.layout.yaml", path);
    QFile::setPermissions(path, QFile::ReadOwner | QFile::WriteOwner);
    window->openPath(path);
    papers.connect(&papers, &RoundPapers::said, [this](const QString& sentence) {
      if (!sentence.isEmpty()) said << sentence;
    });
  }

  RoundPaperSource source() const {
    const Document& document = window->document();
    poster::Wish wish;
    wish.family = poster::usualFamily();
    const records::ReadRecords read = records::readRecords(path.toStdString());
    const audit::Profile profile = audit::defaultProfile();
    return {{document.edited().snapshot(),
             std::make_shared<const layout::DeviceKinds>(document.catalogue().kinds), profile,
             document.fileHash(),
             inspection::failedDevices(read.log.records, profile.inspection, {records::momentNow().date})},
            read,
            round,
            {},
            wish};
  }
  void open(const std::vector<std::string>& devices) {
    round = inspection::Round{0, records::momentNow(), "Ada Example", "all", devices, {}};
    round->number = records::appendRecord(file(), *round).number;
    ASSERT_EQ(round->number, 1u);
  }
  void record(const std::string& device, inspection::Result result) {
    inspection::Check check;
    check.round = 1;
    check.device = device;
    check.machines = {"table-saw"};
    check.at = records::momentNow();
    check.inspector = "Ada Example";
    check.result = result;
    ASSERT_EQ(records::appendRecord(file(), check).written, records::Written::Yes);
  }
  std::string file() const { return records::recordsFileOf(path.toStdString()); }
  QString text(const QString& name) { return poster::textOfPdf(pathOf(name)).simplified(); }

  const QString path = pathOf("shop.layout.yaml");
  std::optional<inspection::Round> round;
  QStringList said;
  RoundPapers papers{window->document(), window->files(), asker, [this] { return source(); }};
};

TEST_F(OnPaper, TheSheetIsOfTheRoundThatIsWalked) {
  open({"grinder/stop", "table-saw/paddle"});
  asker.file = pathOf("round.pdf");
  papers.saveSheet();
  EXPECT_EQ(asker.asked, QStringList());
  EXPECT_EQ(asker.suggested, pathOf("shop-round.pdf"));
  const QString sheet = text("round.pdf");
  EXPECT_TRUE(sheet.contains("Round 1, opened")) << sheet.toStdString();
  EXPECT_TRUE(sheet.contains("All devices (2)"));
  EXPECT_LT(sheet.indexOf("grinder/stop"), sheet.indexOf("table-saw/paddle"));
  EXPECT_EQ(said.last(), "Written: " + pathOf("round.pdf"));
}

TEST_F(OnPaper, WithoutARoundItIsOfAllDevicesOrOfWhatIsDue) {
  papers.saveSheet();
  EXPECT_EQ(asker.asked, QStringList("A sheet of which devices?"));
  EXPECT_FALSE(QFile::exists(pathOf("round.pdf"))) << "it was called off";
  asker.answers = {"What is due"};
  asker.file = pathOf("round.pdf");
  papers.saveSheet();
  EXPECT_TRUE(text("round.pdf").contains("Devices that are due (15)"));
  EXPECT_FALSE(QFile::exists(QString::fromStdString(file()))) << "it opens no round";
}

TEST_F(OnPaper, TheBundleIsOfThePeriodThatIsAskedFor) {
  papers.saveBundle();
  EXPECT_EQ(asker.asked, QStringList("There are no records"));
  open({"table-saw/paddle"});
  record("table-saw/paddle", inspection::Result::Fail);
  asker.answers = {"All there is"};
  asker.file = pathOf("records.pdf");
  papers.saveBundle();
  const QString bundle = text("records.pdf");
  EXPECT_TRUE(bundle.contains("2 records, head hash")) << bundle.toStdString();
  EXPECT_TRUE(bundle.contains("FAIL"));
  EXPECT_TRUE(poster::hasAllFonts(pathOf("records.pdf")));
}

TEST_F(OnPaper, IsOfALayoutThatIsInItsFile) {
  addAPhone();
  papers.saveSheet();
  EXPECT_EQ(asker.asked, QStringList("Save the layout first?"));
  EXPECT_FALSE(window->document().isSaved());
  asker.answers = {"Save the layout first", "All devices"};
  asker.file = pathOf("round.pdf");
  papers.saveSheet();
  EXPECT_TRUE(window->document().isSaved());
  EXPECT_TRUE(
      text("round.pdf").contains("Layout " + QString::fromStdString(window->document().fileHash()).left(12)));
}

TEST_F(OnPaper, WhereItCannotBeWrittenItIsToldAndNothingIsLost) {
  open({"table-saw/paddle"});
  asker.file = pathOf("no-such-folder/round.pdf");
  papers.saveSheet();
  EXPECT_EQ(asker.asked, QStringList("round.pdf was not written"));
  asker.file = path;
  papers.saveSheet();
  EXPECT_EQ(asker.asked.last(), "That is the layout itself");
  EXPECT_TRUE(textOf(path).startsWith("stopwalk_layout") || textOf(path).startsWith("#"));
  put(pathOf("old.pdf"), "the old sheet");
  QFile::setPermissions(pathOf("old.pdf"), QFile::ReadOwner);
  asker.file = pathOf("old.pdf");
  papers.saveSheet();
  EXPECT_EQ(asker.asked.last(), "old.pdf was not written");
  EXPECT_EQ(textOf(pathOf("old.pdf")), "the old sheet");
}

TEST_F(OnPaper, ASheetTakesThePlaceOfNoProfile) {
  layout::Layout drawn = window->document().edited().layout();
  drawn.profile = "house.pdf";
  window->document().edited().apply({"Change the profile", drawn});
  ASSERT_TRUE(window->files().save());
  put(pathOf("house.pdf"), "the rules of the house");
  open({"table-saw/paddle"});
  asker.file = pathOf("house.pdf");
  papers.saveSheet();
  EXPECT_EQ(asker.asked.last(), "house.pdf was not written");
  EXPECT_EQ(textOf(pathOf("house.pdf")), "the rules of the house");
}

class FromTheMenu : public Inspecting {
 protected:
  void choose(const QString& words) {
    for (auto* action : window->findChildren<QAction*>())
      if (action->text() == words) return action->trigger();
    FAIL() << "no action " << words.toStdString();
  }
  QString text(const QString& name) { return poster::textOfPdf(pathOf(name)).simplified(); }
};

TEST_F(FromTheMenu, TheSheetIsOfTheRoundUnderWayAndTheBundleOfItsRecords) {
  openAndCome();
  startRound();
  asker.file = pathOf("round.pdf");
  choose("Save the sheet of this round as P&DF…");
  EXPECT_EQ(asker.asked, QStringList());
  EXPECT_TRUE(text("round.pdf").contains("Round 1, opened")) << text("round.pdf").left(400).toStdString();
  asker.answers = {"All there is"};
  asker.file = pathOf("records.pdf");
  choose("Save the &bundle of a period…");
  EXPECT_TRUE(text("records.pdf").contains("1 record, head hash"))
      << text("records.pdf").left(900).toStdString();
  EXPECT_EQ(window->sentence(), "Written: " + pathOf("records.pdf"));
}

}  // namespace
}  // namespace stopwalk::window
