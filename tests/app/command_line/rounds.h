#pragma once

#include "tests/app/command_line/program.h"

namespace stopwalk::app {

inline constexpr int kDone = 0, kFailed = 1, kWrong = 2, kNoFile = 3;

class RoundCommand : public InFolder {
 protected:
  // Runs `round` on the sample shop, on a day that the test chooses.
  Ran round(std::vector<std::string> args) const {
    std::istringstream in;
    std::ostringstream out, err;
    args.insert(args.begin(), "round");
    args.insert(args.begin() + 2, layout);
    Console console{in, out, err};
    console.now = [this] { return *inspection::parseMoment(now); };
    const int exit = run(args, console);
    return {exit, out.str(), err.str()};
  }
  Ran record(const std::string& device, const std::string& result, std::vector<std::string> more = {}) const {
    std::vector<std::string> args = {"record", "--round", "1", "--device", device, "--result", result};
    args.insert(args.end(), more.begin(), more.end());
    return round(args);
  }
  void open() const { ASSERT_EQ(round({"new", "--by", "Ada Example"}).exit, kDone); }
  std::string log() const { return textOf(path("shop.inspections.jsonl")); }

  std::string layout = write("shop.layout.yaml", shop());
  std::string now = "2026-03-02T09:15:00+01:00";
};

inline std::string lastLine(const std::string& text) {
  const std::size_t at = text.rfind('\n', text.size() - 2);
  return text.substr(at == std::string::npos ? 0 : at + 1);
}

}  // namespace stopwalk::app
