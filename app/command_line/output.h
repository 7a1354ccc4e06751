#pragma once

#include <sys/types.h>

#include <filesystem>
#include <string>

#include "app/command_line/commands.h"

namespace stopwalk::app {

// A result written piece by piece to standard output (`-` or empty), or to a file: whole, or not at all.
// Nothing is touched before the first piece. Tells the person if it fails.
class Output {
 public:
  Output(std::string file, Session& session);
  ~Output() { discard(); }  // what was not finished leaves no file
  Output(const Output&) = delete;
  Output& operator=(const Output&) = delete;

  bool write(const std::string& text);
  Exit finish();

 private:
  bool open();
  bool openBeside(mode_t mode);
  bool putInPlace();
  bool failed();
  void discard();

  std::string file_;  // empty: standard output
  Session& session_;
  std::filesystem::path path_, beside_;  // what is replaced, and by what
  int descriptor_ = -1;
  bool opened_ = false, replaces_ = false, has_name_ = false, good_ = true;
  std::size_t bytes_ = 0;
};

// Whether both names are of one file, there or not.
bool isSameFile(const std::string& a, const std::string& b);

// Whether `--out` is there, and by its name a layout, profile or record, which would be lost; tells the
// person.
bool wouldReplaceKept(const std::string& out, Session& session);

// Whether `--out` is this layout, or of the records beside it, which would be lost; tells the person.
bool wouldReplaceInput(const std::string& input, const std::string& out, Session& session);

// The same of a layout that is read, and of the files that it is made with.
struct Input;
bool wouldReplaceInput(const Input& input, const std::string& out, Session& session);

Exit writeResult(const std::string& text, const std::string& file, Session& session);

}  // namespace stopwalk::app
