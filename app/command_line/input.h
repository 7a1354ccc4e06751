#pragma once

#include <map>
#include <optional>
#include <string>

#include "app/command_line/commands.h"
#include "app/shop_files/shop_files.h"
#include "core/files/diagnostic.h"
#include "core/layout/layout.h"

namespace stopwalk::app {

// The bytes of a file, or of standard input for `-`; tells the person if it cannot be read.
std::optional<std::string> readFile(const std::string& file, Session& session);

struct Input {
  std::string file;
  std::string text;
  std::optional<layout::Layout> layout;
  layout::DeviceKinds kinds;
  Exit exit = Exit::Done;  // why there is no layout
};

// Reads layouts, each with the shop's own files beside it, and prints what is wrong with them; what is wrong
// with the shop's files once a folder. `kinds_file` (`--kinds`) may be empty.
class LayoutInput {
 public:
  LayoutInput(std::string kinds_file, Session& session)
      : kinds_file_(std::move(kinds_file)), session_(session) {}
  Input read(const std::string& file);

 private:
  const ShopFiles& shopFilesOf(const std::string& layout_file);

  std::string kinds_file_;
  Session& session_;
  std::map<std::string, ShopFiles> by_folder_;
};

// Standard input can be read once; tells the person if it is asked for twice.
bool asksForInputTwice(const std::vector<std::string>& layouts, Session& session);

void addKindsOption(CLI::App& command, std::string& kinds_file);

void print(const std::vector<files::Diagnostic>& diagnostics, Session& session);

}  // namespace stopwalk::app
