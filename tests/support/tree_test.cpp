// Tests of the tree itself: that the folders are those of docs/architecture.md, and that includes follow its
// order.
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <regex>
#include <set>
#include <sstream>
#include <string>
#include <vector>

namespace {

namespace fs = std::filesystem;
using Names = std::set<std::string>;

const fs::path root = STOPWALK_ROOT;

std::string textOf(const fs::path& file) {
  std::ostringstream text;
  text << std::ifstream(file).rdbuf();
  return text.str();
}

std::string architecture() {
  return textOf(root / "docs/architecture.md");
}

std::vector<std::string> allMatches(const std::string& text, const std::regex& what) {
  std::vector<std::string> found;
  for (std::sregex_iterator m(text.begin(), text.end(), what), end; m != end; ++m) found.push_back((*m)[1]);
  return found;
}

// The folders in the order of the one line `a < b < c`.
std::vector<std::string> orderIn(const std::string& document) {
  std::smatch line;
  if (!std::regex_search(document, line, std::regex(R"(\n +([\w/]+(?: < [\w/]+)+)\n)"))) return {};
  return allMatches(line[1], std::regex(R"(([\w/]+)(?: < |$))"));
}

// What stands in the angle brackets or quotes of each include line.
std::vector<std::string> includesIn(const std::string& source) {
  return allMatches("\n" + source, std::regex(R"(\n[ \t]*#[ \t]*include[ \t]*[<"]([^>"]+)[>"])"));
}

// The folder of the order that holds `path`: its place, or the order's size for none.
std::size_t placeOf(const std::string& path, const std::vector<std::string>& order) {
  const auto holds = [&](const std::string& folder) { return path.starts_with(folder + "/"); };
  return static_cast<std::size_t>(std::ranges::find_if(order, holds) - order.begin());
}

bool isQt(const std::string& include) {
  return std::regex_search(include, std::regex(R"(^Q[A-Z]|^Qt)"));
}
bool isCopyleft(const std::string& include) {
  return std::regex_search(include, std::regex(R"(^(CGAL/|geos|gmp|mpfr))"));
}
bool isOurs(const std::string& include) {
  return std::regex_search(include, std::regex("^(core|app|tests)/"));
}

// Why the file at `path` may not have this include; empty if it may.
std::string objection(const std::string& path, const std::string& include,
                      const std::vector<std::string>& order) {
  if (path == "app/main.cpp" || path == "app/painter.cpp") return "";  // they join all there is
  const std::size_t user = placeOf(path, order);
  if (user == order.size()) return "is in no folder of the order";
  if (include.find("..") != std::string::npos) return "is not given from the root";
  if (path.starts_with("core/") && isQt(include)) return "core does without Qt";
  if (isCopyleft(include)) return "is under a copyleft licence";
  if (isOurs(include) && placeOf(include, order) > user) return "breaks the order of docs/architecture.md";
  return "";
}

std::vector<fs::path> sourcesUnder(const fs::path& folder) {
  std::vector<fs::path> files;
  for (const auto& entry : fs::recursive_directory_iterator(root / folder))
    if (entry.path().extension() == ".h" || entry.path().extension() == ".cpp") files.push_back(entry.path());
  return files;
}

Names foldersIn(const std::string& parent) {
  Names names;
  for (const auto& entry : fs::directory_iterator(root / parent))
    if (entry.is_directory()) names.insert(parent + "/" + entry.path().filename().string());
  return names;
}

TEST(Tree, OrderIsReadFromTheDocument) {
  EXPECT_EQ(orderIn("x\n\n    core/a < core/b < app\n\ny"),
            (std::vector<std::string>{"core/a", "core/b", "app"}));
  EXPECT_GE(orderIn(architecture()).size(), 6u);
}

TEST(Tree, IncludesAreFound) {
  EXPECT_EQ(includesIn("#include <a>\n  #  include \"b/c.h\"\n// #include <d>\n"),
            (std::vector<std::string>{"a", "b/c.h"}));
}

TEST(Tree, ObjectsToIncludesAgainstTheOrder) {
  const std::vector<std::string> order = orderIn(architecture());
  EXPECT_EQ(objection("core/floor/a.cpp", "core/layout/b.h", order), "");
  EXPECT_EQ(objection("core/floor/a.cpp", "core/floor/b.h", order), "");
  EXPECT_EQ(objection("core/floor/a.cpp", "vector", order), "");
  EXPECT_EQ(objection("app/command_line/a.cpp", "QString", order), "");
  EXPECT_NE(objection("core/floor/a.cpp", "core/audit/b.h", order), "");
  EXPECT_NE(objection("core/audit/a.cpp", "app/command_line/b.h", order), "");
  EXPECT_NE(objection("core/audit/a.cpp", "tests/support/b.h", order), "");
  EXPECT_NE(objection("core/floor/a.cpp", "../audit/b.h", order), "");
  EXPECT_NE(objection("core/audit/a.cpp", "QtCore/QString", order), "");
  EXPECT_NE(objection("core/audit/a.cpp", "QString", order), "");
  EXPECT_NE(objection("app/command_line/a.cpp", "CGAL/Polygon_2.h", order), "");
  EXPECT_NE(objection("core/elsewhere/a.cpp", "vector", order), "");
}

TEST(Tree, IncludesFollowTheOrder) {
  const std::vector<std::string> order = orderIn(architecture());
  std::size_t files = 0;
  for (const char* top : {"core", "app"}) {
    for (const fs::path& file : sourcesUnder(top)) {
      const std::string path = fs::relative(file, root).generic_string();
      for (const std::string& include : includesIn(textOf(file)))
        EXPECT_EQ(objection(path, include, order), "") << path << " includes " << include;
      ++files;
    }
  }
  EXPECT_GT(files, 10u);
}

// A window sets the locale of the system, a command line none: what is read and written must be the same.
TEST(Tree, CoreAsksNoLocale) {
  const std::regex asks(
      R"(\b(strto[dfl]d?|sto[dfl]d?|ato[fil]|is(alnum|alpha|lower|punct|space|upper)|to(lower|upper))\s*\()");
  EXPECT_TRUE(std::regex_search("std::strtod(text, &end)", asks));
  for (const fs::path& file : sourcesUnder("core"))
    EXPECT_FALSE(std::regex_search(textOf(file), asks)) << file << " asks the locale";
}

TEST(Tree, FoldersAreThoseOfTheDocument) {
  const std::vector<std::string> rows = allMatches(architecture(), std::regex(R"(\n\| `([\w/-]+)` \|)"));
  Names folders = foldersIn("core");
  folders.merge(foldersIn("app"));
  folders.insert({"resources", "sample-layouts", "tests", "docs"});
  EXPECT_EQ(Names(rows.begin(), rows.end()), folders);
}

TEST(Tree, TopLevelHoldsNothingElse) {
  const Names expected = {"CMakeLists.txt", "README.md", "DEVELOPERS.md", "LICENSE", "app", "core",
                          "resources", "tests", "sample-layouts", "docs",
                          // CMake wants its presets beside the CMakeLists.txt
                          "CMakePresets.json"};
  Names found;
  for (const auto& entry : fs::directory_iterator(root)) {
    const std::string name = entry.path().filename().string();
    if (!name.starts_with(".") && name != "build" && name != "CMakeUserPresets.json") found.insert(name);
  }
  EXPECT_EQ(found, expected);
}

}  // namespace
