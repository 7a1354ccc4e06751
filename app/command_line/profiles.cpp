#include "app/command_line/profiles.h"

#include <filesystem>

#include "app/shop_files/file_beside.h"
#include "app/shop_files/text_file.h"
#include "core/files/faults.h"
#include "core/files/profile_reader.h"

namespace stopwalk::app {
namespace {

namespace fs = std::filesystem;

bool isPath(const std::string& name) {
  return name.find('/') != std::string::npos || name.ends_with(".yaml");
}

ChosenProfile readFrom(const files::NamedText& source, Session& session) {
  auto read = files::readProfile(source, fileBeside);
  print(read.diagnostics, session);
  session.log.debug("profile {} from {}", read.value ? read.value->id : "(none)", source.file);
  const Exit exit = read.value ? Exit::Done : Exit::Wrong;
  return {std::move(read.value), exit};
}

std::string noSuchProfile(const std::string& name) {
  return "there is no profile `" + name + "`" + audit::nearestName(name, files::bundledProfiles());
}

}  // namespace

ChosenProfile chooseProfile(const std::string& name, Session& session) {
  if (auto bundled = files::bundledProfile(name)) return {std::move(bundled), Exit::Done};
  if (auto text = textOfFile(name)) return readFrom({name, std::move(*text)}, session);
  session.console.err << "stopwalk: " << noSuchProfile(name) << "\n";
  return {{}, isPath(name) ? Exit::NoFile : Exit::Wrong};
}

Profiles::Found Profiles::find(const Input& input) const {
  const std::string& name = input.layout->profile;
  if (auto bundled = files::bundledProfile(name.empty() ? audit::kDefaultProfile : name))
    return {{std::move(bundled), Exit::Done}, true};
  if (const auto source = fileBeside(name, input.file)) return {readFrom(*source, session_), true};
  return {{{}, Exit::Wrong}, false};
}

const ChosenProfile& Profiles::of(const Input& input) {
  const std::string& name = input.layout->profile;
  const std::string folder = input.file == "-" ? "-" : fs::path(input.file).parent_path().string() + "/";
  const auto [at, is_new] = found_.try_emplace(folder + name);
  if (is_new) at->second = find(input);
  if (!at->second.there)
    print(files::errorAtKey(input.text, input.file, "profile",
                            noSuchProfile(name) + ", or name a file beside the layout"),
          session_);
  return at->second.chosen;
}

}  // namespace stopwalk::app
