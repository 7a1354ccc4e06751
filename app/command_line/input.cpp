#include "app/command_line/input.h"

#include <algorithm>
#include <filesystem>

#include "app/shop_files/text_file.h"
#include "core/files/layout_reader.h"

namespace stopwalk::app {
namespace {

namespace fs = std::filesystem;

}  // namespace

void print(const std::vector<files::Diagnostic>& diagnostics, Session& session) {
  for (const files::Diagnostic& d : diagnostics) session.console.err << files::format(d);
}

std::optional<std::string> readFile(const std::string& file, Session& session) {
  std::optional<std::string> text = file == "-" ? textOfStream(session.console.in) : textOfFile(file);
  if (!text)
    session.console.err << "stopwalk: cannot read " << file << ": " << whyUnreadable(file) << "\n";
  else
    session.log.debug("read {} ({} bytes)", file, text->size());
  return text;
}

const ShopFiles& LayoutInput::shopFilesOf(const std::string& layout_file) {
  const std::string folder = layout_file == "-" ? "-" : fs::path(layout_file).parent_path().string() + "/";
  const auto [at, is_new] = by_folder_.try_emplace(folder);
  if (!is_new) return at->second;
  const ShopFiles& shop = at->second = readShopFiles(layout_file, kinds_file_);
  print(shop.diagnostics, session_);
  if (!shop.unreadable.empty()) session_.console.err << "stopwalk: cannot read " << shop.unreadable << "\n";
  for (const std::string& file : shop.merged) session_.log.debug("merged {} over what is bundled", file);
  return shop;
}

Input LayoutInput::read(const std::string& file) {
  Input input{file, {}, {}, {}, Exit::Done};
  const ShopFiles& shop = shopFilesOf(file);
  auto text = readFile(file, session_);
  if (!shop.unreadable.empty() || !text) return {file, {}, {}, {}, Exit::NoFile};
  if (!shop.good) return {file, {}, {}, {}, Exit::Wrong};
  input.text = std::move(*text);
  input.kinds = shop.kinds;
  auto read = files::readLayout(input.text, file, input.kinds);
  print(read.diagnostics, session_);
  input.layout = std::move(read.value);
  if (!input.layout) input.exit = Exit::Wrong;
  return input;
}

bool asksForInputTwice(const std::vector<std::string>& layouts, Session& session) {
  if (std::ranges::count(layouts, "-") < 2) return false;
  session.console.err << "stopwalk: standard input can be read once: give `-` once\n";
  return true;
}

void addKindsOption(CLI::App& command, std::string& kinds_file) {
  command
      .add_option(
          "--kinds", kinds_file,
          "The shop's own device kinds; default: device-kinds.yaml beside the layout, if there is one")
      ->check(saysSomething("the name of a file"));
}

}  // namespace stopwalk::app
