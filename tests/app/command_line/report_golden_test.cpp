// The reports to the letter. After a change that is meant: STOPWALK_UPDATE_GOLDEN=1, run, and read the
// difference.
#include <algorithm>
#include <cstdlib>
#include <fstream>

#include "core/files/sha256.h"
#include "tests/app/command_line/program.h"

namespace stopwalk::app {
namespace {

struct Golden {
  const char* file;
  std::vector<std::string> args;
  std::size_t columns = 100;
};

class Reports : public testing::TestWithParam<Golden> {};

TEST_P(Reports, AreAsCommitted) {
  const Golden& g = GetParam();
  std::vector<std::string> args = {"audit", "-"};
  args.insert(args.end(), g.args.begin(), g.args.end());
  const Ran ran = runProgram(args, shop(), false, g.columns);
  EXPECT_EQ(ran.exit, 1);
  const std::string file = kGolden + g.file;
  if (std::getenv("STOPWALK_UPDATE_GOLDEN")) std::ofstream(file, std::ios::binary) << ran.out;
  EXPECT_EQ(ran.out, textOf(file)) << "to accept: STOPWALK_UPDATE_GOLDEN=1";
}
INSTANTIATE_TEST_SUITE_P(All, Reports,
                         testing::Values(Golden{"shop.table.txt", {}},
                                         Golden{"shop.narrow.txt", {"--hours", "after"}, 72},
                                         Golden{"shop.json", {"--format", "json"}},
                                         Golden{"shop.csv", {"--format", "csv"}},
                                         Golden{"shop.findings.csv", {"--format", "findings-csv"}}),
                         [](const auto& golden) { return "Golden" + std::to_string(golden.index); });

TEST(Reports, TableKeepsItsWidth) {
  for (const std::size_t columns : {60u, 80u, 100u}) {
    std::istringstream lines(runProgram({"audit", "-"}, shop(), false, columns).out);
    for (std::string line; std::getline(lines, line);) {
      const auto characters =
          std::ranges::count_if(line, [](char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; });
      EXPECT_LE(static_cast<std::size_t>(characters), columns) << line;
    }
  }
}

TEST(Reports, ColourAddsNothingToTheWords) {
  std::string coloured = runProgram({"audit", "-"}, shop(), true).out;
  EXPECT_NE(coloured.find("\033["), std::string::npos);
  for (std::size_t at; (at = coloured.find("\033[")) != std::string::npos;)
    coloured.erase(at, coloured.find('m', at) + 1 - at);
  EXPECT_EQ(coloured, runProgram({"audit", "-"}, shop()).out);
}

TEST(Reports, TableShowsNoControlCharacters) {
  std::string hostile = shop();
  hostile.replace(hostile.find("Caged mill"), 10, R"("Bell\a \e[31m mill\nline")");
  const std::string out = runProgram({"audit", "-"}, hostile).out;
  EXPECT_EQ(out.find('\033'), std::string::npos);
  EXPECT_EQ(out.find('\a'), std::string::npos);
}

TEST(Reports, TableSaysThatAnAcceptanceIsOver) {
  const auto with = [](const std::string& until) {
    std::string layout = shop();
    layout.insert(
        layout.rfind("..."),
        "accepted_findings:\n  - {rule: drawing-fault, subject: caged/inside, which: caged, reason: "
        "On order, by: Ada Example, until: " +
            until + "}\n");
    return runProgram({"audit", "-"}, layout).out;
  };
  EXPECT_NE(with("9999-12-31").find("accepted by Ada Example until 9999-12-31: On order"), std::string::npos);
  EXPECT_EQ(with("9999-12-31").find("no longer accepted"), std::string::npos);
  EXPECT_NE(with("2001-01-01").find("no longer accepted: the last day has passed;"), std::string::npos);
  EXPECT_NE(with("soon").find("no longer accepted: its last day cannot be read: a day"), std::string::npos);
}

TEST(Reports, TellWhatIsAcceptedAndNotFound) {
  std::string layout = shop();
  layout.insert(
      layout.rfind("..."),
      "accepted_findings:\n  - {rule: unreachable, subject: saw/operator, which: (phone), reason: Invented, "
      "by: Ada Example, until: 2027-12-31}\n");
  std::string table = runProgram({"audit", "-"}, layout).out;
  std::ranges::replace(table, '\n', ' ');
  EXPECT_NE(table.find("Accepted in the layout, and not found now."), std::string::npos) << table;
  EXPECT_NE(
      runProgram({"audit", "-", "--format", "json"}, layout)
          .out.find(
              R"x("accepted_not_found": [{"rule":"unreachable","subject":"saw/operator","which":"(phone)"}])x"),
      std::string::npos);
  EXPECT_EQ(runProgram({"audit", "-"}, shop()).out.find("not found now"), std::string::npos);
}

// What is accepted "again" must be so: else somebody relies on it.
TEST(Reports, TableTellsWhatBecomesOfAnAcceptanceShouldItsFindingComeBack) {
  const auto with = [](const std::string& about, const std::string& until) {
    std::string layout = shop();
    layout.insert(layout.rfind("..."), "accepted_findings:\n  - {" + about +
                                           ", reason: Invented, by: Ada Example, until: " + until + "}\n");
    std::string table = runProgram({"audit", "-"}, layout).out;
    table.erase(0, table.find("Accepted in the layout"));
    std::string line;
    for (const char c : table)
      if (!((c == '\n' || c == ' ') && line.ends_with(' '))) line += c == '\n' ? ' ' : c;
    return line;
  };
  const auto has = [](const std::string& table, const std::string& part) {
    EXPECT_NE(table.find(part), std::string::npos) << part << "\nis not in\n" << table;
  };
  const std::string no_phone = "rule: unreachable, subject: saw/operator, which: (phone)";
  has(with(no_phone, "9999-12-31"),
      "unreachable about saw/operator (phone): should it come back, it is accepted again. accepted by Ada "
      "Example until 9999-12-31: Invented");
  has(with(no_phone, "2001-01-01"),
      "should it come back, it is not accepted. no longer accepted: the last day has passed; it was accepted "
      "by Ada Example until 2001-01-01: Invented");
  has(with(no_phone, "soon"), "should it come back, it is not accepted. no longer accepted: its last day");
  has(with("rule: unreachable, subject: saw/operator", "9999-12-31"),
      "should it come back, it is not accepted, as it is not said which of several it means.");
  has(with("rule: stop-too-far, subject: saw/nobody, measured: 5.2", "9999-12-31"),
      "should it come back, it is accepted again as long as it is no worse than 5.2 m.");
  has(with("rule: look-alike, subject: saw/nobody, which: cut-off, measured: 5.2", "9999-12-31"),
      "should it come back, it is accepted again as long as it is no worse than it was then.");
}

TEST(Reports, TableEndsWithTheCaution) {
  EXPECT_TRUE(runProgram({"audit", "-"}, shop()).out.ends_with("Anyone may press any stop.\n"));
}

// Derived: `printf abc | sha256sum` and `printf '' | sha256sum`.
TEST(Sha256, AgreesWithItsStandard) {
  EXPECT_EQ(files::sha256("abc"), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
  EXPECT_EQ(files::sha256(""), "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
}

}  // namespace
}  // namespace stopwalk::app
