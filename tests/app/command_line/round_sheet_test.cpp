// The paper sheet of a round, as it is in the finished PDF.
#include <algorithm>
#include <nlohmann/json.hpp>

#include "tests/app/command_line/many_devices.h"
#include "tests/app/command_line/rounds.h"
#include "tests/app/poster/pdf_words.h"

namespace stopwalk::app {
namespace {

using poster::Word;

class RoundSheet : public RoundCommand {
 protected:
  Ran sheet(std::vector<std::string> more = {}) const {
    std::vector<std::string> args = {"sheet", "--out", out};
    args.insert(args.end(), more.begin(), more.end());
    return round(args);
  }
  QString pdf() const { return QString::fromStdString(out); }
  std::string text() const { return poster::textOfPdf(pdf()).toStdString(); }
  std::string flat() const { return poster::textOfPdf(pdf()).simplified().toStdString(); }
  bool has(const std::string& what) const { return flat().find(what) != std::string::npos; }

  // Of every page the ids of its devices, by their place; and what belongs to each on the same page.
  std::vector<std::string> idsInOrder(const QRegularExpression& id) const {
    std::vector<std::string> ids;
    for (const std::vector<Word>& page : poster::wordsOfPages(pdf())) {
      std::vector<const Word*> of_page;
      std::vector<double> passes, notes;
      for (const Word& w : page) {
        if (id.match(w.text).hasMatch()) of_page.push_back(&w);
        if (w.text == "Pass") passes.push_back(w.box.top());
        if (w.text == "Note") notes.push_back(w.box.top());
      }
      const auto higher = [](const Word* a, const Word* b) { return a->box.top() < b->box.top(); };
      std::ranges::sort(of_page, higher);
      std::ranges::sort(passes);
      std::ranges::sort(notes);
      EXPECT_EQ(passes.size(), of_page.size()) << "a block is divided";
      EXPECT_EQ(notes.size(), of_page.size()) << "a block is divided";
      for (std::size_t i = 0; i < std::min({of_page.size(), passes.size(), notes.size()}); ++i) {
        EXPECT_LT(passes[i], of_page[i]->box.top());
        EXPECT_GT(notes[i], of_page[i]->box.bottom());
        EXPECT_TRUE(i == 0 || notes[i - 1] < passes[i]);
        ids.push_back(of_page[i]->text.toStdString());
      }
    }
    return ids;
  }

