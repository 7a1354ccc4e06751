// Many layouts in one run: folders, the summary, and the same result however many are audited at once.
#include <algorithm>
#include <filesystem>

#include "app/command_line/text_columns.h"
#include "core/audit/rule.h"
#include "tests/app/command_line/program.h"

namespace stopwalk::app {
namespace {

namespace fs = std::filesystem;

constexpr int kDone = 0, kFailed = 1, kWrong = 2, kNoFile = 3;

std::string goodShop() {
  return textOf(STOPWALK_SOURCE_DIR "/sample-layouts/scene-shop.layout.yaml");
}

std::string notOnce(const std::string& text, const std::string& part) {
  const std::size_t at = text.find(part);
  if (at == std::string::npos) return "missing";
  return text.find(part, at + 1) == std::string::npos ? "" : "more than once";
}

std::string without(std::string text, const std::string& part) {
  for (std::size_t at; (at = text.find(part)) != std::string::npos;) text.erase(at, part.size());
  return text;
}

class ManyLayouts : public InFolder {
 protected:
  std::string put(const std::string& name, const std::string& text) const {
    fs::create_directories(fs::path(path(name)).parent_path());
    return write(name, text);
  }

  // Good, bad and broken ones, in folders, with more beside them that is no layout.
  void writeCampus() const {
    for (int i = 0; i < 12; ++i) {
      const std::string folder = "campus/" + std::string(i % 3 == 0   ? ""
                                                         : i % 3 == 1 ? "east/"
                                                                      : "west/hall/");
      const std::string text = i % 4 == 3 ? "x: [" : i % 2 == 0 ? shop() : goodShop();
      put(folder + "shop-" + std::to_string(i) + ".layout.yaml", text);
    }
    put("campus/east/notes.yaml", "x: [");
    put("campus/.old/shop.layout.yaml", "x: [");
    put("campus/.shop.layout.yaml", "x: [");
  }

