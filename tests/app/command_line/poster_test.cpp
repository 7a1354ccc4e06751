// What the poster and report commands refuse, and how they write.
#include <QXmlStreamReader>
#include <algorithm>

#include "core/audit/rule.h"
#include "tests/app/command_line/program.h"

namespace stopwalk::app {
namespace {

std::string room(const std::string& name, const std::string& machines) {
  return "stopwalk_layout: 1\nunits: mm\nsite: {name: A shop}\nrooms:\n  - {id: a, name: " + name +
         ", outline: [[0, 0], [12000, 0], [12000, 9000], [0, 9000]]}\n  - {id: bare, name: Bare, outline: "
         "[[12200, 0], "
         "[15000, 0], [15000, 3000], [12200, 3000]]}\n" +
         machines + "...\n";
}

std::string machinesWithStops(int count, const std::string& name = "M") {
  std::string text = "machines:\n";
  for (int i = 0; i < count; ++i) {
    const int x = 1000 + (i % 10) * 1100, y = 1500 + (i / 10) * 1300;
    text +=
        "  - {id: m" + std::to_string(i) + ", name: " + name + " " + std::to_string(i) + ", at: [" +
        std::to_string(x) + ", " + std::to_string(y) +
        "], footprint: {width: 500, depth: 400}, stations: [{id: operator, role: operator, at: [0, -700]}], "
        "devices: [{id: stop, kind: mushroom-button, at: [0, -200], height: 1000}]}\n";
  }
  return text;
}

class Poster : public InFolder {
 protected:
  Ran poster(const std::string& layout, std::vector<std::string> more) {
    std::vector<std::string> args{"poster", layout};
    args.insert(args.end(), more.begin(), more.end());
    return runProgram(args);
  }
  std::string shopFile() { return write("shop.layout.yaml", room("Hall", machinesWithStops(3))); }
};

TEST_F(Poster, IsWrittenWholeAndIsAPdf) {
  const Ran ran = poster(shopFile(), {"--room", "a", "--out", path("a.pdf")});
  EXPECT_EQ(ran.exit, 0) << ran.err;
  EXPECT_TRUE(textOf(path("a.pdf")).starts_with("%PDF-"));
  EXPECT_EQ(names().size(), 2u);
}

TEST_F(Poster, IsTheSameToTheByteEachTimeButForItsTime) {
  const std::string layout = shopFile();
  for (const char* name : {"a.svg", "b.svg"})
    EXPECT_EQ(poster(layout, {"--room", "a", "--format", "svg", "--out", path(name)}).exit, 0);
  EXPECT_EQ(textOf(path("a.svg")), textOf(path("b.svg")));
}

TEST_F(Poster, AllRoomsGiveAFileEachAsPictures) {
  const Ran ran = poster(shopFile(), {"--all", "--format", "png", "--dpi", "36", "--out", path("p.png")});
  EXPECT_EQ(ran.exit, 0) << ran.err;
  EXPECT_NE(ran.err.find("no poster of Bare: there is no machine and no stop in it"), std::string::npos);
  EXPECT_TRUE(textOf(path("p.png")).starts_with("\x89PNG"));
}

TEST_F(Poster, OfAnEmptyRoomIsRefused) {
  const Ran ran = poster(shopFile(), {"--room", "bare", "--out", path("b.pdf")});
  EXPECT_EQ(ran.exit, 2);
  EXPECT_EQ(ran.err, "stopwalk: no poster of Bare: there is no machine and no stop in it\n");
  EXPECT_EQ(names().size(), 1u);
}

TEST_F(Poster, OfSixtyStopsShowsThemAll) {
  const std::string layout = write("many.layout.yaml", room("Hall", machinesWithStops(60)));
  const Ran ran = poster(layout, {"--room", "a", "--paper", "a2", "--format", "svg", "--out", path("m.svg")});
  EXPECT_EQ(ran.exit, 0) << ran.err;
  std::string all;
  for (const std::string& name : names())
    if (name.ends_with(".svg")) all += textOf(path(name));
  for (int i = 0; i < 60; ++i) EXPECT_NE(all.find(">M " + std::to_string(i) + "<"), std::string::npos) << i;
}

TEST_F(Poster, OfNamesOfTwoHundredLettersIsWhole) {
  std::string name;
  while (name.size() < 200) name += "Longname";
  const std::string layout = write("long.layout.yaml", room(name, machinesWithStops(3, name)));
  const Ran ran = poster(layout, {"--room", "a", "--out", path("l.pdf")});
  EXPECT_EQ(ran.exit, 0) << ran.err;
  EXPECT_NE(ran.err.find("the room's name is too long for the header's letters"), std::string::npos);
}

TEST_F(Poster, OfNamesLikeMarkupIsWellFormed) {
  const std::string name = R"("<b>R&D</b>")";
  const std::string layout = write("markup.layout.yaml", room(name, machinesWithStops(2)));
  ASSERT_EQ(poster(layout, {"--room", "a", "--format", "svg", "--out", path("m.svg")}).exit, 0);
  ASSERT_EQ(runProgram({"report", layout, "--out", path("m.html")}).exit, 0);
  QXmlStreamReader svg(QByteArray::fromStdString(textOf(path("m.svg"))));
  while (!svg.atEnd()) svg.readNext();
  EXPECT_FALSE(svg.hasError()) << svg.errorString().toStdString();
  EXPECT_EQ(textOf(path("m.html")).find("<b>R&D"), std::string::npos);
}

TEST_F(Poster, ThatDoesNotFitNamesThePaperThatWould) {
  const std::string layout = write("wide.layout.yaml",
                                   "stopwalk_layout: 1\nunits: m\nsite: {name: A shop}\nrooms:\n  - {id: a, "
                                   "name: Hangar, outline: [[0, 0], [70, 0], "
                                   "[70, 40], [0, 40]]}\nmachines:\n  - {id: m, name: Saw, at: [30, 20], "
                                   "footprint: {width: 1, depth: 1}, stations: "
                                   "[{id: operator, role: operator, at: [0, -1]}], devices: [{id: stop, "
                                   "kind: mushroom-button, at: [0, -0.5], "
                                   "height: 1}]}\n...\n");
  const Ran ran = poster(layout, {"--room", "a", "--paper", "a4", "--out", path("w.pdf")});
  EXPECT_EQ(ran.exit, 2);
  EXPECT_NE(ran.err.find("does not fit on A4 at 1:250"), std::string::npos) << ran.err;
  EXPECT_NE(ran.err.find(" would do"), std::string::npos) << ran.err;
  EXPECT_EQ(names().size(), 1u);
}

TEST_F(Poster, WhereNothingCanBeWrittenLeavesNothing) {
  const Ran ran = poster(shopFile(), {"--room", "a", "--out", path("no-such-folder/a.pdf")});
  EXPECT_EQ(ran.exit, 3);
  EXPECT_NE(ran.err.find("no-such-folder"), std::string::npos);
  EXPECT_EQ(poster(shopFile(), {"--room", "a", "--out", "/dev/full"}).exit, 3);
  EXPECT_EQ(names().size(), 1u);
}

TEST_F(Poster, NeverGoesOverTheLayoutItself) {
  const std::string layout = shopFile();
  EXPECT_EQ(poster(layout, {"--room", "a", "--out", layout}).exit, 2);
  EXPECT_TRUE(textOf(layout).starts_with("stopwalk_layout"));
}

TEST_F(Poster, WrongWordsAreTold) {
  const std::string layout = shopFile(), out = path("x.pdf");
  const auto says = [&](std::vector<std::string> more, const std::string& text) {
    more.insert(more.end(), {"--out", out});
    const Ran ran = poster(layout, more);
    EXPECT_EQ(ran.exit, 2);
    EXPECT_NE(ran.err.find(text), std::string::npos) << ran.err;
  };
  says({"--room", "bar"}, "did you mean");
  says({"--room", "nowhere"}, "there is no room `nowhere`; there is a or bare");
  says({"--room", "a", "--font", "No Such Letters"}, "there is no font `No Such Letters` here");
  says({"--room", "a", "--language", "xx"}, "one of en, es or de is expected");
  says({"--room", "a", "--language", "en,es,de"}, "two with a comma");
  says({"--room", "a", "--language", "en,en"}, "the same language twice");
  says({"--room", "a", "--at", "here"}, "a place x,y in the file's unit is expected");
  says({"--room", "a", "--viewer-up", "north"}, "degrees from -360 to 360 are expected");
  says({"--all", "--at", "0,0"}, "it goes with --room");
  EXPECT_EQ(names().size(), 1u);
}

TEST_F(Poster, SheetsAreAPageForEachMachine) {
  const Ran ran = poster(shopFile(), {"--all", "--sheet", "--out", path("s.pdf")});
  EXPECT_EQ(ran.exit, 0) << ran.err;
  EXPECT_NE(textOf(path("s.pdf")).find("/Count 3"), std::string::npos);
}

TEST_F(Poster, IsHeldAgainstTheLayoutByItsHash) {
  const std::string layout = shopFile();
  ASSERT_EQ(poster(layout, {"--room", "a", "--format", "svg", "--out", path("a.svg")}).exit, 0);
  const std::string svg = textOf(path("a.svg"));
  const auto at = svg.find("Layout ");
  ASSERT_NE(at, std::string::npos);
  const std::string hash = svg.substr(at + 7, 12);
  EXPECT_EQ(runProgram({"check", layout, "--poster", hash}).exit, 0);
  write("shop.layout.yaml", room("Hall", machinesWithStops(4)));
  EXPECT_EQ(runProgram({"check", layout, "--poster", hash}).exit, 1);
  EXPECT_EQ(runProgram({"check", layout, "--poster", "abc"}).exit, 2);
}

// The hash as it stands at the foot of the only poster in a drawing.
std::string hashOn(const std::string& svg) {
  const auto at = svg.find("Layout ");
  return at == std::string::npos ? std::string() : svg.substr(at + 7, 12);
}

// A poster hangs for months: one that shows a stop that failed sends somebody to it.
TEST_F(Poster, WhatFailedItsLastCheckIsOutOfOrderAndOldPostersAreToComeDown) {
  const std::string layout = shopFile();
  const auto round = [&](std::vector<std::string> args) {
    args.insert(args.begin(), "round");
    args.insert(args.begin() + 2, layout);
    const Ran ran = runProgram(args);
    EXPECT_EQ(ran.exit, 0) << ran.err;
  };
  const auto printed = [&](const std::string& name) {
    const Ran ran = poster(layout, {"--room", "a", "--format", "svg", "--out", path(name)});
    EXPECT_EQ(ran.exit, 0) << ran.err;
    return ran.err;
  };
  printed("before.svg");
  const std::string before = hashOn(textOf(path("before.svg")));
  EXPECT_EQ(runProgram({"check", layout, "--poster", before}).exit, 0);

  round({"new", "--by", "Ada Example"});
  round({"record", "--round", "1", "--device", "m1/stop", "--result", "fail"});
  EXPECT_NE(printed("failed.svg").find("the check of m1/stop on "), std::string::npos);
  const std::string drawing = textOf(path("failed.svg")), failed = hashOn(drawing);
  EXPECT_NE(drawing.find("Out of order"), std::string::npos);
  EXPECT_NE(failed, before);
  EXPECT_EQ(runProgram({"check", layout, "--poster", failed}).exit, 0);
  const Ran old = runProgram({"check", layout, "--poster", before});
  EXPECT_EQ(old.exit, 1);
  EXPECT_NE(old.out.find("the poster does not show what failed and has not passed since, m1/stop"),
            std::string::npos)
      << old.out;
  EXPECT_NE(
      poster(layout, {"--all", "--sheet", "--out", path("s.pdf")}).err.find("M 1: the check of m1/stop on "),
      std::string::npos);
  ASSERT_EQ(runProgram({"report", layout, "--out", path("r.html")}).exit, 0);
  EXPECT_NE(textOf(path("r.html")).find("counted as no stop: failed on "), std::string::npos);

  round({"record", "--round", "1", "--device", "m1/stop", "--result", "pass"});
  EXPECT_EQ(runProgram({"check", layout, "--poster", failed}).exit, 1);
  EXPECT_EQ(runProgram({"check", layout, "--poster", before}).exit, 0);
}

// What cannot be read may say that a stop failed.
TEST_F(Poster, IsNotMadeWithoutRecordsThatAreThere) {
  const std::string layout = shopFile();
  std::filesystem::create_directory(path("shop.inspections.jsonl"));
  const Ran ran = poster(layout, {"--room", "a", "--out", path("a.pdf")});
  EXPECT_EQ(ran.exit, 3);
  EXPECT_NE(ran.err.find("cannot read"), std::string::npos) << ran.err;
  EXPECT_FALSE(std::filesystem::exists(path("a.pdf")));
}

TEST_F(Poster, TakesThePlaceOfNoFileThatTheLayoutIsMadeWith) {
  const std::string own =
      write("own.yaml", "stopwalk_profile: 1\nid: own\nextends: strict\nrules: {}\n...\n");
  const std::string kinds = path("device-kinds.yaml");
  std::string text = textOf(shopFile());
  text.insert(text.find("rooms:"), "profile: own.yaml\n");
  const std::string layout = write("shop.layout.yaml", text);
  for (const std::string& out : {own, kinds})
    for (const Ran& ran :
         {poster(layout, {"--room", "a", "--out", out}), runProgram({"report", layout, "--out", out})}) {
      EXPECT_EQ(ran.exit, 2) << out << ran.err;
      EXPECT_NE(ran.err.find("name another file"), std::string::npos) << ran.err;
    }
  EXPECT_EQ(textOf(own).substr(0, 16), "stopwalk_profile");
  EXPECT_FALSE(std::filesystem::exists(kinds));
}

class ReportOnPaper : public InFolder {};

TEST_F(ReportOnPaper, SaysHowManyRulesAreOff) {
  std::string text = room("Hall", machinesWithStops(3));
  const std::string all = write("all.layout.yaml", text);
  text.insert(text.find("rooms:"), "house_rules: [{rule: hidden-stop, on: false}]\n");
  const std::string fewer = write("fewer.layout.yaml", text);
  const auto html = [&](const std::string& layout) {
    EXPECT_EQ(runProgram({"report", layout, "--out", path("r.html")}).exit, 0);
    return textOf(path("r.html"));
  };
  EXPECT_EQ(html(all).find("1 rule is off"), std::string::npos);
  EXPECT_NE(html(fewer).find("1 rule is off"), std::string::npos);
  EXPECT_NE(runProgram({"audit", fewer, "--format", "json"}).out.find("\"rules_off\":1"), std::string::npos);
  std::string summary = runProgram({"audit", all, fewer, "--format", "summary"}).out;
  std::ranges::replace(summary, '\n', ' ');
  EXPECT_NE(summary.find("Rules are off in fewer (1)."), std::string::npos) << summary;
}

TEST_F(ReportOnPaper, SpeaksOfOneAsOfOne) {
  const std::string layout = write("shop.layout.yaml", room("Hall", machinesWithStops(1)));
  ASSERT_EQ(runProgram({"report", layout, "--out", path("r.html")}).exit, 0);
  const std::string html = textOf(path("r.html"));
  EXPECT_NE(html.find("1 machine, 1 station, 1 device. Of the stations 1 fails, 0 warn, 0 meet the chosen "
                      "rules. Findings: "),
            std::string::npos)
      << html.substr(html.find("Summary"), 300);
}

TEST_F(ReportOnPaper, HoldsTheFindingsTheAcceptedOnesAndTheCaution) {
  std::string text = room("Hall", machinesWithStops(3));
  text.insert(
      text.find("rooms:"),
      "accepted_findings:\n  - {rule: no-room-cut-off, subject: a, reason: The line is laid in May, by: A. "
      "Tester, until: "
      "2020-05-31}\n");
  const std::string layout = write("shop.layout.yaml", text);
  ASSERT_EQ(runProgram({"report", layout, "--out", path("r.html")}).exit, 0);
  const std::string html = textOf(path("r.html"));
  for (const char* part : {"M 0, operator", "The line is laid in May", "A. Tester", "No longer accepted",
                           "Caution.", "data:image/png;base64,", "SHA-256", "Tape checks"})
    EXPECT_NE(html.find(part), std::string::npos) << part;
}

TEST_F(ReportOnPaper, SaysOfAnAcceptanceWithoutADayWhatIsSo) {
  std::string text = room("Hall", machinesWithStops(3));
  text.insert(
      text.find("rooms:"),
      "accepted_findings:\n  - {rule: no-room-cut-off, subject: a, reason: Invented, by: A. Tester, "
      "until: soon}\n  - {rule: no-stop, subject: gone, reason: Invented, by: A. Tester, until: soon}\n");
  const std::string layout = write("shop.layout.yaml", text);
  ASSERT_EQ(runProgram({"report", layout, "--out", path("r.html")}).exit, 0);
  const std::string html = textOf(path("r.html"));
  EXPECT_EQ(html.find("the last day has passed"), std::string::npos);
  EXPECT_NE(html.find("<b>No longer accepted: its last day cannot be read: a day such as 2026-12-31 is "
                      "expected; it was accepted by A. "
                      "Tester until soon: Invented</b>"),
            std::string::npos);
  EXPECT_NE(html.find("No such finding any more. No longer accepted: its last day cannot be read"),
            std::string::npos);
}

TEST_F(ReportOnPaper, IsNoSuccessWhereNoRuleSaysThatThereIsNoPhone) {
  std::string text = room("Hall", machinesWithStops(3));
  std::string rules = "house_rules:\n";
  for (const audit::Rule* rule : audit::rules()) rules += "  - {rule: " + rule->id + ", on: false}\n";
  text.insert(text.find("rooms:"), rules);
  ASSERT_EQ(text.find("phones:"), std::string::npos);
  const std::string layout = write("shop.layout.yaml", text);
  ASSERT_EQ(runProgram({"report", layout, "--out", path("r.html")}).exit, 0);
  const std::string html = textOf(path("r.html"));
  EXPECT_NE(
      html.find("Of the stations 0 fail, 3 warn, 0 meet the chosen rules. <b>3 stations have no way to a "
                "stop or to a phone"),
      std::string::npos);
  EXPECT_NE(html.find("No findings by the rules that are on."), std::string::npos);
}

TEST_F(ReportOnPaper, IsAPdfWithPages) {
  const std::string layout = write("shop.layout.yaml", room("Hall", machinesWithStops(30)));
  const Ran ran = runProgram({"report", layout, "--out", path("r.pdf")});
  EXPECT_EQ(ran.exit, 0) << ran.err;
  EXPECT_TRUE(textOf(path("r.pdf")).starts_with("%PDF-"));
}

}  // namespace
}  // namespace stopwalk::app