  const std::string out = path("round.pdf");
};

TEST_F(RoundSheet, IsInTheOrderOfTheWalkAndSaysWhatItMust) {
  const Ran ran = sheet();
  ASSERT_EQ(ran.exit, kDone) << ran.err;
  EXPECT_EQ(ran.err, "");
  EXPECT_EQ(log(), "") << "it opens no round";
  for (const char* part :
       {"All devices (2)", "Layout c745c7a3c7a5", "Printed 2026-03-02", "Inspector", "Second person",
        "Round no.", "page 1 of 1", "It certifies no machine, stop or room.",
        "stopwalk round record shop.layout.yaml --round N", "Press the red button.",
        "Stops: ", "Nothing in its way", "Could not reach", "Run-down, seconds"})
    EXPECT_TRUE(has(part)) << part << "\n" << text();
  ASSERT_EQ(round({"new", "--by", "Ada Example"}).exit, kDone);
  ASSERT_EQ(sheet({"--round", "1"}).exit, kDone);
  EXPECT_TRUE(has("Round 1, opened 2026-03-02 by Ada Example")) << text();
  EXPECT_TRUE(has("--round 1 --device"));
  EXPECT_TRUE(poster::hasAllFonts(pdf()));
}

TEST_F(RoundSheet, OfTwoHundredDevicesNumbersThemAsTheRoundDoesAndDividesNoBlock) {
  write("shop.layout.yaml", hallOf(200, "\"\""));
  ASSERT_EQ(round({"new", "--by", "Ada"}).exit, kDone);
  const std::vector<std::string> order =
      nlohmann::json::parse(lastLine(log()))["devices"].get<std::vector<std::string>>();
  for (const char* paper : {"a4", "letter"}) {
    const Ran ran = sheet({"--paper", paper});
    ASSERT_EQ(ran.exit, kDone) << ran.err;
    EXPECT_EQ(idsInOrder(QRegularExpression("^m\\d+/stop$")), order) << paper;
  }
}

// The sheet of a shop is no stack.
TEST_F(RoundSheet, HoldsFiveDevicesAPageAndSaysOnEachWhatMustComeToRest) {
  write("shop.layout.yaml", hallOf(40, "\"Thickness planer\""));
  for (const auto& [paper, least] : {std::pair("a4", 5), std::pair("letter", 5)}) {
    ASSERT_EQ(sheet({"--paper", paper}).exit, kDone);
    const auto pages = poster::wordsOfPages(pdf());
    ASSERT_GT(pages.size(), 3u);
    for (std::size_t i = 0; i < pages.size(); ++i) {
      const bool is_whole = i > 0 && i + 1 < pages.size();
      EXPECT_GE(std::ranges::count(pages[i], "Pass", &Word::text), is_whole ? least : 0) << paper << i;
      QStringList all;
      for (const Word& w : pages[i]) all << w.text;
      EXPECT_TRUE(all.join(' ').contains("What a stop stops must come to rest, and stay at rest.")) << i;
    }
  }
}

// How wide and high the white box is that ends left of the word, by the ink round it, in mm.
QSizeF boxLeftOf(const Word& word, const QImage& page) {
  const double per_mm = 300 / 25.4;
  const auto dark = [&](int x, int y) { return qGray(page.pixel(x, y)) < 128; };
  const int y = static_cast<int>(word.box.center().y() * per_mm);
  int right = static_cast<int>(word.box.left() * per_mm) - 2;
  while (right > 0 && !dark(right, y)) --right;
  int left = right;
  while (dark(left, y)) --left;
  const int inside_right = left;
  while (left > 0 && !dark(left, y)) --left;
  const int x = (left + inside_right) / 2;
  int top = y, bottom = y;
  while (top > 0 && !dark(x, top)) --top;
  while (bottom < page.height() - 1 && !dark(x, bottom)) ++bottom;
  return QSizeF(inside_right - left, bottom - top - 1) / per_mm;
}

TEST_F(RoundSheet, BoxesAreFiveMillimetresAtLeastAndLettersAreRead) {
  ASSERT_EQ(sheet().exit, kDone);
  int boxes = 0, number = 0;
  for (const auto& words : poster::wordsOfPages(pdf())) {
    const QImage page = poster::pictureOfPage(pdf(), ++number, QString::fromStdString(path(".")));
    for (const Word& w : words) {
      EXPECT_GE(w.box.top(), 5) << w.text.toStdString();
      EXPECT_GE(w.box.left(), 5) << w.text.toStdString();
      if (!QStringList{"Pass", "Fail", "Not", "Could", "Latches:", "Stays"}.contains(w.text) ||
          w.box.height() > 8)
        continue;
      const QSizeF box = boxLeftOf(w, page);
      EXPECT_GE(box.width(), 5.0) << w.text.toStdString();
      EXPECT_GE(box.height(), 5.0) << w.text.toStdString();
      EXPECT_LT(box.height(), 7.0) << "what was measured is no box: " << w.text.toStdString();
      ++boxes;
    }
  }
  EXPECT_EQ(boxes, 2 * 7);
}

TEST_F(RoundSheet, HasALineForTheTagOutAndWhatElseWasDone) {
  ASSERT_EQ(sheet().exit, kDone);
  EXPECT_TRUE(has("Tagged out by, until when")) << text();
  EXPECT_TRUE(has("What else was done at once")) << text();
}

TEST_F(RoundSheet, SaysWhatFailedAndWhatIsGone) {
  open();
  ASSERT_EQ(record("saw/stop", "fail").exit, kDone);
  ASSERT_EQ(sheet().exit, kDone);
  EXPECT_TRUE(has("Failed on 2026-03-02 (Ada Example). This is a retest.")) << text();
  std::string changed = shop();
  changed.replace(changed.find("id: cut-off"), 11, "id: cutoff2");
  write("shop.layout.yaml", changed);
  ASSERT_EQ(sheet({"--round", "1"}).exit, kDone);
  EXPECT_TRUE(has("cut-off")) << text();
  EXPECT_TRUE(has("no longer on the plan")) << text();
}

// Each of them is to be seen to stop.
TEST_F(RoundSheet, NamesAllMachinesThatADeviceStops) {
  std::string text = hallOf(30), stops;
  for (int i = 0; i < 29; ++i) {
    const std::string old = "{id: m" + std::to_string(i) + ", name: M,";
    text.replace(text.find(old), old.size(),
                 "{id: m" + std::to_string(i) + ", name: Lathe-" + std::to_string(i) + ",");
    stops += (stops.empty() ? "m" : ", m") + std::to_string(i);
  }
  text.insert(text.rfind("..."),
              "devices:\n  - {id: wall, kind: room-cut-off, at: [100, 15000], faces: 0, "
              "stops: [" +
                  stops + "]}\n");
  write("shop.layout.yaml", text);
  const Ran ran = sheet();
  ASSERT_EQ(ran.exit, kDone) << ran.err;
  EXPECT_EQ(ran.err, "");
  const std::string flat = this->flat();
  const std::size_t stops_at = flat.find("Stops: Lathe-0, Lathe-1,");
  ASSERT_NE(stops_at, std::string::npos) << this->text();
  const std::string behind = flat.substr(stops_at, 2000);
  for (int i = 1; i < 29; ++i)
    EXPECT_NE(behind.find("Lathe-" + std::to_string(i)), std::string::npos) << i << "\n" << behind;
  EXPECT_EQ(behind.find(" more"), std::string::npos) << behind;
}

TEST_F(RoundSheet, ItsCommandCanBePastedWhateverTheFileIsCalled) {
  const auto commandFor = [&](const std::string& name) {
    layout = write(name, shop());
    EXPECT_EQ(sheet().exit, kDone);
    const std::string all = flat();
    const std::size_t at = all.find("stopwalk round record "), end = all.find(" --round N", at);
    return at == std::string::npos || end == std::string::npos ? all : all.substr(at + 22, end - at - 22);
  };
  EXPECT_EQ(commandFor("shop.layout.yaml"), "shop.layout.yaml");
  EXPECT_EQ(commandFor("the shop.layout.yaml"), "'the shop.layout.yaml'");
  EXPECT_EQ(commandFor("Bo's.layout.yaml"), "'Bo'\\''s.layout.yaml'");
  EXPECT_EQ(commandFor("$(shop).layout.yaml"), "'$(shop).layout.yaml'");
}

TEST_F(RoundSheet, SpeaksTheLanguagesOfThePosters) {
  ASSERT_EQ(sheet({"--language", "de"}).exit, kDone);
  EXPECT_TRUE(has("Kontrollgang: ")) << text();
  EXPECT_TRUE(has("Roten Knopf drücken.")) << text();
  EXPECT_FALSE(has("Run-down"));
  EXPECT_EQ(sheet({"--language", "xx"}).exit, kWrong);
}

TEST_F(RoundSheet, OfNoDeviceIsToldAndNotWritten) {
  write("shop.layout.yaml", hallOf(0));
  Ran ran = sheet();
  EXPECT_EQ(ran.exit, kFailed);
  EXPECT_EQ(ran.err, "stopwalk: no sheet: there is no device to inspect\n");
  write("shop.layout.yaml", hallOf(2));
  ran = sheet({"--room", "bare"});
  EXPECT_EQ(ran.exit, kFailed);
  EXPECT_EQ(ran.err, "stopwalk: no sheet: there is no device to inspect in bare\n");
  EXPECT_EQ(names(), std::vector<std::string>{"shop.layout.yaml"});
}

TEST_F(RoundSheet, NamesOfTwoHundredLettersStayOnIt) {
  std::string name;
  while (name.size() < 200) name += "Longname";
  write("shop.layout.yaml", hallOf(12, name, name));
  const Ran ran = sheet();
  ASSERT_EQ(ran.exit, kDone) << ran.err;
  EXPECT_EQ(idsInOrder(QRegularExpression("^m\\d+/stop$")).size(), 12u);
  for (const std::vector<Word>& page : poster::wordsOfPages(pdf()))
    for (const Word& w : page) EXPECT_LE(w.box.right(), 205) << w.text.toStdString();
}

TEST_F(RoundSheet, NamesLikeMarkupAreWrittenAsTheyAre) {
  write("shop.layout.yaml", hallOf(1, R"("<b>R&D</b> %1 %2")"));
  ASSERT_EQ(sheet().exit, kDone);
  EXPECT_TRUE(has("<b>R&D</b> %1 %2: Mushroom button")) << text();
}

TEST_F(RoundSheet, LettersThatNoFontHasAreTold) {
  write("shop.layout.yaml", hallOf(1, "\"Saw \xF3\xB0\x80\x80\""));  // of a plane for private use
  const Ran ran = sheet();
  EXPECT_EQ(ran.exit, kDone);
  EXPECT_NE(ran.err.find("no font here has these letters"), std::string::npos) << ran.err;
}

TEST_F(RoundSheet, WordsTooLongForItAreCutAndToldOf) {
  std::string text = hallOf(1), words = "press it";
  for (int i = 0; i < 200; ++i) words += " and wait";
  text.replace(text.find("height: 1000}"), 13, "height: 1000, instruction: " + words + "}");
  write("shop.layout.yaml", text);
  const Ran ran = sheet();
  EXPECT_EQ(ran.exit, kDone) << ran.err;
  EXPECT_NE(ran.err.find("m0/stop: its words are too long for the sheet; they are cut"), std::string::npos)
      << ran.err;
  EXPECT_TRUE(has("Pass") && has("Still to be done")) << this->text();
}

TEST_F(RoundSheet, WrongWordsAreTold) {
  const auto told = [&](const Ran& ran, const std::string& what) {
    EXPECT_EQ(ran.exit, kWrong);
    EXPECT_NE(ran.err.find(what), std::string::npos) << ran.err;
  };
  told(sheet({"--room", "shp"}), "there is no such room: did you mean `shop`?");
  told(sheet({"--round", "1"}), "there is no such round");
  told(sheet({"--round", "1", "--due"}), "leave --room and --due out");
  told(sheet({"--paper", "a2"}), "--paper");
  told(sheet({"--font", "No Such Letters"}), "there is no font");
  told(round({"sheet", "--out", layout}), "is the layout itself");
  EXPECT_EQ(names(), std::vector<std::string>{"shop.layout.yaml"});
}

TEST_F(RoundSheet, WhereNothingCanBeWrittenLeavesNothing) {
  Ran ran = round({"sheet", "--out", path("no-such-folder/a.pdf")});
  EXPECT_EQ(ran.exit, kNoFile);
  EXPECT_NE(ran.err.find("no-such-folder"), std::string::npos);
  ran = round({"sheet", "--out", "/dev/full"});
  EXPECT_EQ(ran.exit, kNoFile);
  EXPECT_NE(ran.err.find("cannot write /dev/full"), std::string::npos);
  EXPECT_EQ(names(), std::vector<std::string>{"shop.layout.yaml"});
}

}  // namespace
}  // namespace stopwalk::app