  Ran audit(std::vector<std::string> more, std::size_t columns = 100) const {
    more.insert(more.begin(), {"audit", path("campus")});
    return runProgram(more, "", false, columns);
  }
};

TEST_F(ManyLayouts, FolderStandsForItsLayoutsByName) {
  writeCampus();
  const std::string folder = path("campus");
  const std::vector<std::string> expected = {"east/shop-1",      "east/shop-10",     "east/shop-4",
                                             "east/shop-7",      "shop-0",           "shop-3",
                                             "shop-6",           "shop-9",           "west/hall/shop-11",
                                             "west/hall/shop-2", "west/hall/shop-5", "west/hall/shop-8"};
  std::vector<std::string> one_by_one = {"audit"};
  for (const std::string& name : expected) one_by_one.push_back(folder + "/" + name + ".layout.yaml");
  for (const char* format : {"json", "csv", "findings-csv", "table", "summary"}) {
    std::vector<std::string> named = one_by_one;
    named.insert(named.end(), {"--format", format});
    const Ran by_folder = audit({"--format", format}), by_name = runProgram(named);
    EXPECT_EQ(by_folder.out, by_name.out) << format;
    EXPECT_EQ(by_folder.err, by_name.err) << format;
    EXPECT_EQ(by_folder.exit, kWrong);
  }
}

TEST_F(ManyLayouts, NumberAtOnceChangesNothing) {
  writeCampus();
  for (const char* format : {"json", "csv", "findings-csv", "table", "summary"}) {
    const Ran one = audit({"--format", format, "--at-once", "1"});
    EXPECT_NE(one.out, "");
    for (const char* at_once : {"2", "3", "16"}) {
      const Ran many = audit({"--format", format, "--at-once", at_once});
      EXPECT_EQ(many.out, one.out) << format;
      EXPECT_EQ(many.err, one.err) << format;
      EXPECT_EQ(many.exit, one.exit);
    }
  }
}

// What one after another says, put together by hand.
TEST_F(ManyLayouts, ListIsThatOfTheReportsOfEach) {
  writeCampus();
  std::string json, csv, err;
  fs::remove(path("campus/east/notes.yaml"));
  std::vector<std::string> files;
  for (const auto& entry : fs::recursive_directory_iterator(path("campus")))
    if (entry.is_regular_file() && entry.path().string().find("/.") == std::string::npos)
      files.push_back(entry.path().string());
  std::ranges::sort(files);
  for (const std::string& file : files) {
    const Ran as_json = runProgram({"audit", file, "--format", "json"});
    const Ran as_csv = runProgram({"audit", file, "--format", "csv"});
    err += as_json.err;
    if (as_json.out.empty()) continue;
    json += (json.empty() ? "[" : ",\n") + as_json.out.substr(0, as_json.out.size() - 1);
    csv += csv.empty() ? as_csv.out : as_csv.out.substr(as_csv.out.find("\r\n") + 2);
  }
  EXPECT_EQ(audit({"--format", "json"}).out, json + "]\n");
  EXPECT_EQ(audit({"--format", "csv"}).out, csv);
  EXPECT_EQ(audit({"--format", "csv"}).err, err);
}

// Names from the root and from here have no folder in common.
TEST_F(ManyLayouts, AreNamedFromAnywhere) {
  const std::string absolute = put("one.layout.yaml", goodShop());
  const std::string relative = fs::relative(put("two.layout.yaml", goodShop())).string();
  for (const std::string& other : {relative, std::string("-"), std::string("/none.layout.yaml")})
    for (const auto& [first, second] : {std::pair(absolute, other), std::pair(other, absolute)}) {
      const Ran ran = runProgram({"audit", first, second, "--format", "summary"}, goodShop());
      EXPECT_TRUE(ran.out.starts_with(other.starts_with('/') ? "All 2 layouts in /, worst first\n"
                                                             : "All 2 layouts, worst first\n"))
          << ran.out;
    }
}

TEST_F(ManyLayouts, WorstStatusCounts) {
  put("campus/good.layout.yaml", goodShop());
  EXPECT_EQ(audit({}).exit, kDone);
  put("campus/bad.layout.yaml", shop());
  EXPECT_EQ(audit({}).exit, kFailed);
  put("campus/broken.layout.yaml", "x: [");
  EXPECT_EQ(audit({}).exit, kWrong);
  fs::create_symlink("nowhere", path("campus/lost.layout.yaml"));
  const Ran ran = audit({});
  EXPECT_EQ(ran.exit, kNoFile);
  EXPECT_NE(ran.err.find("cannot read " + path("campus/lost.layout.yaml")), std::string::npos) << ran.err;
}

TEST_F(ManyLayouts, FolderWithoutLayoutsIsWrongInput) {
  put("campus/notes.yaml", "");
  put("good.layout.yaml", goodShop());
  for (const char* command : {"audit", "check"}) {
    const Ran ran = runProgram({command, path("campus")});
    EXPECT_EQ(ran.exit, kWrong);
    EXPECT_EQ(ran.out, "");
    EXPECT_NE(ran.err.find("no file *.layout.yaml"), std::string::npos) << ran.err;
    const Ran both = runProgram({command, path("campus"), path("good.layout.yaml")});
    EXPECT_EQ(both.exit, kWrong);
    EXPECT_NE(both.out, "");
  }
}

TEST_F(ManyLayouts, FileIsFoundOnce) {
  const std::string one = put("campus/east/one.layout.yaml", shop()),
                    two = put("campus/two.layout.yaml", shop());
  fs::create_directory_symlink("..", path("campus/east/round"));
  for (const auto& more : std::vector<std::vector<std::string>>{
           {}, {one}, {path("campus/east")}, {path("campus") + "/."}, {two, one}}) {
    std::vector<std::string> args = more;
    args.insert(args.end(), {"--format", "json"});
    const Ran ran = audit(args);
    EXPECT_EQ(notOnce(ran.out, "one.layout.yaml"), "");
    EXPECT_EQ(notOnce(ran.out, "two.layout.yaml"), "");
  }
}

TEST_F(ManyLayouts, FileThatIsNamedTwiceIsCountedOnceAndSaidSo) {
  const std::string file = put("hall.layout.yaml", shop());
  fs::create_symlink(file, path("other.layout.yaml"));
  const Ran ran = runProgram({"audit", file, file, path("other.layout.yaml"), "--format", "summary"});
  EXPECT_NE(ran.out.find("1 layout:"), std::string::npos) << ran.out;
  EXPECT_NE(ran.err.find(file + " is named twice; it is taken once\n"), std::string::npos) << ran.err;
  EXPECT_NE(ran.err.find("other.layout.yaml is the same file as " + file), std::string::npos) << ran.err;
}

TEST_F(ManyLayouts, SummaryBreaksNoWordAndNamesTheStation) {
  const std::string out = runProgram({"audit", put("a.layout.yaml", shop()), "--format", "summary"}).out;
  EXPECT_NE(out.find("together"), std::string::npos) << out;
  EXPECT_EQ(notOnce(out, "(press/operator)"), "") << out;
}

TEST_F(ManyLayouts, FolderGivesAListEvenOfOne) {
  put("campus/one.layout.yaml", shop());
  EXPECT_EQ(audit({"--format", "json"}).out.front(), '[');
}

TEST_F(ManyLayouts, SummaryHasALineForEachWorstFirst) {
  put("campus/a/good.layout.yaml", goodShop());
  put("campus/bad.layout.yaml", shop());
  put("campus/broken.layout.yaml", "x: [");
  const Ran ran = audit({"--format", "summary"});
  const std::size_t broken = ran.out.find("\nerror  broken "), bad = ran.out.find("\nfails  bad "),
                    good = ran.out.find("\nmeets  a/good ");
  EXPECT_LT(broken, bad) << ran.out;
  EXPECT_LT(bad, good) << ran.out;
  EXPECT_NE(good, std::string::npos) << ran.out;
  const std::string line = ran.out.substr(broken + 1, ran.out.find('\n', broken + 1) - broken);
  EXPECT_EQ(line.find_first_of("0123456789"), std::string::npos) << "unknown is no number: " << line;
  EXPECT_NE(ran.out.find("3 layouts: 1 fails, 0 warn, 1 meets the chosen rules, 1 with errors"),
            std::string::npos)
      << ran.out;
  EXPECT_TRUE(ran.out.ends_with("Anyone may press any stop.\n"));
}

// No rule says that there is no phone: nothing is found, and yet nothing is met.
TEST_F(ManyLayouts, WhatNoRuleSaysIsNoSuccess) {
  std::string text = goodShop();
  text.erase(text.find("\nphones:") + 1);
  text += "...\n";
  std::string rules = "house_rules:\n";
  for (const audit::Rule* rule : audit::rules()) rules += "  - {rule: " + rule->id + ", on: false}\n";
  text.insert(text.find("site:"), rules);
  put("campus/silent.layout.yaml", text);
  put("campus/good.layout.yaml", goodShop());
  std::string summary = audit({"--format", "summary"}).out;
  EXPECT_NE(summary.find("\nwarns  silent "), std::string::npos) << summary;
  EXPECT_LT(summary.find("\nwarns  silent "), summary.find("\nmeets  good ")) << summary;
  std::ranges::replace(summary, '\n', ' ');
  EXPECT_NE(summary.find("2 layouts: 0 fail, 1 warns, 1 meets the chosen rules."), std::string::npos)
      << "there is no warning: " << summary;
  EXPECT_NE(summary.find("which no failing or warning rule that is on says, are in silent ("),
            std::string::npos)
      << summary;
  std::string sheet = runProgram({"audit", path("campus/silent.layout.yaml")}).out;
  std::ranges::replace(sheet, '\n', ' ');
  EXPECT_EQ(sheet.find("meets the chosen rules"), std::string::npos) << sheet;
  EXPECT_NE(sheet.find("No findings by the rules that are on."), std::string::npos) << sheet;
  EXPECT_NE(sheet.find(" have no way to a stop or to a phone, which no failing or warning rule"),
            std::string::npos)
      << sheet;
  EXPECT_NE(sheet.find("Stations that meet the chosen rules: 0."), std::string::npos) << sheet;
}

TEST_F(ManyLayouts, TableIsTheSheetsAndTheSummary) {
  put("campus/bad.layout.yaml", shop());
  put("campus/good.layout.yaml", goodShop());
  const Ran summary = audit({"--format", "summary"});
  std::string sheets;
  for (const char* name : {"campus/bad.layout.yaml", "campus/good.layout.yaml"}) {
    const std::string sheet = runProgram({"audit", path(name)}).out;
    sheets += sheet.substr(0, sheet.rfind("Stopwalk checks a drawing"));
  }
  EXPECT_EQ(audit({}).out, sheets + summary.out);
}

TEST_F(ManyLayouts, OneFileHasNoSummaryUnlessAskedFor) {
  const std::string file = write("bad.layout.yaml", shop());
  EXPECT_EQ(runProgram({"audit", file}).out.find("worst first"), std::string::npos);
  const Ran ran = runProgram({"audit", file, "--format", "summary"});
  EXPECT_NE(ran.out.find("\nfails  bad "), std::string::npos) << ran.out;
  EXPECT_EQ(ran.exit, kFailed);
}

TEST_F(ManyLayouts, SummaryKeepsItsWidth) {
  writeCampus();
  put("campus/a-long-name-of-a-folder/and-the-long-name-of-a-workshop-in-it.layout.yaml", shop());
  put("campus/Gebäude/Öl-Prüfstand-für-große-Getriebe.layout.yaml", shop());
  for (const std::size_t columns : {60u, 80u, 100u, 120u, 160u}) {
    std::istringstream lines(audit({"--format", "summary"}, columns).out);
    for (std::string line; std::getline(lines, line);) EXPECT_LE(width(line), columns) << line;
  }
}

TEST_F(ManyLayouts, NothingIsWrittenIfNoneCanBeRead) {
  put("campus/broken.layout.yaml", "x: [");
  put("campus/torn.layout.yaml", "x: [");
  for (const char* format : {"json", "csv", "findings-csv", "table", "summary"}) {
    const std::string out = write("report", "old");
    const Ran ran = audit({"--format", format, "--out", out});
    EXPECT_EQ(ran.exit, kWrong);
    EXPECT_EQ(ran.out, "");
    EXPECT_EQ(textOf(out), "old");
  }
}

TEST_F(ManyLayouts, ReportIsWrittenWholeOrNotAtAll) {
  writeCampus();
  const std::string out = write("report.json", "old");
  EXPECT_EQ(audit({"--format", "json", "--out", out}).exit, kWrong);
  EXPECT_EQ(textOf(out), audit({"--format", "json"}).out);
  EXPECT_EQ(names().size(), 2u) << "nothing is left beside it";
  EXPECT_EQ(audit({"--out", "/dev/full"}).exit, kNoFile);
  EXPECT_EQ(audit({"--out", path("campus/shop-0.layout.yaml")}).exit, kWrong);
  EXPECT_EQ(textOf(path("campus/shop-0.layout.yaml")), shop());
}

TEST_F(ManyLayouts, WhatOneOfThemIsMadeWithIsNotReplaced) {
  writeCampus();
  const std::string own = put("campus/scan.png", "no picture");
  std::string text = shop();
  text.insert(text.find("rooms:"), "underlay: {image: scan.png, at: [0, 0], mm_per_pixel: 10}\n");
  put("campus/shop-5.layout.yaml", text);
  const std::string before = textOf(own);
  for (const char* at_once : {"1", "4"}) {
    const Ran ran = audit({"--format", "csv", "--out", own, "--at-once", at_once});
    EXPECT_EQ(ran.exit, kWrong);
    EXPECT_NE(ran.err.find("made with"), std::string::npos) << ran.err;
    EXPECT_EQ(textOf(own), before);
  }
}

// A shell puts the first of many names behind an --out that was given none.
TEST_F(ManyLayouts, NoOtherLayoutAndNoRecordsAreReplaced) {
  writeCampus();
  const std::string other = write("other.layout.yaml", shop()),
                    records = write("other.inspections.jsonl", "x\n");
  std::filesystem::create_symlink(records, path("list.csv"));
  for (const std::string& out : {other, records, path("list.csv")}) {
    const std::string before = textOf(out);
    const Ran ran = audit({"--format", "csv", "--out", out});
    EXPECT_EQ(ran.exit, kWrong) << out;
    EXPECT_NE(ran.err.find("name another file"), std::string::npos) << ran.err;
    EXPECT_EQ(runProgram({"report", path("campus/shop-0.layout.yaml"), "--out", out}).exit, kWrong) << out;
    EXPECT_EQ(textOf(out), before);
  }
}

TEST_F(ManyLayouts, WhatTheyShareIsToldOnceWhateverTheNumberAtOnce) {
  put("campus/ours.yaml", "stopwalk_profile: 1\nid: ours\ncolour: red\nrules: {}\n...\n");
  std::string text = shop();
  text.insert(text.find("units: mm\n"), "profile: ours.yaml\n");
  for (int i = 0; i < 8; ++i) put("campus/" + std::to_string(i) + ".layout.yaml", text);
  for (const char* at_once : {"1", "4"})
    EXPECT_EQ(notOnce(audit({"--at-once", at_once}).err, "ours.yaml:3:1: warning"), "");
}

TEST_F(ManyLayouts, ProgressIsForATerminalAndGoneBeforeAnythingElse) {
  writeCampus();
  std::istringstream in;
  std::ostringstream out, err;
  run({"audit", path("campus"), "--format", "csv"}, Console{in, out, err, false, true});
  std::string told = err.str();
  EXPECT_NE(told.find("\r\033[Kaudited 12 of 12 layouts\r\033[K"), std::string::npos);
  std::string rest;  // as a terminal would show it
  for (const char c : without(told, "\033[K")) {
    if (c == '\r')
      rest.erase(rest.rfind('\n') + 1);
    else
      rest += c;
  }
  EXPECT_EQ(rest, audit({"--format", "csv"}).err);
  EXPECT_EQ(out.str(), audit({"--format", "csv"}).out);
}

}  // namespace
}  // namespace stopwalk::app
