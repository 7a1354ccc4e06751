// The bundle for an insurer, as it is in the finished PDF.
#include <ctime>
#include <filesystem>
#include <nlohmann/json.hpp>
#include <sstream>

#include "app/poster/paged_text.h"
#include "core/files/inspection_log.h"
#include "tests/app/command_line/many_devices.h"
#include "tests/app/command_line/rounds.h"
#include "tests/app/poster/pdf_words.h"

namespace stopwalk::app {
namespace {

class RoundBundle : public RoundCommand {
 protected:
  Ran bundle(const std::string& to = "2026-03-31", std::vector<std::string> more = {}) const {
    std::vector<std::string> args = {"bundle", "--from", "2026-03-01", "--to", to, "--out", out};
    args.insert(args.end(), more.begin(), more.end());
    return round(args);
  }
  QString pdf() const { return QString::fromStdString(out); }
  // The words in their order on the page, as one line: a cell's come together.
  QString text() const {
    const QByteArray raw = poster::outputOf("pdftotext", {"-raw", pdf(), "-"});
    return QString::fromUtf8(raw).simplified();
  }
  bool has(const QString& what) const { return text().contains(what); }

  const std::string out = path("records.pdf");
};

TEST_F(RoundBundle, NothingThatIsWrittenTakesThePlaceOfTheRecords) {
  open();
  ASSERT_EQ(record("saw/stop", "fail").exit, kDone);
  const std::string before = log(), plan = textOf(layout), records = path("shop.inspections.jsonl");
  const std::string to_log = path("log.pdf"), to_layout = path("layout.csv");
  std::filesystem::create_symlink(records, to_log);
  std::filesystem::create_symlink(layout, to_layout);
  const auto program = [&](std::vector<std::string> args) {
    std::istringstream in;
    std::ostringstream said, err;
    return run(std::move(args), Console{in, said, err});
  };
  EXPECT_EQ(round({"sheet", "--out", records}).exit, kWrong);
  EXPECT_EQ(round({"bundle", "--from", "2026-03-01", "--to", "2026-03-31", "--out", to_log}).exit, kWrong);
  EXPECT_EQ(round({"bundle", "--from", "2026-03-01", "--to", "2026-03-31", "--out", to_layout}).exit, kWrong);
  EXPECT_EQ(program({"report", layout, "--out", records}), kWrong);
  EXPECT_EQ(program({"poster", layout, "--room", "shop", "--out", records}), kWrong);
  EXPECT_EQ(program({"audit", layout, "--out", records}), kWrong);
  EXPECT_EQ(log(), before);
  EXPECT_EQ(textOf(layout), plan);
}

// Which nobody types, and a log may have all the same.
TEST_F(RoundBundle, AWordThatGoesOverPagesIsLaidOnPaperAsFastAsManyWords) {
  open();
  ASSERT_EQ(bundle().exit, kDone);  // what is made once
  constexpr qsizetype kLetters = 200000;
  const QString word(kLetters, 'q');
  QString words = word;
  for (qsizetype at = 9; at < kLetters; at += 10) words[at] = ' ';
  QByteArray pdf;
  const auto timeOf = [&](const QString& text) {
    const std::clock_t begun = std::clock();
    QString why;
    pdf = poster::pagedPdf({"Notes", "Notes", "<table><tr><td>" + text + "</td></tr></table>", {}, "foot"},
                           *poster::paperOf("a4"), "DejaVu Sans", why);
    EXPECT_EQ(why, "");
    return static_cast<double>(std::clock() - begun) / CLOCKS_PER_SEC;
  };
  const double many = timeOf(words), one = timeOf(word);
  EXPECT_LT(one, 2 * many);
  write("records.pdf", pdf.toStdString());
  EXPECT_GE(text().count('q'), kLetters) << "none is lost";
}

TEST_F(RoundBundle, HasTheFourFieldsOfEveryCheckAndSaysWhatTheHashProves) {
  open();
  ASSERT_EQ(record("saw/stop", "pass", {"--second", "Bo Example", "--run-down", "2.4,2.6"}).exit, kDone);
  const Ran ran = bundle();
  ASSERT_EQ(ran.exit, kDone) << ran.err;
  const std::string head = lastLine(round({"verify"}).out).substr(0, 64);
  for (const QString& part :
       {QString("Machine Date People Inspector"), QString("Säge \"Käthe\" (saw)"),
        QString("2026-03-02 09:15 +01:00"), QString("Ada Example; Bo Example Ada Example PASS"),
        QString("run-down 2.5 s (mean of 2)"), QString("rev. 4"), QString("revision 4"),
        QString("2 records, head hash ") + QString::fromStdString(head), QString("It is no signature"),
        QString("Each record is as it was written, in order."),
        QString("they certify no machine, stop or room"), QString("Profile teaching-shop"),
        QString("page 1 of ")})
    EXPECT_TRUE(has(part)) << part.toStdString() << "\n" << text().toStdString();
  EXPECT_TRUE(poster::hasAllFonts(pdf()));
  const QString info = poster::outputOf("pdfinfo", {pdf()});
  EXPECT_TRUE(info.contains("Inspection records: Atelier")) << info.toStdString();
}

TEST_F(RoundBundle, SaysWhoTaggedTheMachineOutAndUntilWhen) {
  open();
  const auto wrong = record("saw/stop", "fail", {"--tagged-out-until", "2026-03-09"});
  EXPECT_EQ(wrong.exit, kWrong);
  EXPECT_NE(wrong.err.find("say with --tagged-out-by"), std::string::npos) << wrong.err;
  const auto over =
      record("saw/stop", "fail", {"--tagged-out-by", "Bo Example", "--tagged-out-until", "2020-01-01"});
  EXPECT_EQ(over.exit, kWrong);
  EXPECT_NE(over.err.find("2020-01-01: that is before the check"), std::string::npos) << over.err;
  EXPECT_EQ(record("saw/stop", "fail", {"--tagged-out-by", "Bo", "--tagged-out-until", "Monday"}).exit,
            kWrong);
  ASSERT_EQ(
      record("saw/stop", "fail", {"--tagged-out-by", "Bo Example", "--tagged-out-until", "2026-03-09"}).exit,
      kDone);
  EXPECT_NE(log().find(R"("tagged_out":{"by":"Bo Example","until":"2026-03-09"})"), std::string::npos);
  ASSERT_EQ(bundle().exit, kDone);
  EXPECT_TRUE(has("Machine tagged out by Bo Example, until 2026-03-09")) << text().toStdString();
  const std::string csv = path("records.csv");
  ASSERT_EQ(round({"bundle", "--from", "2026-03-01", "--to", "2026-03-31", "--out", csv}).exit, kDone);
  EXPECT_NE(textOf(csv).find("Bo Example,2026-03-09,\r\n"), std::string::npos) << textOf(csv);
  const std::string shown = round({"show"}).out;
  EXPECT_NE(shown.find("machine tagged out by Bo Example, until 2026-03-09"), std::string::npos) << shown;
}

TEST_F(RoundBundle, ShowsACorrectionWithWhatItReplaces) {
  open();
  ASSERT_EQ(record("saw/stop", "not-tested").exit, kDone);
  now = "2026-04-20T09:15:00+02:00";
  ASSERT_EQ(record("saw/stop", "pass", {"--corrects", "2", "--by", "Cy Example"}).exit, kDone);
  ASSERT_EQ(bundle().exit, kDone);
  EXPECT_TRUE(has("Corrected by 3. NOT TESTED")) << text().toStdString();
  EXPECT_TRUE(has("PASS in place of 2, which said: not tested, 2026-03-02 09:15 +01:00, Ada Example"))
      << text().toStdString();
  EXPECT_TRUE(has("1 pass, 0 fail, 0 not tested")) << text().toStdString();
}

TEST_F(RoundBundle, SaysWhichPassesCloseNothingAndWhy) {
  const std::string csv = path("records.csv");
  const auto csvNow = [&] {
    EXPECT_EQ(round({"bundle", "--from", "2026-03-01", "--to", "2026-03-31", "--out", csv}).exit, kDone);
    return textOf(csv);
  };
  open();
  ASSERT_EQ(record("saw/stop", "fail").exit, kDone);
  ASSERT_EQ(record("saw/stop", "pass", {"--check", "seen=yes"}).exit, kDone);
  ASSERT_EQ(bundle().exit, kDone);
  EXPECT_TRUE(has("PASS This pass leaves the failure open: it was not pressed, or did not stay in"))
      << text().toStdString();
  EXPECT_TRUE(has("Passes that count for nothing or leave a failure open: 1.")) << text().toStdString();
  EXPECT_NE(csvNow().find("\"leaves the failure open: it was not pressed, or"), std::string::npos)
      << csvNow();
  ASSERT_EQ(record("saw/stop", "pass").exit, kDone);
  ASSERT_EQ(bundle().exit, kDone);
  EXPECT_FALSE(has("open: ")) << text().toStdString();
  EXPECT_EQ(csvNow().find("leaves the failure open"), std::string::npos) << csvNow();
}

// A hash that is broken can be held against nothing.
TEST_F(RoundBundle, BreaksNeitherTheRevisionNorTheHashOfALayout) {
  open();
  ASSERT_EQ(record("saw/stop", "pass").exit, kDone);
  const auto check = nlohmann::json::parse(lastLine(log()));
  const QString hash = QString::fromStdString(check["layout"]["sha256"].get<std::string>().substr(0, 12));
  for (const char* paper : {"a4", "letter"}) {
    ASSERT_EQ(bundle("2026-03-31", {"--paper", paper}).exit, kDone);
    int whole = 0;
    for (const auto& page : poster::wordsOfPages(pdf()))
      for (const poster::Word& w : page) whole += w.text == hash;
    EXPECT_EQ(whole, 1) << paper << "\n" << text().toStdString();
  }
}

TEST_F(RoundBundle, ShowsWhatIsOpenNow) {
  open();
  ASSERT_EQ(record("saw/stop", "fail",
                   {"--corrective", "change it, all", "--owner", "Bo", "--fix-by", "2026-03-09"})
                .exit,
            kDone);
  ASSERT_EQ(bundle().exit, kDone);
  EXPECT_TRUE(has("saw/stop Säge \"Käthe\" (saw) 2026-03-02 2026-03-02 Ada Example 2"))
      << text().toStdString();
  EXPECT_TRUE(has("saw/stop change it, all Bo 2026-03-09 2")) << text().toStdString();
  ASSERT_EQ(record("saw/stop", "pass").exit, kDone);
  ASSERT_EQ(bundle().exit, kDone);
  EXPECT_TRUE(has("Failed and not passed since No device.")) << text().toStdString();
}

TEST_F(RoundBundle, LeavesOutOfWhatIsOpenWhatWasTakenAway) {
  open();
  ASSERT_EQ(record("cut-off", "fail", {"--corrective", "mend it", "--owner", "Bo"}).exit, kDone);
  std::string without = textOf(layout);
  const std::size_t at = without.find("devices:\n  - {id: cut-off");
  without.erase(at, without.find("phones:") - at);
  write("shop.layout.yaml", without);
  ASSERT_EQ(bundle().exit, kDone);
  EXPECT_TRUE(has("Devices that failed and have not passed since: 1.")) << text().toStdString();
  ASSERT_EQ(record("cut-off", "not-tested", {"--removed"}).exit, kDone);
  ASSERT_EQ(bundle().exit, kDone);
  EXPECT_TRUE(has("Failed and not passed since No device.")) << text().toStdString();
  EXPECT_FALSE(has("cut-off mend it Bo")) << text().toStdString();
  EXPECT_TRUE(has("taken away")) << text().toStdString();
}

TEST_F(RoundBundle, CanBeCopiedFromAsItWasWritten) {
  open();
  ASSERT_EQ(record("cut-off", "fail").exit, kDone);
  ASSERT_EQ(bundle().exit, kDone);
  EXPECT_TRUE(has("cut-off")) << text().toStdString();
  EXPECT_EQ(text(), text().normalized(QString::NormalizationForm_KC));
}

TEST_F(RoundBundle, SaysWhenItWasEntered) {
  ASSERT_EQ(round({"new", "--by", "Ada", "--at", "2026-03-01T08:00Z"}).exit, kDone);
  ASSERT_EQ(record("saw/stop", "pass", {"--at", "2026-03-01T08:30Z"}).exit, kDone);
  ASSERT_EQ(bundle().exit, kDone);
  EXPECT_TRUE(has("2026-03-01 08:30 +00:00 (entered 2026-03-02 09:15 +01:00)")) << text().toStdString();
  const std::string csv = path("records.csv");
  ASSERT_EQ(round({"bundle", "--from", "2026-03-01", "--to", "2026-03-31", "--out", csv}).exit, kDone);
  EXPECT_NE(textOf(csv).find(",2026-03-02T09:15:00+01:00,,,,,\r\n"), std::string::npos);
}

TEST_F(RoundBundle, NamesTheLineThatWasChanged) {
  open();
  record("saw/stop", "fail");
  std::string changed = log();
  changed.replace(changed.find("\"fail\""), 6, "\"pass\"");
  write("shop.inspections.jsonl", changed);
  ASSERT_EQ(bundle().exit, kDone);
  EXPECT_TRUE(has("Line 2 is not as it was written: it was changed after it was written."))
      << text().toStdString();
  EXPECT_FALSE(has("Each record is as it was written"));
}

// As it may be of the period; and each failure of a line that says two has its own people.
TEST_F(RoundBundle, HoldsFailuresWithoutAReadableTimeInEachPeriod) {
  open();
  ASSERT_EQ(record("saw/stop", "pass").exit, kDone);
  write("shop.inspections.jsonl",
        log() + R"({"device":"saw/stop","machines":["saw"],"inspector":"Ada Example","result":"fail")"
                R"("device":"cut-off","machines":["drill"],"inspector":"Bo Example","result":"fail"})"
                "\n");
  const std::string csv = path("records.csv");
  for (const char* year : {"2024", "2026"}) {
    const std::string from = std::string(year) + "-01-01", to = std::string(year) + "-12-31";
    ASSERT_EQ(round({"bundle", "--from", from, "--to", to, "--out", out}).exit, kDone);
    EXPECT_TRUE(has("no readable time Ada Example Ada Example FAIL")) << text().toStdString();
    EXPECT_TRUE(has("no readable time Bo Example Bo Example FAIL")) << text().toStdString();
    ASSERT_EQ(round({"bundle", "--from", from, "--to", to, "--out", csv}).exit, kDone);
    const std::string table = textOf(csv);
    EXPECT_NE(table.find("check,3,0,no readable time,saw,saw/stop,,Ada Example,Ada Example,"),
              std::string::npos)
        << table;
    EXPECT_NE(table.find("check,3,0,no readable time,drill,cut-off,,Bo Example,"), std::string::npos)
        << table;
    EXPECT_NE(table.find("failed,3,,no readable time,saw,saw/stop,,Ada Example,"), std::string::npos)
        << table;
    EXPECT_NE(table.find("failed,3,,no readable time,drill,cut-off,,Bo Example,"), std::string::npos)
        << table;
  }
  EXPECT_FALSE(has("1970")) << text().toStdString();
}

TEST_F(RoundBundle, OfAPeriodWithoutChecksSaysSo) {
  open();
  ASSERT_EQ(round({"bundle", "--from", "2025-01-01", "--to", "2025-12-31", "--out", out}).exit, kDone);
  EXPECT_TRUE(has("No check was recorded in this period.")) << text().toStdString();
}

TEST_F(RoundBundle, OfTwoHundredChecksRepeatsItsHeads) {
  write("shop.layout.yaml", hallOf(200));
  std::vector<std::string> devices;
  std::string lines, before = files::kNoLineBefore;
  auto add = [&, n = std::size_t{0}](const inspection::Record& r) mutable {
    const std::string line = files::recordLine(r, ++n, before);
    before = files::endOfLog(line).head;
    lines += line;
  };
  for (int i = 0; i < 200; ++i) devices.push_back("m" + std::to_string(i) + "/stop");
  const inspection::Moment at = *inspection::parseMoment(now);
  add(inspection::Round{0, at, "Ada", "all", devices, {}});
  for (const std::string& device : devices) {
    inspection::Check c;
    c.round = 1;
    c.device = device;
    c.machines = {device.substr(0, device.find('/'))};
    c.at = at;
    c.inspector = "Ada";
    c.result = inspection::Result::Pass;
    add(c);
  }
  write("shop.inspections.jsonl", lines);
  const Ran ran = bundle();
  ASSERT_EQ(ran.exit, kDone) << ran.err;
  const auto pages = poster::wordsOfPages(pdf());
  int with_checks = 0, seen = 0;
  for (std::size_t p = 0; p < pages.size(); ++p) {
    int here = 0, heads = 0;
    QStringList words;
    for (const poster::Word& w : pages[p]) {
      here += w.text == "PASS";
      heads += w.text == "Inspector";
      words << w.text;
    }
    EXPECT_TRUE(words.join(' ').contains(QString("page %1 of %2").arg(p + 1).arg(pages.size())));
    if (here == 0) continue;
    EXPECT_EQ(heads, 1) << "page " << p + 1;
    ++with_checks;
    seen += here;
  }
  EXPECT_EQ(seen, 200);
  EXPECT_GT(with_checks, 3);
}

TEST_F(RoundBundle, NamesThatAreLongOrLikeMarkupAreWhole) {
  std::string name;
  while (name.size() < 200) name += "Longname";
  write("shop.layout.yaml", hallOf(2, "\"<b>R&D</b> " + name + "\"", name));
  open();
  ASSERT_EQ(record("m0/stop", "pass", {"--by", "<i>A&B</i>", "--note", name}).exit, kDone);
  ASSERT_EQ(bundle().exit, kDone);
  const QString whole = text().remove(' ');  // of a narrow column the words are broken
  EXPECT_TRUE(whole.contains("<b>R&D</b>") && whole.contains("<i>A&B</i>")) << whole.toStdString();
  for (const auto& page : poster::wordsOfPages(pdf()))
    for (const poster::Word& w : page) {
      EXPECT_LE(w.box.right(), 210 - 15) << w.text.toStdString();
      EXPECT_GE(w.box.left(), 15) << w.text.toStdString();
    }
}

TEST_F(RoundBundle, WrongWordsAreTold) {
  open();
  const auto told = [&](const Ran& ran, const std::string& what) {
    EXPECT_EQ(ran.exit, kWrong);
    EXPECT_NE(ran.err.find(what), std::string::npos) << ran.err;
  };
  told(round({"bundle", "--from", "2026-03-01", "--to", "2026-03-31", "--out", path("a.txt")}),
       "a name that ends in .pdf or .csv is expected");
  told(bundle("2026-02-01"), "the earlier first");
  told(bundle("soon"), "two dates as 2026-03-02");
  told(bundle("2026-03-31", {"--paper", "a2"}), "--paper");
  told(bundle("2026-03-31", {"--font", "No Such Letters"}), "there is no font");
  EXPECT_EQ(names().size(), 2u);
}

TEST_F(RoundBundle, WhereNothingCanBeWrittenLeavesNothing) {
  EXPECT_EQ(bundle().exit, kNoFile) << "there are no records";
  open();
  std::filesystem::create_symlink("/dev/full", path("full.pdf"));
  for (const char* to : {"no-such-folder/a.pdf", "full.pdf"}) {
    const Ran ran = round({"bundle", "--from", "2026-03-01", "--to", "2026-03-31", "--out", path(to)});
    EXPECT_EQ(ran.exit, kNoFile);
    EXPECT_NE(ran.err.find("cannot write " + path(to)), std::string::npos) << ran.err;
  }
  EXPECT_EQ(names().size(), 3u);
}

}  // namespace
}  // namespace stopwalk::app
