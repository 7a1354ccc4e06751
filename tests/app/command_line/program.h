#pragma once

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

#include "app/command_line/run.h"

namespace stopwalk::app {

struct Ran {
  int exit = -1;
  std::string out;
  std::string err;
};

// Runs the program as from a shell, with no terminal.
inline Ran runProgram(const std::vector<std::string>& args, const std::string& input = "",
                      bool colour = false, std::size_t columns = 100) {
  std::istringstream in(input);
  std::ostringstream out, err;
  const int exit = run(args, Console{in, out, err, colour, false, columns});
  return {exit, out.str(), err.str()};
}

inline std::string textOf(const std::filesystem::path& file) {
  std::ostringstream text;
  text << std::ifstream(file, std::ios::binary).rdbuf();
  return text.str();
}

// A folder of its own for each test, gone with it.
class InFolder : public testing::Test {
 protected:
  InFolder() {
    const auto* info = testing::UnitTest::GetInstance()->current_test_info();
    folder_ = std::filesystem::path(testing::TempDir()) /
              ("stopwalk-" + std::string(info->test_suite_name()) + "-" + info->name());
    std::filesystem::remove_all(folder_);
    std::filesystem::create_directories(folder_);
  }
  ~InFolder() override { std::filesystem::remove_all(folder_); }

  std::string path(const std::string& name) const { return (folder_ / name).string(); }
  std::string write(const std::string& name, const std::string& text) const {
    std::ofstream(path(name), std::ios::binary) << text;
    return path(name);
  }
  std::vector<std::string> names() const {
    std::vector<std::string> names;
    for (const auto& entry : std::filesystem::directory_iterator(folder_))
      names.push_back(entry.path().filename().string());
    return names;
  }

 private:
  std::filesystem::path folder_;
};

inline const std::string kGolden = STOPWALK_SOURCE_DIR "/tests/app/command_line/golden/";
inline std::string shop() {
  return textOf(kGolden + "shop.layout.yaml");
}

}  // namespace stopwalk::app
