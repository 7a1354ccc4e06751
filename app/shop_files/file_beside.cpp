#include "app/shop_files/file_beside.h"

#include <filesystem>

#include "app/shop_files/text_file.h"

namespace stopwalk::app {
namespace {

namespace fs = std::filesystem;

bool staysBeside(const fs::path& path) {
  for (const fs::path& part : path)
    if (part == "..") return false;
  return path.is_relative();
}

}  // namespace

std::optional<files::NamedText> fileBeside(const std::string& asked, const std::string& file) {
  if (!staysBeside(asked)) return std::nullopt;
  const std::string path =
      file.empty() || file == "-" ? asked : (fs::path(file).parent_path() / asked).string();
  auto text = textOfFile(path);
  return text ? std::optional<files::NamedText>({path, std::move(*text)}) : std::nullopt;
}

}  // namespace stopwalk::app
