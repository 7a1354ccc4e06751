#include "app/command_line/input.h"

#include <cerrno>
#include <cstring>
#include <filesystem>
#include <fstream>

#include "core/files/device_kinds_reader.h"
#include "core/files/layout_reader.h"
#include "core/files/profile_reader.h"

namespace stopwalk::app {
namespace {

namespace fs = std::filesystem;

// A byte more than a layout may have: the reader then says that it is too long, whatever is still to come.
constexpr std::size_t kMost = (std::size_t{64} << 20) + 1;

std::optional<std::string> readAll(std::istream& in) {
  std::string text;
  char buffer[1 << 16];
  while (text.size() < kMost && (in.read(buffer, sizeof buffer) || in.gcount() > 0))
    text.append(buffer, static_cast<std::size_t>(in.gcount()));
  if (in.bad()) return std::nullopt;
  return text;
}

bool isPath(const std::string& name) {
  return name.find('/') != std::string::npos || name.ends_with(".yaml");
}

std::string beside(const std::string& file, const std::string& other) {
  if (file.empty() || file == "-") return other;
  return (fs::path(file).parent_path() / other).string();
}

std::optional<std::string> quietly(const std::string& file) {
  std::error_code none;
  if (fs::is_directory(file, none)) return std::nullopt;
  std::ifstream in(file, std::ios::binary);
  return in ? readAll(in) : std::nullopt;
}

std::optional<files::NamedText> fileBeside(const std::string& asked, const std::string& file) {
  const std::string path = beside(file, asked);
  auto text = quietly(path);
  return text ? std::optional<files::NamedText>({path, std::move(*text)}) : std::nullopt;
}

}  // namespace

void print(const std::vector<files::Diagnostic>& diagnostics, Session& session) {
  for (const files::Diagnostic& d : diagnostics) session.console.err << files::format(d);
}

std::optional<std::string> readFile(const std::string& file, Session& session) {
  errno = 0;
  std::optional<std::string> text = file == "-" ? readAll(session.console.in) : quietly(file);
  if (!text) {
    std::error_code none;
    const char* why = fs::is_directory(file, none) ? "it is a folder"
                      : errno != 0                 ? std::strerror(errno)
                                                   : "cannot be read";
    session.console.err << "stopwalk: cannot read " << file << ": " << why << "\n";
  } else {
    session.log.debug("read {} ({} bytes)", file, text->size());
  }
  return text;
}

Input readLayoutFile(const std::string& file, Session& session) {
  Input input{file, {}, {}, Exit::Done};
  auto text = readFile(file, session);
  if (!text) return {file, {}, {}, Exit::NoFile};
  input.text = std::move(*text);
  auto read = files::readLayout(input.text, file, files::bundledDeviceKinds());
  print(read.diagnostics, session);
  input.layout = std::move(read.value);
  if (!input.layout) input.exit = Exit::Wrong;
  return input;
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
