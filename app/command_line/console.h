#pragma once

#include <functional>
#include <istream>
#include <ostream>
#include <string>

#include "core/inspection/moment.h"

namespace stopwalk::app {

// Where the program reads and writes, and what it may show there.
struct Console {
  std::istream& in;
  std::ostream& out;
  std::ostream& err;
  bool colour = false;    // on `out`
  bool progress = false;  // on `err`
  std::size_t columns = 100;
  std::function<int(const std::string& layout)> window = {};  // opens it; none: there is no display
  std::function<inspection::Moment()> now = {};               // none: by this computer's clock
};

// The exit statuses of docs/command-line.md; the worse is the greater.
enum class Exit { Done = 0, Failed = 1, Wrong = 2, NoFile = 3 };

}  // namespace stopwalk::app
