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

TEST_F(OnPaper, TheBundleIsOfTheDaysThatAreTypedAndATableByTheNamesEnd) {
  open({"table-saw/paddle"});
  record("table-saw/paddle", inspection::Result::Fail);
  asker.answers = {"From … to …"};
  asker.filled = {{"2026-03-32", "2026-04-01"}, {"2026-04-02", "2026-04-01"}, {"2026-01-01", "2026-01-31"}};
  asker.file = pathOf("records.csv");
  papers.saveBundle();
  EXPECT_EQ(asker.asked.size(), 4) << "it asks again until both are days, the earlier first";
  EXPECT_TRUE(asker.said.last().contains("2026-03-02")) << asker.said.last().toStdString();
  EXPECT_EQ(asker.offered, QStringList({"2026-04-02", "2026-04-01"})) << "what was typed is kept";
  const QByteArray table = textOf(pathOf("records.csv"));
  EXPECT_TRUE(table.startsWith("kind,number,")) << table.left(200).toStdString();
  EXPECT_TRUE(table.contains("2026-01-01 to 2026-01-31"));
  EXPECT_FALSE(table.contains("\ncheck,")) << "none was made then";
  EXPECT_TRUE(table.contains("\nfailed,"));

  asker.answers = {"From … to …"};  // and the form is closed
  asker.file = pathOf("never.csv");
  papers.saveBundle();
  EXPECT_FALSE(QFile::exists(pathOf("never.csv")));
  asker.answers = {"All there is"};
  asker.file = pathOf("records.txt");
  papers.saveBundle();
  EXPECT_EQ(asker.asked.last(), "records.txt was not written");
  EXPECT_FALSE(QFile::exists(pathOf("records.txt")));
}

TEST_F(OnPaper, ASheetIsOfWhatIsDueInOneRoomWalkedAsItIsAskedFor) {
  asker.file = pathOf("round.pdf");
  papers.saveSheetOf({"props", true}, {true, "", true});
  const QString sheet = text("round.pdf");
  EXPECT_TRUE(sheet.contains("that are due (")) << sheet.left(300).toStdString();
  EXPECT_TRUE(sheet.contains("doors as after hours. It leads back to where it began. No order is shorter."))
      << sheet.left(1500).toStdString();
  papers.saveSheetOf({}, {false, "nowhere", false});
  EXPECT_EQ(asker.asked.last(), "There is no sheet");
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

TEST_F(FromTheMenu, ASheetThatIsChosenComesFromTheFormOfANewRound) {
  openAndCome();
  key(Qt::Key_1, Qt::AltModifier);
  asker.answers = {"Choose…"};
  choose("Save the sheet of this round as P&DF…");
  EXPECT_EQ(window->workPlace(), WorkPlace::Inspect);
  rounds::StartForm& form = place().start();
  ASSERT_TRUE(form.isVisible());
  form.room()->setCurrentIndex(form.room()->findData("smithy"));
  form.onlyDue()->click();
  EXPECT_EQ(form.scope(), (planning::RoundScope{"smithy", true}));
  asker.file = pathOf("round.pdf");
  form.sheetButton()->click();
  EXPECT_TRUE(text("round.pdf").contains("that are due (")) << text("round.pdf").left(400).toStdString();
  EXPECT_TRUE(onDisk().rounds.empty()) << "it opens no round";
}

}  // namespace
}  // namespace stopwalk::window
