#pragma once

#include "app/command_line/commands.h"

namespace stopwalk::app {

// One line on the terminal that says how far a run of several has come; nothing anywhere else.
class Progress {
 public:
  Progress(std::size_t all, Session& session) : all_(all), session_(session) {}
  ~Progress() { hide(); }
  void show(std::size_t done);
  void hide();  // before anything else is printed

 private:
  std::size_t all_;
  Session& session_;
  bool shown_ = false;
};

}  // namespace stopwalk::app
