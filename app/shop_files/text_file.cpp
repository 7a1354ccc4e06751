#include "app/shop_files/text_file.h"

#include <cerrno>
#include <cstring>
#include <filesystem>
#include <fstream>

namespace stopwalk::app {
namespace {

namespace fs = std::filesystem;

// A byte more than a layout may have: the reader then says that it is too long, whatever is still to come.
constexpr std::size_t kMost = (std::size_t{64} << 20) + 1;

}  // namespace

std::optional<std::string> textOfStream(std::istream& in) {
  std::string text;
  char buffer[1 << 16];
  while (text.size() < kMost && (in.read(buffer, sizeof buffer) || in.gcount() > 0))
    text.append(buffer, static_cast<std::size_t>(in.gcount()));
  if (in.bad()) return std::nullopt;
  return text;
}

std::optional<std::string> textOfFile(const std::string& file) {
  std::error_code none;
  if (fs::is_directory(file, none)) return std::nullopt;
  errno = 0;
  std::ifstream in(file, std::ios::binary);
  return in ? textOfStream(in) : std::nullopt;
}

std::string whyUnreadable(const std::string& file) {
  const int why = errno;
  std::error_code none;
  if (fs::is_directory(file, none)) return "it is a folder";
  return why != 0 ? std::strerror(why) : "cannot be read";
}

}  // namespace stopwalk::app
