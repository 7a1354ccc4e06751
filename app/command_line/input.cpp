#include "app/command_line/input.h"

#include <filesystem>

#include "app/shop_files/text_file.h"
#include "core/files/layout_reader.h"
#include "core/files/profile_reader.h"

namespace stopwalk::app {
namespace {

namespace fs = std::filesystem;

bool isPath(const std::string& name) {
  return name.find('/') != std::string::npos || name.ends_with(".yaml");
}

std::string beside(const std::string& file, const std::string& other) {
  if (file.empty() || file == "-") return other;
  return (fs::path(file).parent_path() / other).string();
}

std::optional<files::NamedText> fileBeside(const std::string& asked, const std::string& file) {
  const std::string path = beside(file, asked);
  auto text = textOfFile(path);
  return text ? std::optional<files::NamedText>({path, std::move(*text)}) : std::nullopt;
}

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

void addKindsOption(CLI::App& command, std::string& kinds_file) {
  command
      .add_option(
          "--kinds", kinds_file,
          "The shop's own device kinds; default: device-kinds.yaml beside the layout, if there is one")
      ->check([](const std::string& name) { return name.empty() ? "the name of a file is expected" : ""; });
}

ChosenProfile chooseProfile(const std::string& name, const std::string& beside_file, Session& session) {
  if (auto bundled = files::bundledProfile(name)) return {std::move(bundled), Exit::Done};
  const auto source = fileBeside(name, beside_file);
  if (!source) {
    session.console.err << "stopwalk: there is no profile `" << name << "`"
                        << audit::nearestName(name, files::bundledProfiles()) << "\n";
    return {{}, isPath(name) && beside_file.empty() ? Exit::NoFile : Exit::Wrong};
  }
  auto read = files::readProfile(*source, fileBeside);
  print(read.diagnostics, session);
  session.log.debug("profile {} from {}", read.value ? read.value->id : "(none)", source->file);
  const Exit exit = read.value ? Exit::Done : Exit::Wrong;
  return {std::move(read.value), exit};
}

}  // namespace stopwalk::app
