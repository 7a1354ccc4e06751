#pragma once

#include <string>
#include <vector>

namespace stopwalk::app {

// What the line of `audit` asks for.
struct AuditOptions {
  std::vector<std::string> layouts;
  std::string profile;
  std::string kinds;
  std::string hours = "open";
  std::vector<std::string> limits;
  std::string format = "table";
  std::string out;
  std::size_t at_once = 0;  // 0: as many as there are cores
};

}  // namespace stopwalk::app
